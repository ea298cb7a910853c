package io.github.ringstate.files.row;

import io.github.ringstate.study.sweep.Column;
import io.github.ringstate.study.sweep.Rows;
import java.util.List;
import java.util.Map;

/**
 * How rows stand in a file: a head, one chunk behind the other, and a tail that may need to know
 * where the chunks are.
 */
public interface RowFormat {

  /**
   * What the file begins with.
   *
   * @return the bytes
   */
  byte[] head();

  /**
   * Encodes some rows; may be asked by several threads at once.
   *
   * @param rows the rows
   * @return their bytes, in parts: each part holds all rows of a chunk before the next begins, one
   *     part for a format of lines, one a column for a format of columns
   */
  EncodedRows encode(Rows rows);

  /**
   * What a part of a chunk begins with.
   *
   * @param bytes the bytes
   * @param plain how many they are when they are not compressed
   */
  @SuppressWarnings("ArrayRecordComponent") // goes straight to a file
  record PartHead(byte[] bytes, long plain) {

    /** Nothing. */
    static final PartHead NONE = new PartHead(new byte[0], 0);
  }

  /**
   * What each part of a chunk begins with, the same in every chunk.
   *
   * @param part which part, from 0
   * @return its bytes
   */
  default PartHead partHead(int part) {
    return PartHead.NONE;
  }

  /**
   * Puts the bounds of blocks together.
   *
   * @param blocks the bounds of each column, for each block
   * @return the bounds of each column; none for a format that keeps no such
   */
  default List<Bounds> joined(List<List<Bounds>> blocks) {
    return List.of();
  }

  /**
   * What the file ends with.
   *
   * @param chunks the chunks, in order
   * @return the bytes
   */
  byte[] tail(List<Chunk> chunks);

  /** What the names of files end in, behind the point. */
  List<String> ENDINGS = List.of("csv", "parquet");

  /**
   * A format by the ending of a file's name.
   *
   * @param ending one of {@link #ENDINGS}
   * @param columns the columns of the rows
   * @param said what the file says of itself, by names, where the format has a place for it
   * @return the format
   */
  static RowFormat of(String ending, List<Column> columns, Map<String, String> said) {
    return switch (ending) {
      case "csv" -> new CsvRows(columns);
      case "parquet" -> new ParquetRows(columns, said);
      default -> throw new IllegalArgumentException("no format of rows: " + ending);
    };
  }
}
