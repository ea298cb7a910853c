package io.github.ringstate.encounter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.craft.RotationSense;
import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.dynamics.State;
import io.github.ringstate.pilot.Autorotation;
import io.github.ringstate.pilot.CollectiveOnly;
import io.github.ringstate.pilot.Forward;
import io.github.ringstate.pilot.Lateral;
import io.github.ringstate.pilot.NoRecovery;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every technique and entry within and at the limits of its parameters: seeded random draws. */
class ExtremesTest {

  private static final int DRAWS = 800;

  private static ParameterSet draw(
      SplittableRandom random, List<Parameter> parameters, boolean atTheLimits) {
    ParameterSet set = ParameterSet.standard(parameters);
    for (Parameter parameter : parameters) {
      double share = random.nextDouble();
      double low = parameter.quantity().low();
      double high = parameter.quantity().high();
      double between = low + share * (high - low);
      set = set.with(parameter, atTheLimits ? (share < 0.5 ? low : high) : between);
    }
    return set;
  }

  private static Encounter draw(SplittableRandom random) {
    boolean limits = random.nextBoolean();
    Helicopter demo = DemoCraft.ALL.get(random.nextInt(DemoCraft.ALL.size()));
    double mass =
        random.nextDouble(
            demo.numbers().get(Helicopter.MINIMUM_MASS),
            demo.numbers().get(Helicopter.MAXIMUM_MASS));
    RotationSense sense =
        random.nextBoolean() ? RotationSense.CLOCKWISE : RotationSense.COUNTER_CLOCKWISE;
    Entry entry =
        switch (random.nextInt(6)) {
          case 0 -> new Settling(draw(random, Settling.PARAMETERS, limits));
          case 1 -> new Steep(draw(random, Steep.PARAMETERS, limits));
          case 2 -> new Downwind(draw(random, Downwind.PARAMETERS, limits));
          case 3 -> new Steep();
          case 4 -> new Downwind();
          default -> new Settling();
        };
    Recovery recovery =
        switch (random.nextInt(5)) {
          case 0 -> new Forward(draw(random, Forward.PARAMETERS, limits));
          case 1 -> new Lateral(draw(random, Lateral.PARAMETERS, limits));
          case 2 -> new Autorotation(draw(random, Autorotation.PARAMETERS, limits));
          case 3 -> new CollectiveOnly(draw(random, CollectiveOnly.PARAMETERS, limits));
          default -> new NoRecovery();
        };
    Encounter encounter =
        Encounter.of(demo.with(Helicopter.MASS, mass).with(sense))
            .withEntry(entry)
            .withRecovery(recovery)
            .withDelay(random.nextInt(5) == 0 ? 0 : random.nextDouble(0, 12))
            .withAir(StandardAtmosphere.at(random.nextDouble(0, 2400)));
    return random.nextInt(3) == 0 ? encounter.withHeight(random.nextDouble(1, 200)) : encounter;
  }

  @Test
  void everyFlightEndsInADeclaredOutcomeAndEveryNumberOnTheWayIsOne() {
    List<String> faults =
        IntStream.range(0, DRAWS)
            .parallel()
            .mapToObj(
                seed -> {
                  String fault = fault(draw(new SplittableRandom(seed)));
                  return fault.isEmpty() ? "" : "draw " + seed + ": " + fault;
                })
            .filter(text -> !text.isEmpty())
            .toList();
    assertEquals(List.of(), faults);
  }

  private static String fault(Encounter encounter) {
    boolean[] finite = {true};
    Trajectory trajectory = new Trajectory(0.1, (phase, motion) -> finite[0] &= isFinite(motion));
    Outcome outcome = encounter.fly(Simulator.precise(), trajectory);
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
        Double.isFinite(motion.loads().thrust()) && Double.isFinite(motion.loads().shaftPower());
    for (int i = 0; i < State.SIZE; i++) {
      finite &= Double.isFinite(motion.state(i)) && Double.isFinite(motion.rate(i));
    }
    return finite;
  }

  private static boolean presentAndNotNegative(boolean present, OptionalDouble value) {
    return value.isPresent() == present && (!present || value.getAsDouble() >= 0);
  }

  @Test
  void theDrawsComeToEveryEnding() {
    List<Ending> endings =
        Stream.of(Ending.values())
            .filter(
                ending ->
                    IntStream.range(0, 60)
                        .anyMatch(
                            seed -> draw(new SplittableRandom(seed)).fly().ending() == ending))
            .toList();
    List<Ending> built = new ArrayList<>(List.of(Ending.values()));
    built.remove(Ending.STOPPED); // by events of one's own alone
    assertEquals(built, endings);
    assertTrue(DRAWS > 60);
  }
}
