package io.github.ringstate.quantity;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A value that was made of parts: equal to another of the same class that was made of equal parts.
 * For immutable classes that keep something worked out beside what they were given, which a record
 * cannot.
 */
public abstract class MadeOf {

  private final List<Object> parts;

  /**
   * Keeps the parts.
   *
   * @param parts all that was given, each a value itself
   */
  protected MadeOf(Object... parts) {
    this.parts = List.of(parts);
  }

  @Override
  public final boolean equals(Object other) {
    return other instanceof MadeOf made
        && getClass() == made.getClass()
        && parts.equals(made.parts);
  }

  @Override
  public final int hashCode() {
    return 31 * getClass().getName().hashCode() + parts.hashCode();
  }

  /** The class with its parts, for people who look for an error. */
  @Override
  public String toString() {
    return parts.stream()
        .map(Object::toString)
        .collect(Collectors.joining(", ", getClass().getSimpleName() + "(", ")"));
  }
}
