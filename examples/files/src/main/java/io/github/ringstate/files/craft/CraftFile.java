package io.github.ringstate.files.craft;

import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.toml.TextFile;
import java.util.List;

/** A helicopter in a file. */
public final class CraftFile {

  /** More than any craft fills, comments included; a bound for what is read by mistake. */
  private static final int LARGEST = 65_536;

  private CraftFile() {}

  /**
   * Reads a helicopter.
   *
   * @param name the file, as the user named it
   * @return the helicopter
   * @throws UserError if the file cannot be read or holds a bad value
   */
  public static Helicopter read(String name) {
    return CraftReader.read(name, text(name));
  }

  /**
   * Reads the points of the height-velocity curve that a file may hold.
   *
   * @param name the file, as the user named it
   * @return the points, none if the file holds none
   * @throws UserError if the file cannot be read or holds a bad value
   */
  public static List<HeightVelocityPoint> heightVelocity(String name) {
    return CraftReader.heightVelocity(name, text(name));
  }

  private static String text(String name) {
    return TextFile.read(name, "a craft", LARGEST);
  }
}
