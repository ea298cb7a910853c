package io.github.ringstate.embedding;

import io.github.ringstate.air.WindField;
import io.github.ringstate.calibration.Calibration;
import io.github.ringstate.calibration.Demonstration;
import io.github.ringstate.calibration.Fit;
import io.github.ringstate.calibration.Prior;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.EntryKind;
import io.github.ringstate.encounter.FlightLimits;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.recording.EncounterFinder;
import io.github.ringstate.recording.FoundEncounter;
import io.github.ringstate.recording.Instruments;
import io.github.ringstate.recording.VerticalMotion;
import io.github.ringstate.study.model.OpenNumbers;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;

/** Smooths two invented recordings, finds the encounters in them and fits a number to them. */
public final class FitRecordings {

  private FitRecordings() {}

  /** Runs the program. */
  public static void main(String[] args) {
    run(System.out);
  }

  static void run(PrintStream out) {
    Encounter base =
        Encounter.of(DemoCraft.TRAINER)
            .withLimits(FlightLimits.STANDARD.with(FlightLimits.TIME_PAST_ARREST, 3));
    EntryKind kind = EntryKind.STANDARD;
    WindField wind = base.entry().wind();
    var finder = new EncounterFinder(base.craft(), base.air(), wind, 1, 0.1, base.boundary());
    List<Demonstration> all = new ArrayList<>();
    for (Technique way : List.of(Technique.FORWARD, Technique.LATERAL)) {
      Encounter flown = base.withRecovery(way.standard()).withDelay(1);
      VerticalMotion motion = VerticalMotion.of(Instruments.receiver().record(flown, all.size()));
      for (FoundEncounter one : finder.find(motion)) {
        all.add(new Demonstration("", motion, one, base, kind, kind.numbers(), 2, way));
      }
    }
    var models = OpenNumbers.accepted(20, 1).kept();
    var prior = Prior.of(List.of(RingStateInflow.EXIT_TOTAL), base.craft(), models);
    Fit fit = new Calibration(prior, base.craft()).fit(all);
    out.println(all.size() + " encounters: " + fit.posterior() + ", " + fit.told(0));
  }
}
