package io.github.ringstate.instructor.fly;

import io.github.ringstate.encounter.Ending;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.pilots.PilotTerms;
import java.util.List;

/** The words of a time history, explained. */
final class FlyTerms {

  private static final String TIME = "since the start of the flight, which is before onset";
  private static final String RECOGNITION = "the delay is over: the pilot first moves the controls";
  private static final String PHASE_ENDS =
      "the pilot goes on to the next part of the recovery; the column phase names the parts";
  private static final String ROTOR = "speed of the main rotor, per cent of the usual";
  private static final String ANY_DIRECTION = "horizontal, in whatever direction";
  private static final String COLLECTIVE = "blade pitch at three quarters of the radius";
  private static final String POWER =
      "per cent of what may be used without limit of time in this air";

  private FlyTerms() {}

  static List<Term> forPeople(FlyReport report, UnitSystem units) {
    return List.of(
        new Term("time", TIME),
        new Term("ring state begins", "onset: " + PilotTerms.ONSET + ". Delays count from here"),
        new Term("recognition", RECOGNITION),
        new Term("phase ends", PHASE_ENDS),
        new Term("height", height(report)),
        new Term("ground, air", "speeds over the ground and through the air; " + ANY_DIRECTION),
        new Term("v/s", "vertical speed, negative in descent"),
        new Term("pitch, bank", "positive nose up, positive to the right"),
        new Term("coll.", COLLECTIVE),
        new Term("rotor", ROTOR),
        new Term("power", POWER),
        new Term("ind.", "induced velocity, " + unit(report, units)),
        new Term("axial, edge", "air speeds along the shaft and in the disc, same unit"));
  }

  static List<Term> forData(FlyReport report) {
    return List.of(
        new Term("time_s", TIME),
        new Term("recognition", RECOGNITION),
        new Term("phase ends", PHASE_ENDS),
        new Term("height_ft", height(report)),
        new Term("ground_speed_kt", ANY_DIRECTION),
        new Term("airspeed_kt", ANY_DIRECTION),
        new Term("vertical_speed_fpm", "negative in descent"),
        new Term("pitch_deg", "positive nose up"),
        new Term("bank_deg", "positive to the right"),
        new Term("collective_deg", COLLECTIVE),
        new Term("rotor_speed_pct", ROTOR),
        new Term("power_pct", POWER),
        new Term("induced_over_hover", "induced velocity, " + unit(report, UnitSystem.AVIATION)),
        new Term("axial_over_hover", "air speed along the shaft, positive in climb, same unit"),
        new Term("edgewise_over_hover", "air speed in the disc, same unit"));
  }

  private static String height(FlyReport report) {
    if (report.request().approach().height().isPresent()) {
      return "above the ground";
    }
    return report.flown().outcome().ending() == Ending.NO_ONSET
        ? "above the start of the flight"
        : "above the height at onset; there is no ground within reach";
  }

  private static String unit(FlyReport report, UnitSystem units) {
    double induced = report.request().conditions().hoverInduced();
    return "in units of the hover induced velocity at this weight, "
        + units.fineVerticalSpeed(induced)
        + " "
        + units.verticalSpeed().symbol();
  }
}
