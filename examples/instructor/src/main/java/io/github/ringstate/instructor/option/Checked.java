package io.github.ringstate.instructor.option;

/** A command that can be asked whether its options make sense before anything is flown. */
public interface Checked {

  /**
   * Builds the request and flies nothing.
   *
   * @throws io.github.ringstate.files.error.UserError if an option is wrong
   */
  void check();
}
