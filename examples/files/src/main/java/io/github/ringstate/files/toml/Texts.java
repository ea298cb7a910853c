package io.github.ringstate.files.toml;

import io.github.ringstate.files.error.UserError;

/** Where the texts that a user names come from. */
@FunctionalInterface
public interface Texts {

  /** From files, each read once. */
  Texts FILES = TextFile::read;

  /**
   * Reads a text.
   *
   * @param name the file, as the user named it
   * @param what what it should hold, for messages, with its article
   * @param largest the most bytes it may have
   * @return the text
   * @throws UserError if there is no such text, or it is too large
   */
  String read(String name, String what, int largest);
}
