package io.github.ringstate.sheets.message;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.samskivert.mustache.Mustache;
import com.samskivert.mustache.Template;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The texts of one subject. A line that begins with {@code ==} names a message, whose text follows;
 * what stands above the first is for editors. A text may hold another by its name: <code>
 * {{&gt;name}}</code>.
 *
 * @param texts the texts by their names
 */
public record MessageFile(Map<String, String> texts) {

  private static final Pattern NAME = Pattern.compile("== *([A-Za-z][\\w-]*) *");

  /**
   * Reads the file beside a class.
   *
   * @param type the class, of the same name as the file
   * @return the texts
   * @throws IllegalStateException if there is no such file, or it has a name twice
   */
  public static MessageFile of(Class<?> type) {
    String file = type.getSimpleName() + ".txt";
    Map<String, StringBuilder> texts = new LinkedHashMap<>();
    try (InputStream in = type.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalStateException("the messages " + file + " are missing from the tool");
      }
      StringBuilder text = new StringBuilder();
      for (String line : new BufferedReader(new InputStreamReader(in, UTF_8)).lines().toList()) {
        Matcher name = NAME.matcher(line);
        if (name.matches()) {
          text = new StringBuilder();
          if (texts.put(name.group(1), text) != null) {
            throw new IllegalStateException(file + " has " + name.group(1) + " twice");
          }
        } else {
          text.append(line).append('\n');
        }
      }
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
    Map<String, String> read = new LinkedHashMap<>();
    texts.forEach((name, text) -> read.put(name, text.toString().strip()));
    return new MessageFile(read);
  }

  /**
   * What there is to say.
   *
   * @return the names of the texts, in the order of the file
   */
  public Set<String> names() {
    return texts.keySet();
  }

  /**
   * A text ready to be filled in; what it asks for and is not given is an error.
   *
   * @param name the name of the text
   * @return the text
   */
  public Template template(String name) {
    return Mustache.compiler()
        .escapeHTML(false)
        .emptyStringIsFalse(true)
        .strictSections(true)
        .withLoader(other -> new StringReader(text(other)))
        .compile(text(name));
  }

  private String text(String name) {
    String text = texts.get(name);
    if (text == null) {
      throw new IllegalStateException("there is no message " + name);
    }
    return text;
  }
}
