package io.github.ringstate.instructor.fly;

import io.github.ringstate.files.report.Term;
import io.github.ringstate.instructor.pilots.Situation;
import io.github.ringstate.sheets.message.Messages;
import java.util.List;

/** What is said of one flight. */
interface FlyMessages {

  /** The words of {@code FlyMessages.txt}. */
  FlyMessages SAY = Messages.of(FlyMessages.class);

  List<Term> outcome(FlyFacts facts);

  String noEvents();

  List<Term> definitions(FlyFacts facts);

  List<Term> dataDefinitions(FlyFacts facts);

  List<Term> classroomHeading(Situation situation, FlyFacts facts);
}
