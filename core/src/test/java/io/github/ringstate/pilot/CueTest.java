package io.github.ringstate.pilot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.quantity.OutOfRangeException;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class CueTest {

  private static boolean fires(Cue cue, Map<String, Double> shown) {
    return cue.level(Seen.of(shown)) >= 0;
  }

  @Test
  void sinkIsJudgedByTheIndicatorAgainstWhatWasIntended() {
    Cue cue = Cues.sinkShown(2, 1);
    assertFalse(fires(cue, Map.of("indicatedVerticalSpeed", -2.9, "verticalSpeed", -9.0)));
    assertTrue(fires(cue, Map.of("indicatedVerticalSpeed", -3.1, "verticalSpeed", 0.0)));
  }

  @Test
  void sinkThatAnswersTheCollectiveIsNoCue() {
    Cue cue = Cues.sinkNotAnswering(2);
    Map<String, Double> raisedAndSinking =
        Map.of("verticalSpeed", -3.0, "collective", 0.2, "hoverCollective", 0.15);
    assertTrue(fires(cue, raisedAndSinking));
    assertFalse(
        fires(
            cue,
            Map.of(
                "verticalSpeed", -3.0,
                "collective", 0.2,
                "hoverCollective", 0.15,
                "verticalAcceleration", 1.0)));
    assertFalse(
        fires(cue, Map.of("verticalSpeed", -3.0, "collective", 0.1, "hoverCollective", 0.15)));
    assertFalse(
        fires(cue, Map.of("verticalSpeed", -1.0, "collective", 0.2, "hoverCollective", 0.15)));
  }

  @Test
  void vibrationIsFeltAboveItsLevel() {
    assertFalse(fires(Cues.vibration(0.02), Map.of("roughness", 0.019)));
    assertTrue(fires(Cues.vibration(0.02), Map.of("roughness", 0.021)));
  }

  @Test
  void theAirspeedIndicatorShowsTooLittleBelowTheSpeedItCanBeReliedOn() {
    Cue cue = Cues.lowAirspeed(5, 10);
    assertFalse(fires(cue, Map.of("forwardAirspeed", 7.1)), "7.1^2 / 10 = 5.04 is shown");
    assertTrue(fires(cue, Map.of("forwardAirspeed", 7.0)), "7^2 / 10 = 4.9 is shown");
    assertTrue(fires(cue, Map.of("forwardAirspeed", -20.0)), "backwards it shows nothing");
    assertEquals(
        Cues.lowAirspeed(5, 10).level(Seen.of(Map.of("forwardAirspeed", 10 - 1e-9))),
        Cues.lowAirspeed(5, 10).level(Seen.of(Map.of("forwardAirspeed", 10.0))),
        1e-8);
    assertFalse(fires(Cues.lowAirspeed(5, 0), Map.of("forwardAirspeed", 5.1)));
  }

  @Test
  void driftIsDepartureFromTheIntendedGroundSpeedInAnyDirection() {
    Cue cue = Cues.drift(10, 2);
    assertFalse(fires(cue, Map.of("groundSpeed", 11.0, "sidewaysGroundSpeed", 1.0)));
    assertTrue(fires(cue, Map.of("groundSpeed", 12.1)));
    assertTrue(fires(cue, Map.of("groundSpeed", 7.9)));
    assertTrue(fires(cue, Map.of("groundSpeed", 10.0, "sidewaysGroundSpeed", -2.1)));
  }

  @Test
  void ofSeveralCuesTheFirstCountsAndTogetherTheLast() {
    Cue sink = Cues.sinkShown(0, 2);
    Cue slow = Cues.lowAirspeed(5, 0);
    Map<String, Double> sinkOnly = Map.of("indicatedVerticalSpeed", -3.0, "forwardAirspeed", 20.0);
    Map<String, Double> both = Map.of("indicatedVerticalSpeed", -3.0);
    assertTrue(fires(Cues.first(sink, slow), sinkOnly));
    assertFalse(fires(Cues.together(sink, slow), sinkOnly));
    assertTrue(fires(Cues.together(sink, slow), both));
    assertEquals("sink shown or low airspeed", Cues.first(sink, slow).name());
    assertEquals("sink shown and low airspeed", Cues.together(sink, slow).name());
  }

  @Test
  void theStandardCueUsesItsParameters() {
    ParameterSet numbers =
        ParameterSet.standard(Cues.PARAMETERS)
            .with(Cues.SINK_MARGIN, 600)
            .with(Cues.FELT_FLUCTUATION, 0.1);
    Cue usual = Cues.standard(1);
    Cue dull = Cues.standard(1, numbers);
    Map<String, Double> sinking =
        Map.of("indicatedVerticalSpeed", -1 - Unit.FOOT_PER_MINUTE.toSi(400));
    assertTrue(fires(usual, sinking));
    assertFalse(fires(dull, sinking));
    assertTrue(fires(usual, Map.of("roughness", 0.05)));
    assertFalse(fires(dull, Map.of("roughness", 0.05)));
  }

  @Test
  void theClockIsNamed() {
    assertEquals("from the boundary", Recognition.afterOnset(1).clock());
    assertEquals("from the cue: vibration", Recognition.afterCue(Cues.vibration(0.1), 1).clock());
    assertEquals(3, Recognition.afterCue(Cues.vibration(0.1), 1).withDelay(3).delay());
    assertEquals(
        "from the cue: sink shown or sink not answering collective or vibration",
        Recognition.afterCue(Cues.standard(0), 1).clock());
  }

  /** Of a lever raised by half of what is noticed; the two other levels are 1 or more. */
  @Test
  void aCueIsMeasuredInItsOwnSizeOfNotice() {
    ParameterSet numbers =
        ParameterSet.standard(Cues.PARAMETERS)
            .with(Cues.NOTICED_COLLECTIVE, Cues.NOTICED_COLLECTIVE.quantity().high());
    double half = numbers.si(Cues.NOTICED_COLLECTIVE) / 2;
    Map<String, Double> shown =
        Map.of("verticalSpeed", -9.0, "collective", 0.2 + half, "hoverCollective", 0.2);
    assertEquals(0.5, Cues.sinkNotAnswering(2, numbers).level(Seen.of(shown)), 1e-12);
  }

  static Stream<Arguments> texts() {
    return Stream.of(
        Arguments.of(Cues.sinkShown(2.25, 1.5), "sink shown", List.of("2.25", "1.5")),
        Arguments.of(Cues.sinkNotAnswering(3.25), "sink not answering collective", List.of("3.25")),
        Arguments.of(Cues.vibration(0.125), "vibration", List.of("0.125")),
        Arguments.of(Cues.lowAirspeed(5.5, 9.5), "low airspeed", List.of("5.5", "9.5")),
        Arguments.of(Cues.drift(10.5, 2.5), "drift", List.of("10.5", "2.5")),
        Arguments.of(Cues.sinceRecognition(1.75), "time since recognition", List.of("1.75")),
        Arguments.of(Cues.of("mine", Cockpit::height), "mine", List.of()));
  }

  @ParameterizedTest
  @MethodSource("texts")
  void theTextOfACueIsItsNameAndItsNumbers(Cue cue, String name, List<String> numbers) {
    assertEquals(name, cue.name());
    assertTrue(cue.toString().startsWith(name), cue.toString());
    for (String number : numbers) {
      assertTrue(cue.toString().contains(number), cue.toString());
    }
    String recognition = Recognition.afterCue(cue, 1.25).toString();
    assertTrue(recognition.startsWith("1.25 s") && recognition.contains(cue.toString()));
    assertEquals("1.25 s from the boundary", Recognition.afterOnset(1.25).toString());
  }

  @Test
  void whatCannotBeIsRefused() {
    assertThrows(OutOfRangeException.class, () -> Recognition.afterOnset(Double.NaN));
    assertThrows(OutOfRangeException.class, () -> Recognition.afterOnset(-0.1));
    assertThrows(OutOfRangeException.class, () -> Cues.sinkShown(0, Double.NaN));
    assertThrows(OutOfRangeException.class, () -> Cues.sinkShown(-1, 1));
    assertThrows(OutOfRangeException.class, () -> Cues.sinkNotAnswering(Double.NaN));
    assertThrows(OutOfRangeException.class, () -> Cues.vibration(Double.NaN));
    assertThrows(OutOfRangeException.class, () -> Cues.lowAirspeed(Double.NaN, 10));
    assertThrows(OutOfRangeException.class, () -> Cues.drift(0, Double.NaN));
    assertThrows(IllegalArgumentException.class, Cues::first);
    assertThrows(IllegalArgumentException.class, Cues::together);
  }

  @Test
  void everyParameterSaysWhereItComesFrom() {
    for (var parameter : List.copyOf(Cues.PARAMETERS)) {
      assertFalse(parameter.origin().isBlank());
    }
  }
}
