package io.github.ringstate.instructor.sensitivity;

import io.github.ringstate.files.report.Term;
import io.github.ringstate.sheets.message.Messages;
import java.util.List;

/** What is said of sensitivities. */
interface SensitivityMessages {

  /** The words of {@code SensitivityMessages.txt}. */
  SensitivityMessages SAY = Messages.of(SensitivityMessages.class);

  String title(String craft, String recovery, String delay);

  String description(String craft, String recovery, String delay, String base);

  String shown(String shown, String all);

  List<Term> flown(String entry, String recovery, String delay, String base);

  List<Term> definitions();

  List<Term> dataDefinitions();
}
