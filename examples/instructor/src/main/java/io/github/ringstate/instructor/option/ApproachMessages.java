package io.github.ringstate.instructor.option;

import io.github.ringstate.sheets.message.Messages;

/** What is said of the way to the ring state and of the clock. */
interface ApproachMessages {

  /** The words of {@code ApproachMessages.txt}. */
  ApproachMessages SAY = Messages.of(ApproachMessages.class);

  String ground(String height);

  String wind(String speed, String from);

  String boundary();

  String cue(String lag, String sink, String margin);

  String limits(String sink, String airspeed);

  String limitsExceeded(String sink, String airspeed);
}
