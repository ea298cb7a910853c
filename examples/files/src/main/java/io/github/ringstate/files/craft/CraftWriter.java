package io.github.ringstate.files.craft;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.EngineKind;
import io.github.ringstate.craft.HeightVelocityCurve;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.craft.RotationSense;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.text.RangeText;
import io.github.ringstate.files.toml.TomlLines;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Writes a helicopter down as TOML that {@link CraftFile} reads back, equal to the last bit. */
public final class CraftWriter {

  private CraftWriter() {}

  /**
   * Writes a helicopter down.
   *
   * @param craft the helicopter
   * @return the lines of the file
   */
  public static List<String> lines(Helicopter craft) {
    return lines(new CraftFile(craft, HeightVelocityCurve.NONE, List.of()));
  }

  /**
   * Writes a helicopter down with all that its file holds.
   *
   * @param file the helicopter and its height-velocity curve
   * @return the lines of the file
   */
  public static List<String> lines(CraftFile file) {
    Helicopter craft = file.craft();
    List<String> lines = new ArrayList<>();
    TomlLines.comment(
        lines,
        "A helicopter for ringstate. Copy this file, change the numbers, and give the copy to"
            + " --craft. Above each number stand its range and where the value comes from.");
    lines.add("#");
    TomlLines.comment(lines, Caution.TEXT);
    lines.add("");
    lines.add(CraftReader.NAME + " = " + TomlLines.quoted(craft.name()));
    lines.add(CraftReader.DESCRIPTION + " = " + TomlLines.quoted(craft.description()));
    lines.add("");
    lines.add("# The way the main rotor turns, seen from above: " + senses());
    lines.add(CraftReader.ROTATION + " = " + TomlLines.quoted(craft.sense().label()));
    lines.add("");
    lines.add("# How power falls with the density of the air: " + engines());
    lines.add(CraftReader.ENGINE_KIND + " = " + TomlLines.quoted(craft.engine().label()));
    lines.add("");
    TomlLines.comment(
        lines,
        "Low-speed part of the height-velocity diagram of the flight manual, by which runs are"
            + " judged: points [kt, ft] along the curve, from its upper end through the knee to its"
            + " lower end.");
    lines.add(
        file.curve().isKnown()
            ? CraftReader.HEIGHT_VELOCITY + " = " + points(file.curve())
            : "# " + CraftReader.HEIGHT_VELOCITY + " = [[0, ...], [..., ...], [0, ...]]");
    for (Helicopter.Section section : Helicopter.SECTIONS) {
      lines.add("");
      lines.add("[" + section.title() + "]");
      for (Parameter parameter : section.parameters()) {
        TomlLines.comment(
            lines, RangeText.of(parameter.quantity()) + "; " + origin(craft, parameter));
        lines.add(parameter.key() + " = " + Double.toString(craft.numbers().get(parameter)));
      }
    }
    craft.fitted().ifPresent(model -> FittedTable.write(lines, model));
    return lines;
  }

  /**
   * The points of a height-velocity curve.
   *
   * @param curve the curve
   * @return for instance {@code [[0, 400], [45, 90]]}, kt and ft
   */
  public static String points(HeightVelocityCurve curve) {
    return curve.points().stream()
        .map(CraftWriter::knotsAndFeet)
        .collect(Collectors.joining(", ", "[", "]"));
  }

  /**
   * Where a number of a craft comes from.
   *
   * @param craft the craft
   * @param parameter one of its numbers
   * @return a part of a sentence
   */
  public static String origin(Helicopter craft, Parameter parameter) {
    if (craft.numbers().get(parameter) == parameter.standard()) {
      return parameter.origin();
    }
    return DemoCraft.ALL.contains(craft)
        ? "invented within the typical range"
        : "given by the user";
  }

  /** As the file is read: to 0.001 kt and 0.001 ft, more than a flight manual has. */
  private static String knotsAndFeet(HeightVelocityCurve.Point point) {
    return "["
        + Decimals.brief(Unit.KNOT.fromSi(point.airspeed()))
        + ", "
        + Decimals.brief(Unit.FOOT.fromSi(point.height()))
        + "]";
  }

  private static String senses() {
    return String.join(
        " or ",
        Stream.of(RotationSense.values()).map(sense -> TomlLines.quoted(sense.label())).toList());
  }

  private static String engines() {
    return String.join(
        " or ",
        Stream.of(EngineKind.values()).map(kind -> TomlLines.quoted(kind.label())).toList());
  }
}
