package io.github.ringstate.files.craft;

import io.github.ringstate.craft.HeightVelocityCurve;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.toml.TextFile;
import java.util.List;

/**
 * A helicopter in a file.
 *
 * @param craft the helicopter
 * @param curve the height-velocity curve; none is known if the file holds no points
 * @param notices what to tell the user of the file, one sentence each; none if all is well
 */
public record CraftFile(Helicopter craft, HeightVelocityCurve curve, List<String> notices) {

  /** More than any craft fills, comments included; a bound for what is read by mistake. */
  private static final int LARGEST = 65_536;

  /** Copies the list. */
  public CraftFile {
    notices = List.copyOf(notices);
  }

  /**
   * Reads a helicopter.
   *
   * @param name the file, as the user named it
   * @return what it holds
   * @throws UserError if the file cannot be read or holds a bad value
   */
  public static CraftFile read(String name) {
    return CraftReader.read(name, TextFile.read(name, "a craft", LARGEST));
  }
}
