package io.github.ringstate.instructor.plan;

import io.github.ringstate.files.report.Term;
import io.github.ringstate.sheets.message.Messages;
import java.util.List;

/** What is said in and of plans. */
interface PlanCommandMessages {

  /** The words of {@code PlanCommandMessages.txt}. */
  PlanCommandMessages SAY = Messages.of(PlanCommandMessages.class);

  String head();

  List<Term> definitions();

  String noRun();

  String written(String file);
}
