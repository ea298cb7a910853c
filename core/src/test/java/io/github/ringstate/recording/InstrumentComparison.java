package io.github.ringstate.recording;

import io.github.ringstate.air.Wind;
import io.github.ringstate.air.WindField;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.hipparchus.util.FastMath;

/**
 * What recordings by different instruments tell of the same flights. Run by hand it prints the
 * table of the guide (the package page); {@link InstrumentComparisonTest} tries a small part.
 */
final class InstrumentComparison {

  /** Height, m, and vertical speed, m/s, by satellite, as {@link Instruments#receiver}. */
  private static final Noise SATELLITE = Instruments.receiver().noise();

  /** A pressure altitude wavers less, and its slow error is small. Assumed. */
  private static final Noise BAROMETER = new Noise(1, 0.4, 0.4, 0.2, 0.3, 60);

  private static final Set<Channel> PLACE =
      Set.of(Channel.HEIGHT, Channel.GROUND_SPEED, Channel.TRACK);

  private static final double GROUND_SPEED = 0.1;
  private static final double ATTITUDE = FastMath.toRadians(0.3);

  private InstrumentComparison() {}

  /**
   * Instruments on board.
   *
   * @param name what people call them
   * @param rate readings a second
   * @param barometric whether the height is a pressure altitude
   * @param more channels beside height, ground speed and track
   * @param windDeviation standard deviation of what is taken for the wind, m/s
   */
  record Equipment(
      String name, double rate, boolean barometric, Set<Channel> more, double windDeviation) {}

  private static Equipment equipment(String name, double rate, Channel... more) {
    return new Equipment(name, rate, false, Set.of(more), 0);
  }

  static final List<Equipment> ALL =
      List.of(
          equipment("receiver 1 Hz", 1),
          equipment("receiver 1 Hz, vertical speed", 1, Channel.VERTICAL_SPEED),
          equipment("receiver 5 Hz", 5),
          equipment("receiver 5 Hz, vertical speed", 5, Channel.VERTICAL_SPEED),
          equipment("receiver 10 Hz, vertical speed", 10, Channel.VERTICAL_SPEED),
          new Equipment("barometer 5 Hz, ground speed", 5, true, Set.of(), 0),
          equipment(
              "receiver 1 Hz, attitude, lever",
              1,
              Channel.VERTICAL_SPEED,
              Channel.PITCH,
              Channel.BANK,
              Channel.COLLECTIVE),
          equipment(
              "receiver 5 Hz, attitude", 5, Channel.VERTICAL_SPEED, Channel.PITCH, Channel.BANK),
          equipment(
              "receiver 5 Hz, attitude, lever",
              5,
              Channel.VERTICAL_SPEED,
              Channel.PITCH,
              Channel.BANK,
              Channel.COLLECTIVE),
          equipment(
              "receiver 10 Hz, attitude, lever",
              10,
              Channel.VERTICAL_SPEED,
              Channel.PITCH,
              Channel.BANK,
              Channel.COLLECTIVE),
          new Equipment(
              "receiver 5 Hz, attitude, lever; wind off by 2 kt",
              5,
              false,
              Set.of(Channel.VERTICAL_SPEED, Channel.PITCH, Channel.BANK, Channel.COLLECTIVE),
              Unit.KNOT.toSi(2)));

  /**
   * Errors of one flight's recording: what is found less what was, and the deviation that is
   * stated.
   *
   * @param found whether one encounter was found, no more and no less
   * @param onset error of the onset, s
   * @param onsetDeviation as stated, s
   * @param loss error of the altitude lost, m
   * @param lossDeviation as stated, m
   * @param delay error of the pilot's delay, s; NaN if none is said
   */
  record Errors(
      boolean found,
      double onset,
      double onsetDeviation,
      double loss,
      double lossDeviation,
      double delay) {}

  /** The flight of a number: any demo craft, a recovery by the book, a delay of 0.5 to 2.5 s. */
  private static Encounter flight(long number) {
    SplittableRandom random = new SplittableRandom(number);
    Technique technique = random.nextBoolean() ? Technique.FORWARD : Technique.LATERAL;
    return Encounter.of(DemoCraft.ALL.get(random.nextInt(DemoCraft.ALL.size())))
        .withRecovery(technique.standard())
        .withDelay(random.nextDouble(0.5, 2.5));
  }

  static Errors errors(Equipment equipment, long number) {
    Encounter flown = flight(number);
    Outcome truth = flown.fly();
    Instruments instruments =
        new Instruments(
            equipment.rate(),
            equipment.barometric() ? BAROMETER : SATELLITE,
            GROUND_SPEED,
            ATTITUDE,
            0.1,
            true);
    Recording recording = only(equipment, instruments.record(flown, number));
    WindField wind = flown.entry().wind();
    if (equipment.windDeviation() > 0 && wind instanceof Wind along) {
      double off = equipment.windDeviation() * new SplittableRandom(~number).nextGaussian();
      wind = new Wind(along.north() + off, along.east());
    }
    List<FoundEncounter> all =
        EncounterFinder.like(flown, wind, equipment.windDeviation(), GROUND_SPEED)
            .find(VerticalMotion.of(recording));
    if (all.size() != 1) {
      return new Errors(false, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN);
    }
    FoundEncounter one = all.get(0);
    return new Errors(
        true,
        one.onsetTime().value() - truth.onsetTime().orElseThrow(),
        one.onsetTime().deviation(),
        one.altitudeLoss().value() - truth.altitudeLoss().orElseThrow(),
        one.altitudeLoss().deviation(),
        one.delay().map(delay -> delay.value() - flown.delay()).orElse(Double.NaN));
  }

  private static Recording only(Equipment equipment, Recording whole) {
    Set<Channel> kept = new TreeSet<>(equipment.more());
    kept.addAll(PLACE);
    Map<Channel, double[]> values = new EnumMap<>(Channel.class);
    for (Channel channel : kept) {
      values.put(
          channel == Channel.HEIGHT && equipment.barometric() ? Channel.PRESSURE_ALTITUDE : channel,
          Rewritten.values(whole, channel));
    }
    return new Recording(Rewritten.times(whole), values);
  }

  private static double rootMeanSquare(List<Double> values) {
    double sum = 0;
    int count = 0;
    for (double value : values) {
      sum += Double.isNaN(value) ? 0 : value * value;
      count += Double.isNaN(value) ? 0 : 1;
    }
    return count == 0 ? Double.NaN : FastMath.sqrt(sum / count);
  }

  private static double middle(List<Double> values) {
    double[] known = values.stream().filter(one -> !one.isNaN()).mapToDouble(one -> one).toArray();
    Arrays.sort(known);
    return known.length == 0 ? Double.NaN : known[known.length / 2];
  }

  private static String cell(double value, int digits) {
    return Double.isNaN(value) ? "-" : String.format(Locale.ROOT, "%." + digits + "f", value);
  }

  /** A line of the table: root mean squares of errors, and middle ones of stated deviations. */
  static String line(Equipment equipment, int flights) {
    List<Errors> all = new ArrayList<>();
    for (long number = 1; number <= flights; number++) {
      all.add(errors(equipment, number));
    }
    double foot = Unit.FOOT.toSi(1);
    return String.join(
        " | ",
        equipment.name(),
        String.valueOf(all.stream().filter(Errors::found).count()),
        cell(rootMeanSquare(all.stream().map(Errors::onset).toList()), 2),
        cell(middle(all.stream().map(Errors::onsetDeviation).toList()), 2),
        cell(rootMeanSquare(all.stream().map(Errors::loss).toList()) / foot, 1),
        cell(middle(all.stream().map(Errors::lossDeviation).toList()) / foot, 1),
        String.valueOf(all.stream().filter(one -> !Double.isNaN(one.delay())).count()),
        cell(rootMeanSquare(all.stream().map(Errors::delay).toList()), 2));
  }

  public static void main(String[] flights) {
    int count = flights.length == 0 ? 30 : Integer.parseInt(flights[0]);
    System.out.println(
        "instruments | found | onset error s | sd s | loss error ft | sd ft | delay said | error s");
    ALL.forEach(equipment -> System.out.println(line(equipment, count)));
  }
}
