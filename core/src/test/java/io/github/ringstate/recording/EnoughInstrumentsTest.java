package io.github.ringstate.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.FlightLimits;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;

/**
 * Which instruments and rates are enough. The {@code main} makes the table of the package page, by
 * as many flights as its argument says.
 */
class EnoughInstrumentsTest {

  private static final Set<Channel> PLACE =
      EnumSet.of(Channel.HEIGHT, Channel.GROUND_SPEED, Channel.TRACK);

  /** What is written down, how often, and the standard deviation of a height, m. */
  private record Fitting(String name, double rate, double height, Set<Channel> channels) {

    static Fitting of(String name, double rate, double height, Channel... more) {
      EnumSet<Channel> channels = EnumSet.copyOf(PLACE);
      channels.addAll(List.of(more));
      return new Fitting(name, rate, height, channels);
    }

    Recording write(Encounter flown, long seed) {
      Instruments instruments =
          new Instruments(
              rate, Noise.of(1, height, height, 0.2), 0.1, FastMath.toRadians(0.3), 0.1, true);
      Recording all = instruments.record(flown, seed);
      Map<Channel, double[]> kept = new EnumMap<>(Channel.class);
      double[] time = new double[all.size()];
      for (Channel channel : channels) {
        double[] values = new double[all.size()];
        for (int k = 0; k < values.length; k++) {
          time[k] = all.time(k);
          values[k] = all.value(channel, k);
        }
        kept.put(channel, values);
      }
      return new Recording(time, kept);
    }
  }

  private static final Fitting FIVE_HERTZ =
      Fitting.of("satellite, 5 a second, and vertical speed", 5, 1, Channel.VERTICAL_SPEED);

  private static final Fitting WHOLE =
      Fitting.of(
          "the same with attitude and collective",
          5,
          1,
          Channel.VERTICAL_SPEED,
          Channel.PITCH,
          Channel.BANK,
          Channel.COLLECTIVE);

  private static final List<Fitting> ALL =
      List.of(
          Fitting.of("satellite, 1 a second", 1, 1),
          Fitting.of("satellite, 5 a second", 5, 1),
          Fitting.of("satellite, 10 a second", 10, 1),
          Fitting.of("barometer and ground speed, 5 a second", 5, 0.4),
          FIVE_HERTZ,
          Fitting.of("satellite, 1 a second, and attitude", 1, 1, Channel.PITCH, Channel.BANK),
          Fitting.of("satellite, 5 a second, and attitude", 5, 1, Channel.PITCH, Channel.BANK),
          WHOLE);

  /** Sums over flights; errors in s and ft. */
  private static final class Sums {
    private int flights;
    private int found;
    private int delays;
    private double onset;
    private double loss;
    private double deviation;
    private double delay;

    private static double root(double squares, int count) {
      return FastMath.sqrt(squares / Math.max(1, count));
    }

    double onsetError() {
      return root(onset, found);
    }

    double lossError() {
      return root(loss, found);
    }

    String row(String name) {
      return String.format(
          Locale.ROOT,
          "<tr><td>%s<td>%d of %d<td>%.2f<td>%.1f<td>%.1f<td>%s",
          name,
          found,
          flights,
          onsetError(),
          lossError(),
          root(deviation, found),
          delays == 0
              ? "not known"
              : String.format(Locale.ROOT, "%.2f (%d)", root(delay, delays), delays));
    }
  }

  private static Sums over(Fitting fitting, int flights) {
    Sums sums = new Sums();
    for (int seed = 0; seed < flights; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Technique technique = seed % 2 == 0 ? Technique.FORWARD : Technique.LATERAL;
      Encounter flown =
          Encounter.of(DemoCraft.TRAINER)
              .withLimits(FlightLimits.STANDARD.with(FlightLimits.TIME_PAST_ARREST, 3))
              .withRecovery(technique.standard())
              .withDelay(random.nextDouble(0.5, 2));
      Outcome truth = flown.fly();
      Optional<FoundEncounter> found =
          new EncounterFinder(
                  flown.craft(),
                  flown.air(),
                  flown.entry().wind(),
                  Unit.KNOT.toSi(1),
                  0.1,
                  flown.boundary())
              .find(VerticalMotion.of(fitting.write(flown, seed))).stream().findFirst();
      sums.flights++;
      found.ifPresent(one -> add(sums, one, truth, flown.delay()));
    }
    return sums;
  }

  private static void add(Sums sums, FoundEncounter one, Outcome truth, double delay) {
    sums.found++;
    double onset = one.onsetTime().value() - truth.onsetTime().orElseThrow();
    sums.onset += onset * onset;
    double loss = Unit.FOOT.fromSi(one.altitudeLoss().value() - truth.altitudeLoss().orElseThrow());
    sums.loss += loss * loss;
    double said = Unit.FOOT.fromSi(one.altitudeLoss().deviation());
    sums.deviation += said * said;
    one.delay()
        .ifPresent(
            seen -> {
              sums.delays++;
              sums.delay += (seen.value() - delay) * (seen.value() - delay);
            });
  }

  @SuppressWarnings("SystemOut") // the table, for whoever writes the page
  public static void main(String[] args) {
    for (Fitting fitting : ALL) {
      System.out.println(over(fitting, Integer.parseInt(args[0])).row(fitting.name()));
    }
  }

  @Test
  void fiveReadingsASecondAreEnoughAndAttitudeGivesTheDelay() {
    Sums place = over(FIVE_HERTZ, 2);
    Sums whole = over(WHOLE, 2);
    assertEquals(2, place.found);
    assertTrue(place.onsetError() < 0.5 && place.lossError() < 10, place.row(""));
    assertEquals(0, place.delays);
    assertEquals(2, whole.delays);
  }
}
