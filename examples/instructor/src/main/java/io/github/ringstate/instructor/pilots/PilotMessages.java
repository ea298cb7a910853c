package io.github.ringstate.instructor.pilots;

import io.github.ringstate.files.report.Term;
import io.github.ringstate.sheets.message.Messages;
import java.util.List;

/** What tables of losses, floors and flights say alike. */
interface PilotMessages {

  /** The words of {@code PilotMessages.txt}. */
  PilotMessages SAY = Messages.of(PilotMessages.class);

  List<Term> situation(Situation situation);

  String pilots(int count, long seed, String varying);

  String delays(String median, String ninety);

  String spread(String numbers);

  String disturbances(String strengths, boolean gusts);

  String onset();

  String interval();

  String models(String draws, String kept, String percent);
}
