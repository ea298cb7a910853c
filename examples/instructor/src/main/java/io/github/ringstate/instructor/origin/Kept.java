package io.github.ringstate.instructor.origin;

import java.util.Map;

/**
 * What stands in for files in a run of a command that another program makes.
 *
 * @param texts texts by the names of the files for which they stand in
 * @param recordings what files of recorded flights hold, by their names
 */
public record Kept(Map<String, String> texts, Map<String, byte[]> recordings) {

  /** Nothing: all files are on disk. */
  public static final Kept NOTHING = new Kept(Map.of(), Map.of());

  /** Copies the maps; what the recordings hold is not copied. */
  public Kept {
    texts = Map.copyOf(texts);
    recordings = Map.copyOf(recordings);
  }

  /**
   * Texts alone.
   *
   * @param texts texts by the names of the files for which they stand in
   * @return what stands in
   */
  public static Kept texts(Map<String, String> texts) {
    return new Kept(texts, Map.of());
  }
}
