package io.github.ringstate.instructor.floor;

import io.github.ringstate.files.report.Term;
import io.github.ringstate.instructor.pilots.Situation;
import io.github.ringstate.sheets.message.Messages;
import java.util.List;

/** What is said of floors. */
interface FloorMessages {

  /** The words of {@code FloorMessages.txt}. */
  FloorMessages SAY = Messages.of(FloorMessages.class);

  String noRingState();

  String lowest(String share, String margin, String states);

  String none();

  String with(String height, String way, AlikeFacts facts);

  String nothingFlown();

  String verdict(String order, String reason);

  String brief(String way, String below, String floor);

  String briefed(
      String way, String count, String most, String others, String belowFloor, AlikeFacts facts);

  String doNotFly(String least);

  String cannotTell(String pilots, boolean models);

  String notShown(
      String way, String count, String limit, String most, boolean models, String enough);

  String refused(
      String way,
      String count,
      String others,
      String limit,
      String wanted,
      boolean never,
      String margin);

  String count(String down, String pilots, String percent);

  String countWith(String count, String way);

  String briefingFor(String height);

  String notEvenAtOnce();

  String orMore(String seconds);

  List<Term> sheetHeading(Situation situation);

  List<Term> sheetOrigin(Situation situation, FloorFacts facts);

  List<Term> sheetDefinitions(FloorFacts facts);

  List<Term> definitions(FloorFacts facts, List<Term> states);

  List<Term> dataDefinitions(FloorFacts facts, String clock, List<Term> states);
}
