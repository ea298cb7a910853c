package io.github.ringstate.pilot;

import io.github.ringstate.quantity.MadeOf;
import io.github.ringstate.quantity.ParameterSet;
import java.util.List;
import java.util.function.Function;

/** A recovery that its numbers say in full: of equal class and numbers, equal. */
public abstract class ByNumbers extends MadeOf implements Recovery {

  private final String name;
  private final ParameterSet numbers;
  private final List<Phase> phases;

  /**
   * Creates it.
   *
   * @param name one lower-case word, or several with hyphens
   * @param numbers a value for each of its parameters and no more
   * @param phases makes the phases of the numbers
   */
  protected ByNumbers(
      String name, ParameterSet numbers, Function<ParameterSet, List<Phase>> phases) {
    super(numbers);
    this.name = name;
    this.numbers = numbers;
    this.phases = phases.apply(numbers);
  }

  @Override
  public final ParameterSet numbers() {
    return numbers;
  }

  @Override
  public final String name() {
    return name;
  }

  @Override
  public final List<Phase> phases() {
    return phases;
  }
}
