package io.github.ringstate.files.row;

import static java.nio.charset.StandardCharsets.UTF_8;

import io.github.ringstate.study.sweep.Column;
import io.github.ringstate.study.sweep.Rows;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Rows by RFC 4180: one header, lines that end in CR LF, nothing where a row has no value. Numbers
 * are written with a point and as many digits as tell them from their neighbours.
 *
 * @param columns the columns
 */
record CsvRows(List<Column> columns) implements RowFormat {

  private static final String END = "\r\n";

  @Override
  public byte[] head() {
    return (columns.stream().map(Column::name).collect(Collectors.joining(",")) + END)
        .getBytes(UTF_8);
  }

  @Override
  public EncodedRows encode(Rows rows) {
    StringBuilder text = new StringBuilder(rows.size() * 128);
    for (int row = 0; row < rows.size(); row++) {
      for (int column = 0; column < columns.size(); column++) {
        if (column > 0) {
          text.append(',');
        }
        switch (columns.get(column).type()) {
          case INTEGER -> text.append(rows.integer(column, row));
          case NUMBER -> number(text, rows.number(column, row));
          case WORD -> word(text, rows.word(column, row));
        }
      }
      text.append(END);
    }
    byte[] bytes = text.toString().getBytes(UTF_8);
    return new EncodedRows(
        rows.size(), rows.failed(), List.of(bytes), new long[] {bytes.length}, List.of());
  }

  private static void number(StringBuilder text, double value) {
    if (!Double.isNaN(value)) {
      text.append(value);
    }
  }

  private static void word(StringBuilder text, @Nullable String word) {
    if (word == null) {
      return;
    }
    if (word.chars().anyMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n')) {
      text.append('"').append(word.replace("\"", "\"\"")).append('"');
    } else {
      text.append(word);
    }
  }

  @Override
  public byte[] tail(List<Chunk> chunks) {
    return new byte[0];
  }
}
