package io.github.ringstate.instructor.manual;

import io.github.ringstate.files.report.Term;
import io.github.ringstate.sheets.message.Messages;
import java.util.List;

/** What is said of a craft made from a manual. */
interface ManualMessages {

  /** The words of {@code ManualMessages.txt}. */
  ManualMessages SAY = Messages.of(ManualMessages.class);

  String description();

  String how();

  String notFound();

  String notGiven();

  String ceiling(String mass, String warmer);

  String climb(String speed);

  String autorotation(String speed);

  String ceilingHigh();

  String ceilingLow();

  String climbHigh();

  String climbLow();

  String descentHigh();

  String descentLow();

  String agrees();

  String implausible(String what, String value, String low, String high);

  List<Term> definitions();
}
