package io.github.ringstate.files.row;

import static java.nio.charset.StandardCharsets.UTF_8;

import io.github.ringstate.study.sweep.Column;
import io.github.ringstate.study.sweep.Rows;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.function.IntPredicate;
import java.util.zip.Deflater;
import java.util.zip.GZIPOutputStream;

/**
 * A data page of Parquet, version 1: its header, then, compressed together, which rows have a value
 * and the values that there are.
 *
 * @param bytes the page with its header
 * @param plain how many bytes it would have if it were not compressed
 */
@SuppressWarnings("ArrayRecordComponent") // goes straight to a file
record ParquetPage(byte[] bytes, long plain) {

  private static final int PLAIN = 0;
  private static final int RLE = 3;

  static ParquetPage of(Rows rows, int column) {
    byte[] content = content(rows, column);
    byte[] packed = gzip(content);
    byte[] header =
        CompactThrift.struct(
            page ->
                page.i32(1, 0)
                    .i32(2, content.length)
                    .i32(3, packed.length)
                    .struct(
                        5, data -> data.i32(1, rows.size()).i32(2, PLAIN).i32(3, RLE).i32(4, RLE)));
    byte[] bytes = new byte[header.length + packed.length];
    System.arraycopy(header, 0, bytes, 0, header.length);
    System.arraycopy(packed, 0, bytes, header.length, packed.length);
    return new ParquetPage(bytes, (long) header.length + content.length);
  }

  private static byte[] content(Rows rows, int column) {
    ByteArrayOutputStream out = new ByteArrayOutputStream(rows.size() * Double.BYTES);
    Column.Type type = rows.columns().get(column).type();
    if (type != Column.Type.INTEGER) {
      byte[] levels = levels(rows.size(), row -> has(rows, type, column, row));
      out.writeBytes(littleEndian(Integer.BYTES).putInt(levels.length).array());
      out.writeBytes(levels);
    }
    for (int row = 0; row < rows.size(); row++) {
      switch (type) {
        case INTEGER ->
            out.writeBytes(littleEndian(Long.BYTES).putLong(rows.integer(column, row)).array());
        case NUMBER -> {
          double number = rows.number(column, row);
          if (!Double.isNaN(number)) {
            out.writeBytes(littleEndian(Double.BYTES).putDouble(number).array());
          }
        }
        case WORD -> {
          String word = rows.word(column, row);
          if (word != null) {
            byte[] bytes = word.getBytes(UTF_8);
            out.writeBytes(littleEndian(Integer.BYTES).putInt(bytes.length).array());
            out.writeBytes(bytes);
          }
        }
      }
    }
    return out.toByteArray();
  }

  private static boolean has(Rows rows, Column.Type type, int column, int row) {
    return type == Column.Type.WORD
        ? rows.word(column, row) != null
        : !Double.isNaN(rows.number(column, row));
  }

  /**
   * Runs of equal levels, 1 where there is a value: run-length encoding with a width of one bit.
   */
  private static byte[] levels(int size, IntPredicate has) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    int start = 0;
    while (start < size) {
      boolean level = has.test(start);
      int end = start + 1;
      while (end < size && has.test(end) == level) {
        end++;
      }
      int head = (end - start) << 1;
      while ((head & ~0x7F) != 0) {
        out.write((head & 0x7F) | 0x80);
        head >>>= 7;
      }
      out.write(head);
      out.write(level ? 1 : 0);
      start = end;
    }
    return out.toByteArray();
  }

  private static ByteBuffer littleEndian(int size) {
    return ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
  }

  private static byte[] gzip(byte[] content) {
    ByteArrayOutputStream packed = new ByteArrayOutputStream(content.length / 2 + 64);
    try (OutputStream out = new Quick(packed)) {
      out.write(content);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible); // memory takes it all
    }
    return packed.toByteArray();
  }

  private static final class Quick extends GZIPOutputStream {
    Quick(OutputStream out) throws IOException {
      super(out);
      def.setLevel(Deflater.BEST_SPEED);
    }
  }
}
