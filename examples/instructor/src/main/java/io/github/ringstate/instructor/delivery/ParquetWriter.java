package io.github.ringstate.instructor.delivery;

import io.github.ringstate.files.provenance.ProvenanceJson;
import io.github.ringstate.files.report.Cell;
import io.github.ringstate.files.report.Report;
import io.github.ringstate.files.report.ReportWriter;
import io.github.ringstate.files.report.Table;
import io.github.ringstate.files.row.ChunkRows;
import io.github.ringstate.files.row.RowFormat;
import io.github.ringstate.study.sweep.Column;
import io.github.ringstate.study.sweep.Rows;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Writes the table of a report, that of its CSV, as Parquet: a column of numbers where no row has a
 * word in it, else one of words; what a row does not have is null.
 *
 * @param provenance where the report comes from, as JSON
 */
public record ParquetWriter(String provenance) implements ReportWriter {

  @Override
  public void write(Report report, OutputStream out) throws IOException {
    Table<?> table = report.table();
    List<List<Cell>> records = table.records().toList();
    List<Column> columns = new ArrayList<>();
    for (int i = 0; i < table.header().size(); i++) {
      int column = i;
      boolean words =
          records.stream().anyMatch(record -> record.get(column).kind() == Cell.Kind.TEXT);
      columns.add(new Column(table.header().get(i), words ? Column.Type.WORD : Column.Type.NUMBER));
    }
    List<List<Object>> rows = new ArrayList<>();
    for (List<Cell> record : records) {
      List<Object> row = new ArrayList<>();
      for (int i = 0; i < columns.size(); i++) {
        row.add(value(record.get(i), columns.get(i).type()));
      }
      rows.add(row);
    }
    RowFormat format = RowFormat.of("parquet", columns, Map.of(ProvenanceJson.NAME, provenance));
    ChunkRows chunk = ChunkRows.of(format, List.of(format.encode(Rows.of(columns, rows))));
    out.write(format.head());
    for (byte[] piece : chunk.pieces()) {
      out.write(piece);
    }
    out.write(format.tail(List.of(chunk.chunk())));
    out.flush();
  }

  private static Object value(Cell cell, Column.Type type) {
    if (type == Column.Type.WORD) {
      return cell.text();
    }
    return cell.kind() == Cell.Kind.NOTHING ? Double.NaN : Double.parseDouble(cell.text());
  }
}
