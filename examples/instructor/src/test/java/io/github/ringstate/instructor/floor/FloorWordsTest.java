package io.github.ringstate.instructor.floor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.chance.Drawing;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Disturbances;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.EntryKind;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.instructor.conditions.HoverPower;
import io.github.ringstate.instructor.option.Approach;
import io.github.ringstate.instructor.option.Clock;
import io.github.ringstate.instructor.pilots.MadeUp;
import io.github.ringstate.instructor.pilots.PilotLosses;
import io.github.ringstate.instructor.pilots.Pool;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.pilot.Technique;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The sentences about floors, on losses that are made up. */
class FloorWordsTest {

  private static final Conditions CONDITIONS =
      new Conditions(DemoCraft.TRAINER, StandardAtmosphere.at(0), new HoverPower(80, 82, 88));
  private static final Pool POOL = new Pool(1024, 0, Drawing.SOBOL, 1, Optional.empty());
  private static final FloorRequest REQUEST =
      new FloorRequest(
          List.of(DemoCraft.TRAINER),
          List.of(StandardAtmosphere.at(0)),
          new Approach(EntryKind.SETTLING, 0, OptionalDouble.empty()),
          OptionalDouble.empty(),
          List.of(Technique.FORWARD, Technique.LATERAL, Technique.COLLECTIVE),
          List.of(PilotState.PRIMED),
          Clock.BOUNDARY,
          Disturbances.NONE,
          POOL,
          0.95,
          50 * 0.3048,
          0.05,
          Optional.empty());

  /** A thousand pilots who lose evenly up to a height in feet, some of whom do not arrest. */
  private static FloorRow row(Technique recovery, double greatestFt, int lost) {
    return row(recovery, 1000, greatestFt, lost);
  }

  private static FloorRow row(Technique recovery, int pilots, double greatestFt, int lost) {
    double[] feet = new double[pilots];
    for (int i = 0; i < pilots; i++) {
      feet[i] = i < lost ? -1 : greatestFt * (i + 1) / pilots;
    }
    return new FloorRow(
        CONDITIONS,
        "settling",
        PilotState.PRIMED,
        recovery,
        POOL.study(Encounter.of(DemoCraft.TRAINER), recovery, Optional.empty()),
        0.95,
        50 * 0.3048,
        new PilotLosses(MadeUp.losses(feet), List.of()),
        Optional.empty());
  }

  private static String inShort(FloorRow... rows) {
    return FloorTakeAway.of(
        new FloorBlock(CONDITIONS, List.of(rows), List.of()), REQUEST, UnitSystem.AVIATION);
  }

  private static final String HEAD =
      "Lowest height at onset from which 95 % of the simulated pilots recovered with 50 ft to spare:"
          + " primed ";

  @Test
  void theLeastHeightIsNamedAndRoundedUpwards() {
    // 95 % of 201 ft and 50 ft: 240.95 ft
    assertEquals(
        HEAD + "245 ft with lateral.",
        inShort(row(Technique.FORWARD, 400, 0), row(Technique.LATERAL, 201, 0)));
  }

  @Test
  void techniquesWhoseBandsOverlapAreNotToldApart() {
    assertEquals(
        HEAD
            + "245 ft with lateral (the difference from forward is within the sampling error of"
            + " 1000 pilots).",
        inShort(row(Technique.FORWARD, 202, 0), row(Technique.LATERAL, 201, 0)));
  }

  @Test
  void tooFewPilotsAreCalledTooFew() {
    // of 71, however far apart their losses, the greatest may lie below the 95 % of very many
    assertTrue(
        inShort(row(Technique.FORWARD, 71, 2000, 0), row(Technique.LATERAL, 71, 200, 0))
            .endsWith("with lateral (too few pilots were flown to tell it from forward)."));
    assertTrue(
        briefing(400, 0.06, row(Technique.FORWARD, 71, 200, 0), row(Technique.LATERAL, 71, 100, 0))
            .endsWith("Too few pilots were flown to tell lateral from forward"));
    assertTrue(
        inShort(row(Technique.FORWARD, 72, 2000, 0), row(Technique.LATERAL, 72, 200, 0))
            .endsWith("with lateral."));
    assertTrue(
        briefing(400, row(Technique.FORWARD, 72, 200, 0), row(Technique.LATERAL, 72, 100, 0))
            .endsWith("The difference from forward is within the sampling error of 72 pilots"));
  }

  @Test
  void powerAloneIsNeverTheTechniqueToBrief() {
    assertEquals(
        HEAD + "440 ft with forward.",
        inShort(row(Technique.FORWARD, 401, 0), row(Technique.COLLECTIVE, 20, 0)));
    assertEquals(
        HEAD + "none: with no way out did so many arrest the descent.",
        inShort(row(Technique.FORWARD, 401, 100), row(Technique.COLLECTIVE, 20, 0)));
  }

  private static String briefing(double height, FloorRow... rows) {
    return briefing(height, 0.05, rows);
  }

  private static String briefing(double height, double limit, FloorRow... rows) {
    return HeightBriefing.of(0.3048 * height, limit, List.of(rows)).text(UnitSystem.AVIATION);
  }

  @Test
  void aboveTheShareOnTheGroundThatIsSetNoTechniqueIsBriefed() {
    // of losses evenly up to 400 ft, 90.1 % are 40 ft or more; up to 200 ft, 80.1 %
    // 95 % of 200 ft and 50 ft: 240 ft
    assertEquals(
        "do not fly below 240 ft at onset: even with lateral, the way out with which the fewest did,"
            + " 801 of 1000 (80.1 %) of the simulated pilots would have hit the ground, 901 of 1000"
            + " (90.1 %) with forward, and no technique is briefed where more than 5 % would. From that height 95 % recovered with"
            + " 50 ft to spare; no height is called safe",
        briefing(40, row(Technique.FORWARD, 400, 0), row(Technique.LATERAL, 200, 0)));
  }

  @Test
  void theHeightNotToFlyBelowGoesByTheStricterOfTheTwoShares() {
    List<FloorRow> rows = List.of(row(Technique.LATERAL, 200, 0));
    // 99 % of 200 ft and 50 ft: 248 ft, rounded upwards to 5 ft
    assertEquals(
        "do not fly below 250 ft at onset",
        HeightBriefing.of(0.3048 * 190, 0.01, rows).order(UnitSystem.AVIATION));
    // 95 %, as for the floor, where more are allowed on the ground than the share leaves
    assertEquals(
        "do not fly below 240 ft at onset",
        HeightBriefing.of(0.3048 * 120, 0.3, rows).order(UnitSystem.AVIATION));
    assertEquals(
        "190 ft is below the floor of 240 ft; if it is flown at all, brief lateral",
        HeightBriefing.of(0.3048 * 190, 0.07, rows).order(UnitSystem.AVIATION));
  }

  /**
   * The chance that of n pilots none hits the ground, if 5 % of very many would, is 0.95^n: 2.6 %
   * of 71 and 2.49 % of 72 (arithmetic), and an interval of 95 % has 2.5 % beyond each end.
   */
  @Test
  void aTechniqueIsBriefedOnlyWhereThePilotsFlownShowTheShare() {
    assertEquals(
        "brief no technique: 71 pilots are too few to tell: with lateral the fewest would have hit"
            + " the ground, none of 71; but of very many up to 5.1 % may (95 % confidence), more"
            + " than 5 %. About 142 pilots would tell, if the share stays",
        briefing(400, row(Technique.LATERAL, 71, 200, 0)));
    assertEquals(
        "brief lateral: with lateral the fewest simulated pilots would still have hit the ground:"
            + " none of 72 (of very many 5.0 % at the most, with 95 % confidence)",
        briefing(400, row(Technique.LATERAL, 72, 200, 0)));
  }

  /**
   * The upper ends of Clopper and Pearson's interval of 36 and 37 of 1000 are 4.949 and 5.064 %,
   * found from the binomial sums by bisection (another program).
   */
  @Test
  void aFewOnTheGroundMayBeTooManyToShowIt() {
    // of losses evenly up to 1000 ft, 37 of 1000 are 963.5 ft or more
    FloorRow row = row(Technique.LATERAL, 1000, 0);
    HeightBriefing below = HeightBriefing.of(0.3048 * 963.5, 0.05, List.of(row));
    assertEquals(Optional.empty(), below.briefed());
    assertTrue(below.order(UnitSystem.AVIATION).startsWith("do not fly below 10"), "order");
    assertEquals(Optional.of(row), HeightBriefing.of(0.3048 * 964.5, 0.05, List.of(row)).briefed());
  }

  @Test
  void whereTooFewEverArrestTheDescentNoHeightIsNamed() {
    assertTrue(
        briefing(4000, row(Technique.LATERAL, 200, 100))
            .startsWith("do not fly this at any height: even with lateral"));
    assertTrue(
        briefing(4000, row(Technique.LATERAL, 200, 100))
            .endsWith("With no way out did 95 % recover"));
  }

  @Test
  void theTechniqueWithTheFewestOnTheGroundIsBriefed() {
    // of losses evenly up to 400 ft, 50.1 % are 200 ft or more; up to 210 ft, 48 of 1000
    assertEquals(
        "200 ft is below the floor of 250 ft; if it is flown at all, brief lateral: with lateral the"
            + " fewest simulated pilots would still have hit the ground: 48 of 1000 (4.8 %) (of very many 6.4 % at the most, with 95 % confidence), against 501 of 1000 (50.1 %) with forward. The height is"
            + " less than the floor: fewer than 95 % recovered with the margin",
        briefing(200, 0.07, row(Technique.FORWARD, 400, 0), row(Technique.LATERAL, 210, 0)));
  }

  @Test
  void aBriefingForAHeightOfTheFloorOrMoreSaysNoSuchThing() {
    // 95 % of 210 ft and 50 ft: 249.5 ft
    assertTrue(briefing(249, 0.07, row(Technique.LATERAL, 210, 0)).contains("less than the floor"));
    assertEquals(
        "brief lateral: with lateral the fewest simulated pilots would still have hit the ground:"
            + " none of 1000 (of very many 0.4 % at the most, with 95 % confidence)",
        briefing(250, row(Technique.LATERAL, 210, 0)));
  }

  @Test
  void sharesThatOverlapAreNotToldApart() {
    assertTrue(
        briefing(200, 0.07, row(Technique.FORWARD, 212, 0), row(Technique.LATERAL, 210, 0))
            .endsWith(
                "The difference from forward is within the sampling error of 1000" + " pilots"));
  }

  @Test
  void whereAllHitTheGroundNoWayOutIsNamed() {
    assertTrue(
        briefing(0.01, row(Technique.FORWARD, 400, 0), row(Technique.COLLECTIVE, 20, 0))
            .startsWith(
                "do not fly below 430 ft at onset: with every way out all of the simulated pilots"
                    + " would have hit the ground"));
  }
}
