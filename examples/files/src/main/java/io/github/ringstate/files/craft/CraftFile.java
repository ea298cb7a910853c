package io.github.ringstate.files.craft;

import io.github.ringstate.craft.HeightVelocityCurve;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.toml.Texts;
import java.io.File;
import java.util.List;
import java.util.Locale;

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
    return read(name, Texts.FILES);
  }

  /**
   * Reads a helicopter.
   *
   * @param name the file, as the user named it
   * @param texts where its text comes from
   * @return what it holds
   * @throws UserError if the file cannot be read or holds a bad value
   */
  public static CraftFile read(String name, Texts texts) {
    return CraftReader.read(name, texts.read(name, "a craft", LARGEST));
  }

  /**
   * Whether a name is that of a file, not of a demo craft.
   *
   * @param name what a user typed for a craft
   * @return true if it holds a path separator or ends in .toml
   */
  public static boolean isNamed(String name) {
    return name.contains("/")
        || name.contains(File.separator)
        || name.toLowerCase(Locale.ROOT).endsWith(".toml");
  }
}
