package io.github.ringstate.validation.catalogue;

import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.air.Air;
import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.inflow.BoundaryCriterion;
import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.inflow.RingBand;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.inflow.SmoothMomentum;
import io.github.ringstate.inflow.WakeTransport;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.rotor.Rotor;
import io.github.ringstate.validation.check.Status;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** One coefficient of a model is wrong by one per cent, and the catalogue fails. */
class ChecksCanFailTest {

  private static final double WRONG = 1.01;
  private static final Models RIGHT = new Models();

  @ParameterizedTest(name = "{0}")
  @MethodSource("spoilt")
  void aCoefficientThatIsWrongByOnePerCentFailsTheCatalogue(String coefficient, Models models) {
    assertTrue(
        Catalogue.topics().stream()
            .anyMatch(topic -> topic.section(models).worst() == Status.FAILED),
        coefficient);
  }

  static Stream<Arguments> spoilt() {
    return Stream.of(inflow(), boundaries(), airAndPower(), rotors(), craft(), others())
        .flatMap(arguments -> arguments);
  }

  private static Stream<Arguments> inflow() {
    double root = Math.sqrt(WRONG);
    Stream<Arguments> plain =
        Stream.of(
            Arguments.of(
                "momentum theory: v sqrt(...) = 1.01",
                new Models() {
                  @Override
                  InflowModel momentum() {
                    return new AlteredInflow(
                        RIGHT.momentum(),
                        (x, z) -> {
                          double axial = z < 0 ? Math.min(z / root, -2) : z / root;
                          double v = RIGHT.momentum().induced(x / root, axial);
                          return root * v - RIGHT.momentum().induced(x, z);
                        });
                  }
                }),
            Arguments.of(
                "momentum theory: its roots",
                new Models() {
                  @Override
                  double[] momentumRoots(double x, double z) {
                    return Arrays.stream(RIGHT.momentumRoots(x, z)).map(v -> WRONG * v).toArray();
                  }
                }),
            cubic("0.373", (x, z) -> 0.00373 * z * z * z),
            cubic("0.598", (x, z) -> 0.00598 * z * x * x),
            cubic("1.991", (x, z) -> -0.01991 * z),
            quartic("k", z -> 0.01),
            quartic("1.125", z -> -0.01125 * z),
            quartic("1.372", z -> -0.01372 * z * z),
            quartic("1.718", z -> -0.01718 * z * z * z),
            quartic("0.655", z -> -0.00655 * z * z * z * z),
            segments("k", z -> 0.01 * (z >= -1.5 ? 1 - z : 7 + 3 * z)),
            segments("1 z", z -> z >= -1.5 ? -0.01 * z : 0),
            segments("7", z -> z >= -1.5 ? 0 : 0.07),
            segments("3 z", z -> z >= -1.5 ? 0 : 0.03 * z));
    return Stream.of(
            plain,
            SmoothMomentum.PARAMETERS.stream().map(ChecksCanFailTest::smooth),
            RingStateInflow.PARAMETERS.stream().map(ChecksCanFailTest::ring))
        .flatMap(arguments -> arguments);
  }

  private static Arguments smooth(Parameter parameter) {
    InflowModel wrong = new SmoothMomentum(wrong(SmoothMomentum.PARAMETERS, parameter));
    return Arguments.of(
        "smooth momentum theory: " + parameter.name(),
        new Models() {
          @Override
          InflowModel smooth() {
            return wrong;
          }
        });
  }

  private static Arguments ring(Parameter parameter) {
    InflowModel wrong = new RingStateInflow(wrong(RingStateInflow.PARAMETERS, parameter));
    return Arguments.of(
        "ring-state model: " + parameter.name(),
        new Models() {
          @Override
          InflowModel ring() {
            return wrong;
          }
        });
  }

  private static ParameterSet wrong(List<Parameter> parameters, Parameter parameter) {
    return ParameterSet.standard(parameters).with(parameter, WRONG * parameter.standard());
  }

  private static Arguments cubic(String coefficient, DoubleBinaryOperator added) {
    return Arguments.of(
        "cubic bridge: " + coefficient,
        new Models() {
          @Override
          InflowModel cubic() {
            return new AlteredInflow(
                RIGHT.cubic(),
                (x, z) ->
                    1.5 * x * x + (2 * z + 3) * (2 * z + 3) < 1 ? added.applyAsDouble(x, z) : 0);
          }
        });
  }

  private static Arguments quartic(String coefficient, DoubleUnaryOperator added) {
    return Arguments.of(
        "quartic fit: " + coefficient,
        new Models() {
          @Override
          InflowModel quartic(double k) {
            return new AlteredInflow(RIGHT.quartic(k), (x, z) -> added.applyAsDouble(z));
          }
        });
  }

  private static Arguments segments(String coefficient, DoubleUnaryOperator added) {
    return Arguments.of(
        "two-segment fit: " + coefficient,
        new Models() {
          @Override
          InflowModel twoSegment(double k) {
            return new AlteredInflow(RIGHT.twoSegment(k), (x, z) -> k * added.applyAsDouble(z));
          }
        });
  }

  private static Stream<Arguments> boundaries() {
    return Stream.concat(
        WakeTransport.PARAMETERS.stream().map(ChecksCanFailTest::transport),
        Stream.of(
            Arguments.of(
                "tip vortex: 2 |z| = 1.01 v",
                new Models() {
                  @Override
                  BoundaryCriterion tipVortex() {
                    return new WrongTipVortex();
                  }
                })));
  }

  private static Arguments transport(Parameter parameter) {
    return Arguments.of(
        parameter.name(),
        new Models() {
          @Override
          BoundaryCriterion wakeTransport(InflowModel inflow) {
            return new WakeTransport(inflow, wrong(WakeTransport.PARAMETERS, parameter));
          }
        });
  }

  /** The tip-vortex criterion with both speeds of its boundary one per cent too high. */
  private static final class WrongTipVortex implements BoundaryCriterion {

    @Override
    public String name() {
      return RIGHT.tipVortex().name();
    }

    @Override
    public double margin(double edgewise, double axial) {
      return RIGHT.tipVortex().margin(edgewise / WRONG, axial / WRONG);
    }

    @Override
    public List<RingBand> bands(double edgewise) {
      RingBand right = RIGHT.tipVortex().bands(edgewise / WRONG).get(0);
      return List.of(new RingBand(WRONG * right.onset(), OptionalDouble.empty()));
    }

    @Override
    public OptionalDouble reach() {
      return RIGHT.tipVortex().reach();
    }
  }

  private static Stream<Arguments> airAndPower() {
    return Stream.of(
        Arguments.of(
            "atmosphere: lapse rate",
            new Models() {
              @Override
              Air air(double altitude) {
                return lapsed(altitude, WRONG * 0.0065);
              }
            }),
        Arguments.of(
            "atmosphere: density",
            new Models() {
              @Override
              Air air(double altitude) {
                Air air = StandardAtmosphere.at(altitude);
                return new Air(altitude, air.temperature(), air.pressure(), WRONG * air.density());
              }
            }),
        Arguments.of("piston engine: 1.132", piston(ratio -> WRONG * 1.132 * ratio - 0.132)),
        Arguments.of("piston engine: 0.132", piston(ratio -> 1.132 * ratio - WRONG * 0.132)),
        Arguments.of(
            "turbine: exponent",
            new Models() {
              @Override
              double turbineLapse(double ratio) {
                return Math.pow(ratio, WRONG * 0.8);
              }
            }));
  }

  private static Models piston(DoubleUnaryOperator lapse) {
    return new Models() {
      @Override
      double pistonLapse(double ratio) {
        return lapse.applyAsDouble(ratio);
      }
    };
  }

  private static Air lapsed(double altitude, double lapse) {
    Air air = StandardAtmosphere.at(altitude);
    double temperature = 288.15 - lapse * altitude;
    double pressure = 101_325 * Math.pow(temperature / 288.15, 9.80665 / (287.0529 * lapse));
    double density = air.density() * pressure / air.pressure() * air.temperature() / temperature;
    return new Air(altitude, temperature, pressure, density);
  }

  private static Stream<Arguments> rotors() {
    return Stream.of(
            Rotor.RADIUS,
            Rotor.SOLIDITY,
            Rotor.LIFT_SLOPE,
            Rotor.TWIST,
            Rotor.ROOT_CUTOUT,
            Rotor.PROFILE_DRAG,
            Rotor.PROFILE_DRAG_SLOPE,
            Rotor.PROFILE_DRAG_CURVATURE,
            Rotor.INDUCED_POWER_FACTOR,
            Rotor.BLADE_LOADING_LIMIT,
            Rotor.APPARENT_MASS,
            Rotor.MINIMUM_MASS_FLOW,
            Rotor.TIP_LOSS)
        .map(
            parameter -> {
              // A tip loss factor of the plain blade is 1 already and can only fall.
              double factor = parameter.equals(Rotor.TIP_LOSS) ? 1 / WRONG : WRONG;
              return Arguments.of(
                  "rotor: " + parameter.name(),
                  new Models() {
                    @Override
                    Rotor rotor(ParameterSet numbers) {
                      return new Rotor(numbers.with(parameter, factor * numbers.get(parameter)));
                    }
                  });
            });
  }

  private static Stream<Arguments> craft() {
    return Stream.of(
            Helicopter.MASS,
            Helicopter.ENGINE_TIME,
            Helicopter.DRIVE_TRAIN_LIMIT,
            Rotor.INERTIA,
            Rotor.TIP_SPEED,
            Rotor.PROFILE_DRAG,
            Rotor.INDUCED_POWER_FACTOR)
        .map(
            parameter ->
                Arguments.of(
                    "craft that flies: " + parameter.name(),
                    new Models() {
                      @Override
                      Helicopter craft(Helicopter declared) {
                        return declared.with(parameter, WRONG * declared.numbers().get(parameter));
                      }
                    }));
  }

  private static Stream<Arguments> others() {
    PittPetersInflow theory = RIGHT.dynamicInflow();
    return Stream.of(
        Arguments.of(
            "ground effect: R / 4Z",
            new Models() {
              @Override
              double groundEffect(double radius, double height, double edgewise, double induced) {
                return RIGHT.groundEffect(WRONG * radius, height, edgewise, induced);
              }
            }),
        threeState(
            "uniform mass",
            new PittPetersInflow(
                WRONG * theory.uniformMass(), theory.gradientMass(), theory.coupling())),
        threeState(
            "gradient mass",
            new PittPetersInflow(
                theory.uniformMass(), WRONG * theory.gradientMass(), theory.coupling())),
        threeState(
            "coupling",
            new PittPetersInflow(
                theory.uniformMass(), theory.gradientMass(), WRONG * theory.coupling())));
  }

  private static Arguments threeState(String coefficient, PittPetersInflow wrong) {
    return Arguments.of(
        "three-state theory: " + coefficient,
        new Models() {
          @Override
          PittPetersInflow dynamicInflow() {
            return wrong;
          }
        });
  }
}
