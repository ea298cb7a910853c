package io.github.ringstate.instructor.sweep;

import io.github.ringstate.sheets.message.Messages;

/** What is said of a sweep beside its rows. */
interface SweepMessages {

  /** The words of {@code SweepMessages.txt}. */
  SweepMessages SAY = Messages.of(SweepMessages.class);

  String failed(long failed, long points);

  String progress(long flown, long points, String rate, String left);

  String interrupted(long kept, long points);
}
