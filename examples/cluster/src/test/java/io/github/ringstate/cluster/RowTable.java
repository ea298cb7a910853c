package io.github.ringstate.cluster;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.hadoop.conf.Configuration;
import org.apache.parquet.example.data.Group;
import org.apache.parquet.hadoop.ParquetFileReader;
import org.apache.parquet.hadoop.ParquetReader;
import org.apache.parquet.hadoop.example.GroupReadSupport;
import org.apache.parquet.hadoop.util.HadoopInputFile;
import org.apache.parquet.schema.MessageType;
import org.apache.parquet.schema.PrimitiveType;

/**
 * Rows of Parquet files, read by Apache parquet-java.
 *
 * @param schema names, types, whether they may be missing, and order of the columns
 * @param rows the values of each row; null where it has none. Equal doubles have equal bits
 */
record RowTable(MessageType schema, List<List<Object>> rows) {

  /** The rows of a file. */
  static RowTable of(Path file) throws IOException {
    org.apache.hadoop.fs.Path path = new org.apache.hadoop.fs.Path(file.toUri());
    try (ParquetFileReader reader =
            ParquetFileReader.open(HadoopInputFile.fromPath(path, new Configuration()));
        ParquetReader<Group> groups = ParquetReader.builder(new GroupReadSupport(), path).build()) {
      MessageType schema = reader.getFileMetaData().getSchema();
      List<List<Object>> rows = new ArrayList<>();
      for (Group group = groups.read(); group != null; group = groups.read()) {
        rows.add(row(schema, group));
      }
      return new RowTable(schema, rows);
    }
  }

  private static List<Object> row(MessageType schema, Group group) {
    List<Object> row = new ArrayList<>();
    for (int i = 0; i < schema.getFieldCount(); i++) {
      PrimitiveType type = schema.getType(i).asPrimitiveType();
      if (group.getFieldRepetitionCount(i) == 0) {
        row.add(null);
      } else {
        row.add(
            switch (type.getPrimitiveTypeName()) {
              case INT64 -> group.getLong(i, 0);
              case DOUBLE -> group.getDouble(i, 0);
              case BINARY -> group.getString(i, 0);
              default -> throw new IllegalStateException("a sweep has no " + type);
            });
      }
    }
    return row;
  }

  /** The rows of all portions of a run, in the order of their numbers. */
  static RowTable ofPortions(Path output) throws IOException {
    List<RowTable> tables = new ArrayList<>();
    for (Path file : portions(output)) {
      tables.add(of(file));
    }
    List<MessageType> schemas = tables.stream().map(RowTable::schema).distinct().toList();
    if (schemas.size() != 1) {
      throw new IllegalStateException("not all portions have one schema: " + schemas);
    }
    return new RowTable(
        schemas.get(0), tables.stream().flatMap(table -> table.rows().stream()).toList());
  }

  /** The files of portions that are whole, in the order of their numbers. */
  static List<Path> portions(Path output) throws IOException {
    return files(output, "portion-");
  }

  /** The drafts that are left. */
  static List<Path> drafts(Path output) throws IOException {
    return files(output, ".");
  }

  private static List<Path> files(Path output, String beginning) throws IOException {
    Path rows = output.resolve("rows");
    if (!Files.exists(rows)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(rows)) {
      return files
          .filter(file -> file.getFileName().toString().startsWith(beginning))
          .sorted()
          .toList();
    }
  }
}
