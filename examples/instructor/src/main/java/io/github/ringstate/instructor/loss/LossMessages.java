package io.github.ringstate.instructor.loss;

import io.github.ringstate.files.report.Term;
import io.github.ringstate.instructor.pilots.Situation;
import io.github.ringstate.sheets.message.Messages;
import java.util.List;

/** What is said of losses. */
interface LossMessages {

  /** The words of {@code LossMessages.txt}. */
  LossMessages SAY = Messages.of(LossMessages.class);

  String untilRing(String seconds, boolean later);

  String openByFit(String ways);

  String openWay(String way, String delay, String whole, String numbers, String unit);

  String noRingState();

  String costs(String costs);

  String cost(String cost, String unit, String way, String upTo);

  String least(String ways, boolean tied);

  String losesLeast(String way, String delays);

  String at(String delays, boolean every);

  String onTheGround(String delays);

  String arrestedAtNoDelay();

  String notArrested(String delays);

  String arrestDoesNotLast(String delays);

  String lossAt(String loss, String delay);

  String loses(String first, String last);

  String onlyLoss(String way, String loss);

  String mistaken(String way, String spare, boolean more, String outcomes);

  String nothing(String outcomes);

  String most(String recoveries);

  String mostAt(String loss, boolean met, boolean ground, String arrested, String delay);

  List<Term> sheetHeading(Situation situation, LossFacts facts);

  List<Term> heading(LossFacts facts);

  List<Term> definitions(LossFacts facts);

  List<Term> sheetDefinitions(LossFacts facts);

  List<Term> dataDefinitions(Situation situation, LossFacts facts);

  String condition(
      String mass, String densityAltitude, String pressureAltitude, String temperature);

  String emptyPlot();

  String spread();

  String againstDelay();

  String flights(String delay, String start);
}
