package io.github.ringstate.dynamics;

/** Who commands the controls of a helicopter. */
@FunctionalInterface
public interface Commander {

  /**
   * Commands the controls at an instant. It is asked many times for instants that are tried and
   * thrown away while a step is worked out, so it must depend on nothing but that instant and on
   * what it was told between legs.
   *
   * @param seen the motion at this instant; not to be kept
   * @param controls where to put the commands; not to be kept
   */
  void command(Motion seen, Controls controls);
}
