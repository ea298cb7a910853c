package io.github.ringstate.instructor.equilibria;

import io.github.ringstate.files.report.Term;
import io.github.ringstate.sheets.message.Messages;
import java.util.List;

/** What is said of steady descents. */
interface EquilibriaMessages {

  /** The words of {@code EquilibriaMessages.txt}. */
  EquilibriaMessages SAY = Messages.of(EquilibriaMessages.class);

  String title(String craft, String mass, String densityAltitude);

  String description(
      String craft, String mass, String densityAltitude, String airspeed, boolean flown);

  String noFold();

  String jumps(String down, String up);

  List<Term> held(String airspeed);

  List<Term> definitions();

  List<Term> dataDefinitions();
}
