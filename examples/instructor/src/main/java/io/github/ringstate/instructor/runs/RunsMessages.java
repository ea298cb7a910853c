package io.github.ringstate.instructor.runs;

import io.github.ringstate.files.report.Term;
import io.github.ringstate.sheets.message.Messages;
import java.util.List;

/** What is said of runs. */
interface RunsMessages {

  /** The words of {@code RunsMessages.txt}. */
  RunsMessages SAY = Messages.of(RunsMessages.class);

  List<Term> situation(RunsFacts facts);

  List<Term> sheetSituation(RunsFacts facts);

  List<Term> sheetWind(RunsFacts facts);

  String reported(String from, String mean, String gust, boolean windy, boolean gusty);

  String everyTrackAlike(String verdict);

  String noTrack();

  String counted(String verdict, String count, String tracks);

  String inShort(String all, String verdict, String counts, boolean noTrackFlown, String reason);

  String direction(String point, String track, String verdict, String tracks);

  String asPlanned(TrackFacts facts);

  String airspeedKept(TrackFacts facts);

  String fasterOverGround(TrackFacts facts);

  String slowerOverGround(TrackFacts facts);

  String noAirspeed();

  String tooSlow(TrackFacts facts);

  String tooFast(TrackFacts facts);

  String belowLowest(TrackFacts facts);

  String notCovered(TrackFacts facts);

  String noRoom(TrackFacts facts);

  String noPowerToHover();

  String worstOf(String track, String sentence);

  List<Term> definitions(RunsFacts facts);

  List<Term> sheetDefinitions(RunsFacts facts);

  List<Term> dataDefinitions(RunsFacts facts);

  String tailRotor(RunsFacts facts);

  String heightVelocity(RunsFacts facts);

  String wayOut(RunsFacts facts);

  String polar(RunsFacts facts);

  List<Term> checks(RunsFacts facts, CrewFacts crew);

  List<Term> limits(RunsFacts facts, boolean noTrackFlown);

  String withLimit(String verdict, String speed);

  String atGroundSpeed(String verdict, String speed);
}
