package io.github.ringstate.instructor.floor;

import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.instructor.pilots.PilotCells;
import io.github.ringstate.instructor.pilots.PilotLosses;
import io.github.ringstate.instructor.pilots.Way;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.study.Briefing;
import io.github.ringstate.study.PilotStudy;
import io.github.ringstate.study.Quantile;
import java.util.List;
import java.util.Optional;

/**
 * The pilots of one state with one technique.
 *
 * @param conditions craft, mass and air
 * @param entry the entry's name
 * @param state the state of the pilots
 * @param recovery what they were briefed to do
 * @param study the pilots and what they flew
 * @param share the share that is to recover
 * @param margin height to be left below the lowest point, m
 * @param losses what they lost
 * @param way where one standard pilot with the median delay goes over the ground; empty if the
 *     descent is not arrested
 */
record FloorRow(
    Conditions conditions,
    String entry,
    PilotState state,
    Technique recovery,
    PilotStudy study,
    double share,
    double margin,
    PilotLosses losses,
    Optional<Way> way) {

  /**
   * The height at onset from which the share recovered with the margin.
   *
   * @return the height, m, infinite if there is none; empty if nobody met the ring state
   */
  Optional<Quantile> floor() {
    return losses.loss(share).map(loss -> loss.plus(margin));
  }

  /**
   * The height at onset from which another share recovered with the margin.
   *
   * @param part the share, between 0 and 1
   * @return the height, m, infinite if there is none, with its interval
   * @throws java.util.NoSuchElementException if nobody met the ring state
   */
  Quantile heightFor(double part) {
    return losses.loss(part).orElseThrow().plus(margin);
  }

  /**
   * The height at onset from which a share recovered, for people.
   *
   * @param part the share, between 0 and 1
   * @param units the units to speak in
   * @return the loss rounded upwards and the margin, without the unit; empty if there is no such
   *     height
   */
  Optional<String> needed(double part, UnitSystem units) {
    return losses
        .loss(part)
        .filter(loss -> Double.isFinite(loss.value()))
        .map(loss -> PilotCells.needed(loss, margin, units));
  }

  /** The same height as the other models have it. */
  Optional<Quantile> modelsFloor() {
    return losses.modelsLoss(share).map(loss -> loss.plus(margin));
  }

  /** The same height with the interval of people and model both. */
  Optional<Quantile> widestFloor() {
    return losses.widestLoss(share).map(loss -> loss.plus(margin));
  }

  /**
   * Which of the ways out of the wake needs the least height, with those that the model does not
   * tell apart from it. Power alone is no way out, however little a pilot lost who got away with
   * it.
   *
   * @param rows the rows of one state
   * @return the row of the least height first; empty if with no way out so many recovered
   */
  static List<FloorRow> leastHeight(List<FloorRow> rows) {
    List<Briefing.Line> lines =
        rows.stream()
            .filter(row -> row.recovery().wayOut())
            .flatMap(row -> row.line().stream())
            .toList();
    return lines.isEmpty()
        ? List.of()
        : Briefing.leastHeight(lines).stream()
            .flatMap(line -> rows.stream().filter(row -> row.study().equals(line.study())))
            .toList();
  }

  /** Whether too few pilots were flown for the interval of the floor to have two ends. */
  boolean tooFew() {
    return losses.tooFew(share);
  }

  private Optional<Briefing.Line> line() {
    return widestFloor().map(floor -> new Briefing.Line(study, losses.people(), floor));
  }
}
