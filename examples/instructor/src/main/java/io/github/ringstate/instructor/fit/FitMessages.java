package io.github.ringstate.instructor.fit;

import io.github.ringstate.files.report.Term;
import io.github.ringstate.sheets.message.Messages;
import java.util.List;

/** What is said of a fit. */
interface FitMessages {

  /** The words of {@code FitMessages.txt}. */
  FitMessages SAY = Messages.of(FitMessages.class);

  String fitted(
      String craft, String encounters, String chiSquare, String strain, String low, String high);

  String carried(String file);

  String skipped(String name, String verdict);

  List<Term> definitions();
}
