package io.github.ringstate.instructor.desk;

import io.github.ringstate.sheets.message.Messages;

/** What the desk says; the words of the page stand in the page. */
interface DeskMessages {

  /** The words of {@code DeskMessages.txt}. */
  DeskMessages SAY = Messages.of(DeskMessages.class);

  String head();

  String address(String address);

  String portTaken();

  String overtaken();

  String unknownKey(String part, String key);
}
