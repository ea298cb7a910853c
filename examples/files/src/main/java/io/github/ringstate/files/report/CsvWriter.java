package io.github.ringstate.files.report;

import java.io.IOException;
import java.io.Writer;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jspecify.annotations.Nullable;

/** Writes the table of a report by RFC 4180: one header, lines that end in CR LF. */
public final class CsvWriter implements CharacterWriter {

  /** Creates the writer. */
  public CsvWriter() {}

  @Override
  public void write(Report report, Writer out) throws IOException {
    Table<?> table = report.table();
    CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180);
    printer.printRecord(table.header());
    for (List<Cell> row : (Iterable<List<Cell>>) table.records()::iterator) {
      for (Cell cell : row) {
        printer.print(field(cell));
      }
      printer.println();
    }
    printer.flush();
  }

  private static @Nullable String field(Cell cell) {
    return cell.kind() == Cell.Kind.NOTHING ? null : cell.text();
  }
}
