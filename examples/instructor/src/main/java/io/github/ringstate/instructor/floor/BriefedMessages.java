package io.github.ringstate.instructor.floor;

import io.github.ringstate.files.report.Term;
import io.github.ringstate.sheets.message.Messages;
import java.util.List;

/** What card and lesson say. */
interface BriefedMessages {

  /** The words of {@code BriefedMessages.txt}. */
  BriefedMessages SAY = Messages.of(BriefedMessages.class);

  List<Term> flown(BriefedFacts facts);

  String least(BriefedFacts facts);

  String setUpHead();

  List<Term> setUp(BriefedFacts facts);

  String cuesHead();

  List<Term> cues(BriefedFacts facts);

  String wordsHead();

  List<Term> words(BriefedFacts facts);

  List<Term> ways(BriefedFacts facts);

  String questionsHead();

  List<Term> questions(BriefedFacts facts);
}
