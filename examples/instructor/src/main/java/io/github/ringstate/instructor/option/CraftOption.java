package io.github.ringstate.instructor.option;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.HeightVelocityCurve;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.files.craft.CraftFile;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.instructor.origin.Origin;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The helicopter. */
public final class CraftOption {

  private static final String NAME = "--craft";

  @Option(
      names = NAME,
      paramLabel = "NAME|FILE",
      defaultValue = "trainer",
      description =
          "The helicopter: trainer, utility, twin or heavy (invented, no real types), or a file as"
              + " 'ringstate craft NAME' prints it. A file's name holds a path separator or ends in"
              + " .toml. Unless given: ${DEFAULT-VALUE}.")
  private String craft = "";

  private @Nullable CraftFile found;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec = CommandSpec.create();

  /** Made by picocli. */
  public CraftOption() {}

  /**
   * The helicopter, as it is written down.
   *
   * @return the helicopter
   * @throws UserError if there is none of that name, or its file is bad
   */
  public Helicopter craft() {
    return file().craft();
  }

  /**
   * The height-velocity curve that the helicopter's file holds.
   *
   * @return the curve; none is known if the file holds no points, or the helicopter is no file
   * @throws UserError if there is none of that name, or its file is bad
   */
  public HeightVelocityCurve heightVelocity() {
    return file().curve();
  }

  /** Read once: a pipe gives what it holds to the first reader alone. */
  private CraftFile file() {
    CraftFile known = found;
    if (known == null) {
      known = find(NAME, craft, Owner.of(spec, NAME));
      found = known;
    }
    return known;
  }

  /**
   * Finds a helicopter.
   *
   * @param option where the name was given
   * @param name a name or a file
   * @param spec the command, which passes on what there is to say of a file
   * @return the helicopter, with all that its file holds
   * @throws UserError if there is none of that name, or its file is bad
   */
  public static CraftFile find(String option, String name, CommandSpec spec) {
    if (CraftFile.isNamed(name)) {
      CraftFile file = CraftFile.read(name, Origin.of(spec));
      Notices.print(file.notices(), spec);
      return file;
    }
    return DemoCraft.named(name.strip())
        .map(demo -> new CraftFile(demo, HeightVelocityCurve.NONE, List.of()))
        .orElseThrow(
            () ->
                UserError.option(
                    option,
                    name,
                    String.join(", ", DemoCraft.ALL.stream().map(Helicopter::name).toList())
                        + ", or a file (its name holds a path separator or ends in .toml)"));
  }
}
