package io.github.ringstate.validation.check;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * How many checks there are of each kind.
 *
 * @param checks the checks that are counted
 */
public record Tally(List<Check> checks) {

  /** Copies the list. */
  public Tally {
    checks = List.copyOf(checks);
  }

  /**
   * Counts the checks of some sections.
   *
   * @param sections the sections
   * @return their tally
   */
  public static Tally of(Collection<Section> sections) {
    return new Tally(sections.stream().flatMap(section -> section.checks().stream()).toList());
  }

  /**
   * Checks of one kind.
   *
   * @param kind the kind
   * @return how many there are
   */
  public long count(CheckKind kind) {
    return checks.stream().filter(check -> check.question().kind() == kind).count();
  }

  /**
   * Validations that count: their source can be found again, and their number was read and not
   * remembered.
   *
   * @return the checks, in order
   */
  public List<Check> counted() {
    return checks.stream().filter(check -> check.question().counts()).toList();
  }

  /**
   * How many of them each source gives.
   *
   * @return numbers by the source without its place, in alphabetical order
   */
  public Map<String, Long> bySource() {
    return counted().stream()
        .collect(
            Collectors.groupingBy(
                check -> check.question().source().work(), TreeMap::new, Collectors.counting()));
  }
}
