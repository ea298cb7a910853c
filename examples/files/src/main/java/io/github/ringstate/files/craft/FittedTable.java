package io.github.ringstate.files.craft;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.ringstate.craft.FittedModel;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.toml.TomlDocument;
import io.github.ringstate.files.toml.TomlLines;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.quantity.IncompatibleValuesException;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.UncertainNumbers;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The table of a craft file with what was fitted to recordings of the craft.
 *
 * @param document the file
 */
record FittedTable(TomlDocument document) {

  static final String NAME = "fitted";

  private static final String ENCOUNTERS = "encounters";
  private static final String RECORDINGS = "recordings";
  private static final String DATE = "date";
  private static final String REVISION = "revision";
  private static final String FORM = "form_deviation";
  private static final String PARAMETERS = "parameters";
  private static final String MEANS = "logit_means";
  private static final String COVARIANCE = "logit_covariance";
  private static final List<String> KEYS =
      List.of(ENCOUNTERS, RECORDINGS, DATE, REVISION, FORM, PARAMETERS, MEANS, COVARIANCE);

  private static final Pattern ANY_TEXT = Pattern.compile(".*", Pattern.DOTALL);

  /** What 95 in 100 lie within, in standard deviations. */
  private static final double BAND = 1.96;

  /** Relative difference of a number of the craft from its fitted value that is none. */
  private static final double SAME = 1e-9;

  static boolean isIn(TomlDocument document) {
    return document.keys().contains(NAME);
  }

  /** The craft with what was fitted. */
  Helicopter read(Helicopter craft) {
    document.onlyKeys(List.of(NAME), KEYS);
    List<Parameter> parameters = parameters();
    String rows = "one number for each of " + PARAMETERS;
    double[] means = numbers(document.get(path(MEANS), rows), parameters.size(), MEANS, rows);
    String square = "a row for each of " + PARAMETERS + ", symmetric and positive";
    JsonNode table = document.get(path(COVARIANCE), square);
    double[][] covariance = new double[parameters.size()][];
    for (int i = 0; i < covariance.length; i++) {
      covariance[i] = numbers(table.path(i), parameters.size(), COVARIANCE, square);
    }
    UncertainNumbers numbers;
    try {
      numbers = new UncertainNumbers(parameters, means, covariance);
    } catch (IllegalArgumentException none) {
      throw document.bad(path(COVARIANCE), square);
    }
    FittedModel model =
        new FittedModel(
            ring(craft, numbers),
            numbers,
            encounters(),
            recordings(),
            text(DATE),
            text(REVISION),
            formDeviation());
    Helicopter fitted = craft.withFitted(model);
    try {
      fitted.inflow();
    } catch (IncompatibleValuesException apart) {
      throw document.bad(path(MEANS), "means of numbers that make a ring state");
    }
    return fitted;
  }

  /** The fitted numbers of the ring state; those of the craft must be what the craft has. */
  private ParameterSet ring(Helicopter craft, UncertainNumbers numbers) {
    ParameterSet ring = ParameterSet.standard(RingStateInflow.PARAMETERS);
    for (int i = 0; i < numbers.parameters().size(); i++) {
      Parameter parameter = numbers.parameters().get(i);
      double value = numbers.median(i);
      if (RingStateInflow.PARAMETERS.contains(parameter)) {
        ring = ring.with(parameter, value);
      } else if (!(Math.abs(craft.numbers().get(parameter) - value) <= SAME * Math.abs(value))) {
        throw document.refused(
            path(MEANS),
            parameter.key() + " is not the fitted one",
            Double.toString(value) + ", or a craft without [" + NAME + "]");
      }
    }
    return ring;
  }

  private List<Parameter> parameters() {
    List<Parameter> known = known().toList();
    String allowed =
        "some of " + known.stream().map(Parameter::key).collect(Collectors.joining(", "));
    List<Parameter> parameters = new ArrayList<>();
    for (JsonNode key : document.get(path(PARAMETERS), allowed)) {
      Parameter found =
          known.stream()
              .filter(parameter -> parameter.key().equals(key.asText()))
              .findFirst()
              .orElseThrow(() -> document.bad(path(PARAMETERS), allowed));
      if (parameters.contains(found)) {
        throw document.bad(path(PARAMETERS), "each parameter once");
      }
      parameters.add(found);
    }
    if (parameters.isEmpty()) {
      throw document.bad(path(PARAMETERS), allowed);
    }
    return parameters;
  }

  /** What may be fitted. */
  static Stream<Parameter> known() {
    return Stream.concat(
        RingStateInflow.PARAMETERS.stream(), Helicopter.STANDARD_NUMBERS.parameters().stream());
  }

  private double[] numbers(JsonNode list, int size, String key, String allowed) {
    double[] numbers = new double[size];
    for (int i = 0; i < size; i++) {
      numbers[i] = list.path(i).isNumber() ? list.path(i).doubleValue() : Double.NaN;
    }
    if (list.size() != size || !Arrays.stream(numbers).allMatch(Double::isFinite)) {
      throw document.bad(path(key), allowed);
    }
    return numbers;
  }

  private int encounters() {
    String allowed = "a whole number, 1 or more";
    JsonNode node = document.get(path(ENCOUNTERS), allowed);
    if (!node.isInt() || node.intValue() < 1) {
      throw document.bad(path(ENCOUNTERS), allowed);
    }
    return node.intValue();
  }

  private double formDeviation() {
    Quantity range = FittedModel.FORM_DEVIATION;
    String allowed = "a number from " + range.low() + " to " + range.high();
    return document.number(path(FORM), range.low(), range.high(), allowed);
  }

  private List<String> recordings() {
    String allowed = "names of recordings";
    List<String> names = new ArrayList<>();
    document.get(path(RECORDINGS), allowed).forEach(name -> names.add(name.asText()));
    return names;
  }

  private String text(String key) {
    return document.text(path(key), ANY_TEXT, "text in quotation marks");
  }

  private static List<String> path(String key) {
    return List.of(NAME, key);
  }

  /** Writes the table. */
  static void write(List<String> lines, FittedModel model) {
    UncertainNumbers numbers = model.numbers();
    lines.add("");
    lines.add("[" + NAME + "]");
    TomlLines.comment(
        lines,
        "Numbers of the model that were fitted to recordings of this craft. Tables of pilots draw"
            + " them from a normal distribution of ln((value - low) / (high - value)), low and high"
            + " being the range of each, and with them a factor on the loss for the form of the"
            + " model, whose logarithm has the standard deviation "
            + FORM
            + "."
            + " Without this table the craft flies with the standard model.");
    for (int i = 0; i < numbers.parameters().size(); i++) {
      Parameter parameter = numbers.parameters().get(i);
      TomlLines.comment(
          lines,
          parameter.name()
              + " "
              + shown(numbers.median(i))
              + ", 95 % from "
              + shown(numbers.quantile(i, -BAND))
              + " to "
              + shown(numbers.quantile(i, BAND))
              + (parameter.unit().symbol().isEmpty() ? "" : " " + parameter.unit().symbol()));
    }
    lines.add(ENCOUNTERS + " = " + model.encounters());
    lines.add(RECORDINGS + " = " + quoted(model.recordings().stream()));
    lines.add(DATE + " = " + TomlLines.quoted(model.date()));
    lines.add(REVISION + " = " + TomlLines.quoted(model.revision()));
    lines.add(FORM + " = " + model.formDeviation());
    lines.add(PARAMETERS + " = " + quoted(numbers.parameters().stream().map(Parameter::key)));
    lines.add(MEANS + " = " + Arrays.toString(numbers.mean()));
    lines.add(
        COVARIANCE
            + " = "
            + Arrays.stream(numbers.covariance())
                .map(Arrays::toString)
                .collect(Collectors.joining(",\n  ", "[\n  ", "\n]")));
  }

  private static String shown(double value) {
    return Decimals.brief(value);
  }

  private static String quoted(Stream<String> texts) {
    return texts.map(TomlLines::quoted).collect(Collectors.joining(", ", "[", "]"));
  }
}
