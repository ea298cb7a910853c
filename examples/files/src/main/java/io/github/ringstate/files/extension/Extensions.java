package io.github.ringstate.files.extension;

import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.study.sweep.BadExtensionException;
import io.github.ringstate.study.sweep.Settings;
import io.github.ringstate.study.sweep.SweepExtension;
import java.util.List;
import java.util.Map;

/**
 * The extensions that a sweep is flown with.
 *
 * @param jars the jars, in the order in which they were named
 * @param loaded what they hold
 */
public record Extensions(List<ExtensionJar> jars, List<SweepExtension> loaded) {

  /** None. */
  public static final Extensions NONE = new Extensions(List.of(), List.of());

  /** Copies the lists. */
  public Extensions {
    jars = List.copyOf(jars);
    loaded = List.copyOf(loaded);
  }

  /**
   * Loads jars.
   *
   * @param jars the jars
   * @return what they hold
   * @throws UserError if one cannot be used
   */
  public static Extensions of(List<ExtensionJar> jars) {
    Extensions extensions =
        new Extensions(jars, jars.stream().flatMap(jar -> jar.load().stream()).toList());
    extensions.settings(Map.of()); // refuses what cannot be flown before anything else is read
    return extensions;
  }

  /**
   * All that a sweep with these may set.
   *
   * @param crafts craft from files by the words that name them
   * @return the settings
   * @throws UserError if an extension cannot be used
   */
  public Settings settings(Map<String, Helicopter> crafts) {
    try {
      return Settings.of(loaded, crafts);
    } catch (BadExtensionException bad) {
      throw UserError.file(names(), "cannot be used: " + bad.getMessage(), bad);
    }
  }

  /**
   * The jars in words.
   *
   * @return their names, as the user gave them
   */
  public String names() {
    return String.join(", ", jars.stream().map(ExtensionJar::name).toList());
  }
}
