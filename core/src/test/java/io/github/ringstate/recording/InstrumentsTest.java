package io.github.ringstate.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.CraftLimits;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.FlightQuantity;
import io.github.ringstate.encounter.Instant;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.pilot.Technique;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;

/** A computed flight as it is written down: itself without errors, and the errors by themselves. */
class InstrumentsTest {

  private static final Encounter FLOWN =
      Encounter.of(DemoCraft.TRAINER).withRecovery(Technique.LATERAL.standard()).withDelay(0.5);

  /** Errors too small to be seen. */
  private static final Noise NONE = new Noise(1, 1e-9, 1e-9, 1e-9, 0, 60);

  private static Recording exact(double rate) {
    return new Instruments(rate, NONE, 0, 0, 0, true).record(FLOWN, 1);
  }

  /** From the slowest to the fastest that there may be. */
  @Test
  void withoutErrorsTheFlightItselfIsWrittenDown() {
    is(exact(0.1), 10);
    is(exact(5), 0.2);
    is(exact(100), 0.01);
  }

  private static void is(Recording written, double step) {
    List<Instant> flown = FLOWN.record(Simulator.precise()).history().sampled(step);
    double low = FLOWN.craft().si(CraftLimits.MINIMUM_COLLECTIVE);
    double high = FLOWN.craft().si(CraftLimits.MAXIMUM_COLLECTIVE);
    assertEquals(flown.size(), written.size());
    for (int k = 0; k < flown.size(); k++) {
      Instant now = flown.get(k);
      double speed = written.value(Channel.GROUND_SPEED, k);
      double track = written.value(Channel.TRACK, k);
      double lever = written.value(Channel.COLLECTIVE, k);
      assertEquals(now.time(), written.time(k));
      is(now, FlightQuantity.HEIGHT, written.value(Channel.HEIGHT, k));
      is(now, FlightQuantity.VERTICAL_SPEED, written.value(Channel.VERTICAL_SPEED, k));
      is(now, FlightQuantity.SPEED_NORTH, speed * FastMath.cos(track));
      is(now, FlightQuantity.SPEED_EAST, speed * FastMath.sin(track));
      is(now, FlightQuantity.PITCH, written.value(Channel.PITCH, k));
      is(now, FlightQuantity.BANK, written.value(Channel.BANK, k));
      is(now, FlightQuantity.COLLECTIVE, low * (1 - lever) + high * lever);
      is(now, FlightQuantity.ROTOR_SPEED, written.value(Channel.ROTOR_SPEED, k));
    }
  }

  private static void is(Instant now, FlightQuantity quantity, double written) {
    assertEquals(now.get(quantity), written, 2e-8, quantity + " at " + now.time());
  }

  private static double rms(int size, IntToDoubleFunction error) {
    return FastMath.sqrt(
        IntStream.range(0, size).mapToDouble(error).map(off -> off * off).average().orElseThrow());
  }

  /** Of 900 the root of the mean square is off by 10 %, 4.2 deviations, in three of 100,000. */
  @Test
  void errorsAreAsGreatAsIsSaid() {
    Recording exact = exact(100);
    Recording off =
        new Instruments(100, new Noise(1, 2, 1, 0.3, 0, 60), 0.4, 0.02, 0, true).record(FLOWN, 3);
    int size = exact.size();
    assertTrue(size > 900, size + " readings");
    double[] said = {2, 0.3, 0.02, 0.02};
    List<Channel> channels =
        List.of(Channel.HEIGHT, Channel.VERTICAL_SPEED, Channel.PITCH, Channel.BANK);
    for (int i = 0; i < said.length; i++) {
      Channel channel = channels.get(i);
      double found = rms(size, k -> off.value(channel, k) - exact.value(channel, k));
      assertEquals(1, found / said[i], 0.1, channel.toString());
    }
    assertEquals(0.4, rms(size, k -> north(off, k) - north(exact, k)), 0.1 * 0.4);
    assertEquals(0.4, rms(size, k -> east(off, k) - east(exact, k)), 0.1 * 0.4);
  }

  private static double north(Recording recording, int k) {
    return recording.value(Channel.GROUND_SPEED, k)
        * FastMath.cos(recording.value(Channel.TRACK, k));
  }

  private static double east(Recording recording, int k) {
    return recording.value(Channel.GROUND_SPEED, k)
        * FastMath.sin(recording.value(Channel.TRACK, k));
  }

  /**
   * A first-order Gauss-Markov process: over 0.01 s of its 2 s all but a two-hundredth is kept, and
   * what comes anew keeps its variance.
   */
  @Test
  void theSlowErrorOfAHeightStaysForItsTime() {
    Noise slow = new Noise(1, 1e-9, 1, 1, 20, 2);
    Recording exact = exact(100);
    Recording off = new Instruments(100, slow, 0, 0, 0, true).record(FLOWN, 4);
    double[] error =
        IntStream.range(0, exact.size())
            .mapToDouble(k -> off.value(Channel.HEIGHT, k) - exact.value(Channel.HEIGHT, k))
            .toArray();
    double kept = FastMath.exp(-0.005);
    double anew = rms(error.length - 1, k -> error[k + 1] - kept * error[k]);
    assertEquals(1, anew / (20 * FastMath.sqrt(1 - kept * kept)), 0.1);
    // and it begins as great: chi-square of eight over eight is 0.11 to 3.3 in 998 cases of 1000
    double height = exact.value(Channel.HEIGHT, 0);
    double first =
        rms(
            8,
            seed ->
                new Instruments(1, slow, 0, 0, 0, true).record(FLOWN, seed).value(Channel.HEIGHT, 0)
                    - height);
    assertTrue(first > 20 * 0.33 && first < 20 * 1.81, "at first " + first);
  }
}
