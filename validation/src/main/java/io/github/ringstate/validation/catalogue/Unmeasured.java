package io.github.ringstate.validation.catalogue;

import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.dynamics.RingStateShaking;
import io.github.ringstate.encounter.Settling;
import io.github.ringstate.encounter.Steep;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.pilot.CollectiveOnly;
import io.github.ringstate.pilot.Forward;
import io.github.ringstate.pilot.Lateral;
import io.github.ringstate.quantity.Parameter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * A number of the library for which there is no measurement: it stays at the value that was fitted
 * or assumed.
 *
 * @param part what it is a number of
 * @param parameter the number, with its range and origin
 */
public record Unmeasured(String part, Parameter parameter) {

  private static final List<String> ORIGINS = List.of("assumed", "fitted");

  /**
   * All of them that losses of height depend on, by what their origins say.
   *
   * @return an unmodifiable list
   */
  public static List<Unmeasured> numbers() {
    return Stream.of(
            of("ring state", RingStateInflow.PARAMETERS.stream()),
            of("shaking", RingStateShaking.PARAMETERS.stream()),
            of("craft", Helicopter.STANDARD_NUMBERS.parameters().stream()),
            of("settling entry", Settling.PARAMETERS.stream()),
            of("steep approach", Steep.PARAMETERS.stream()),
            of("forward recovery", Forward.PARAMETERS.stream()),
            of("lateral recovery", Lateral.PARAMETERS.stream()),
            of("collective alone", CollectiveOnly.PARAMETERS.stream()))
        .flatMap(numbers -> numbers)
        .toList();
  }

  private static Stream<Unmeasured> of(String part, Stream<Parameter> parameters) {
    return parameters
        .filter(number -> ORIGINS.stream().anyMatch(number.origin()::startsWith))
        .map(number -> new Unmeasured(part, number));
  }

  /**
   * Its name, with the unit.
   *
   * @return for instance {@code engine time, s}
   */
  public String name() {
    String symbol = parameter.unit().symbol();
    return symbol.equals("1") || symbol.isEmpty()
        ? parameter.name()
        : parameter.name() + ", " + symbol;
  }

  /**
   * The value unless set.
   *
   * @return a short number
   */
  public String value() {
    return brief(parameter.standard());
  }

  /**
   * The range in which it is accepted.
   *
   * @return the two ends
   */
  public String range() {
    return brief(parameter.quantity().low()) + " to " + brief(parameter.quantity().high());
  }

  private static String brief(double value) {
    return String.format(Locale.ROOT, "%.4g", value)
        .replaceFirst("(\\.\\d*?)0+$", "$1")
        .replaceFirst("\\.$", "")
        .replace('-', '\u2212');
  }

  /**
   * Where it comes from.
   *
   * @return the origin, as the library words it
   */
  public String origin() {
    return parameter.origin();
  }
}
