package io.github.ringstate.encounter;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.ringstate.Soak;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.pilot.Autorotation;
import io.github.ringstate.pilot.CollectiveOnly;
import io.github.ringstate.pilot.Forward;
import io.github.ringstate.pilot.Lateral;
import io.github.ringstate.pilot.NoRecovery;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Two routes to the same numbers: Dormand and Prince's pair 8(5,3) against the extrapolation of
 * Gragg, Bulirsch and Stoer (Hairer, Norsett and Wanner, Solving Ordinary Differential Equations I;
 * as implemented by Hipparchus), and different tolerances and greatest steps of one.
 */
class TwoIntegratorsTest {

  private static final double HUNDREDTH_FOOT = Unit.FOOT.toSi(0.01);
  private static final double[] DELAYS = {0, 0.5, 1, 2, 3, 4};

  static List<Recovery> recoveries() {
    return List.of(
        new Forward(), new Lateral(), new Autorotation(), new CollectiveOnly(), new NoRecovery());
  }

  static Stream<Encounter> allDemoEncounters() {
    List<Encounter> all = new ArrayList<>();
    for (Helicopter craft : DemoCraft.ALL) {
      for (Entry entry :
          List.of(new Settling(), new Steep(), new Downwind(), new TailwindApproach())) {
        for (Recovery recovery : recoveries()) {
          for (double delay : DELAYS) {
            all.add(Encounter.of(craft).withEntry(entry).withRecovery(recovery).withDelay(delay));
          }
        }
      }
    }
    return all.stream();
  }

  /** One in seven of all in each build, every one in the long run. */
  @Tag("soak")
  @Test
  void aSecondIntegratorAgreesToAHundredthOfAFootOnDemoEncounters() {
    Simulator second = Simulator.extrapolation(1e-10);
    List<Encounter> all = allDemoEncounters().toList();
    int every = Soak.isWhole() ? 1 : 7;
    List<String> differences =
        IntStream.range(0, all.size() / every)
            .parallel()
            .mapToObj(i -> all.get(every * i))
            .map(encounter -> difference(encounter, encounter.fly(), encounter.fly(second, null)))
            .filter(text -> !text.isEmpty())
            .toList();
    assertEquals(List.of(), differences);
  }

  private static String difference(Encounter encounter, Outcome first, Outcome second) {
    boolean agree =
        first.ending() == second.ending()
            && within(HUNDREDTH_FOOT, first.altitudeLoss(), second.altitudeLoss())
            && within(HUNDREDTH_FOOT, first.lossAfterRecognition(), second.lossAfterRecognition())
            && within(1e-4, first.peakDescent(), second.peakDescent())
            && within(1e-3, first.timeToArrest(), second.timeToArrest());
    return agree
        ? ""
        : String.join(
            " ",
            encounter.craft().name(),
            encounter.entry().name(),
            encounter.recovery().name(),
            encounter.delay() + " s:",
            first.ending() + " " + first.altitudeLoss(),
            second.ending() + " " + second.altitudeLoss());
  }

  private static boolean within(double tolerance, OptionalDouble one, OptionalDouble other) {
    return one.isPresent() == other.isPresent()
        && (one.isEmpty() || Math.abs(one.getAsDouble() - other.getAsDouble()) <= tolerance);
  }

  static Stream<Encounter> someEncounters() {
    return Stream.of(
        Encounter.of(DemoCraft.TRAINER),
        Encounter.of(DemoCraft.TRAINER).withRecovery(new Lateral()).withDelay(3),
        Encounter.of(DemoCraft.UTILITY).withEntry(new Steep()).withDelay(2),
        Encounter.of(DemoCraft.TWIN).withEntry(new Downwind()).withRecovery(new Autorotation()),
        Encounter.of(DemoCraft.HEAVY).withHeight(25).withDelay(3));
  }

  /** Nothing in an event depends on the step: kinds the same, times to a microsecond. */
  @ParameterizedTest
  @MethodSource("someEncounters")
  void eventsDoNotDependOnStepOrTolerance(Encounter encounter) {
    List<Occurrence> expected = encounter.fly(Simulator.dormandPrince(1e-11), null).occurrences();
    List<Simulator> simulators =
        List.of(
            Simulator.dormandPrince(1e-10),
            Simulator.with(
                (least, greatest, absolute, relative) ->
                    new DormandPrince853Integrator(least, 0.04, absolute, relative),
                1e-11),
            Simulator.with(
                (least, greatest, absolute, relative) ->
                    new DormandPrince853Integrator(least, 0.013, absolute, relative),
                1e-11));
    for (Simulator simulator : simulators) {
      List<Occurrence> found = encounter.fly(simulator, null).occurrences();
      assertEquals(
          expected.stream().map(Occurrence::kind).toList(),
          found.stream().map(Occurrence::kind).toList());
      for (int i = 0; i < found.size(); i++) {
        Occurrence seen = found.get(i);
        assertEquals(expected.get(i).time(), seen.time(), 1e-6, () -> seen.kind().label());
        assertEquals(expected.get(i).height(), seen.height(), 1e-5, () -> seen.kind().label());
      }
    }
  }

  /** Second method: Hipparchus' own class, which interpolates for each event anew. */
  @ParameterizedTest
  @MethodSource("someEncounters")
  void statesThatEventsShareAreThoseOfHipparchusToTheLastBit(Encounter encounter) {
    Simulator own = Simulator.with(DormandPrince853Integrator::new, 1e-9);
    assertEquals(encounter.fly(own, null), encounter.fly(Simulator.dormandPrince(1e-9), null));
  }

  @ParameterizedTest
  @MethodSource("someEncounters")
  void theSameEncounterFlownTwiceGivesTheSameBits(Encounter encounter) {
    assertEquals(encounter.fly(), encounter.fly());
  }
}
