package io.github.ringstate.files.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import io.github.ringstate.files.text.Caution;
import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Map;

/**
 * Writes a report as one JSON object: its name, the caution, the definitions, the facts, then the
 * tables as lists of objects, and where it comes from. The order is always the same and numbers are
 * rounded as in CSV.
 *
 * @param provenance where the report comes from, as a JSON object; empty for none
 */
public record JsonWriter(String provenance) implements CharacterWriter {

  @Override
  public void write(Report report, Writer out) throws IOException {
    try (JsonGenerator json = generator(out)) {
      json.writeStartObject();
      json.writeStringField("report", report.title());
      json.writeStringField("caution", Caution.TEXT);
      json.writeObjectFieldStart("definitions");
      for (Term term : report.definitions()) {
        json.writeStringField(term.word(), term.meaning());
      }
      json.writeEndObject();
      json.writeObjectFieldStart("conditions");
      for (Map.Entry<String, Cell> fact : report.facts().entrySet()) {
        field(json, fact.getKey(), fact.getValue());
      }
      json.writeEndObject();
      for (Map.Entry<String, Table<?>> table : report.tables().entrySet()) {
        json.writeArrayFieldStart(table.getKey());
        rows(json, table.getValue());
        json.writeEndArray();
      }
      if (!provenance.isEmpty()) {
        json.writeFieldName("provenance");
        json.writeRawValue(provenance.replace("\n", "\n  "));
      }
      json.writeEndObject();
    }
    out.write("\n");
    out.flush();
  }

  private static void rows(JsonGenerator json, Table<?> table) throws IOException {
    List<String> names = table.header();
    for (List<Cell> row : (Iterable<List<Cell>>) table.records()::iterator) {
      json.writeStartObject();
      for (int i = 0; i < row.size(); i++) {
        field(json, names.get(i), row.get(i));
      }
      json.writeEndObject();
    }
  }

  /**
   * A generator that writes as all JSON of the tool is written.
   *
   * @param out where to write; it stays open
   * @return the generator
   * @throws IOException if it cannot be written
   */
  public static JsonGenerator generator(Writer out) throws IOException {
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    return new JsonFactory()
        .createGenerator(out)
        .disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET)
        .setPrettyPrinter(
            new DefaultPrettyPrinter().withArrayIndenter(indenter).withObjectIndenter(indenter));
  }

  /**
   * Writes a field.
   *
   * @param json where to write
   * @param name its name
   * @param cell what it holds
   * @throws IOException if it cannot be written
   */
  public static void field(JsonGenerator json, String name, Cell cell) throws IOException {
    json.writeFieldName(name);
    switch (cell.kind()) {
      case NUMBER -> json.writeNumber(cell.text());
      case TEXT -> json.writeString(cell.text());
      case NOTHING -> json.writeNull();
    }
  }
}
