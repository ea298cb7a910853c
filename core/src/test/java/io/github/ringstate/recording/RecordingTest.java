package io.github.ringstate.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.pilot.Technique;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What recordings, and the numbers made of them, refuse and keep. */
class RecordingTest {

  private static final double[] TIMES = {0, 0.5, 2};
  private static final double NONE = Double.NaN;
  private static final Noise NOISE = Noise.of(1, 1, 0.3, 0.2);

  private static void refused(Executable made) {
    assertThrows(IllegalArgumentException.class, made);
  }

  @Test
  void timesThatAreNotInOrderAreRefused() {
    refused(() -> new Recording(new double[0], Map.of()));
    for (double second : new double[] {0, -1, NONE, Double.POSITIVE_INFINITY}) {
      refused(() -> new Recording(new double[] {0, second, 2}, Map.of()));
    }
    refused(() -> new Recording(new double[] {NONE}, Map.of()));
  }

  @Test
  void aChannelOfAnotherLengthOrWithoutBoundIsRefused() {
    refused(() -> new Recording(TIMES, Map.of(Channel.HEIGHT, new double[] {1, 2})));
    double[] infinite = {1, Double.NEGATIVE_INFINITY, 3};
    refused(() -> new Recording(TIMES, Map.of(Channel.HEIGHT, infinite)));
  }

  @Test
  void aChannelWithoutANumberIsNotRecorded() {
    Recording recording =
        new Recording(
            TIMES,
            Map.of(
                Channel.BANK, new double[] {NONE, NONE, NONE},
                Channel.HEIGHT, new double[] {NONE, 5, NONE}));
    assertEquals(Set.of(Channel.HEIGHT), recording.channels());
    assertEquals(3, recording.size());
    assertEquals(3, recording.indexAt(2.1));
    assertEquals(1, recording.indexAt(0.5));
    assertEquals(0, recording.indexAt(0));
    assertEquals(0, recording.indexAt(-1));
  }

  @Test
  void aPartKeepsTheClock() {
    Recording part =
        new Recording(TIMES, Map.of(Channel.HEIGHT, new double[] {1, 2, 3})).part(1, 3);
    assertEquals(2, part.size());
    assertEquals(0.5, part.time(0));
    assertEquals(3, part.value(Channel.HEIGHT, 1));
  }

  @ParameterizedTest
  @CsvSource({"NaN,1", "Infinity,1", "1,-1", "1,NaN", "1,Infinity"})
  void whatIsNoNumberIsNoEstimate(double value, double deviation) {
    refused(() -> new Estimate(value, deviation));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void noiseIsAboveZero(double value) {
    refused(() -> Noise.of(value, 1, 1, 1));
    refused(() -> Noise.of(1, value, 1, 1));
    refused(() -> Noise.of(1, 1, value, 1));
    refused(() -> Noise.of(1, 1, 1, value));
  }

  @Test
  void onlyWhatSaysSomethingOfVerticalMotionHasNoise() {
    assertEquals(1, NOISE.of(Channel.HEIGHT));
    assertEquals(0.3, NOISE.of(Channel.PRESSURE_ALTITUDE));
    assertEquals(0.2, NOISE.of(Channel.VERTICAL_SPEED));
    refused(() -> NOISE.of(Channel.TRACK));
  }

  @ParameterizedTest
  @CsvSource({
    "0.09,0,0,0",
    "101,0,0,0",
    "NaN,0,0,0",
    "5,-1,0,0",
    "5,NaN,0,0",
    "5,0,-1,0",
    "5,0,NaN,0",
    "5,0,0,-1",
    "5,0,0,NaN"
  })
  void instrumentsThatCannotBeAreRefused(double rate, double ground, double attitude, double step) {
    refused(() -> new Instruments(rate, NOISE, ground, attitude, step, true));
  }

  /** The same errors, so that the difference is what rounding to 0.5 m/s does: 0.25 at most. */
  @Test
  void aVerticalSpeedIsRoundedToTheStepOrNotAtAll() {
    Encounter encounter = Encounter.of(DemoCraft.TRAINER).withDelay(0.5);
    Recording fine = new Instruments(5, NOISE, 0.1, 0, 0, false).record(encounter, 2);
    Recording coarse = new Instruments(5, NOISE, 0.1, 0, 0.5, false).record(encounter, 2);
    double most = 0;
    for (int k = 0; k < fine.size(); k++) {
      double rounded = coarse.value(Channel.VERTICAL_SPEED, k);
      assertEquals(0, FastMath.IEEEremainder(rounded, 0.5), 1e-12);
      double off = FastMath.abs(rounded - fine.value(Channel.VERTICAL_SPEED, k));
      assertTrue(off <= 0.25 + 1e-12, "off by " + off);
      most = Math.max(most, off);
    }
    assertTrue(most > 0.1, "rounding does something: " + most);
  }

  /** A lateral recovery banks, an autorotation lowers the lever, forward lowers the nose. */
  @Test
  void aMovementLooksLikeTheTechniqueThatMovesSo() {
    assertEquals(Optional.of(Technique.LATERAL), technique(-6, 8.1, -0.5));
    assertEquals(Optional.of(Technique.LATERAL), technique(0, -8.1, 0));
    // as much as counts is enough
    assertEquals(Optional.of(Technique.LATERAL), technique(0, 8, 0));
    assertEquals(Optional.of(Technique.AUTOROTATION), technique(0, 0, -0.3));
    assertEquals(Optional.of(Technique.FORWARD), technique(-5, 0, 0));
    assertEquals(Optional.of(Technique.COLLECTIVE), technique(0, 0, 0.115));
    assertEquals(Optional.of(Technique.AUTOROTATION), technique(-6, 0, -0.31));
    assertEquals(Optional.of(Technique.FORWARD), technique(-5.1, 7.9, -0.29));
    assertEquals(Optional.of(Technique.COLLECTIVE), technique(-4.9, 0, 0.116));
    assertEquals(Optional.empty(), technique(4, 2, 0.05));
    assertEquals(Optional.empty(), technique(NONE, NONE, NONE));
  }

  private static Optional<Technique> technique(double pitch, double bank, double collective) {
    return new Movement(
            Channel.PITCH,
            new Estimate(1, 0),
            FastMath.toRadians(pitch),
            FastMath.toRadians(bank),
            collective)
        .technique();
  }
}
