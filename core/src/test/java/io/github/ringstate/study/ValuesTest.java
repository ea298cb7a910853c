package io.github.ringstate.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.air.Gusts;
import io.github.ringstate.air.GustyWind;
import io.github.ringstate.air.LowAltitudeGusts;
import io.github.ringstate.air.PowerLawWind;
import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.air.TurningWind;
import io.github.ringstate.air.Wind;
import io.github.ringstate.chance.Drawing;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.dynamics.RingStateShaking;
import io.github.ringstate.encounter.Disturbances;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.EntryKind;
import io.github.ringstate.encounter.FlightLimits;
import io.github.ringstate.inflow.CubicBridge;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.inflow.MomentumTheory;
import io.github.ringstate.inflow.QuarticFit;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.inflow.SmoothMomentum;
import io.github.ringstate.inflow.TabulatedInflow;
import io.github.ringstate.inflow.TipVortex;
import io.github.ringstate.inflow.TwoSegmentFit;
import io.github.ringstate.inflow.WakeTransport;
import io.github.ringstate.pilot.Cues;
import io.github.ringstate.pilot.Delays;
import io.github.ringstate.pilot.FirstToFire;
import io.github.ringstate.pilot.FirstToFire.Branch;
import io.github.ringstate.pilot.Lateral;
import io.github.ringstate.pilot.Limited;
import io.github.ringstate.pilot.NoRecovery;
import io.github.ringstate.pilot.PilotGroups;
import io.github.ringstate.pilot.Recognition;
import io.github.ringstate.pilot.Spread;
import io.github.ringstate.pilot.Switched;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.study.model.ModelSpread;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.UniformRealDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Craft, air, winds, entries, recoveries, inflow models, encounters and studies are values. */
class ValuesTest {

  private static final List<Object> ALL = values().map(Supplier::get).toList();
  private static final Pattern ADDRESS = Pattern.compile("@[0-9a-f]{4,}|Lambda");

  private static RingStateInflow inflow() {
    return RingStateInflow.standard().with(RingStateInflow.EXIT_TOTAL, 1.35);
  }

  private static Encounter encounter() {
    return Encounter.of(DemoCraft.TRAINER.with(Helicopter.MASS, 590))
        .withAir(StandardAtmosphere.at(1000))
        .withWind(new Wind(3, 1))
        .withInflow(new TabulatedInflow(inflow()), new HeaveDamping(inflow()))
        .withLimits(FlightLimits.STANDARD.with(FlightLimits.TIME_PAST_ARREST, 4))
        .withRecognition(Recognition.afterCue(Cues.standard(1), 0.75))
        .withDisturbances(Disturbances.NONE.with(Disturbances.SHEAR, 0.1).withSeed(7));
  }

  private static PilotStudy study() {
    return new PilotStudy(
        encounter(),
        PilotGroups.within(
            PilotGroups.someWrongAtFirst(0.2, Technique.NONE.standard(), 1, Technique.FORWARD),
            ParameterSet.standard(Limited.PARAMETERS)),
        Optional.of(Delays.logNormal(1, 2)),
        5);
  }

  static Stream<Supplier<Object>> values() {
    Stream<Supplier<Object>> parts =
        Stream.of(
            () -> DemoCraft.HEAVY.with(Helicopter.MASS, 9000),
            () -> StandardAtmosphere.at(1200),
            () -> new Wind(4, -2),
            () -> PowerLawWind.of(new Wind(5, 0), 0.2),
            () -> TurningWind.of(new Wind(4, 0), 1, 2, 8),
            () -> GustyWind.of(new Wind(4, 0), Gusts.of(LowAltitudeGusts.at(30, 5), 6, 3), 0.5),
            () -> new RingStateShaking(ParameterSet.standard(RingStateShaking.PARAMETERS), 40, 9),
            ValuesTest::inflow,
            SmoothMomentum::standard,
            () -> new TabulatedInflow(inflow()),
            CubicBridge::new,
            MomentumTheory::new,
            () -> new QuarticFit(1.2),
            () -> new TwoSegmentFit(1.2),
            TipVortex::new,
            WakeTransport::standard,
            () -> new HeaveDamping(inflow()),
            () -> new FirstToFire(List.of(new Branch(Cues.vibration(0.1), new Lateral()))),
            () -> Switched.onCue(new Lateral(), Cues.sinkNotAnswering(3), new NoRecovery()),
            () -> new Limited(new Lateral()),
            () -> Cues.standard(2),
            () -> Recognition.afterCue(Cues.standard(2), 1),
            () -> Cues.together(Cues.sinkShown(1, 2), Cues.lowAirspeed(8, 10), Cues.drift(0, 3)),
            () ->
                Switched.after(
                    Technique.NONE.standard(), 1, new Limited(Technique.LATERAL.standard())),
            () -> PilotGroups.all(Technique.LATERAL.standard()),
            () -> Spread.normal(Helicopter.MASS, 30),
            () -> FlightLimits.STANDARD.with(FlightLimits.ENTRY_TIME, 20),
            ValuesTest::encounter,
            ValuesTest::study,
            () -> new ModelSpread(study(), List.of(inflow(), RingStateInflow.standard())),
            () -> Sampling.of(50),
            () -> new Briefing(0.95, 5, Sampling.of(50)));
    Stream<Supplier<Object>> entries = EntryKind.ALL.stream().map(kind -> kind::standard);
    Stream<Supplier<Object>> kinds = EntryKind.ALL.stream().map(kind -> () -> kind);
    Stream<Supplier<Object>> recoveries = Technique.ALL.stream().map(each -> each::standard);
    Stream<Supplier<Object>> techniques = Technique.ALL.stream().map(each -> () -> each);
    return Stream.of(parts, entries, kinds, recoveries, techniques).flatMap(each -> each);
  }

  @ParameterizedTest
  @MethodSource("values")
  void whatIsMadeAlikeIsEqualAndReadable(Supplier<Object> maker) {
    Object one = maker.get();
    Object alike = maker.get();
    assertEquals(one, alike);
    assertEquals(one.hashCode(), alike.hashCode());
    assertEquals(one.toString(), alike.toString());
    assertFalse(ADDRESS.matcher(one.toString()).find(), one.toString());
    assertEquals(1, ALL.stream().filter(one::equals).count(), one.toString());
  }

  /** Every number of the parameters stands in the text with its unit, as in a file. */
  private static void assertNames(ParameterSet numbers, Object in) {
    for (Parameter parameter : numbers.parameters()) {
      String said = parameter.key() + " = " + numbers.get(parameter);
      assertTrue(in.toString().contains(said), said + " in " + in);
    }
  }

  @Test
  void everyNumberIsNamedWithItsUnit() {
    Encounter encounter = encounter();
    assertNames(encounter.craft().numbers(), encounter);
    assertNames(encounter.entry().numbers(), encounter);
    assertNames(encounter.recovery().numbers(), encounter);
    assertNames(inflow().numbers(), encounter);
    assertNames(encounter.disturbances().numbers(), encounter);
    assertNames(encounter.limits().numbers(), encounter);
    assertNames(encounter.craft().numbers(), study());
    Technique.ALL.forEach(each -> assertNames(each.standard().numbers(), each.standard()));
    EntryKind.ALL.forEach(each -> assertNames(each.standard().numbers(), each.standard()));
    for (String said :
        List.of("toward north 3.0 m/s", "0.75 s from the cue", "1000.0 m pressure altitude")) {
      assertTrue(encounter.toString().contains(said), said + " in " + encounter);
    }
    String study = study().toString();
    assertTrue(study.contains("seed 5"), study);
    assertTrue(study.contains("LogNormal"), study);
  }

  @Test
  void oneNumberThatDiffersMakesAnotherStudy() {
    PilotStudy study = study();
    assertFalse(study.equals(new PilotStudy(encounter(), study.pilots(), study.delays(), 6)));
    assertFalse(
        study.equals(
            new PilotStudy(encounter(), study.pilots(), Optional.of(Delays.logNormal(1, 2.1)), 5)));
    PilotStudy independent =
        new PilotStudy(
            study.base(), study.pilots(), study.delays(), study.seed(), Drawing.INDEPENDENT);
    assertFalse(study.equals(independent));
    assertTrue(independent.toString().contains("drawn independent"), independent.toString());
  }

  @Test
  void spreadsOfOneSampleThatIsDrawnInAnotherWayDifferAsTheirIntervalsDo() {
    Ending[] endings = new Ending[64];
    Arrays.fill(endings, Ending.ARRESTED);
    double[] losses = IntStream.range(0, 64).mapToDouble(i -> 10 + i).toArray();
    LossSpread even = LossSpread.of(endings, losses, Drawing.SOBOL);
    LossSpread independent = LossSpread.of(endings, losses, Drawing.INDEPENDENT);
    assertEquals(even, LossSpread.of(endings, losses, Drawing.SOBOL));
    assertEquals(independent, LossSpread.of(endings, losses));
    assertFalse(even.quantile(0.5, 0.95).equals(independent.quantile(0.5, 0.95)));
    assertFalse(even.equals(independent));
    assertFalse(even.equals(even.stopped()));
  }

  static Stream<Record> records() {
    return Stream.of(encounter(), study(), Recognition.afterOnset(1));
  }

  /** Null is refused where it is given, whatever it is given for. */
  @ParameterizedTest
  @MethodSource("records")
  void nullIsRefusedWhereItIsGiven(Record value) throws ReflectiveOperationException {
    RecordComponent[] components = value.getClass().getRecordComponents();
    Class<?>[] types =
        Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
    Constructor<?> constructor = value.getClass().getDeclaredConstructor(types);
    List<Object> given = new ArrayList<>();
    for (RecordComponent component : components) {
      given.add(component.getAccessor().invoke(value));
    }
    for (int i = 0; i < types.length; i++) {
      if (!types[i].isPrimitive()) {
        Object[] arguments = given.toArray();
        arguments[i] = null;
        InvocationTargetException refused =
            assertThrows(InvocationTargetException.class, () -> constructor.newInstance(arguments));
        assertTrue(refused.getCause() instanceof NullPointerException, components[i].getName());
      }
    }
  }

  /** One rule: a number is refused, what is drawn counts as the nearer end. */
  @Test
  void delaysOutsideTheRangeAreCutWhereTheyAreDrawnAndRefusedWhereTheyAreGiven() {
    Encounter base = Encounter.of(DemoCraft.TRAINER);
    PilotStudy wide =
        new PilotStudy(base, Technique.LATERAL, Optional.of(new NormalDistribution(30, 100)), 1);
    boolean[] cut = new boolean[2];
    for (int i = 0; i < 60; i++) {
      double delay = wide.encounter(i).delay();
      assertTrue(delay >= 0 && delay <= 60, delay + " s");
      cut[0] |= delay == 0;
      cut[1] |= delay == 60;
    }
    assertTrue(cut[0] && cut[1]);
    assertThrows(IllegalArgumentException.class, () -> base.withDelay(-0.1));
    assertThrows(IllegalArgumentException.class, () -> base.withDelay(60.1));
    IllegalArgumentException outside =
        assertThrows(
            IllegalArgumentException.class,
            () ->
                new PilotStudy(
                    base, Technique.LATERAL, Optional.of(new UniformRealDistribution(-3, -1)), 1));
    assertTrue(outside.getMessage().startsWith(PilotStudy.NO_DELAY));
  }
}
