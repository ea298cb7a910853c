package io.github.ringstate.instructor.review;

import io.github.ringstate.files.report.Term;
import io.github.ringstate.sheets.message.Messages;
import java.util.List;

/** What is said of recorded flights. */
interface ReviewMessages {

  /** The words of {@code ReviewMessages.txt}. */
  ReviewMessages SAY = Messages.of(ReviewMessages.class);

  List<Term> situation(
      String name,
      boolean invented,
      String format,
      String columns,
      String readings,
      String seconds,
      String start,
      String craft,
      String wind,
      String ground,
      String below,
      String steps,
      String coarse,
      String unsure,
      String low,
      String high);

  String step(String change, boolean up, String second);

  String invented();

  String wind(String speed, String from, String deviation, String source, boolean known);

  String none(boolean known);

  String descent(
      String onset,
      String height,
      String sink,
      String moved,
      String channel,
      String recovery,
      String loss,
      String deviation,
      String peak,
      String arrest,
      String verdict);

  String model(
      boolean begun,
      String entry,
      String wind,
      String recovery,
      boolean recoverySeen,
      String delay,
      boolean delaySeen,
      String loss,
      boolean met,
      String oneMore,
      String twoMore,
      String doubt);

  String doubt(boolean known, String deviation, String more, String less, String noseAhead);

  String doubted(boolean met, String loss);

  String later(String loss, String deviation);

  String noModel(String entry);

  String plotted(String most);

  List<Term> briefed(
      String technique,
      String flown,
      boolean same,
      String start,
      String onset,
      String least,
      String lowest,
      boolean below,
      boolean ground);

  List<Term> definitions();

  List<Term> dataDefinitions();
}
