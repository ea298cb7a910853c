package io.github.ringstate.validation.check;

import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Where an expectation comes from. Parts that are unknown are empty.
 *
 * @param author who wrote it
 * @param title its title
 * @param number report, volume or edition
 * @param year year of publication
 * @param place equation, table, chapter or page, or what was read in it
 */
public record Source(String author, String title, String number, String year, String place) {

  /**
   * The same work, another place in it.
   *
   * @param newPlace equation, table, chapter or page
   * @return the source
   */
  public Source at(String newPlace) {
    return new Source(author, title, number, year, newPlace);
  }

  /**
   * The work without the place.
   *
   * @return author, title, number and year in one line
   */
  public String work() {
    return joined(Stream.of(author, title, number, year));
  }

  /**
   * Work and place.
   *
   * @return one line
   */
  public String full() {
    return joined(Stream.of(author, title, number, year, place));
  }

  /**
   * Whether a reader can find the work: it has an author, a title, and a report number, journal,
   * publisher or edition.
   *
   * @return true if so
   */
  public boolean citable() {
    return !author.isEmpty() && !title.isEmpty() && !number.isEmpty();
  }

  /**
   * Asks for a value that the work states.
   *
   * @param name one line that tells the check from all others
   * @param quantity what is compared
   * @param unit its unit; {@code 1} for a pure number
   * @return a verification by a number from memory, until it is said that it was read
   */
  public Question published(String name, String quantity, String unit) {
    return ask(name, quantity, unit, ComparedWith.PUBLISHED_VALUE, Obtained.FROM_MEMORY);
  }

  /**
   * Asks for what a formula of the work gives.
   *
   * @param name one line that tells the check from all others
   * @param quantity what is compared
   * @param unit its unit; {@code 1} for a pure number
   * @return a verification by a number worked out anew
   */
  public Question closedForm(String name, String quantity, String unit) {
    return ask(name, quantity, unit, ComparedWith.CLOSED_FORM, Obtained.COMPUTED);
  }

  /**
   * Asks for what an independent method gives.
   *
   * @param name one line that tells the check from all others
   * @param quantity what is compared
   * @param unit its unit; {@code 1} for a pure number
   * @return a verification by a number worked out anew
   */
  public Question secondMethod(String name, String quantity, String unit) {
    return ask(name, quantity, unit, ComparedWith.SECOND_METHOD, Obtained.COMPUTED);
  }

  /**
   * Asks for what the trade holds.
   *
   * @param name one line that tells the check from all others
   * @param quantity what is compared
   * @param unit its unit; {@code 1} for a pure number
   * @return a verification by a number from memory
   */
  public Question commonPractice(String name, String quantity, String unit) {
    return ask(name, quantity, unit, ComparedWith.COMMON_PRACTICE, Obtained.FROM_MEMORY);
  }

  private Question ask(
      String name, String quantity, String unit, ComparedWith with, Obtained obtained) {
    return new Question(name, quantity, unit, CheckKind.VERIFICATION, with, obtained, this);
  }

  private static String joined(Stream<String> parts) {
    return parts.filter(part -> !part.isEmpty()).collect(Collectors.joining(", "));
  }
}
