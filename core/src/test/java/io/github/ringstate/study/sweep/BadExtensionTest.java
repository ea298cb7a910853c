package io.github.ringstate.study.sweep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.encounter.EntryKind;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.inflow.InflowOver;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.pilot.Forward;
import io.github.ringstate.pilot.Phase;
import io.github.ringstate.pilot.Phases;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleBinaryOperator;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.hipparchus.distribution.continuous.ConstantRealDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** An extension that no sweep could fly is refused at once, with its name and that of the part. */
class BadExtensionTest {

  /** An extension, and what its refusal has to say. */
  record Bad(String said, SweepExtension extension) {
    @Override
    public String toString() {
      return said;
    }
  }

  /** An extension of the parts it is given. */
  private record Own(String name, List<Object> parts) implements SweepExtension {

    static Own of(Object part) {
      return new Own("mine", List.of(part));
    }

    static Own of(String column, double value) {
      return of(new OutputColumn(column, point -> OptionalDouble.of(value)));
    }

    private <T> List<T> all(Class<T> kind) {
      return parts.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    @Override
    public List<Technique> recoveries() {
      return all(Technique.class);
    }

    @Override
    public List<EntryKind> entries() {
      return all(EntryKind.class);
    }

    @Override
    public List<InflowKind> inflows() {
      return all(InflowKind.class);
    }

    @Override
    public List<DelayKind> delays() {
      return all(DelayKind.class);
    }

    @Override
    public List<OutputColumn> columns() {
      return all(OutputColumn.class);
    }
  }

  /** An extension whose list of recoveries is what comes of asking for it. */
  private record Listing(String name, Supplier<List<Technique>> all) implements SweepExtension {
    @Override
    public List<Technique> recoveries() {
      return all.get();
    }
  }

  private static Technique recovery(
      String name, List<Parameter> numbers, Function<ParameterSet, Recovery> maker) {
    return new Technique(
        name, name, "does it", Technique.Purpose.WAY_OUT, "", numbers, List.of(), maker);
  }

  private static Technique phased(String name, Supplier<Recovery> maker) {
    return recovery(name, List.of(), numbers -> maker.get());
  }

  private static InflowKind inflow(String name, DoubleBinaryOperator induced) {
    RingStateInflow base = RingStateInflow.standard();
    InflowModel model =
        new InflowOver(base, induced) {
          @Override
          public String name() {
            return name;
          }

          @Override
          public double induced(double edgewise, double axial) {
            return induced.applyAsDouble(edgewise, axial);
          }
        };
    return new InflowKind(name, List.of(), numbers -> model, over -> new HeaveDamping(base));
  }

  private static IllegalStateException boom() {
    return new IllegalStateException("boom");
  }

  static Stream<Bad> bad() {
    EntryKind steep = EntryKind.STANDARD;
    return Stream.of(
        new Bad("allowed: lower case, words joined by hyphens", new Own("My one", List.of())),
        new Bad("gives null in place of its name", new Own(null, List.of())),
        new Bad(
            "gives no list of recoverys, but throws",
            new Listing(
                "mine",
                () -> {
                  throw boom();
                })),
        new Bad("list of recoverys", new Listing("mine", () -> null)),
        new Bad("list of recoverys", new Listing("mine", () -> Arrays.asList((Technique) null))),
        new Bad("the recovery 'Up'", Own.of(phased("Up", Forward::new))),
        new Bad("the recovery 'forward', a name that is taken", Own.of(Technique.FORWARD)),
        new Bad(
            "gives no recovery up, but throws java.lang.NullPointerException",
            Own.of(phased("up", () -> null))),
        new Bad(
            "gives no recovery up, but throws",
            Own.of(
                phased(
                    "up",
                    () -> {
                      throw boom();
                    }))),
        new Bad(
            "the recovery up, which has no phases",
            Own.of(phased("up", () -> new Phases("up", List.of())))),
        new Bad(
            "the number 'delay_s', a name that is taken",
            Own.of(
                recovery(
                    "up",
                    List.of(Parameter.of("delay", Unit.SECOND, 0, 1, 0, "assumed")),
                    numbers -> new Forward()))),
        new Bad(
            "gives no entry drop, but throws",
            Own.of(
                new EntryKind(
                    "drop",
                    "drop",
                    "drops",
                    "",
                    steep.wind(),
                    steep.windFrom(),
                    steep.parameters(),
                    numbers -> {
                      throw boom();
                    }))),
        new Bad("whose induced velocity is NaN", Own.of(inflow("mine", (e, a) -> Double.NaN))),
        new Bad("whose induced velocity is Infinity", Own.of(inflow("mine", (e, a) -> 1 / 0.0))),
        new Bad(
            "gives null in place of its boundary",
            Own.of(
                new InflowKind(
                    "mine", List.of(), numbers -> RingStateInflow.standard(), over -> null))),
        new Bad("whose median is NaN s", Own.of(delay(Double.NaN, 1))),
        new Bad("whose median is 61.0 s", Own.of(delay(61, 1))),
        new Bad("whose quantile 0.001 is -1.0 s", Own.of(delay(1, -1))),
        new Bad("whose quantile 0.001 is Infinity s", Own.of(delay(1, 1 / 0.0))),
        new Bad("whose quantile 0.001 is NaN s", Own.of(delay(1, Double.NaN))),
        new Bad("the column 'Mine'", Own.of("Mine", 1)),
        new Bad("not beginning as a setting does", Own.of("craft_mine", 1)),
        new Bad("the column 'sensitive', a name that is taken", Own.of("sensitive", 1)));
  }

  private static DelayKind delay(double median, double always) {
    return new DelayKind("slow", median, new ConstantRealDistribution(always));
  }

  @ParameterizedTest
  @MethodSource("bad")
  void whatCannotBeUsedIsRefusedByName(Bad bad) {
    BadExtensionException refused =
        assertThrows(
            BadExtensionException.class, () -> Settings.of(List.of(bad.extension()), Map.of()));
    assertTrue(refused.getMessage().contains(bad.said()), refused.getMessage());
  }

  /** A part that is good when it is asked and bad in flight ends the sweep with its point. */
  @Test
  void whatGoesWrongInFlightEndsTheSweepWithThePoint() {
    AtomicInteger asked = new AtomicInteger();
    List<SweepExtension> all =
        List.of(
            Own.of(
                phased(
                    "up",
                    () ->
                        new Phases(
                            "up",
                            List.of(
                                Phase.last(
                                    "up",
                                    (seen, controls) -> {
                                      asked.incrementAndGet();
                                      throw boom();
                                    }))))),
            new Own("other", Own.of("mine_ft", Double.NaN).parts()));
    for (String name : List.of("up", "forward")) {
      SweepSpec spec = Sweeps.spec(List.of(Sweeps.word("pilot.technique", name)));
      Sweep sweep = new Sweep(spec, Settings.of(all, Map.of()));
      PointFaultException fault = assertThrows(PointFaultException.class, () -> sweep.rows(0, 1));
      String cause = String.valueOf(fault.getCause().getMessage());
      assertTrue(cause.contains(name.equals("up") ? "boom" : "mine_ft"), cause);
    }
    assertEquals(1, asked.get());
  }

  /** Delays of 0 and of a minute are the ends of what a pilot may take. */
  @Test
  void whatCanBeFlownIsTakenWithTheBuiltInParts() {
    for (double delay : new double[] {0, 60}) {
      Settings settings = Settings.of(List.of(Own.of(delay(delay, delay))), Map.of());
      assertEquals(delay, settings.plugins().delays().get("slow").median());
    }
    RingStateInflow base = RingStateInflow.standard();
    InflowKind mine = inflow("mine", base::induced);
    assertEquals(mine, Settings.of(List.of(Own.of(mine)), Map.of()).inflowKinds().get("mine"));
    EntryKind steep = EntryKind.STANDARD;
    EntryKind drop =
        new EntryKind(
            "drop",
            "drop",
            "drops",
            "",
            steep.wind(),
            steep.windFrom(),
            steep.parameters(),
            steep.maker());
    assertEquals(drop, Settings.of(List.of(Own.of(drop)), Map.of()).entryKinds().get("drop"));
  }

  @Test
  void theSlopeAndTheLossesOfAnInflowAreNumbersToo() {
    for (boolean slope : new boolean[] {true, false}) {
      RingStateInflow base = RingStateInflow.standard();
      InflowModel model =
          new InflowOver(base, "mine", slope) {
            @Override
            public String name() {
              return "mine";
            }

            @Override
            public double slope(double edgewise, double axial) {
              return slope ? Double.NaN : base.slope(edgewise, axial);
            }

            @Override
            public double lossShare(double edgewise, double axial) {
              return Double.NaN;
            }
          };
      InflowKind kind =
          new InflowKind("mine", List.of(), numbers -> model, over -> new HeaveDamping(base));
      BadExtensionException refused =
          assertThrows(
              BadExtensionException.class, () -> Settings.of(List.of(Own.of(kind)), Map.of()));
      String said = slope ? "whose slope is NaN" : "whose share of losses is NaN";
      assertTrue(refused.getMessage().contains(said), refused.getMessage());
    }
  }
}
