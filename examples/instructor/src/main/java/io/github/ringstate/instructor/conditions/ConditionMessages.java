package io.github.ringstate.instructor.conditions;

import io.github.ringstate.files.report.Term;
import io.github.ringstate.sheets.message.Messages;
import java.util.List;

/** What is said of conditions. */
interface ConditionMessages {

  /** The words of {@code ConditionMessages.txt}. */
  ConditionMessages SAY = Messages.of(ConditionMessages.class);

  String loadAndAir(String mass, String pressureAltitude, String oat);

  String hover(String percent);

  String model(String name, String numbers, boolean fitted);

  String fit(
      String encounters,
      boolean several,
      String recordings,
      String formLow,
      String formHigh,
      boolean otherModel,
      String revision,
      String current);

  List<Term> conditions(
      String loadAndAir,
      String densityAltitude,
      String needed,
      String ofContinuous,
      String ofTakeOff,
      String continuous,
      String takeOff,
      boolean isShort);
}
