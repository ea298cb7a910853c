package io.github.ringstate.rotor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.quantity.ConvolvedLimit;
import io.github.ringstate.quantity.ParameterSet;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class RotorTest {

  private static final double DENSITY = 1.225;

  private static final ParameterSet STANDARD = ParameterSet.standard(Rotor.PARAMETERS);

  /** A rotor far from stall, so that the bend towards the limit is below the tolerance. */
  private static final ParameterSet FAR_FROM_STALL = STANDARD.with(Rotor.BLADE_LOADING_LIMIT, 0.25);

  static IntStream draws() {
    return IntStream.range(0, 200);
  }

  /**
   * The azimuthal mean of blade element lift, CT/s = (a/2) integral over r, psi of [theta(r) (r +
   * mu sin psi)^2 - lambda (r + mu sin psi)], by Gauss-Legendre quadrature over the span and equal
   * steps over the azimuth (exact for the trigonometric polynomial): no closed form of the span
   * integrals in it. Gessow and Myers, Aerodynamics of the Helicopter, ch. 8, without flapping.
   */
  @ParameterizedTest
  @MethodSource("draws")
  void thrustAgreesWithQuadratureOverSpanAndAzimuth(int draw) {
    SplittableRandom random = new SplittableRandom(1000 + draw);
    double outer = random.nextDouble(0.9, 1);
    double inner = random.nextDouble(0, 0.3);
    double twist = random.nextDouble(-20, 5);
    double slope = random.nextDouble(4.5, 7);
    double collective = random.nextDouble(0.02, 0.14);
    double tipSpeed = random.nextDouble(150, 250);
    double mu = random.nextDouble(0, 0.3);
    double lambda = random.nextDouble(0, 0.06);
    Rotor rotor =
        new Rotor(
            FAR_FROM_STALL
                .with(Rotor.TIP_LOSS, outer)
                .with(Rotor.ROOT_CUTOUT, inner)
                .with(Rotor.TWIST, twist)
                .with(Rotor.LIFT_SLOPE, slope));
    int azimuths = 8;
    double loading = 0;
    for (int k = 0; k < azimuths; k++) {
      double advance = mu * Math.sin(2 * Math.PI * k / azimuths);
      loading +=
          new GaussIntegratorFactory()
                  .legendre(12, inner, outer)
                  .integrate(
                      r -> {
                        double theta = collective + Math.toRadians(twist) * (r - 0.75);
                        double u = r + advance;
                        return slope / 2 * (theta * u * u - lambda * u);
                      })
              / azimuths;
    }
    double bent = ConvolvedLimit.within(loading, 0.25);
    double expected = DENSITY * rotor.area() * tipSpeed * tipSpeed * rotor.solidity() * bent;
    double thrust =
        rotor.thrust(
            DENSITY, tipSpeed, collective, mu * mu * tipSpeed * tipSpeed, lambda * tipSpeed);
    assertEquals(expected, thrust, 1e-9 * (Math.abs(expected) + rotor.area()));
  }

  /**
   * CT = (s a / 2) [theta (1/3 + mu^2/2) - lambda/2] for the untwisted full-span blade: Leishman,
   * Principles of Helicopter Aerodynamics, ch. 3 and 5 (from memory).
   */
  @ParameterizedTest
  @CsvSource({"0.10, 0, 0.04", "0.12, 0.1, 0.03", "0.08, 0.2, 0.02", "0.05, 0.3, -0.01"})
  void withoutTwistCutoutAndTipLossThrustIsTheTextbookFormula(
      double theta, double mu, double lambda) {
    Rotor rotor = untwistedFullSpan();
    double tipSpeed = 205;
    double ct = 0.03 * 5.73 / 2 * (theta * (1.0 / 3 + mu * mu / 2) - lambda / 2);
    double expected = ct * DENSITY * Math.PI * 3.9 * 3.9 * tipSpeed * tipSpeed;
    double thrust =
        rotor.thrust(DENSITY, tipSpeed, theta, mu * mu * tipSpeed * tipSpeed, lambda * tipSpeed);
    // up to half of its limit the loading is linear
    assertTrue(ct / 0.03 < 0.125, "" + ct);
    assertEquals(expected, thrust, 1e-12 * Math.abs(expected));
  }

  private static Rotor untwistedFullSpan() {
    return new Rotor(
        FAR_FROM_STALL.with(Rotor.TIP_LOSS, 1).with(Rotor.ROOT_CUTOUT, 0).with(Rotor.TWIST, 0));
  }

  /** The figures of the class's own description. */
  @Test
  void theBladeLoadingIsLinearToHalfItsLimitAndReachesItAtOnceAndAHalf() {
    assertEquals(1, bentOverLinear(0.5), 1e-12);
    assertEquals(0.93, bentOverLinear(1), 0.002);
    assertEquals(1 / 1.5, bentOverLinear(1.5), 1e-12);
  }

  private static double bentOverLinear(double share) {
    double limit = 0.25;
    double collective = share * limit / (5.73 / 2 / 3);
    double tipSpeed = 205;
    Rotor rotor = untwistedFullSpan();
    double loading =
        rotor.thrust(DENSITY, tipSpeed, collective, 0, 0)
            / (DENSITY * rotor.area() * tipSpeed * tipSpeed * rotor.solidity());
    return loading / (share * limit);
  }

  @Test
  void theBladeLoadingNeverFallsWithCollectiveAndNeverPassesItsLimit() {
    Rotor rotor = new Rotor(STANDARD);
    double scale = DENSITY * rotor.area() * 205 * 205 * rotor.solidity();
    double before = -0.16;
    for (double collective = -0.6; collective <= 0.6; collective += 0.001) {
      double loading = rotor.thrust(DENSITY, 205, collective, 0, 5) / scale;
      assertTrue(loading >= before - 1e-15, "falls at " + collective);
      assertTrue(Math.abs(loading) <= 0.16 + 1e-15, "limit passed at " + collective);
      before = loading;
    }
  }

  @Test
  void aBladeWithoutPitchInStillAirGivesNoThrust() {
    assertEquals(0, untwistedFullSpan().thrust(DENSITY, 205, 0, 0, 0), 1e-12);
  }

  /**
   * (s cd0 / 8) rho A Vtip^3 (1 + 4.65 mu^2): Leishman, ch. 5 (from memory), by hand, at the blade
   * loading at which the mean drag coefficient is given and at any if the polar is flat.
   */
  @ParameterizedTest
  @CsvSource({"205, 0", "205, 20", "180, 40", "100, 10"})
  void profilePowerIsTheTextbookFormula(double tipSpeed, double edgewise) {
    double area = Math.PI * 3.9 * 3.9;
    double mu = edgewise / tipSpeed;
    double expected =
        0.03 * 0.01 / 8 * DENSITY * area * Math.pow(tipSpeed, 3) * (1 + 4.65 * mu * mu);
    double squared = edgewise * edgewise;
    Rotor flat =
        new Rotor(
            STANDARD
                .with(BladeDrag.PROFILE_DRAG_SLOPE, 0)
                .with(BladeDrag.PROFILE_DRAG_CURVATURE, 0));
    assertEquals(
        expected,
        new Rotor(STANDARD).bladeDrag().profilePower(DENSITY, tipSpeed, squared, 0.07),
        1e-12 * expected);
    for (double loading = -0.1; loading < 0.3; loading += 0.05) {
      assertEquals(
          expected,
          flat.bladeDrag().profilePower(DENSITY, tipSpeed, squared, loading),
          1e-12 * expected);
    }
  }

  /**
   * Second method: the polar of Bailey, NACA TR 716, 1941 (from memory), summed over the span of a
   * blade of ideal twist, whose angle of attack is 4 (CT/s) / (a r).
   */
  @ParameterizedTest
  @ValueSource(doubles = {0, 0.04, 0.09, 0.12, 0.16, 0.2})
  void profilePowerRisesWithBladeLoadingAsThePolarDoes(double loading) {
    double area = Math.PI * 3.9 * 3.9;
    int strips = 20_000;
    double torque = 0;
    for (int i = 0; i < strips; i++) {
      double r = (i + 0.5) / strips;
      torque += (polar(loading, r) - polar(0.07, r)) * r * r * r / strips;
    }
    double expected = 0.03 / 2 * (torque + 0.01 / 4) * DENSITY * area * Math.pow(205, 3);
    assertEquals(
        expected,
        new Rotor(STANDARD).bladeDrag().profilePower(DENSITY, 205, 0, loading),
        1e-6 * expected);
  }

  private static double polar(double loading, double r) {
    double attack = 4 * loading / (5.73 * r);
    return 0.0087 - 0.0216 * attack + 0.4 * attack * attack;
  }

  /** P = T Vaxial + k T v (Leishman, ch. 5), k not applied to losses that are in v already. */
  @Test
  void thrustPowerCountsTheLossesOfNonUniformInflowOnce() {
    Rotor rotor = new Rotor(STANDARD);
    assertEquals(6000 * (2 + 1.15 * 7), rotor.thrustPower(6000, 2, 7, 0, 0), 1e-9);
    assertEquals(6000 * (2 + 7), rotor.thrustPower(6000, 2, 7, 1, 0), 1e-9);
    assertEquals(6000 * (-5 + 1.075 * 7), rotor.thrustPower(6000, -5, 7, 0.5, 0), 1e-9);
  }

  /** By hand: the ring's own losses are added, in proportion to k - 1. */
  @Test
  void theRingsOwnLossesComeOnTop() {
    Rotor rotor = new Rotor(STANDARD);
    assertEquals(6000 * (-4 + 11 + 0.15 * 7), rotor.thrustPower(6000, -4, 11, 1, 7), 1e-9);
    Rotor ideal = new Rotor(STANDARD.with(Rotor.INDUCED_POWER_FACTOR, 1));
    assertEquals(6000 * (-4 + 11), ideal.thrustPower(6000, -4, 11, 1, 7), 1e-9);
  }

  /** T = 2 rho A vh^2 (Rankine and Froude). */
  @Test
  void theHoverInducedVelocityIsThatOfMomentumTheory() {
    Rotor rotor = new Rotor(STANDARD);
    double vh = rotor.hoverInducedVelocity(6000, DENSITY);
    assertEquals(6000, 2 * DENSITY * Math.PI * 3.9 * 3.9 * vh * vh, 1e-9);
  }

  /**
   * 0.212 R / vh: apparent mass 0.637 of the sphere about the rotor, Carpenter and Fridovich, NACA
   * TN 3044, 1953 (from memory).
   */
  @ParameterizedTest
  @CsvSource({"3.9, 7.1", "5.2, 8.4", "8.2, 13"})
  void theInflowLagInHoverIs0212RadiusOverHoverInducedVelocity(double radius, double vh) {
    Rotor rotor = new Rotor(STANDARD.with(Rotor.RADIUS, radius));
    double expected = 0.637 * 4.0 / 3 / 4 * radius / vh;
    assertEquals(0.212, expected * vh / radius, 0.0005);
    assertEquals(expected, rotor.inflowLag().time(0, vh, vh, vh), 2e-4 * expected);
  }

  /** The linearised apparent-mass equation of a climb: tau = m / (2 rho A (2 v + Vz)). */
  @Test
  void theInflowLagInClimbIsThatOfTheLinearisedMomentumEquation() {
    double vh = 7;
    double climb = 14;
    double v = -climb / 2 + Math.sqrt(climb * climb / 4 + vh * vh);
    double expected = 0.637 * 4.0 / 3 * 3.9 / (2 * (2 * v + climb));
    assertEquals(
        expected, new Rotor(STANDARD).inflowLag().time(0, climb + v, v, vh), 2e-4 * expected);
  }

  @Test
  void theInflowLagIsPositiveAndBoundedWhateverTheFlow() {
    Rotor rotor = new Rotor(STANDARD);
    double vh = 7;
    double longest = 0.637 * 4.0 / 3 * 3.9 / 2 / vh;
    for (double x = 0; x <= 60; x += 1.5) {
      for (double w = -60; w <= 60; w += 0.75) {
        for (double v = -5; v <= 25; v += 2.5) {
          double lag = rotor.inflowLag().time(x, w, v, vh);
          assertTrue(lag > 0 && lag <= longest * (1 + 1e-12), x + " " + w + " " + v + ": " + lag);
        }
      }
    }
  }

  /** Second method: the thrust itself at two inflows. Far from stall it is linear in them. */
  @Test
  void theSlopeOfTheThrustIsThatOfTheThrustAtTwoInflows() {
    Rotor rotor = new Rotor(FAR_FROM_STALL);
    double slope = rotor.thrustPerInflow(DENSITY, 200);
    double less = rotor.thrust(DENSITY, 200, 0.08, 0, 8);
    double more = rotor.thrust(DENSITY, 200, 0.08, 0, 9);
    assertEquals(more - less, slope, 1e-6 * Math.abs(slope));
  }

  @Test
  void aRotorIsWhatItsNumbersSay() {
    Rotor rotor =
        new Rotor(
            STANDARD
                .with(Rotor.RADIUS, 6)
                .with(Rotor.INERTIA, 800)
                .with(Rotor.INDUCED_POWER_FACTOR, 1.2)
                .with(Rotor.TIP_SPEED, 210));
    assertEquals(6, rotor.radius());
    assertEquals(36 * Math.PI, rotor.area(), 1e-12);
    assertEquals(800, rotor.inertia());
    assertEquals(1.2, rotor.inducedPowerFactor());
    // the tip is a radius from the shaft
    assertEquals(35, rotor.nominalSpeed(), 1e-12);
  }
}
