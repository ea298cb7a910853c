package io.github.ringstate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.Unit;
import java.io.IOException;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The comment of a parameter says default, range and unit: the pages of the library are all that
 * many readers see of it.
 */
class ParameterCommentsTest {

  private static final Path SOURCES = Path.of("src", "main", "java");

  /** What the comment of a parameter says. */
  private static String sentence(Parameter parameter) {
    String symbol = parameter.unit().symbol();
    String unit = symbol.isEmpty() ? "" : " " + symbol;
    return "Default "
        + number(parameter.standard())
        + unit
        + ", range "
        + number(parameter.quantity().low())
        + " to "
        + number(parameter.quantity().high())
        + (symbol.isEmpty() ? " (a pure number)." : unit + ".");
  }

  private static String number(double value) {
    // digits beyond the sixth are those of a fraction such as one seventh
    BigDecimal exact = BigDecimal.valueOf(value);
    BigDecimal shown = exact.round(new MathContext(6));
    return (exact.signum() == 0 ? BigDecimal.ZERO : shown.stripTrailingZeros()).toPlainString();
  }

  /** The text of the documentation comment before a constant, on one line; empty if none. */
  private static String comment(String source, String constant) {
    Matcher declared =
        Pattern.compile(
                "/\\*\\*((?:(?!\\*/).)*)\\*/\\s*(?:@\\w+\\s+)*(?:public\\s+|static\\s+|final\\s+)*"
                    + "Parameter\\s+"
                    + constant
                    + "\\s*=",
                Pattern.DOTALL)
            .matcher(source);
    return declared.find()
        ? declared.group(1).replaceAll("\\s*\\n\\s*\\*\\s?", " ").replaceAll("\\s+", " ").trim()
        : "";
  }

  private static List<Field> constants(Class<?> type) {
    List<Field> constants = new ArrayList<>();
    for (Field field : type.getDeclaredFields()) {
      if (field.getType() == Parameter.class
          && Modifier.isPublic(field.getModifiers())
          && Modifier.isStatic(field.getModifiers())) {
        constants.add(field);
      }
    }
    for (Class<?> inner : type.getDeclaredClasses()) {
      constants.addAll(constants(inner));
    }
    return constants;
  }

  @Test
  void theCommentOfEveryParameterSaysItsDefaultItsRangeAndItsUnit()
      throws IOException, ReflectiveOperationException {
    List<Path> files;
    try (Stream<Path> all = Files.walk(SOURCES)) {
      files = all.filter(file -> file.toString().endsWith(".java")).sorted().toList();
    }
    List<String> wrong = new ArrayList<>();
    int checked = 0;
    for (Path file : files) {
      String name = SOURCES.relativize(file).toString().replace(".java", "");
      if (name.endsWith("-info")) {
        continue;
      }
      String source = Files.readString(file);
      for (Field field : constants(Class.forName(name.replaceAll("[/\\\\]", ".")))) {
        field.setAccessible(true);
        checked++;
        String expected = sentence((Parameter) field.get(null));
        if (!comment(source, field.getName()).contains(expected)) {
          wrong.add(file + " " + field.getName() + ": " + expected);
        }
      }
    }
    assertEquals("", String.join("\n", wrong));
    assertTrue(checked > 80, checked + " parameters were found");
  }

  @Test
  void aCommentIsReadAsItStands() {
    Parameter speed = Parameter.of("speed", Unit.KNOT, -0.5, 100, 1.0 / 7, "assumed");
    assertEquals("Default 0.142857 kt, range -0.5 to 100 kt.", sentence(speed));
    Parameter ratio = Parameter.of("ratio", Unit.ONE, 0, 1e-4, 0, "assumed");
    assertEquals("Default 0, range 0 to 0.0001 (a pure number).", sentence(ratio));
    String source =
        """
          /** Another. */
          public static final Parameter OTHER = null;

          /**
           * How fast. Default 0.142857 kt,
           * range -0.5 to 100 kt.
           */
          public static final Parameter SPEED =
              Parameter.of();

          // no comment
          public static final Parameter BARE = null;
        """;
    assertTrue(comment(source, "SPEED").endsWith(sentence(speed)), comment(source, "SPEED"));
    assertFalse(comment(source, "OTHER").contains("Default"));
    assertEquals("", comment(source, "BARE"));
    assertEquals("", comment(source, "NONE"));
  }
}
