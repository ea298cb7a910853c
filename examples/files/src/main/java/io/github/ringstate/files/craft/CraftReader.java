package io.github.ringstate.files.craft;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.ringstate.craft.EngineKind;
import io.github.ringstate.craft.HeightVelocityCurve;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.craft.RotationSense;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.text.RangeText;
import io.github.ringstate.files.toml.RenamedKeys;
import io.github.ringstate.files.toml.TomlDocument;
import io.github.ringstate.quantity.OutOfRangeException;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Reads a helicopter from TOML: every key must be there, and no other. */
final class CraftReader {

  static final String NAME = "name";
  static final String DESCRIPTION = "description";
  static final String ROTATION = "rotation";
  static final String ENGINE_KIND = "engine_kind";

  /** May be missing: points of the height-velocity curve, by which runs are judged. */
  static final String HEIGHT_VELOCITY = "height_velocity_kt_ft";

  private static final List<String> WORDS =
      List.of(NAME, DESCRIPTION, ROTATION, ENGINE_KIND, HEIGHT_VELOCITY);
  private static final Pattern ONE_WORD = Pattern.compile("[\\p{L}\\p{N}_-]{1,30}");
  private static final Pattern ONE_LINE = Pattern.compile("\\P{Cntrl}{1,300}");

  private final TomlDocument document;

  private CraftReader(TomlDocument document) {
    this.document = document;
  }

  /**
   * Reads a helicopter.
   *
   * @param file the file's name, for messages
   * @param text the file's content
   * @return what it holds
   * @throws UserError if the content is no TOML, or not a helicopter
   */
  static CraftFile read(String file, String text) {
    TomlDocument document = TomlDocument.parse(file, text, RenamedKeys.SINCE_0_1_0);
    CraftReader reader = new CraftReader(document);
    reader.refuseUnknown();
    HeightVelocityCurve curve = reader.curve();
    Helicopter craft = reader.craft();
    return new CraftFile(
        FittedTable.isIn(document) ? new FittedTable(document).read(craft) : craft,
        curve,
        document.notices());
  }

  private HeightVelocityCurve curve() {
    String allowed =
        "points [[airspeed, height], ...], "
            + RangeText.of(HeightVelocityCurve.AIRSPEED)
            + " and "
            + RangeText.of(HeightVelocityCurve.HEIGHT);
    if (!document.keys().contains(HEIGHT_VELOCITY)) {
      return HeightVelocityCurve.NONE;
    }
    JsonNode list = document.get(List.of(HEIGHT_VELOCITY), allowed);
    List<HeightVelocityCurve.Point> points = new ArrayList<>();
    for (JsonNode point : list) {
      double airspeed = point.path(0).isNumber() ? point.path(0).doubleValue() : Double.NaN;
      double height = point.path(1).isNumber() ? point.path(1).doubleValue() : Double.NaN;
      if (point.size() != 2
          || !HeightVelocityCurve.AIRSPEED.holds(airspeed)
          || !HeightVelocityCurve.HEIGHT.holds(height)) {
        throw document.bad(List.of(HEIGHT_VELOCITY), allowed);
      }
      points.add(new HeightVelocityCurve.Point(Unit.KNOT.toSi(airspeed), Unit.FOOT.toSi(height)));
    }
    if (!list.isArray() || points.isEmpty()) {
      throw document.bad(List.of(HEIGHT_VELOCITY), allowed);
    }
    return new HeightVelocityCurve(points);
  }

  private Helicopter craft() {
    String name = word(NAME, ONE_WORD, "one word of at most 30 letters a to z, digits, _ and -");
    String description = word(DESCRIPTION, ONE_LINE, "one line of at most 300 characters");
    RotationSense sense =
        choice(ROTATION, Arrays.asList(RotationSense.values()), RotationSense::label);
    EngineKind engine = choice(ENGINE_KIND, Arrays.asList(EngineKind.values()), EngineKind::label);
    ParameterSet numbers = Helicopter.STANDARD_NUMBERS;
    for (Helicopter.Section section : Helicopter.SECTIONS) {
      for (Parameter parameter : section.parameters()) {
        double value =
            EngineKind.optional().contains(parameter) && isLeftOut(section.title(), parameter)
                ? engine.usual(parameter)
                : number(section.title(), parameter);
        numbers = numbers.with(parameter, value);
      }
    }
    try {
      return new Helicopter(name, description, sense, engine, numbers);
    } catch (OutOfRangeException outside) {
      throw outOfOrder(outside);
    }
  }

  private void refuseUnknown() {
    Map<String, List<String>> sections =
        Helicopter.SECTIONS.stream()
            .collect(
                Collectors.toMap(
                    Helicopter.Section::title,
                    section -> section.parameters().stream().map(Parameter::key).toList()));
    for (String key : document.keys()) {
      List<String> known = sections.get(key);
      if (key.equals(FittedTable.NAME)) {
        continue;
      }
      if (known == null && !WORDS.contains(key)) {
        throw unknown(
            List.of(key),
            String.join(", ", WORDS)
                + ", and the tables "
                + Helicopter.SECTIONS.stream()
                    .map(section -> "[" + section.title() + "]")
                    .collect(Collectors.joining(" ")));
      }
      if (known == null) {
        continue;
      }
      if (!document.isTable(key)) {
        throw document.bad(List.of(key), "a table, [" + key + "]");
      }
      for (String inner : document.keys(key)) {
        if (!known.contains(inner)) {
          throw unknown(List.of(key, inner), String.join(", ", known));
        }
      }
    }
  }

  private UserError unknown(List<String> path, String allowed) {
    return document.refused(
        path, "unknown key " + UserError.quoted(String.join(".", path)), allowed);
  }

  private String word(String key, Pattern pattern, String allowed) {
    JsonNode node = document.get(List.of(key), "text in quotation marks, " + allowed);
    if (!node.isTextual() || !pattern.matcher(node.textValue()).matches()) {
      throw document.bad(List.of(key), "text in quotation marks, " + allowed);
    }
    return node.textValue();
  }

  private <T> T choice(String key, List<T> things, Function<T, String> label) {
    String allowed =
        things.stream()
            .map(thing -> '"' + label.apply(thing) + '"')
            .collect(Collectors.joining(" or "));
    JsonNode node = document.get(List.of(key), allowed);
    return things.stream()
        .filter(thing -> node.isTextual() && label.apply(thing).equals(node.textValue()))
        .findFirst()
        .orElseThrow(() -> document.bad(List.of(key), allowed));
  }

  private boolean isLeftOut(String section, Parameter parameter) {
    return !document.isTable(section) || !document.keys(section).contains(parameter.key());
  }

  private double number(String section, Parameter parameter) {
    List<String> path = List.of(section, parameter.key());
    String allowed = "a number, " + RangeText.of(parameter.quantity());
    JsonNode node = document.get(path, allowed);
    double value = node.isNumber() ? node.doubleValue() : Double.NaN;
    if (!(value >= parameter.quantity().low() && value <= parameter.quantity().high())) {
      throw document.bad(path, allowed);
    }
    return value + 0.0; // a minus sign on zero has no meaning here
  }

  /** Each number is in its range, but not in the one that the craft's other numbers leave it. */
  private UserError outOfOrder(OutOfRangeException outside) {
    Quantity quantity = outside.quantity();
    for (Helicopter.Section section : Helicopter.SECTIONS) {
      for (Parameter parameter : section.parameters()) {
        if (parameter.name().equals(quantity.name())) {
          return document.bad(
              List.of(section.title(), parameter.key()),
              RangeText.of(quantity) + " beside the other numbers of this craft");
        }
      }
    }
    throw outside;
  }
}
