package io.github.ringstate.files.row;

import static java.nio.charset.StandardCharsets.US_ASCII;

import io.github.ringstate.files.text.Caution;
import io.github.ringstate.study.sweep.Column;
import io.github.ringstate.study.sweep.Rows;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/**
 * Rows as Apache Parquet (format specification 2.x, {@code parquet.thrift}): a chunk is a row
 * group, a block of rows a page of each of its columns. Words that are known beforehand have a
 * dictionary at the beginning of their column in each group, all else is plain; pages are
 * compressed with gzip. Each column of a group has its statistics: how many rows have no value, the
 * least and the greatest. The format has its table of contents at the end of the file, so that row
 * groups can be appended one by one and the file is made whole by its tail.
 *
 * <p>Numbers and words are optional columns; what a row does not have is null.
 */
final class ParquetRows implements RowFormat {

  private static final byte[] MAGIC = "PAR1".getBytes(US_ASCII);

  // numbers of parquet.thrift
  private static final int INT64 = 2;
  private static final int DOUBLE = 5;
  private static final int BYTE_ARRAY = 6;
  private static final int REQUIRED = 0;
  private static final int OPTIONAL = 1;
  private static final int UTF8 = 0;
  private static final int GZIP = 2;

  private final List<Column> columns;
  private final Map<String, String> said;
  private final List<Map<String, Integer>> dictionaries;
  private final List<PartHead> heads;

  ParquetRows(List<Column> columns, Map<String, String> said) {
    this.columns = columns;
    this.said = said;
    dictionaries = columns.stream().map(ParquetRows::dictionary).toList();
    heads = columns.stream().map(ParquetRows::head).toList();
  }

  private static Map<String, Integer> dictionary(Column column) {
    Map<String, Integer> numbers = new HashMap<>();
    for (int i = 0; i < column.words().size(); i++) {
      numbers.put(column.words().get(i), i);
    }
    return numbers;
  }

  private static PartHead head(Column column) {
    if (column.words().isEmpty()) {
      return PartHead.NONE;
    }
    ParquetPage page = ParquetPage.dictionary(column.words());
    return new PartHead(page.bytes(), page.plain());
  }

  @Override
  public PartHead partHead(int part) {
    return heads.get(part);
  }

  @Override
  public List<Bounds> joined(List<List<Bounds>> blocks) {
    List<Bounds> joined = new ArrayList<>(blocks.get(0));
    for (List<Bounds> block : blocks.subList(1, blocks.size())) {
      for (int i = 0; i < joined.size(); i++) {
        joined.set(i, joined.get(i).and(block.get(i), columns.get(i).type()));
      }
    }
    return joined;
  }

  @Override
  public byte[] head() {
    return MAGIC.clone();
  }

  @Override
  public EncodedRows encode(Rows rows) {
    List<byte[]> parts = new ArrayList<>();
    long[] plain = new long[columns.size()];
    List<Bounds> bounds = new ArrayList<>();
    for (int column = 0; column < columns.size(); column++) {
      ParquetPage page = ParquetPage.of(rows, column, dictionaries.get(column));
      bounds.add(Bounds.of(rows, column));
      parts.add(page.bytes());
      plain[column] = page.plain();
    }
    return new EncodedRows(rows.size(), rows.failed(), parts, plain, bounds);
  }

  @Override
  public byte[] tail(List<Chunk> chunks) {
    List<Consumer<CompactThrift>> groups = new ArrayList<>();
    long rows = 0;
    long offset = MAGIC.length;
    for (Chunk chunk : chunks) {
      groups.add(group(chunk, offset));
      offset += chunk.length();
      rows += chunk.rows();
    }
    long total = rows;
    byte[] contents =
        CompactThrift.struct(
            file ->
                file.i32(1, 1)
                    .structs(2, schema())
                    .i64(3, total)
                    .structs(4, groups)
                    .structs(5, pairs())
                    .text(6, "ringstate")
                    .structs(7, orders()));
    return ByteBuffer.allocate(contents.length + Integer.BYTES + MAGIC.length)
        .order(ByteOrder.LITTLE_ENDIAN)
        .put(contents)
        .putInt(contents.length)
        .put(MAGIC)
        .array();
  }

  /** The order in which least and greatest values are meant: that of the type. */
  private List<Consumer<CompactThrift>> orders() {
    return Collections.nCopies(columns.size(), order -> order.struct(1, type -> {}));
  }

  private List<Consumer<CompactThrift>> pairs() {
    List<Consumer<CompactThrift>> pairs = new ArrayList<>();
    pairs.add(pair -> pair.text(1, "caution").text(2, Caution.TEXT));
    said.forEach((key, value) -> pairs.add(pair -> pair.text(1, key).text(2, value)));
    return pairs;
  }

  private List<Consumer<CompactThrift>> schema() {
    List<Consumer<CompactThrift>> elements = new ArrayList<>();
    elements.add(root -> root.text(4, "sweep").i32(5, columns.size()));
    for (Column column : columns) {
      elements.add(
          switch (column.type()) {
            case INTEGER -> leaf -> leaf.i32(1, INT64).i32(3, REQUIRED).text(4, column.name());
            case NUMBER -> leaf -> leaf.i32(1, DOUBLE).i32(3, OPTIONAL).text(4, column.name());
            case WORD ->
                leaf ->
                    leaf.i32(1, BYTE_ARRAY)
                        .i32(3, OPTIONAL)
                        .text(4, column.name())
                        .i32(6, UTF8)
                        .struct(10, kind -> kind.struct(1, string -> {}));
          });
    }
    return elements;
  }

  private Consumer<CompactThrift> group(Chunk chunk, long start) {
    List<Consumer<CompactThrift>> parts = new ArrayList<>();
    long offset = start;
    long plain = 0;
    for (int i = 0; i < columns.size(); i++) {
      parts.add(part(columns.get(i), chunk, i, offset));
      offset += chunk.written()[i];
      plain += chunk.plain()[i];
    }
    long size = plain;
    return group ->
        group
            .structs(1, parts)
            .i64(2, size)
            .i64(3, chunk.rows())
            .i64(5, start)
            .i64(6, chunk.length());
  }

  private Consumer<CompactThrift> part(Column column, Chunk chunk, int i, long offset) {
    int type =
        switch (column.type()) {
          case INTEGER -> INT64;
          case NUMBER -> DOUBLE;
          case WORD -> BYTE_ARRAY;
        };
    boolean plain = column.words().isEmpty();
    long data = offset + heads.get(i).bytes().length;
    Bounds bounds = chunk.bounds().get(i);
    return part ->
        part.i64(2, offset)
            .struct(
                3,
                about -> {
                  about
                      .i32(1, type)
                      .i32s(
                          2,
                          plain
                              ? new int[] {ParquetPage.PLAIN, ParquetPage.RLE}
                              : new int[] {
                                ParquetPage.PLAIN, ParquetPage.RLE, ParquetPage.RLE_DICTIONARY
                              })
                      .texts(3, List.of(column.name()))
                      .i32(4, GZIP)
                      .i64(5, chunk.rows())
                      .i64(6, chunk.plain()[i])
                      .i64(7, chunk.written()[i])
                      .i64(9, data);
                  if (!plain) {
                    about.i64(11, offset);
                  }
                  about.struct(12, statistics -> statistics(bounds, statistics));
                });
  }

  private static void statistics(Bounds bounds, CompactThrift statistics) {
    statistics.i64(3, bounds.missing());
    if (bounds.least().length > 0) {
      statistics.bytes(5, bounds.greatest()).bytes(6, bounds.least());
    }
  }
}
