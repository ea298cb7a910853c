package io.github.ringstate.instructor.option;

import io.github.ringstate.files.report.Term;
import io.github.ringstate.sheets.message.Messages;
import java.util.List;

/** What sheets say of a plan. */
interface PlanMessages {

  /** The words of {@code PlanMessages.txt}. */
  PlanMessages SAY = Messages.of(PlanMessages.class);

  String open();

  List<Term> planned(
      String place,
      String date,
      String registration,
      String crew,
      String technique,
      String heights,
      String other,
      String revision);
}
