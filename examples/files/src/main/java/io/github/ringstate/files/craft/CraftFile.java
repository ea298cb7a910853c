package io.github.ringstate.files.craft;

import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.toml.TextFile;
import java.util.List;

/**
 * A helicopter in a file.
 *
 * @param craft the helicopter
 * @param heightVelocity the points of the height-velocity curve, none if the file holds none
 * @param notices what to tell the user of the file, one sentence each; none if all is well
 */
public record CraftFile(
    Helicopter craft, List<HeightVelocityPoint> heightVelocity, List<String> notices) {

  /** More than any craft fills, comments included; a bound for what is read by mistake. */
  private static final int LARGEST = 65_536;

  /** Copies the lists. */
  public CraftFile {
    heightVelocity = List.copyOf(heightVelocity);
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
