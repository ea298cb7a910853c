package io.github.ringstate.sheets.message;

import com.samskivert.mustache.Mustache;
import com.samskivert.mustache.Template;
import io.github.ringstate.files.report.Term;
import java.lang.reflect.Method;
import java.lang.reflect.Parameter;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Proxy;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Makes the interface of a subject speak the words of its file.
 *
 * <p>A method's name is that of its message, its parameters are what the message asks for: texts,
 * numbers, conditions, lists. A record stands for its parts, of which a message may leave some out.
 * A method gives a text, or a list of {@link Term terms}: a line with {@code |} begins a term, the
 * word before it, the meaning after it. How lines are broken in the file does not matter.
 *
 * <p>File and interface are held to each other before the first word is said: a method without a
 * message, a message without a method, a placeholder without a parameter, a parameter that no
 * placeholder asks for are errors.
 */
public final class Messages {

  private static final String THE_SAME = "this";

  private Messages() {}

  /**
   * Reads the messages of a subject.
   *
   * @param subject an interface with a text file of the same name beside it
   * @param <T> the interface
   * @return what speaks these messages
   * @throws IllegalStateException if interface and file do not fit
   */
  public static <T> T of(Class<T> subject) {
    MessageFile file = MessageFile.of(subject);
    Map<String, Template> templates = new HashMap<>();
    Set<String> unsaid = new TreeSet<>(file.names());
    for (Method method : subject.getDeclaredMethods()) {
      Template template = file.template(method.getName());
      templates.put(method.getName(), template);
      unsaid.remove(method.getName());
      unsaid.removeAll(check(method, template));
    }
    if (!unsaid.isEmpty()) {
      throw new IllegalStateException(subject.getSimpleName() + " never says " + unsaid);
    }
    return subject.cast(
        Proxy.newProxyInstance(
            subject.getClassLoader(),
            new Class<?>[] {subject},
            (proxy, method, arguments) -> {
              Template template = templates.get(method.getName());
              if (template == null) {
                throw new IllegalStateException(method + " is no message");
              }
              String text = template.execute(model(method, arguments));
              return method.getReturnType() == String.class ? oneLine(text) : terms(text);
            }));
  }

  /** Arguments by the names of their parameters; of a record the parts by theirs. */
  private static Map<String, Object> model(Method method, Object[] arguments)
      throws ReflectiveOperationException {
    Map<String, Object> model = new HashMap<>();
    Parameter[] parameters = method.getParameters();
    for (int i = 0; i < parameters.length; i++) {
      if (arguments[i] instanceof Record record) {
        for (RecordComponent part : record.getClass().getRecordComponents()) {
          part.getAccessor().setAccessible(true);
          model.put(part.getName(), plain(part.getAccessor().invoke(record)));
        }
      } else {
        model.put(parameters[i].getName(), plain(arguments[i]));
      }
    }
    return model;
  }

  /** A text of a user's begins no line, and hence no term. */
  private static Object plain(Object argument) {
    return argument instanceof String text ? text.replaceAll("\\R", " ") : argument;
  }

  private static String oneLine(String text) {
    return text.strip().replaceAll("\\s+", " ");
  }

  private static List<Term> terms(String text) {
    List<Term> terms = new ArrayList<>();
    for (String line : text.split("\n", -1)) {
      int bar = line.indexOf('|');
      if (bar >= 0) {
        terms.add(new Term(line.substring(0, bar).strip(), line.substring(bar + 1)));
      } else if (!line.isBlank()) {
        Term begun = terms.remove(terms.size() - 1);
        terms.add(new Term(begun.word(), begun.meaning() + " " + line));
      }
    }
    return terms.stream().map(term -> new Term(term.word(), oneLine(term.meaning()))).toList();
  }

  /** The other messages that one holds. */
  private static Set<String> check(Method method, Template template) {
    Set<String> given = new HashSet<>();
    Set<String> owed = new TreeSet<>();
    for (Parameter parameter : method.getParameters()) {
      if (!parameter.getType().isRecord()) {
        owed.add(parameter.getName());
        given.add(parameter.getName());
      }
      parts(parameter.getParameterizedType(), given);
    }
    Asked asked = new Asked(new TreeSet<>(), new HashSet<>());
    template.visit(asked);
    owed.removeAll(asked.names());
    Set<String> wanting = new TreeSet<>(asked.names());
    wanting.removeAll(given);
    if (!owed.isEmpty() || !wanting.isEmpty()) {
      throw new IllegalStateException(
          method.getDeclaringClass().getSimpleName()
              + "."
              + method.getName()
              + ": not given "
              + wanting
              + ", not asked for "
              + owed);
    }
    return asked.included();
  }

  /** The names of a record's parts, or of those of the records in a list. */
  private static void parts(Type type, Set<String> names) {
    if (type instanceof ParameterizedType list) {
      parts(list.getActualTypeArguments()[0], names);
    } else if (type instanceof Class<?> record && record.isRecord()) {
      for (RecordComponent part : record.getRecordComponents()) {
        names.add(part.getName());
        parts(part.getGenericType(), names);
      }
    }
  }

  /** What a template asks for, and which others it holds. */
  private record Asked(Set<String> names, Set<String> included) implements Mustache.Visitor {

    @Override
    public void visitText(String text) {
      // words ask for nothing
    }

    @Override
    public void visitVariable(String name) {
      if (!name.equals(THE_SAME)) {
        add(name);
      }
    }

    @Override
    public boolean visitInclude(String name) {
      return included.add(name);
    }

    @Override
    public boolean visitSection(String name) {
      add(name);
      return true;
    }

    @Override
    public boolean visitInvertedSection(String name) {
      add(name);
      return true;
    }

    /** Of a part within a part both are asked for; what begins with a hyphen is Mustache's own. */
    private void add(String name) {
      if (!name.startsWith("-")) {
        names.addAll(List.of(name.split("\\.", -1)));
      }
    }
  }
}
