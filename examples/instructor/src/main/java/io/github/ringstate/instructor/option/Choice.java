package io.github.ringstate.instructor.option;

import io.github.ringstate.files.error.UserError;
import io.github.ringstate.pilot.Technique;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Things that users choose by name.
 *
 * @param option the option's name
 * @param things all that can be chosen
 * @param name the name of one
 * @param <T> what is chosen
 */
public record Choice<T>(String option, List<T> things, Function<T, String> name) {

  /** Copies the list. */
  public Choice {
    things = List.copyOf(things);
  }

  /**
   * Ways out of the ring state.
   *
   * @param option the option's name
   * @return the choice among all of them
   */
  public static Choice<Technique> waysOut(String option) {
    return new Choice<>(
        option, Technique.ALL.stream().filter(Technique::wayOut).toList(), Technique::name);
  }

  /**
   * Chooses one.
   *
   * @param text what was given
   * @return the thing of that name
   * @throws UserError if nothing has that name
   */
  public T one(String text) {
    String wanted = text.strip();
    return things.stream()
        .filter(thing -> name.apply(thing).equals(wanted))
        .findFirst()
        .orElseThrow(() -> UserError.option(option, text, names()));
  }

  /**
   * Chooses several.
   *
   * @param text names with commas between
   * @return the things, in the order given
   * @throws UserError if a name is unknown or stands twice, or there is none
   */
  public List<T> several(String text) {
    List<T> chosen = new ArrayList<>();
    for (String part : Lists.parts(option, text)) {
      T thing = one(part);
      if (chosen.contains(thing)) {
        throw Lists.twice(option, text, part);
      }
      chosen.add(thing);
    }
    return chosen;
  }

  private String names() {
    return String.join(", ", things.stream().map(name).toList());
  }
}
