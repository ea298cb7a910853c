package io.github.ringstate.files.plan;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.plan.PlanFile.AgreedHeight;
import io.github.ringstate.files.plan.PlanFile.Fact;
import io.github.ringstate.files.plan.PlanFile.Part;
import io.github.ringstate.files.toml.RenamedKeys;
import io.github.ringstate.files.toml.TomlDocument;
import io.github.ringstate.files.unit.Dimension;
import io.github.ringstate.files.unit.Given;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Reads a plan from TOML: no key is needed, and none but those of a plan may be there.
 *
 * @param document what is read
 */
record PlanReader(TomlDocument document) {

  static final String CREW = "crew";
  static final String TECHNIQUE = "technique";
  static final String AGREED = "agreed";
  static final String RECORD = "record";
  static final String REVISION = "model_revision";

  private static final double GREATEST_HEIGHT_FT = 20_000;
  private static final Pattern ONE_LINE = Pattern.compile("\\P{Cntrl}{0,300}");
  private static final String A_LINE =
      "text in quotation marks, one line of at most 300 characters";

  /**
   * Reads a plan.
   *
   * @param file the file's name, for messages
   * @param text the file's content
   * @return what it holds
   * @throws UserError if the content is no TOML, or not a plan
   */
  static PlanFile read(String file, String text) {
    return new PlanReader(TomlDocument.parse(file, text, RenamedKeys.NONE)).plan();
  }

  private PlanFile plan() {
    List<String> tables =
        Stream.concat(Stream.of(Part.values()).map(Part::key), Stream.of(AGREED, RECORD)).toList();
    List<String> words =
        Stream.concat(Stream.of(Fact.values()).map(Fact::key), Stream.of(CREW, TECHNIQUE)).toList();
    document.onlyAtTheTop(words, tables);
    Map<Fact, String> facts = new EnumMap<>(Fact.class);
    for (Fact fact : Fact.values()) {
      facts.put(fact, line(List.of(fact.key())));
    }
    Map<Part, Map<String, String>> options = new LinkedHashMap<>();
    for (Part part : Part.values()) {
      if (document.isTable(part.key())) {
        options.put(part, options(part));
      }
    }
    document.onlyKeys(List.of(RECORD), List.of(REVISION));
    return new PlanFile(
        facts,
        crew(),
        line(List.of(TECHNIQUE)),
        options,
        agreed(),
        line(List.of(RECORD, REVISION)));
  }

  private String line(List<String> path) {
    return document.has(path) ? document.text(path, ONE_LINE, A_LINE) : "";
  }

  private String line(List<String> path, JsonNode node) {
    if (!node.isTextual() || !ONE_LINE.matcher(node.textValue()).matches()) {
      throw document.bad(path, A_LINE);
    }
    return node.textValue();
  }

  private List<String> crew() {
    List<String> path = List.of(CREW);
    List<String> names = new ArrayList<>();
    if (document.has(path)) {
      JsonNode list = document.get(path, A_LINE);
      if (!list.isArray()) {
        throw document.bad(path, "a list of names in quotation marks");
      }
      list.forEach(name -> names.add(line(path, name)));
    }
    return names;
  }

  private Map<String, String> options(Part part) {
    Map<String, String> options = new LinkedHashMap<>();
    for (String key : document.keys(part.key())) {
      List<String> path = List.of(part.key(), key);
      JsonNode node = document.get(path, A_LINE);
      String value = node.isNumber() ? node.decimalValue().toPlainString() : line(path, node);
      options.put(key.replace('_', '-'), value);
    }
    return options;
  }

  private Map<AgreedHeight, Double> agreed() {
    document.onlyKeys(
        List.of(AGREED), Stream.of(AgreedHeight.values()).map(AgreedHeight::key).toList());
    Map<AgreedHeight, Double> heights = new EnumMap<>(AgreedHeight.class);
    for (AgreedHeight height : AgreedHeight.values()) {
      List<String> path = List.of(AGREED, height.key());
      if (document.has(path)) {
        double feet = feet(document.get(path, "a number"));
        if (!(feet > 0 && feet <= GREATEST_HEIGHT_FT)) {
          throw document.bad(
              path, "a number of feet, more than 0 and at most 20000, or one such as \"100 m\"");
        }
        heights.put(height, feet);
      }
    }
    return heights;
  }

  private static double feet(JsonNode node) {
    if (!node.isTextual()) {
      return node.isNumber() ? node.doubleValue() : Double.NaN;
    }
    return Given.of(node.textValue())
        .flatMap(
            given ->
                Dimension.unit(given.unit())
                    .filter(Dimension.LENGTH.units()::contains)
                    .map(unit -> Unit.FOOT.fromSi(unit.toSi(given.number()))))
        .orElse(Double.NaN);
  }
}
