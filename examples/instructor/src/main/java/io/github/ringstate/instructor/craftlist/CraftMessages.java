package io.github.ringstate.instructor.craftlist;

import io.github.ringstate.files.report.Term;
import io.github.ringstate.sheets.message.Messages;
import java.util.List;

/** What is said of craft. */
interface CraftMessages {

  /** The words of {@code CraftMessages.txt}. */
  CraftMessages SAY = Messages.of(CraftMessages.class);

  List<Term> listDefinitions();

  List<Term> definitions();

  String copy();
}
