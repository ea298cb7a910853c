package io.github.ringstate.instructor.boundary;

import io.github.ringstate.files.report.Term;
import io.github.ringstate.sheets.message.Messages;
import java.util.List;

/** What is said of the boundaries of the ring state. */
interface BoundaryMessages {

  /** The words of {@code BoundaryMessages.txt}. */
  BoundaryMessages SAY = Messages.of(BoundaryMessages.class);

  String flight(String entry, String recovery, String delay);

  String noFlight();

  String title(String craft, String mass, String densityAltitude);

  String description(
      String craft, String mass, String densityAltitude, String criteria, String flight);

  String shaded(String criterion);

  String drawn(String flight);

  String edgewise(String unit);

  String axial(String unit);

  List<Term> rotor(String hoverInduced, String knots, String discLoading);

  List<Term> teach(String sink, String airspeed, String slowest, boolean late);

  List<Term> definitions();

  List<Term> dataDefinitions();

  List<Term> pageDefinitions(boolean flown);
}
