package io.github.ringstate.instructor.equilibria;

import io.github.ringstate.analysis.equilibrium.DescentCase;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.instructor.option.Loading;
import io.github.ringstate.instructor.option.NumberText;
import io.github.ringstate.instructor.option.PictureOutput;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints the steady descents of a craft against the collective. */
@Command(
    name = "equilibria",
    description = {
      "Print the steady descents of a craft against the collective: where they fold over and the"
          + " sink runs away, and how fast each is left. For research.",
      ""
    },
    footer = {
      "",
      "CSV columns: collective_deg, vertical_speed_fpm, fold (onset or exit, else empty),",
      "rotor_speed_pct, power_kw, pitch_deg, bank_deg, axial_over_hover, edgewise_over_hover,",
      "growth_per_s, stable.",
      "",
      "Example: why the utility craft falls, and what it takes to stop it",
      "  ringstate equilibria --craft utility",
      "and the picture, with a flown loop, collective down and up again",
      "  ringstate equilibria --craft utility --loop --format svg --output loop.svg",
      "",
      Caution.TEXT
    })
public final class EquilibriaCommand implements Runnable {

  private static final Quantity AIRSPEED = new Quantity("airspeed", Unit.KNOT, 0, 60);

  @Mixin private final Loading loading = new Loading();

  @Option(
      names = "--airspeed-kt",
      paramLabel = "KT",
      defaultValue = "0",
      description = "Airspeed that is held by attitude. Unless given: ${DEFAULT-VALUE}.")
  private String airspeed = "";

  @Option(
      names = "--loop",
      description =
          "Also fly the loop: the collective lowered at 0.02 deg/s until the sink has jumped down,"
              + " and raised until it has jumped back.")
  private boolean loop;

  @Mixin private final PictureOutput output = new PictureOutput();

  /** Made by the tool. */
  public EquilibriaCommand() {}

  @Override
  public void run() {
    output.deliver(this::report);
  }

  private EquilibriaReport report() {
    Conditions conditions = loading.conditions();
    DescentCase descents =
        new DescentCase(
            conditions.craft(),
            conditions.air(),
            conditions.craft().inflow(),
            NumberText.si("--airspeed-kt", airspeed, AIRSPEED));
    return new EquilibriaReport(conditions, EquilibriaResult.of(descents, loop));
  }
}
