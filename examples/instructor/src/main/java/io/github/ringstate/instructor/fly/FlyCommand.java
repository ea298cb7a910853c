package io.github.ringstate.instructor.fly;

import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.instructor.option.Approach;
import io.github.ringstate.instructor.option.ApproachOptions;
import io.github.ringstate.instructor.option.Checked;
import io.github.ringstate.instructor.option.Choice;
import io.github.ringstate.instructor.option.Loading;
import io.github.ringstate.instructor.option.NumberText;
import io.github.ringstate.instructor.option.ScreenOutput;
import io.github.ringstate.pilot.Recognition;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints the time history of one flight. */
@Command(
    name = "fly",
    description = {"Print the time history of one flight into the ring state and out of it.", ""},
    footer = {
      "",
      "Example: the utility, lateral recovery 2 s after onset, as a file for a spreadsheet",
      "  ringstate fly --craft utility --recovery lateral --delay 2 --format csv --output fly.csv",
      "and a page for the classroom, with every recovery and a slider for the delay",
      "  ringstate fly --craft utility --format html --output fly.html",
      "",
      Caution.TEXT
    })
public final class FlyCommand implements Runnable, Checked {

  /** The finest step is ten times finer than anything in a flight; the coarsest still shows it. */
  private static final Quantity STEP = new Quantity("step", Unit.SECOND, 0.01, 10);

  @Mixin private final Loading loading = new Loading();
  @Mixin private final ApproachOptions approach = new ApproachOptions();

  @Option(
      names = "--delay",
      paramLabel = "S",
      defaultValue = "1",
      description =
          "Delay from onset to the pilot's first movement of the controls. Unless given:"
              + " ${DEFAULT-VALUE}.")
  private String delay = "";

  @Option(
      names = "--recovery",
      paramLabel = "NAME",
      defaultValue = "forward",
      description =
          "forward, lateral, autorotation, none, or collective (power alone: not a way out). Unless"
              + " given: ${DEFAULT-VALUE}.")
  private String recovery = "";

  @Option(
      names = "--step",
      paramLabel = "S",
      defaultValue = "0.1",
      description = "Time between two lines. Unless given: ${DEFAULT-VALUE}.")
  private String step = "";

  @Option(
      names = Terrain.OPTION,
      paramLabel = "FT:FT",
      description =
          "Terrain in the side view of the page (html, with --height-ft): distance over the ground"
              + " from the point of onset, and height above the ground there; several with commas"
              + " between, as in 0:0,300:60. The flights do not feel it; one that comes below it is"
              + " named. Unless given: level ground.")
  private @Nullable String terrain;

  @Mixin private final ScreenOutput output = new ScreenOutput();

  /** Made by the tool. */
  public FlyCommand() {}

  @Override
  public List<Encounter> flown() {
    return List.of(request().flown());
  }

  @Override
  public void run() {
    output.deliver(this::report);
  }

  private FlyReport report() {
    FlyRequest request = request();
    return new FlyReport(request, FlownEncounter.fly(request));
  }

  private FlyRequest request() {
    Approach approached = approach.approach();
    return new FlyRequest(
        loading.conditions(),
        approached,
        new Choice<>("--recovery", Technique.ALL, Technique::name).one(recovery),
        NumberText.one("--delay", delay, Recognition.DELAY),
        NumberText.one("--step", step, STEP),
        output.isDrawn(),
        terrain(approached));
  }

  private Terrain terrain(Approach approached) {
    if (terrain == null) {
      return Terrain.LEVEL;
    }
    if (!output.isDrawn() || approached.height().isEmpty()) {
      throw UserError.usage(
          Terrain.OPTION + " needs --height-ft and --format html: it stands in the side view");
    }
    return Terrain.read(terrain);
  }
}
