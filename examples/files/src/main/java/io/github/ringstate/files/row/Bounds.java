package io.github.ringstate.files.row;

import static java.nio.charset.StandardCharsets.UTF_8;

import io.github.ringstate.study.sweep.Column;
import io.github.ringstate.study.sweep.Rows;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.HexFormat;

/**
 * What is known of the values of a column: how many are missing, the least and the greatest, as
 * Parquet has them (plain encoding; numbers in the order of IEEE 754, texts in that of their bytes
 * in UTF-8).
 *
 * @param missing how many rows have none
 * @param least the least value; empty if there is none
 * @param greatest the greatest value; empty if there is none
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
public record Bounds(long missing, byte[] least, byte[] greatest) {

  private static final byte[] NONE = new byte[0];

  /** The bounds of a column of some rows. */
  static Bounds of(Rows rows, int column) {
    return switch (rows.columns().get(column).type()) {
      case INTEGER -> integers(rows, column);
      case NUMBER -> numbers(rows, column);
      case WORD -> words(rows, column);
    };
  }

  private static Bounds integers(Rows rows, int column) {
    long least = Long.MAX_VALUE;
    long greatest = Long.MIN_VALUE;
    for (int row = 0; row < rows.size(); row++) {
      least = Math.min(least, rows.integer(column, row));
      greatest = Math.max(greatest, rows.integer(column, row));
    }
    return new Bounds(0, bytes(least), bytes(greatest));
  }

  private static Bounds numbers(Rows rows, int column) {
    double least = Double.POSITIVE_INFINITY;
    double greatest = Double.NEGATIVE_INFINITY;
    int missing = 0;
    for (int row = 0; row < rows.size(); row++) {
      double number = rows.number(column, row);
      if (Double.isNaN(number)) {
        missing++;
      } else {
        least = Math.min(least, number);
        greatest = Math.max(greatest, number);
      }
    }
    return missing == rows.size()
        ? new Bounds(missing, NONE, NONE)
        // parquet.thrift: a least zero is written with the minus sign, a greatest one without
        : new Bounds(missing, bytes(least == 0 ? -0.0 : least), bytes(greatest + 0.0));
  }

  private static Bounds words(Rows rows, int column) {
    byte[] least = NONE;
    byte[] greatest = NONE;
    String before = null;
    int missing = 0;
    for (int row = 0; row < rows.size(); row++) {
      String word = rows.word(column, row);
      if (word == null) {
        missing++;
      } else if (!word.equals(before)) {
        byte[] bytes = word.getBytes(UTF_8);
        if (before == null || Arrays.compareUnsigned(bytes, least) < 0) {
          least = bytes;
        }
        if (before == null || Arrays.compareUnsigned(bytes, greatest) > 0) {
          greatest = bytes;
        }
        before = word;
      }
    }
    return new Bounds(missing, least, greatest);
  }

  private static byte[] bytes(long value) {
    return ByteBuffer.allocate(Long.BYTES).order(ByteOrder.LITTLE_ENDIAN).putLong(value).array();
  }

  private static byte[] bytes(double value) {
    return bytes(Double.doubleToRawLongBits(value));
  }

  /** The bounds of these values and others of the same column. */
  Bounds and(Bounds other, Column.Type type) {
    if (least.length == 0 || other.least.length == 0) {
      Bounds known = least.length == 0 ? other : this;
      return new Bounds(missing + other.missing, known.least, known.greatest);
    }
    return new Bounds(
        missing + other.missing,
        compare(least, other.least, type) <= 0 ? least : other.least,
        compare(greatest, other.greatest, type) >= 0 ? greatest : other.greatest);
  }

  private static int compare(byte[] one, byte[] other, Column.Type type) {
    return switch (type) {
      case INTEGER -> Long.compare(number(one), number(other));
      case NUMBER ->
          Double.compare(
              Double.longBitsToDouble(number(one)), Double.longBitsToDouble(number(other)));
      case WORD -> Arrays.compareUnsigned(one, other);
    };
  }

  private static long number(byte[] bytes) {
    return ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).getLong();
  }

  /** The bounds as a part of a line of a journal. */
  String text() {
    return missing
        + ":"
        + HexFormat.of().formatHex(least)
        + ":"
        + HexFormat.of().formatHex(greatest);
  }

  /** Reads them back. */
  static Bounds read(String missing, String least, String greatest) {
    return new Bounds(
        Long.parseLong(missing), HexFormat.of().parseHex(least), HexFormat.of().parseHex(greatest));
  }
}
