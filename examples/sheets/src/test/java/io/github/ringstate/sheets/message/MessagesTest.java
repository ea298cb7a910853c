package io.github.ringstate.sheets.message;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.files.report.Term;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MessagesTest {

  interface Good {
    String greeting(String name, boolean late);

    List<Term> terms(Facts facts, List<String> more);
  }

  record Facts(String height, String unused) {}

  interface WithoutText {
    String greeting(String name);

    String farewell();
  }

  interface WithoutMethod {
    String greeting(String name);
  }

  interface WithoutParameter {
    String greeting();
  }

  interface WithoutPlaceholder {
    String greeting(String name, String height);
  }

  interface WithoutFile {
    String greeting();
  }

  @Test
  void aMessageIsFilledInOnOneLineAndNothingIsEscaped() {
    Good say = Messages.of(Good.class);
    assertEquals("Good morning, A & B, all of you.", say.greeting("A & B", false));
    assertEquals("Good evening, C, all of you.", say.greeting("C", true));
  }

  @Test
  void aListOfTermsHasAWordAndAMeaningEachWhereverLinesAreBroken() {
    assertEquals(
        List.of(
            new Term("height", "30 m, which is above the lowest point"), new Term("more", "a, b")),
        Messages.of(Good.class).terms(new Facts("30 m", ""), List.of("a", "b")));
  }

  @ParameterizedTest
  @ValueSource(
      classes = {
        WithoutText.class,
        WithoutMethod.class,
        WithoutParameter.class,
        WithoutPlaceholder.class,
        WithoutFile.class
      })
  void whatDoesNotFitIsRefusedBeforeTheFirstWord(Class<?> subject) {
    assertTrue(
        assertThrows(IllegalStateException.class, () -> Messages.of(subject)).getMessage().length()
            > 10);
  }
}
