package io.github.ringstate.instructor.pilots;

import io.github.ringstate.files.report.Term;
import io.github.ringstate.sheets.message.Messages;
import java.util.List;

/** What tables of losses, floors and flights say alike. */
interface PilotMessages {

  /** The words of {@code PilotMessages.txt}. */
  PilotMessages SAY = Messages.of(PilotMessages.class);

  List<Term> situation(Situation situation);

  String pilots(
      String count,
      String asked,
      boolean precise,
      String seed,
      String varying,
      boolean even,
      boolean disturbed);

  String delays(String median, String ninety);

  String spread(String numbers);

  String disturbances(String strengths, boolean gusts);

  String onset();

  String interval(boolean even);

  String reached(
      String least, String greatest, String unit, boolean open, String asked, String missed);

  String way(String ahead, boolean isAhead, String side, boolean isRight);

  String wayWithTorque(String way, String torque);

  String noWay();

  String obstacles();

  String pedals();

  String compared(boolean worse, String later);

  String models(String draws, String kept, String percent, String least, String most);
}
