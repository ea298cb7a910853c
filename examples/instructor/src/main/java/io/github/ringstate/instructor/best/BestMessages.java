package io.github.ringstate.instructor.best;

import io.github.ringstate.files.report.Term;
import io.github.ringstate.sheets.message.Messages;
import java.util.List;

/** What is said of the best recovery. */
interface BestMessages {

  /** The words of {@code BestMessages.txt}. */
  BestMessages SAY = Messages.of(BestMessages.class);

  String title(String craft, String mass, String densityAltitude);

  String description(String craft, String mass, String densityAltitude, String delay);

  String modelResult();

  List<Term> searched(String entry, String power);

  List<Term> definitions();

  List<Term> dataDefinitions();
}
