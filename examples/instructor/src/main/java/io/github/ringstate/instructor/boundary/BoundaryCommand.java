package io.github.ringstate.instructor.boundary;

import io.github.ringstate.encounter.EntryKind;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.instructor.option.Approach;
import io.github.ringstate.instructor.option.Choice;
import io.github.ringstate.instructor.option.LimitOptions;
import io.github.ringstate.instructor.option.Loading;
import io.github.ringstate.instructor.option.NumberText;
import io.github.ringstate.instructor.option.PictureOutput;
import io.github.ringstate.pilot.Recognition;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints the boundaries of the ring state. */
@Command(
    name = "boundary",
    description = {
      "Print between which rates of descent a craft is in the ring state, by three criteria.",
      ""
    },
    footer = {
      "",
      "Example: the twin at its maximum mass, 6000 ft up",
      "  ringstate boundary --craft twin --mass-kg 4300 --pressure-altitude-ft 6000",
      "and its picture, with a flight through it",
      "  ringstate boundary --craft twin --recovery lateral --format svg --output boundary.svg",
      "",
      Caution.TEXT
    })
public final class BoundaryCommand implements Runnable {

  private static final String DELAY = "2";
  private static final Quantity STEP = new Quantity("step", Unit.KNOT, 0.1, 20);

  @Mixin private final Loading loading = new Loading();

  @Option(
      names = "--step-kt",
      paramLabel = "KT",
      defaultValue = "2",
      description = "Step of airspeed from one line to the next. Unless given: ${DEFAULT-VALUE}.")
  private String step = "";

  @Option(
      names = "--recovery",
      paramLabel = "NAME",
      description =
          "Draw the flight of an encounter into the picture, with this recovery: forward, lateral,"
              + " autorotation, none, or collective (power alone: not a way out). Unless given, no"
              + " flight is drawn.")
  private @Nullable String recovery;

  @Option(
      names = "--delay",
      paramLabel = "S",
      description = "Delay of that flight, from onset to action. Unless given: " + DELAY + ".")
  private @Nullable String delay;

  @Option(
      names = "--entry",
      paramLabel = "ENTRY",
      description =
          "Entry of that flight: tailwind-approach, settling, steep or downwind. Unless given:"
              + " tailwind-approach.")
  private @Nullable String entry;

  @Mixin private final LimitOptions limits = new LimitOptions();
  @Mixin private final PictureOutput output = new PictureOutput();

  /** Made by the tool. */
  public BoundaryCommand() {}

  @Override
  public void run() {
    output.deliver(this::report);
  }

  private BoundaryReport report() {
    Conditions conditions = loading.conditions();
    BoundaryRequest request =
        new BoundaryRequest(
            conditions,
            NumberText.si("--step-kt", step, STEP),
            flight(),
            output.isDrawn(),
            limits.limits());
    return new BoundaryReport(request, BoundaryResult.of(request));
  }

  private Optional<BoundaryRequest.Flight> flight() {
    EntryKind kind =
        entry == null
            ? EntryKind.STANDARD
            : new Choice<>("--entry", EntryKind.ALL, EntryKind::name).one(entry);
    double delayS = NumberText.one("--delay", delay == null ? DELAY : delay, Recognition.DELAY);
    if (recovery == null) {
      if (delay != null || entry != null) {
        throw UserError.usage(
            (delay != null ? "--delay" : "--entry")
                + " needs --recovery: it is that of the flight drawn");
      }
      return Optional.empty();
    }
    if (!output.isDrawn()) {
      throw UserError.usage(
          "--recovery has no place in text and tables" + UserError.ALLOWED + "html, svg, png");
    }
    Technique chosen = new Choice<>("--recovery", Technique.ALL, Technique::name).one(recovery);
    return Optional.of(new BoundaryRequest.Flight(Approach.standard(kind), chosen, delayS));
  }
}
