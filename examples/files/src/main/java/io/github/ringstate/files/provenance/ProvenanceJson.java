package io.github.ringstate.files.provenance;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import io.github.ringstate.files.report.Cell;
import io.github.ringstate.files.report.JsonWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Provenance as JSON (RFC 8259), with the same order and the same text each time. */
public final class ProvenanceJson {

  /** The name under which files keep it. */
  public static final String NAME = "provenance";

  static final JsonMapper MAPPER = new JsonMapper();

  private ProvenanceJson() {}

  /**
   * Writes provenance as text that can stand in a file of another kind.
   *
   * @param provenance the provenance
   * @return one JSON object
   */
  public static String text(Provenance provenance) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = JsonWriter.generator(text)) {
      write(provenance, json);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible); // memory takes it all
    }
    return text.toString();
  }

  /**
   * Writes provenance as a value.
   *
   * @param provenance the provenance
   * @param json where to, at the place of a value
   * @throws IOException if no more is taken
   */
  public static void write(Provenance provenance, JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeStringField("program", "ringstate");
    json.writeStringField("version", provenance.build().version());
    json.writeStringField("build", provenance.build().digest());
    json.writeArrayFieldStart("command");
    for (String word : provenance.command()) {
      json.writeString(word);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("read");
    for (Source source : provenance.sources()) {
      json.writeStartObject();
      json.writeStringField("name", source.name());
      json.writeStringField("sha256", source.digest());
      if (source.text().isPresent()) {
        json.writeStringField("text", source.text().get());
      }
      json.writeEndObject();
    }
    json.writeEndArray();
    texts("options", provenance.options(), json);
    json.writeObjectFieldStart("settings");
    for (Map.Entry<String, Cell> setting : provenance.settings().entrySet()) {
      JsonWriter.field(json, setting.getKey(), setting.getValue());
    }
    json.writeEndObject();
    texts("units", provenance.units(), json);
    json.writeEndObject();
  }

  private static void texts(String name, Map<String, String> texts, JsonGenerator json)
      throws IOException {
    json.writeObjectFieldStart(name);
    for (Map.Entry<String, String> text : texts.entrySet()) {
      json.writeStringField(text.getKey(), text.getValue());
    }
    json.writeEndObject();
  }

  /**
   * Reads provenance back.
   *
   * @param text a JSON object, provenance itself or with provenance as its field
   * @return the provenance; empty if it is none
   */
  public static Optional<Provenance> read(String text) {
    try {
      JsonNode tree = MAPPER.readTree(text);
      JsonNode node = tree.has(NAME) ? tree.path(NAME) : tree;
      if (!node.path("program").asText().equals("ringstate") || !node.path("command").isArray()) {
        return Optional.empty();
      }
      List<String> command = new ArrayList<>();
      node.path("command").forEach(word -> command.add(word.asText()));
      List<Source> sources = new ArrayList<>();
      for (JsonNode source : node.path("read")) {
        sources.add(
            new Source(
                source.path("name").asText(),
                source.path("sha256").asText(),
                Optional.ofNullable(source.path("text").textValue())));
      }
      return Optional.of(
          new Provenance(
              new Build(node.path("version").asText(), node.path("build").asText()),
              command,
              sources,
              texts(node.path("options")),
              settings(node.path("settings")),
              texts(node.path("units"))));
    } catch (JsonProcessingException none) {
      return Optional.empty();
    }
  }

  private static Map<String, String> texts(JsonNode node) {
    Map<String, String> texts = new LinkedHashMap<>();
    node.properties().forEach(field -> texts.put(field.getKey(), field.getValue().asText()));
    return texts;
  }

  private static Map<String, Cell> settings(JsonNode node) {
    Map<String, Cell> settings = new LinkedHashMap<>();
    for (Map.Entry<String, JsonNode> field : node.properties()) {
      JsonNode value = field.getValue();
      settings.put(
          field.getKey(),
          value.isNull()
              ? Cell.NOTHING
              : value.isNumber()
                  ? new Cell(value.asText(), Cell.Kind.NUMBER)
                  : Cell.text(value.asText()));
    }
    return settings;
  }
}
