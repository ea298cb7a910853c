package io.github.ringstate.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Attitudes that follow straight lines, so that it is known when they began to move. */
class ControlWatchTest {

  private static final double RATE = 50;
  private static final double ONSET = 4;
  private static final double END = 9;

  /** A recording of one channel, in degrees, from a time on. */
  private static Recording recording(Channel channel, double from, DoubleUnaryOperator degrees) {
    double[] time =
        IntStream.rangeClosed((int) (from * RATE), (int) (END * RATE))
            .mapToDouble(k -> k / RATE)
            .toArray();
    double[] value = new double[time.length];
    for (int k = 0; k < value.length; k++) {
      value[k] = FastMath.toRadians(degrees.applyAsDouble(time[k]));
    }
    return new Recording(time, Map.of(channel, value));
  }

  private static Optional<Movement> first(Recording recording) {
    return ControlWatch.firstMovement(recording, ONSET, END);
  }

  /** Zero until a time, then a straight line. */
  private static double ramp(double t, double begin, double slope) {
    return slope * Math.max(0, t - begin);
  }

  @ParameterizedTest
  @EnumSource(names = {"PITCH", "BANK"})
  void aStraightMovementBeganWhereItsLineLeavesTheLevel(Channel channel) {
    for (double slope : new double[] {10, -10}) {
      Movement moved = first(recording(channel, 0, t -> 2 + ramp(t, 5.003, slope))).orElseThrow();
      assertEquals(channel, moved.channel());
      assertEquals(5.003, moved.time().value(), 1e-9);
      // the reading before which it was seen came within the last fiftieth of a second: its
      // deviation is that of an even distribution, the interval over the square root of twelve
      assertEquals(1 / RATE / FastMath.sqrt(12.0), moved.time().deviation(), 1e-9);
      double change = channel == Channel.PITCH ? moved.pitch() : moved.bank();
      // by how much in the three seconds after, up to the next reading
      assertEquals(slope * 3, FastMath.toDegrees(change), 0.2);
      assertTrue(Double.isNaN(moved.collective()));
    }
  }

  @Test
  void whatComesBackWithinAMomentIsNoMovement() {
    assertEquals(
        Optional.empty(), first(recording(Channel.BANK, 0, t -> t > 5 && t < 5.25 ? 10 : 0)));
    assertTrue(first(recording(Channel.BANK, 0, t -> t > 5 && t < 5.45 ? 10 : 0)).isPresent());
  }

  @Test
  void whatHasBegunWhenTheRecordingEndsIsAMovement() {
    Movement moved = first(recording(Channel.BANK, 0, t -> t > END - 0.15 ? 10 : 0)).orElseThrow();
    assertEquals(END - 0.15, moved.time().value(), 1 / RATE);
  }

  @Test
  void readingsThatAreMissingHideNoMovement() {
    Movement moved =
        first(
                recording(
                    Channel.BANK,
                    0,
                    t -> (int) (t * RATE + 0.5) % 3 == 0 ? Double.NaN : ramp(t, 5, 10)))
            .orElseThrow();
    assertEquals(5, moved.time().value(), 1e-9);
    // none but one before the onset
    Movement known =
        first(recording(Channel.BANK, 0, t -> t < ONSET - 0.01 ? Double.NaN : ramp(t, 5, 10)))
            .orElseThrow();
    assertEquals(5, known.time().value(), 1e-9);
  }

  /** At 5 s a bank of 10 degrees a second begins; the threshold of 4 degrees is passed at 5.4 s. */
  @ParameterizedTest
  @ValueSource(doubles = {0.02, 0.1, 0.3, 0.38})
  void aGapBeforeTheThresholdMakesNoMovementLater(double missing) {
    Recording gap =
        recording(
            Channel.BANK, 0, t -> t > 5.41 - missing && t < 5.41 ? Double.NaN : ramp(t, 5, 10));
    assertEquals(5, first(gap).orElseThrow().time().value(), 1e-9);
  }

  /** Five readings a second, of which the last at rest is up to 0.2 s before the movement. */
  @ParameterizedTest
  @ValueSource(doubles = {5.0, 5.05, 5.1, 5.15})
  void aReadingAtRestMakesNoMovementEarlier(double begin) {
    Recording few =
        recording(
            Channel.BANK,
            0,
            t -> (int) (t * RATE + 0.5) % 10 == 0 ? ramp(t, begin, 15) : Double.NaN);
    assertEquals(begin, first(few).orElseThrow().time().value(), 1e-9);
  }

  /** A flare of 4 degrees a second from 2 s to 6 s, then 15 degrees a second down, or mirrored. */
  @Test
  void whatMovesForTheEntryMovesForTheRecoveryOnceItTurnsBack() {
    for (double sign : new double[] {1, -1}) {
      Recording flare = recording(Channel.PITCH, 0, t -> sign * (ramp(t, 2, 4) - ramp(t, 6, 19)));
      Movement moved = first(flare).orElseThrow();
      assertEquals(6, moved.time().value(), 2 / RATE);
      assertEquals(-sign * 45, FastMath.toDegrees(moved.pitch()), 1);
      Recording blind =
          recording(
              Channel.PITCH,
              0,
              t ->
                  Math.abs(t - ONSET) < 0.001
                      ? Double.NaN
                      : sign * (ramp(t, 2, 4) - ramp(t, 6, 19)));
      assertEquals(6, first(blind).orElseThrow().time().value(), 2 / RATE);
    }
  }

  /**
   * The nose falls by 4 degrees a second from the flare, the recovery lowers it on from 6 s, and it
   * comes up again at 7.5 s: that is seen, and is not the first movement.
   */
  @Test
  void ofARecoveryThatGoesOnAsTheEntryMovedNoFirstMovementIsTold() {
    DoubleUnaryOperator down = t -> 20 - ramp(t, 2, 4) - ramp(t, 6, 4) + ramp(t, 7.5, 20);
    assertEquals(Optional.empty(), first(recording(Channel.PITCH, 0, down)));
    // a nose that goes on upwards is no recovery's: the way down is
    Recording up = recording(Channel.PITCH, 0, t -> -down.applyAsDouble(t));
    assertEquals(7.5, first(up).orElseThrow().time().value(), 2 / RATE);
  }

  /** Banked by 10 degrees in the first and in the last 0.35 s of the time watched before onset. */
  @Test
  void whatMovesAlreadyWhenTheWatchBeginsIsSaidToBeginWithIt() {
    double begin = ONSET - 1.5;
    DoubleUnaryOperator bank =
        t -> t < begin - 0.01 ? 20 : Math.abs(t - ONSET + 0.75) > 0.4 && t < ONSET + 0.01 ? 10 : 0;
    assertEquals(
        begin, first(recording(Channel.BANK, begin, bank)).orElseThrow().time().value(), 1e-9);
    // a reading before, still further off
    assertEquals(
        begin - 1 / RATE,
        first(recording(Channel.BANK, 0, bank)).orElseThrow().time().value(),
        1e-9);
    // none that is known before, and one that is on its way at first
    for (DoubleUnaryOperator other :
        new DoubleUnaryOperator[] {
          t -> t < begin - 0.01 ? Double.NaN : bank.applyAsDouble(t),
          t ->
              t < begin - 0.01
                  ? Double.NaN
                  : Math.min(bank.applyAsDouble(t), t < begin + 0.01 ? 2 : 10)
        }) {
      Recording blind = recording(Channel.BANK, begin - 1 / RATE, other);
      assertEquals(begin, first(blind).orElseThrow().time().value(), 1e-9);
    }
  }

  /** The first reading of all is the only one at rest. */
  @Test
  void oneReadingAtRestTellsFromWhatAMovementBegan() {
    Recording few =
        recording(
            Channel.BANK,
            ONSET - 1.5,
            t -> t > ONSET - 1.5 && t < 5.19 ? Double.NaN : 3 + ramp(t, 5, 10));
    assertEquals(5, first(few).orElseThrow().time().value(), 1e-9);
  }

  /**
   * Twelve and a half readings a second of a bank that grows by the square of the time, from 5 s.
   * By hand: the straight line through the first beyond a degree and the last within 0.3 s of it,
   * or the first beyond four degrees if that is sooner, leaves the level where it did.
   */
  @ParameterizedTest
  @CsvSource({"4, 5.56, 5.8", "40, 5.16, 5.32", "100, 5.16, 5.24", "700, 5.08, 5.16"})
  void aCurvedMovementBeganWhereALineThroughItsFirstPartLeavesTheLevel(
      double growth, double quarter, double later) {
    DoubleUnaryOperator bank = t -> growth * ramp(t, 5, 1) * ramp(t, 5, 1);
    Recording few =
        recording(
            Channel.BANK,
            0,
            t -> (int) (t * RATE + 0.5) % 4 == 2 ? bank.applyAsDouble(t) : Double.NaN);
    double off = bank.applyAsDouble(quarter);
    double rate = (bank.applyAsDouble(later) - off) / (later - quarter);
    assertEquals(quarter - off / rate, first(few).orElseThrow().time().value(), 1e-9);
  }

  @Test
  void whatDoesNotMoveHasNoFirstMovement() {
    assertEquals(Optional.empty(), first(recording(Channel.PITCH, 0, t -> 3)));
    assertEquals(Optional.empty(), first(recording(Channel.HEADING, 0, t -> ramp(t, 5, 10))));
  }

  /** A nose that rises by no more than 1.5 degrees a second: 2.25 in the time that is watched. */
  @Test
  void aSlowFlareMovesForTheEntryToo() {
    Recording flare = recording(Channel.PITCH, 0, t -> ramp(t, 2, 1.5) - ramp(t, 6, 16.5));
    assertEquals(6, first(flare).orElseThrow().time().value(), 2 / RATE);
  }

  @Test
  void nothingMovesBeyondTheEndAndWhatMovesJustBeforeItDoes() {
    Recording bank = recording(Channel.BANK, 0, t -> t > 5 - 0.5 / RATE ? 10 : 0);
    assertTrue(ControlWatch.firstMovement(bank, ONSET, 5 + 1 / RATE).isPresent());
    assertTrue(ControlWatch.firstMovement(bank, ONSET, 5 - 1 / RATE).isEmpty());
    assertEquals(Optional.empty(), ControlWatch.firstMovement(bank, END + 2, END + 3));
  }

  /**
   * A channel that wavers by w about its line, up and down by turns, steps by 2 w from one reading
   * to the next, twice the variance of a reading: by that over the rate a time is unsure as well.
   */
  @Test
  void aChannelThatWaversMakesTheTimeUnsure() {
    double w = 1e-3;
    Recording wavers =
        recording(
            Channel.BANK, 0, t -> ramp(t, 5.003, 10) + ((int) (t * RATE + 0.5) % 2 == 0 ? w : -w));
    double read = 1 / RATE / FastMath.sqrt(12.0);
    double wavering = FastMath.sqrt(2) * w / 10;
    assertEquals(
        FastMath.hypot(read, wavering), first(wavers).orElseThrow().time().deviation(), 1e-6);
  }
}
