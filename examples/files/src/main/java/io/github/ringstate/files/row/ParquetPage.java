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
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
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

  static final int PLAIN = 0;
  static final int RLE = 3;
  static final int RLE_DICTIONARY = 8;
  private static final int DICTIONARY_PAGE = 2;

  static ParquetPage of(Rows rows, int column, Map<String, Integer> dictionary) {
    int encoding = dictionary.isEmpty() ? PLAIN : RLE_DICTIONARY;
    return page(
        content(rows, column, dictionary),
        0,
        page ->
            page.struct(
                5, data -> data.i32(1, rows.size()).i32(2, encoding).i32(3, RLE).i32(4, RLE)));
  }

  /** The page of the words to which others refer by number. */
  static ParquetPage dictionary(List<String> words) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    words.forEach(word -> word(word, out));
    return page(
        out.toByteArray(),
        DICTIONARY_PAGE,
        page -> page.struct(7, data -> data.i32(1, words.size()).i32(2, PLAIN)));
  }

  private static ParquetPage page(byte[] content, int type, Consumer<CompactThrift> about) {
    byte[] packed = gzip(content);
    byte[] header =
        CompactThrift.struct(
            page -> {
              page.i32(1, type).i32(2, content.length).i32(3, packed.length);
              about.accept(page);
            });
    byte[] bytes =
        ByteBuffer.allocate(header.length + packed.length).put(header).put(packed).array();
    return new ParquetPage(bytes, (long) header.length + content.length);
  }

  private static byte[] content(Rows rows, int column, Map<String, Integer> dictionary) {
    ByteArrayOutputStream out = new ByteArrayOutputStream(rows.size() * Double.BYTES);
    Column.Type type = rows.columns().get(column).type();
    if (type != Column.Type.INTEGER) {
      byte[] levels = runs(rows.size(), 1, row -> has(rows, type, column, row) ? 1 : 0);
      out.writeBytes(littleEndian(Integer.BYTES).putInt(levels.length).array());
      out.writeBytes(levels);
    }
    if (!dictionary.isEmpty()) {
      int width = Integer.SIZE - Integer.numberOfLeadingZeros(Math.max(dictionary.size() - 1, 1));
      int[] numbers =
          IntStream.range(0, rows.size())
              .filter(row -> rows.word(column, row) != null)
              .map(row -> Objects.requireNonNull(dictionary.get(rows.word(column, row))))
              .toArray();
      out.write(width);
      out.writeBytes(runs(numbers.length, width, place -> numbers[place]));
      return out.toByteArray();
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
            word(word, out);
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

  private static void word(String word, ByteArrayOutputStream out) {
    byte[] bytes = word.getBytes(UTF_8);
    out.writeBytes(littleEndian(Integer.BYTES).putInt(bytes.length).array());
    out.writeBytes(bytes);
  }

  /** Runs of equal numbers: run-length encoding with a width in bits. */
  private static byte[] runs(int size, int width, IntUnaryOperator number) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    int start = 0;
    while (start < size) {
      int value = number.applyAsInt(start);
      int end = start + 1;
      while (end < size && number.applyAsInt(end) == value) {
        end++;
      }
      CompactThrift.varint((long) (end - start) << 1, out);
      for (int bits = 0; bits < width; bits += Byte.SIZE) {
        out.write(value >>> bits);
      }
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
