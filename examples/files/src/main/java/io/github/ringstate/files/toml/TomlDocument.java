package io.github.ringstate.files.toml;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.toml.TomlMapper;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.text.Unprintable;
import io.github.ringstate.files.toml.Statements.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A TOML document that can say on which line a key stands.
 *
 * <p>The parser builds a tree and forgets the lines. They are found again, only when there is
 * something to complain of: statement by statement, each that may hold the key is parsed alone.
 */
public final class TomlDocument {

  private static final TomlMapper MAPPER = new TomlMapper();
  private static final int LONGEST_PLAIN = 30;

  private final String file;
  private final String text;
  private final JsonNode written;
  private final JsonNode tree;
  private final RenamedKeys renamed;

  private TomlDocument(String file, String text, JsonNode written, RenamedKeys renamed) {
    this.file = file;
    this.text = text;
    this.written = written;
    this.renamed = renamed;
    tree = renamed.applied(file, written);
  }

  /**
   * Parses a document.
   *
   * @param file the file's name, for messages
   * @param text the document
   * @param renamed keys that may stand under an old name
   * @return the document, its keys under their new names
   * @throws UserError if it is no TOML, or a key stands under both names
   */
  public static TomlDocument parse(String file, String text, RenamedKeys renamed) {
    TomlDocument document;
    try {
      document = new TomlDocument(file, text, MAPPER.readTree(text), renamed);
    } catch (JsonProcessingException bad) {
      Statement wrong = wrong(text, bad);
      String start = wrong.text().lines().findFirst().orElse("").strip();
      throw UserError.line(
          file, wrong.line(), UserError.quoted(start) + " is not valid TOML: " + why(bad));
    }
    document.refuseUnprintable(List.of(), document.tree);
    return document;
  }

  /** Texts reach terminals, pages and sheets, so what cannot be printed there is refused here. */
  private void refuseUnprintable(List<String> path, JsonNode node) {
    OptionalInt found =
        node.isTextual() ? Unprintable.first(node.textValue()) : OptionalInt.empty();
    if (found.isPresent()) {
      throw refused(
          path,
          String.join(".", path) + " holds " + Unprintable.name(found.getAsInt()),
          "characters that can be printed");
    }
    for (JsonNode element : node.isArray() ? node : List.<JsonNode>of()) {
      refuseUnprintable(path, element);
    }
    for (Map.Entry<String, JsonNode> entry : node.properties()) {
      refuseUnprintable(below(path, entry.getKey()), entry.getValue());
    }
  }

  /** What the parser says, without the classes in which it failed. */
  private static String why(JsonProcessingException bad) {
    return String.valueOf(bad.getOriginalMessage()).replaceFirst("(?s), problem: .*", "");
  }

  /** The statement that is no TOML. The parser may see it only behind its end. */
  private static Statement wrong(String text, JsonProcessingException bad) {
    int seen = bad.getLocation() == null ? 0 : bad.getLocation().getLineNr();
    Statement wrong = new Statement(0, 0, "");
    List<Statement> before =
        Statements.of(text).stream().filter(statement -> statement.line() <= seen).toList();
    for (int i = before.size() - 1; i >= 0; i--) {
      wrong = before.get(i);
      try {
        MAPPER.readTree(text.substring(0, wrong.start()));
        return wrong;
      } catch (JsonProcessingException earlier) {
        // the text was wrong before this statement
      }
    }
    return wrong;
  }

  /**
   * What to say of keys that stand under an old name.
   *
   * @return a sentence for each, with its line and its new name
   */
  public List<String> notices() {
    List<String> notices = new ArrayList<>();
    for (String table : names(written)) {
      for (String key : names(written.path(table))) {
        String now = renamed.names().get(key);
        if (now != null) {
          notices.add(
              UserError.at(file, line(List.of(table, key), RenamedKeys.NONE))
                  + table
                  + "."
                  + key
                  + " is called "
                  + now
                  + " now; it was read, but please write the new name");
        }
      }
    }
    return notices;
  }

  /**
   * The keys of a table.
   *
   * @param table the keys that lead to it; none for the keys at the top
   * @return the keys, in order; none if there is no such table
   */
  public List<String> keys(String... table) {
    return names(at(tree, List.of(table)));
  }

  /**
   * Refuses what stands at the top beside some words and tables.
   *
   * @param words the keys of single values
   * @param tables the keys of tables
   * @throws UserError if there is another key, or one of a table holds none
   */
  public void onlyAtTheTop(List<String> words, List<String> tables) {
    for (String key : keys()) {
      if (!words.contains(key) && !tables.contains(key)) {
        throw unknown(
            List.of(key),
            String.join(", ", words)
                + ", and the tables "
                + tables.stream().map(table -> "[" + table + "]").collect(Collectors.joining(" ")));
      }
      if (tables.contains(key) && !isTable(key)) {
        throw bad(List.of(key), "a table, [" + key + "]");
      }
    }
  }

  /**
   * Refuses what a table holds beside some keys.
   *
   * @param table the keys that lead to the table, which may be missing
   * @param known the keys that it may hold
   * @throws UserError if it holds another
   */
  public void onlyKeys(List<String> table, List<String> known) {
    for (String key : names(at(tree, table))) {
      if (!known.contains(key)) {
        throw unknown(below(table, key), String.join(", ", known));
      }
    }
  }

  /**
   * The path to a key of a table.
   *
   * @param table the keys that lead to the table
   * @param key the key in it
   * @return the keys that lead there
   */
  public static List<String> below(List<String> table, String key) {
    return Stream.concat(table.stream(), Stream.of(key)).toList();
  }

  /**
   * Whether a key at the top holds a table.
   *
   * @param key the key
   * @return true if it does
   */
  public boolean isTable(String key) {
    return tree.path(key).isObject();
  }

  /**
   * Whether a key is there.
   *
   * @param path the keys that lead there
   * @return true if it has a value
   */
  public boolean has(List<String> path) {
    return !at(tree, path).isMissingNode();
  }

  /**
   * The value of a key.
   *
   * @param path the keys that lead there
   * @param allowed what is allowed, for the message
   * @return the value
   * @throws UserError if the key is missing
   */
  public JsonNode get(List<String> path, String allowed) {
    JsonNode value = at(tree, path);
    if (value.isMissingNode()) {
      throw refusedAsWhole(String.join(".", path) + " is missing", allowed);
    }
    return value;
  }

  /**
   * A text in a form of its own.
   *
   * @param path the keys that lead there
   * @param form what it must match as a whole
   * @param allowed what is allowed, for the message
   * @return the text
   * @throws UserError if the key is missing or holds no such text
   */
  public String text(List<String> path, Pattern form, String allowed) {
    JsonNode node = get(path, allowed);
    if (!node.isTextual() || !form.matcher(node.textValue()).matches()) {
      throw bad(path, allowed);
    }
    return node.textValue();
  }

  /**
   * A number in a range.
   *
   * @param path the keys that lead there
   * @param low least number
   * @param high greatest number
   * @param allowed what is allowed, for the message
   * @return the number; a zero without a sign, which has no meaning in a file
   * @throws UserError if the key is missing or holds no such number
   */
  public double number(List<String> path, double low, double high, String allowed) {
    JsonNode node = get(path, allowed);
    double value = node.isNumber() ? node.doubleValue() : Double.NaN;
    if (!(value >= low && value <= high)) {
      throw bad(path, allowed);
    }
    return value + 0.0;
  }

  /**
   * One of some things by its label.
   *
   * @param path the keys that lead to the label
   * @param things what there is
   * @param label the label of each
   * @param <T> kind of thing
   * @return the thing
   * @throws UserError if the key is missing or holds no label
   */
  public <T> T choice(List<String> path, T[] things, Function<T, String> label) {
    String allowed =
        Stream.of(things)
            .map(thing -> '"' + label.apply(thing) + '"')
            .collect(Collectors.joining(" or "));
    return labelled(get(path, allowed), things, label).orElseThrow(() -> bad(path, allowed));
  }

  /**
   * One of some things by its label.
   *
   * @param text what holds the label
   * @param things what there is
   * @param label the label of each
   * @param <T> kind of thing
   * @return the thing; empty if the value is no label
   */
  public static <T> Optional<T> labelled(JsonNode text, T[] things, Function<T, String> label) {
    return Stream.of(things)
        .filter(thing -> text.isTextual() && label.apply(thing).equals(text.textValue()))
        .findFirst();
  }

  /**
   * What to say of a bad value.
   *
   * @param path the keys that lead to it
   * @param allowed what is allowed
   * @return the user error, with line, key, value and what is allowed
   */
  public UserError bad(List<String> path, String allowed) {
    String value = UserError.quoted(written(at(tree, path)));
    return refused(path, String.join(".", path) + " cannot be " + value, allowed);
  }

  /** A value about as it is written in the file. */
  private static String written(JsonNode node) {
    if (node.isTextual()) {
      return node.textValue();
    }
    if (node.isBigDecimal() && Math.abs(node.decimalValue().scale()) < LONGEST_PLAIN) {
      return node.decimalValue().toPlainString();
    }
    if (node.isDouble()) { // the parser makes doubles of nan and inf only
      return Double.isNaN(node.doubleValue()) ? "nan" : node.doubleValue() > 0 ? "inf" : "-inf";
    }
    return node.toString();
  }

  /**
   * What to say of a key that nobody knows.
   *
   * @param path the keys that lead to it, its own the last
   * @param allowed what is allowed
   * @return the user error
   */
  public UserError unknown(List<String> path, String allowed) {
    return refused(path, "unknown key " + UserError.quoted(String.join(".", path)), allowed);
  }

  /**
   * What to say of something at a key.
   *
   * @param path the keys that lead to it
   * @param what what is wrong
   * @param allowed what is allowed
   * @return the user error
   */
  public UserError refused(List<String> path, String what, String allowed) {
    return UserError.line(file, line(path, renamed), what + UserError.ALLOWED + allowed);
  }

  /**
   * What to say of the document as a whole.
   *
   * @param what what is wrong
   * @param allowed what is allowed
   * @return the user error
   */
  public UserError refusedAsWhole(String what, String allowed) {
    return UserError.line(file, 0, what + UserError.ALLOWED + allowed);
  }

  /** The line of the first statement that sets a key or something below it; 0 if none does. */
  private int line(List<String> path, RenamedKeys names) {
    JsonNode header = MAPPER.createObjectNode();
    for (Statement statement : Statements.of(text)) {
      boolean opensTable = statement.text().stripLeading().startsWith("[");
      if (!opensTable && !names.mayHold(statement.text(), path.get(path.size() - 1))) {
        continue;
      }
      try {
        JsonNode alone = MAPPER.readTree(statement.text() + "\n");
        header = opensTable ? alone : header;
        JsonNode whole = opensTable ? alone : under(header, alone);
        if (!at(names.applied(file, whole), path).isMissingNode()) {
          return statement.line();
        }
      } catch (JsonProcessingException wrong) {
        // whatever it is, the key stands elsewhere
      }
    }
    return 0;
  }

  /** What stands below the header of a table, as it would stand in the whole document. */
  private static JsonNode under(JsonNode header, JsonNode content) {
    if (!header.isObject() || header.isEmpty()) {
      return content;
    }
    Map.Entry<String, JsonNode> table = header.properties().iterator().next();
    return MAPPER.createObjectNode().set(table.getKey(), under(table.getValue(), content));
  }

  private static JsonNode at(JsonNode root, List<String> path) {
    JsonNode node = root;
    for (String key : path) {
      node = node.path(key);
    }
    return node;
  }

  private static List<String> names(JsonNode node) {
    return node.properties().stream().map(Map.Entry::getKey).toList();
  }
}
