package io.github.ringstate.encounter;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.ringstate.Soak;
import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.dynamics.NoSteadyFlightException;
import io.github.ringstate.dynamics.State;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.inflow.TabulatedInflow;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every technique and entry within and at the limits of its parameters, in still and rough air. */
@Tag("soak")
class ExtremesTest {

  private static final RingStateInflow MODEL = RingStateInflow.standard();
  private static final TabulatedInflow TABLE = new TabulatedInflow(MODEL);
  private static final HeaveDamping BOUNDARY = new HeaveDamping(MODEL);

  private static final double NUDGE = 2e-4;

  private static Encounter drawn(int number) {
    return number % 2 == 0 ? DrawnEncounter.of(number) : DrawnEncounter.disturbed(number);
  }

  private static Encounter tabulated(int number) {
    return drawn(number).withInflow(TABLE, BOUNDARY);
  }

  @Test
  void everyFlightEndsInADeclaredOutcomeAndEveryNumberOnTheWayIsOne() {
    Soak.assertNoFaults("flights", 1_000_000, number -> fault(tabulated(number), Simulator.fast()));
  }

  @Test
  void soDoesEveryPreciseFlight() {
    Soak.assertNoFaults(
        "precise-flights", 50_000, number -> fault(drawn(number), Simulator.precise()));
  }

  private static String fault(Encounter encounter, Simulator simulator) {
    boolean[] finite = {true};
    Trajectory trajectory = new Trajectory(0.1, (phase, motion) -> finite[0] &= isFinite(motion));
    Outcome outcome;
    try {
      outcome = encounter.fly(simulator, trajectory);
    } catch (NoSteadyFlightException declared) {
      return "";
    } catch (RuntimeException fault) {
      return fault.toString();
    }
    if (!finite[0]) {
      return "not a number on the way";
    }
    boolean met = outcome.ending() != Ending.NO_ONSET;
    boolean bottomed = outcome.ending() == Ending.ARRESTED || outcome.ending() == Ending.GROUND;
    boolean right =
        presentAndNotNegative(met, outcome.peakDescent())
            && presentAndNotNegative(met, outcome.onsetTime())
            && presentAndNotNegative(bottomed, outcome.altitudeLoss())
            && presentAndNotNegative(outcome.ending() == Ending.ARRESTED, outcome.timeToArrest())
            && presentAndNotNegative(outcome.ending() == Ending.GROUND, outcome.impactSpeed());
    return right ? "" : outcome.toString();
  }

  private static boolean isFinite(Motion motion) {
    boolean finite =
        Double.isFinite(motion.loads().thrust())
            && Double.isFinite(motion.loads().shaftPower())
            && motion.rotorSpeed() > 0.499;
    for (int i = 0; i < State.SIZE; i++) {
      finite &= Double.isFinite(motion.state(i)) && Double.isFinite(motion.rate(i));
    }
    return finite;
  }

  private static boolean presentAndNotNegative(boolean present, OptionalDouble value) {
    return value.isPresent() == present && (!present || value.getAsDouble() >= 0);
  }

  /**
   * Second method: steps a twelfth as long. They part only where the outcome is sensitive, or by
   * what errors grow to, or the boundary leaves open, whoever flies.
   */
  @Test
  void aFlightInBulkEndsAsACarefulOneDoesAndLosesTheSame() {
    Soak.assertNoFaults("bulk-against-careful", 100_000, number -> parting(tabulated(number)));
  }

  /**
   * They parted by 0.27 and 0.36 ft of 77 ft when steps of an approach had eight times the error.
   */
  @ParameterizedTest
  @ValueSource(ints = {7056, 13_081})
  void anApproachOfAMinuteLeavesNoErrorThatCounts(int number) {
    Encounter encounter = tabulated(number);
    BulkFlight bulk = new BulkFlight(Approach.fly(encounter, Simulator.fast()));
    bulk.fly(encounter.recovery(), encounter.recognition());
    double loss = encounter.fly(Simulator.precise(), null).altitudeLoss().orElseThrow();
    assertEquals(Unit.FOOT.fromSi(loss), Unit.FOOT.fromSi(bulk.altitudeLoss()), 0.1);
  }

  private static String parting(Encounter encounter) {
    try {
      BulkFlight bulk = new BulkFlight(Approach.fly(encounter, Simulator.fast()));
      Ending ending = bulk.fly(encounter.recovery(), encounter.recognition());
      Outcome careful = encounter.fly(Simulator.fast(1e-7), null);
      double loss = Unit.FOOT.fromSi(careful.altitudeLoss().orElse(0));
      double other =
          ending == careful.ending() && loss > 0 ? Unit.FOOT.fromSi(bulk.altitudeLoss()) : 0;
      double apart = ending == careful.ending() ? Math.abs(other - loss) : Double.POSITIVE_INFINITY;
      double allowed = 0.1 + 0.002 * loss;
      return apart <= allowed
              || new EdgeCheck(encounter)
                  .isSensitive(encounter.recovery(), encounter.recognition(), careful)
              || apart <= allowed + 10 * ownError(encounter) + grazing(encounter)
          ? ""
          : ending
              + " "
              + other
              + " ft, careful "
              + careful.ending()
              + " "
              + loss
              + " ft, "
              + encounter.entry().name()
              + " "
              + encounter.recovery().name();
    } catch (NoSteadyFlightException declared) {
      return "";
    }
  }

  /**
   * How far off Dormand and Prince's pair is at a tolerance of 1e-7, ft. That is mostly some
   * millionths; but where a pilot hunts for speed, errors may grow a thousandfold within a minute,
   * whoever flies.
   */
  private static double ownError(Encounter encounter) {
    Outcome rough = encounter.fly(Simulator.dormandPrince(1e-7), null);
    Outcome fine = encounter.fly(Simulator.dormandPrince(1e-9), null);
    return rough.ending() == fine.ending()
        ? Unit.FOOT.fromSi(Math.abs(rough.altitudeLoss().orElse(0) - fine.altitudeLoss().orElse(0)))
        : 0;
  }

  /**
   * What a boundary changes that is wider and narrower by 0.0002, which is as much as a step in
   * bulk may be off, ft: mostly less than 0.1 ft, but a foot and more where the craft is about to
   * sink no faster as it meets the boundary, and meets it then or a tenth of a second later.
   */
  private static double grazing(Encounter encounter) {
    double[] losses =
        DoubleStream.of(-NUDGE, NUDGE)
            .mapToObj(
                by ->
                    encounter.withInflow(
                        encounter.inflow(),
                        new EdgeCheck.ShiftedBoundary(encounter.boundary(), by)))
            .mapToDouble(
                shifted -> shifted.fly(Simulator.fast(1e-7), null).altitudeLoss().orElse(0))
            .toArray();
    return Unit.FOOT.fromSi(Math.abs(losses[1] - losses[0]));
  }

  @Test
  void theDrawsComeToEveryEnding() {
    List<Ending> endings =
        Stream.of(Ending.values())
            .filter(
                ending ->
                    IntStream.range(0, 200)
                        .map(number -> 2 * number)
                        .anyMatch(
                            number ->
                                tabulated(number).fly(Simulator.fast(), null).ending() == ending))
            .toList();
    List<Ending> built = new ArrayList<>(List.of(Ending.values()));
    built.remove(Ending.STOPPED); // by events of one's own alone
    assertEquals(built, endings);
  }
}
