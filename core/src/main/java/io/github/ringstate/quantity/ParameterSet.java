package io.github.ringstate.quantity;

import java.util.Arrays;
import java.util.List;

/**
 * Values for a list of parameters: immutable, every value within its range.
 *
 * <p>Values are held in each parameter's own unit; {@link #si} converts.
 */
public final class ParameterSet {

  /** No parameters. */
  public static final ParameterSet NONE = new ParameterSet(List.of(), new double[0]);

  private final List<Parameter> parameters;
  private final double[] values;

  private ParameterSet(List<Parameter> parameters, double[] values) {
    this.parameters = parameters;
    this.values = values;
  }

  /**
   * The standard values of some parameters.
   *
   * @param parameters the parameters; no two may share a name
   * @return the set
   * @throws IllegalArgumentException if two parameters share a name
   */
  public static ParameterSet standard(List<Parameter> parameters) {
    List<Parameter> copy = List.copyOf(parameters);
    double[] values = new double[copy.size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = copy.get(i).standard();
      for (int j = 0; j < i; j++) {
        if (copy.get(j).name().equals(copy.get(i).name())) {
          throw new IllegalArgumentException("two parameters share a name");
        }
      }
    }
    return new ParameterSet(copy, values);
  }

  /**
   * The parameters, in order.
   *
   * @return an unmodifiable list
   */
  public List<Parameter> parameters() {
    return parameters;
  }

  /**
   * A parameter's value in the parameter's own unit.
   *
   * @param parameter one of {@link #parameters()}
   * @return the value, in {@code parameter.unit()}
   * @throws IllegalArgumentException if the set does not hold the parameter
   */
  public double get(Parameter parameter) {
    return values[index(parameter)];
  }

  /**
   * A parameter's value in SI units.
   *
   * @param parameter one of {@link #parameters()}
   * @return the value, in SI units
   * @throws IllegalArgumentException if the set does not hold the parameter
   */
  public double si(Parameter parameter) {
    return parameter.unit().toSi(get(parameter));
  }

  /**
   * The same set with one value changed.
   *
   * @param parameter one of {@link #parameters()}
   * @param value the new value, in the parameter's own unit
   * @return the new set
   * @throws OutOfRangeException if the value is outside the parameter's range or not a number
   * @throws IllegalArgumentException if the set does not hold the parameter; one that only shares
   *     its name is not it
   */
  public ParameterSet with(Parameter parameter, double value) {
    return with(index(parameter), value);
  }

  /**
   * The same set with one value changed.
   *
   * @param name the parameter's name
   * @param value the new value, in the parameter's own unit
   * @return the new set
   * @throws OutOfRangeException if the value is outside the parameter's range or not a number
   * @throws IllegalArgumentException if the set holds no parameter of that name
   */
  public ParameterSet with(String name, double value) {
    return with(index(name), value);
  }

  /**
   * Some of the values.
   *
   * @param wanted the parameters to keep, in the order wanted
   * @return a set of these alone
   * @throws IllegalArgumentException if the set does not hold one of them
   */
  public ParameterSet only(List<Parameter> wanted) {
    return parameters.equals(wanted)
        ? this
        : new ParameterSet(List.copyOf(wanted), wanted.stream().mapToDouble(this::get).toArray());
  }

  private ParameterSet with(int index, double value) {
    parameters.get(index).quantity().check(value);
    double[] changed = values.clone();
    changed[index] = value + 0.0; // zero has no sign, so that equal values are equal
    return new ParameterSet(parameters, changed);
  }

  private int index(Parameter parameter) {
    int index = index(parameter.name());
    if (!parameters.get(index).equals(parameter)) {
      throw new IllegalArgumentException(
          "the parameter '" + parameter.name() + "' here is another of the same name");
    }
    return index;
  }

  private int index(String name) {
    for (int i = 0; i < values.length; i++) {
      if (parameters.get(i).name().equals(name)) {
        return i;
      }
    }
    throw new IllegalArgumentException("there is no parameter '" + name + "' here");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ParameterSet set
        && parameters.equals(set.parameters)
        && Arrays.equals(values, set.values);
  }

  @Override
  public int hashCode() {
    return 31 * parameters.hashCode() + Arrays.hashCode(values);
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < values.length; i++) {
      text.append(i == 0 ? "" : ", ")
          .append(parameters.get(i).key())
          .append(" = ")
          .append(values[i]);
    }
    return text.toString();
  }
}
