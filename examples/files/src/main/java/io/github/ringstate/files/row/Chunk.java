package io.github.ringstate.files.row;

import io.github.ringstate.study.sweep.SweepFlight;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32C;

/**
 * What is known of a chunk of rows in a file.
 *
 * @param rows how many rows
 * @param failed how many of them could not be flown
 * @param check CRC-32C of its bytes
 * @param plain how many bytes each part has when it is not compressed
 * @param written how many bytes each part has in the file
 * @param bounds what is known of the values of each part; none for a format that keeps no such
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
public record Chunk(
    int rows, int failed, int check, long[] plain, long[] written, List<Bounds> bounds) {

  /** Rows of a chunk: what a kill can cost at most, and what is forced to the disk in one go. */
  public static final int ROWS = 16 * SweepFlight.BLOCK;

  /** What a line of a journal has for a part: two sizes and three of its bounds. */
  private static final int WITH_BOUNDS = 5;

  /** Copies the list. */
  public Chunk {
    bounds = List.copyOf(bounds);
  }

  /**
   * The length of the chunk.
   *
   * @return bytes in the file
   */
  public long length() {
    return Arrays.stream(written).sum();
  }

  /** A sum by which bytes are told from damaged ones. */
  static int check(byte[] bytes) {
    CRC32C crc = new CRC32C();
    crc.update(bytes);
    return (int) crc.getValue();
  }

  /** The chunk as one line of a journal. */
  String line() {
    StringBuilder line = new StringBuilder("chunk " + rows + " " + failed + " " + check);
    for (int i = 0; i < plain.length; i++) {
      line.append(' ').append(plain[i]).append(':').append(written[i]);
      if (!bounds.isEmpty()) {
        line.append(':').append(bounds.get(i).text());
      }
    }
    return line.toString();
  }

  /** Reads a line back; empty if it is none of a chunk. */
  static Optional<Chunk> read(String line) {
    String[] words = line.split(" ", -1);
    if (words.length < 5 || !words[0].equals("chunk")) {
      return Optional.empty();
    }
    long[] plain = new long[words.length - 4];
    long[] written = new long[words.length - 4];
    List<Bounds> bounds = new ArrayList<>();
    for (int i = 0; i < plain.length; i++) {
      String[] sizes = words[i + 4].split(":", -1);
      plain[i] = Long.parseLong(sizes[0]);
      written[i] = Long.parseLong(sizes[1]);
      if (sizes.length == WITH_BOUNDS) {
        bounds.add(Bounds.read(sizes[2], sizes[3], sizes[4]));
      }
    }
    return Optional.of(
        new Chunk(
            Integer.parseInt(words[1]),
            Integer.parseInt(words[2]),
            Integer.parseInt(words[3]),
            plain,
            written,
            bounds));
  }
}
