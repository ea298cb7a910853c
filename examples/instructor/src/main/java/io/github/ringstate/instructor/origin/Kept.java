package io.github.ringstate.instructor.origin;

import java.util.Map;

/**
 * What stands in for files in a run of a command that another program makes.
 *
 * @param texts texts by the names of the files for which they stand in
 * @param recordings what files of recorded flights hold, by their names
 * @param alone whether nothing else is read: no name then reaches the disk
 */
public record Kept(Map<String, String> texts, Map<String, byte[]> recordings, boolean alone) {

  /** Nothing: all files are on disk. */
  public static final Kept NOTHING = new Kept(Map.of(), Map.of(), false);

  /** Copies the maps; what the recordings hold is not copied. */
  public Kept {
    texts = Map.copyOf(texts);
    recordings = Map.copyOf(recordings);
  }

  /**
   * Texts beside the files of the disk.
   *
   * @param texts texts by the names of the files for which they stand in
   * @return what stands in
   */
  public static Kept texts(Map<String, String> texts) {
    return new Kept(texts, Map.of(), false);
  }

  /**
   * Texts and recordings in place of the disk.
   *
   * @param texts texts by the names of the files for which they stand in
   * @param recordings what files of recorded flights hold, by their names
   * @return what stands in
   */
  public static Kept alone(Map<String, String> texts, Map<String, byte[]> recordings) {
    return new Kept(texts, recordings, true);
  }
}
