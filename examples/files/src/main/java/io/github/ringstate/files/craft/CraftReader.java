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
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Reads a helicopter from TOML: every key must be there, and no other.
 *
 * @param document what is read
 */
record CraftReader(TomlDocument document) {

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
        document.choice(List.of(ROTATION), RotationSense.values(), RotationSense::label);
    EngineKind engine =
        document.choice(List.of(ENGINE_KIND), EngineKind.values(), EngineKind::label);
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
    List<String> tables =
        Stream.concat(
                Helicopter.SECTIONS.stream().map(Helicopter.Section::title),
                Stream.of(FittedTable.NAME))
            .toList();
    document.onlyAtTheTop(WORDS, tables);
    for (Helicopter.Section section : Helicopter.SECTIONS) {
      document.onlyKeys(
          List.of(section.title()), section.parameters().stream().map(Parameter::key).toList());
    }
  }

  private String word(String key, Pattern pattern, String allowed) {
    return document.text(List.of(key), pattern, "text in quotation marks, " + allowed);
  }

  private boolean isLeftOut(String section, Parameter parameter) {
    return !document.has(List.of(section, parameter.key()));
  }

  private double number(String section, Parameter parameter) {
    Quantity range = parameter.quantity();
    return document.number(
        List.of(section, parameter.key()),
        range.low(),
        range.high(),
        "a number, " + RangeText.of(range));
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
