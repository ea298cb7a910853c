package io.github.ringstate.dynamics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.Unit;
import java.io.IOException;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Holds the page of equations to the code: every number on it, and every number that it needs. */
class EquationsPageTest {

  private static final Path SOURCES = Path.of("src", "main", "java");
  private static final String ROOT = "io.github.ringstate.";
  private static final Path PAGE =
      SOURCES.resolve(Path.of("io/github/ringstate/dynamics/doc-files/equations.html"));

  /** Packages of which the page has to have every parameter and every constant. */
  private static final List<String> FLIGHT =
      List.of("air", "craft", "rotor", "inflow", "dynamics", "pilot", "encounter");

  /** Constants that no equation of a flight contains: how roots and starts are searched. */
  private static final Set<String> NO_PART_OF_A_FLIGHT =
      Set.of(
          "air.PowerLawWind.EXPONENT_OPEN_LAND",
          "air.SinusoidSum.FREQUENCY_ACCURACY",
          "air.StandardAtmosphere.PRESSURE_EXPONENT", // follow from others
          "air.StandardAtmosphere.TROPOPAUSE",
          "air.StandardAtmosphere.TROPOPAUSE_TEMPERATURE",
          "air.StandardAtmosphere.DENSITY_AT_SEA_LEVEL",
          "air.StandardAtmosphere.DENSITY_AT_TROPOPAUSE",
          "dynamics.Controls.ATTITUDE", // what is refused
          "dynamics.Controls.MINIMUM_COLLECTIVE",
          "dynamics.Controls.RATE",
          "dynamics.Angle.SMALL", // where a series takes over
          "dynamics.RotorTerm.SCALE_DIFFERENCE", // differences for the fast integrator
          "encounter.Approach.FASTEST_MARGIN", // how a descent that grazes the boundary is found
          "encounter.Approach.CAREFULLY", // errors of steps, as the tolerance
          "encounter.BulkFlight.LONGEST_LINGERING", // when a fast flight is flown again
          "encounter.BulkFlight.CAREFUL",
          "encounter.Descent.WATCHED_ROUGHLY",
          "inflow.Autorotation.DEEPEST", // ends of searches
          "inflow.HeaveDamping.WIDEST_SEARCH",
          "inflow.HoverUnits.WIDEST",
          "pilot.Delays.NINE_IN_TEN", // how people differ
          "pilot.Switched.ROUNDING");

  /** Classes whose constants are all of that kind. */
  private static final Set<String> SEARCHES =
      Set.of(
          "dynamics.Propagators",
          "dynamics.TrimSolver",
          "encounter.EdgeCheck",
          "encounter.StartHeight",
          "inflow.BandFinder",
          "inflow.MomentumRoots",
          "inflow.SlopeCheck",
          "inflow.TabulatedInflow",
          "inflow.TabulatedRing");

  private record Row(
      String name, String constant, String value, String unit, String range, String source) {

    double number() {
      return EquationsPageTest.number(value);
    }
  }

  /** A number as the page writes it: decimal, or products over one another. */
  private static double number(String text) {
    double result = Double.NaN;
    for (String part : text.split("/", -1)) {
      double product = 1;
      for (String factor : part.split("·", -1)) {
        product *= Double.parseDouble(factor);
      }
      result = Double.isNaN(result) ? product : result / product;
    }
    return result;
  }

  private static List<Row> rows(String page) {
    List<Row> rows = new ArrayList<>();
    for (String line : page.split("\n", -1)) {
      if (line.contains("<td><code>")) {
        List<String> cells = new ArrayList<>();
        Matcher cell = Pattern.compile("<td>(.*?)</td>").matcher(line);
        while (cell.find()) {
          cells.add(text(cell.group(1)));
        }
        assertEquals(7, cells.size(), line);
        rows.add(
            new Row(
                cells.get(1),
                cells.get(2),
                cells.get(3),
                cells.get(4),
                cells.get(5),
                cells.get(6)));
      }
    }
    return rows;
  }

  private static String text(String html) {
    return html.replaceAll("</?code>", "")
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&amp;", "&");
  }

  /** What a path such as {@code craft.EngineKind.PISTON.responseTime} leads to. */
  private static Object constant(String path) throws ReflectiveOperationException {
    String[] steps = path.split("\\.", -1);
    Class<?> type = Class.forName(ROOT + steps[0] + "." + steps[1]);
    Object at = null;
    for (String step : Arrays.asList(steps).subList(2, steps.length)) {
      Field field = type.getDeclaredField(step);
      assertTrue(at != null || Modifier.isStatic(field.getModifiers()), path);
      field.setAccessible(true);
      at = field.get(at);
      type = field.getType();
    }
    return at;
  }

  private static double toSi(double value, String symbol) {
    return Arrays.stream(Unit.values())
        .filter(unit -> unit.symbol().equals(symbol))
        .findFirst()
        .map(unit -> unit.toSi(value))
        .orElse(value);
  }

  /** What is wrong with a row; empty if nothing. */
  private static String fault(Row row) throws ReflectiveOperationException {
    Object constant = constant(row.constant());
    if (constant instanceof Parameter parameter) {
      String[] range = row.range().split(" to ", -1);
      String symbol = parameter.unit() == Unit.ONE ? "1" : parameter.unit().symbol();
      boolean right =
          row.number() == parameter.standard()
              && number(range[0]) == parameter.quantity().low()
              && number(range[1]) == parameter.quantity().high()
              && row.unit().equals(symbol)
              && row.name().equals(parameter.name())
              && row.source().equals(parameter.origin());
      return right ? "" : row + " is " + parameter;
    }
    double value = ((Number) constant).doubleValue();
    boolean right = toSi(row.number(), row.unit()) == value && !row.source().isEmpty();
    return right ? "" : row + " is " + value;
  }

  private static Set<String> needed() throws IOException, ReflectiveOperationException {
    Set<String> needed = new TreeSet<>();
    for (String folder : FLIGHT) {
      List<Path> files;
      try (Stream<Path> all = Files.list(SOURCES.resolve(ROOT.replace('.', '/') + folder))) {
        files = all.filter(file -> file.toString().endsWith(".java")).toList();
      }
      for (Path file : files) {
        String name = folder + "." + file.getFileName().toString().replace(".java", "");
        if (!name.endsWith("-info") && !SEARCHES.contains(name)) {
          for (Field field : Class.forName(ROOT + name).getDeclaredFields()) {
            Class<?> type = field.getType();
            if (Modifier.isStatic(field.getModifiers())
                && (type == double.class || type == Parameter.class)) {
              needed.add(name + "." + field.getName());
            }
          }
        }
      }
    }
    return needed;
  }

  @Test
  void everyNumberOnThePageIsThatOfTheCode() throws IOException, ReflectiveOperationException {
    List<Row> rows = rows(Files.readString(PAGE));
    List<String> faults = new ArrayList<>();
    for (Row row : rows) {
      String fault = fault(row);
      if (!fault.isEmpty()) {
        faults.add(fault);
      }
    }
    assertEquals("", String.join("\n", faults));
    assertTrue(rows.size() > 150, rows.size() + " rows were found");
  }

  @Test
  void everyConstantOfAFlightIsOnThePage() throws IOException, ReflectiveOperationException {
    Set<String> missing = needed();
    assertTrue(missing.containsAll(NO_PART_OF_A_FLIGHT), "an exception that does not exist");
    missing.removeAll(NO_PART_OF_A_FLIGHT);
    rows(Files.readString(PAGE)).forEach(row -> missing.remove(row.constant()));
    assertEquals("", String.join("\n", missing));
  }

  @Test
  void aWrongRowIsFound() throws ReflectiveOperationException {
    String cells = "<tr><td>ta</td><td>x</td><td><code>%s</code></td><td>%s</td><td>%s</td>";
    String rest = "<td></td><td>assumed</td></tr>";
    String longest = "encounter.ArrestWatch.LONGEST";
    assertEquals("", fault(rows(String.format(cells, longest, "10", "s") + rest).get(0)));
    assertTrue(!fault(rows(String.format(cells, longest, "11", "s") + rest).get(0)).isEmpty());
    assertTrue(!fault(rows(String.format(cells, longest, "10", "deg") + rest).get(0)).isEmpty());
    String time = "craft.CraftLimits.ATTITUDE_TIME";
    String ranged = rest.replace("<td></td>", "<td>0.1 to 2</td>");
    assertTrue(!fault(rows(String.format(cells, time, "0.35", "s") + ranged).get(0)).isEmpty());
  }
}
