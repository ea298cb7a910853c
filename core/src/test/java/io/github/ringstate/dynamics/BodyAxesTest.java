package io.github.ringstate.dynamics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.air.Wind;
import io.github.ringstate.craft.CraftBody;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.craft.RotationSense;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Directions of the forces, against the usual aircraft angles (heading, pitch, bank about the axes
 * down, right, nose; ISO 1151-1, from memory), as a product of three elementary rotations.
 */
class BodyAxesTest {

  private static final Helicopter CRAFT = DemoCraft.TRAINER;

  static IntStream draws() {
    return IntStream.range(0, 100);
  }

  static double[] someState(SplittableRandom random) {
    double[] state = new double[State.SIZE];
    state[State.SPEED_NORTH] = random.nextDouble(-15, 15);
    state[State.SPEED_EAST] = random.nextDouble(-15, 15);
    state[State.SPEED_UP] = random.nextDouble(-12, 6);
    state[State.PITCH] = random.nextDouble(-0.5, 0.5);
    state[State.BANK] = random.nextDouble(-0.7, 0.7);
    state[State.HEADING] = random.nextDouble(-7, 7);
    state[State.COLLECTIVE] = random.nextDouble(0.03, 0.25);
    state[State.INDUCED] = random.nextDouble(2, 14);
    state[State.ROTOR_SPEED] = random.nextDouble(0.8, 1.1) * CRAFT.rotor().nominalSpeed();
    return state;
  }

  /** From body axes (nose, right, shaft) to the earth's (north, east, up). */
  private static RealMatrix toEarth(double[] state) {
    double heading = state[State.HEADING];
    double pitch = state[State.PITCH];
    double bank = state[State.BANK];
    RealMatrix aboutDown =
        MatrixUtils.createRealMatrix(
            new double[][] {
              {Math.cos(heading), -Math.sin(heading), 0},
              {Math.sin(heading), Math.cos(heading), 0},
              {0, 0, 1}
            });
    RealMatrix aboutRight =
        MatrixUtils.createRealMatrix(
            new double[][] {
              {Math.cos(pitch), 0, Math.sin(pitch)},
              {0, 1, 0},
              {-Math.sin(pitch), 0, Math.cos(pitch)}
            });
    RealMatrix aboutNose =
        MatrixUtils.createRealMatrix(
            new double[][] {
              {1, 0, 0},
              {0, Math.cos(bank), -Math.sin(bank)},
              {0, Math.sin(bank), Math.cos(bank)}
            });
    RealMatrix upsideDown = MatrixUtils.createRealDiagonalMatrix(new double[] {1, 1, -1});
    return upsideDown
        .multiply(aboutDown)
        .multiply(aboutRight)
        .multiply(aboutNose)
        .multiply(upsideDown);
  }

  private static RealVector vector(double... elements) {
    return MatrixUtils.createRealVector(elements);
  }

  @ParameterizedTest
  @MethodSource("draws")
  void accelerationIsTheSumOfTheForcesTurnedFromTheBodyToTheEarth(int draw) {
    SplittableRandom random = new SplittableRandom(500 + draw);
    double[] state = someState(random);
    Wind wind = new Wind(random.nextDouble(-10, 10), random.nextDouble(-10, 10));
    Motion motion = AtSeaLevel.in(wind, CRAFT).at(0, state);

    RealVector throughAir =
        vector(
            state[State.SPEED_NORTH] - wind.north(),
            state[State.SPEED_EAST] - wind.east(),
            state[State.SPEED_UP]);
    RealMatrix toEarth = toEarth(state);
    RealVector inBody = toEarth.transpose().operate(throughAir);
    double nose = inBody.getEntry(0);
    double right = inBody.getEntry(1);
    double shaft = inBody.getEntry(2);
    double half = StandardAtmosphere.at(0).density() / 2;
    double torque =
        motion.loads().enginePower()
            / ((1 + CRAFT.si(Helicopter.TRANSMISSION_AND_TAIL_ROTOR_POWER))
                * state[State.ROTOR_SPEED]);
    RealVector force =
        vector(
            -half * CRAFT.si(CraftBody.FORWARD_AREA) * nose * Math.abs(nose),
            torque / CRAFT.si(CraftBody.TAIL_ARM)
                - half * CRAFT.si(CraftBody.SIDE_AREA) * right * Math.abs(right),
            motion.loads().thrust() * (1 - CRAFT.si(CraftBody.DOWNLOAD))
                - half * CRAFT.si(CraftBody.UNDERSIDE_AREA) * shaft * Math.abs(shaft));
    RealVector expected =
        toEarth.operate(force).add(vector(0, 0, -CRAFT.weight())).mapDivide(CRAFT.mass());
    assertEquals(expected.getEntry(0), motion.rate(State.SPEED_NORTH), 1e-9);
    assertEquals(expected.getEntry(1), motion.rate(State.SPEED_EAST), 1e-9);
    assertEquals(expected.getEntry(2), motion.rate(State.SPEED_UP), 1e-9);

    double hover = motion.hoverInduced();
    assertEquals(shaft / hover, motion.axialOverHover(), 1e-12);
    assertEquals(Math.hypot(nose, right) / hover, motion.edgewiseOverHover(), 1e-12);
    assertEquals(
        Math.hypot(throughAir.getEntry(0), throughAir.getEntry(1)), motion.airspeed(), 1e-11);
  }

  @Test
  void noseDownAcceleratesAheadAndBankAcceleratesToTheLowerSide() {
    EquationsOfMotion motion = AtSeaLevel.calm(CRAFT);
    double[] hover = AtSeaLevel.hover(motion);
    double[] noseDown = hover.clone();
    noseDown[State.PITCH] -= 0.1;
    assertTrue(motion.at(0, noseDown).rate(State.SPEED_NORTH) > 0.9);
    double[] right = hover.clone();
    right[State.BANK] += 0.1;
    assertTrue(motion.at(0, right).rate(State.SPEED_EAST) > 0.9);
    double[] eastbound = noseDown.clone();
    eastbound[State.HEADING] = Math.PI / 2;
    assertTrue(motion.at(0, eastbound).rate(State.SPEED_EAST) > 0.9);
  }

  /** Common practice, no source: such a helicopter hovers with the left skid or wheel low. */
  @Test
  void aCounterClockwiseRotorHoversLeftSideLowAndAClockwiseOneRightSideLow() {
    EquationsOfMotion left = AtSeaLevel.calm(CRAFT.with(RotationSense.COUNTER_CLOCKWISE));
    EquationsOfMotion right = AtSeaLevel.calm(CRAFT.with(RotationSense.CLOCKWISE));
    double bank = Trim.find(left, 0, 0).bank();
    assertTrue(bank < Math.toRadians(-1) && bank > Math.toRadians(-5), "bank " + bank);
    assertEquals(-bank, Trim.find(right, 0, 0).bank(), 1e-9);
  }

  /** A manoeuvre in all axes, in terms of what the pilot sees, so that it turns with the craft. */
  private static Commander manoeuvre(int side) {
    return (seen, controls) -> {
      double swing = Math.sin(1.3 * seen.time());
      controls.pitch(-0.2 * swing, 0.3);
      controls.bank(side * (0.25 * swing + 0.05), 0.4);
      controls.collective(0.12 + 0.02 * Math.cos(seen.time()), 0.1);
      controls.yaw(side * 0.2 * swing);
    };
  }

  private static double[] flown(Helicopter craft, Wind wind, double[] start, int side) {
    EquationsOfMotion motion = AtSeaLevel.in(wind, craft);
    motion.commandedBy(manoeuvre(side));
    return Leg.fly(Propagators.dormandPrince(1e-11), motion, 0, start, 12, List.of()).state();
  }

  private static double[] hoverish() {
    double[] start = new double[State.SIZE];
    start[State.SPEED_NORTH] = 3;
    start[State.SPEED_EAST] = -1;
    start[State.COLLECTIVE] = 0.12;
    start[State.INDUCED] = 7;
    start[State.ROTOR_SPEED] = CRAFT.rotor().nominalSpeed();
    return start;
  }

  @Test
  void turningTheWholeProblemTurnsTheWholeFlight() {
    double turn = 1.1;
    double cos = Math.cos(turn);
    double sin = Math.sin(turn);
    double[] start = hoverish();
    double[] turned = start.clone();
    turned[State.SPEED_NORTH] = cos * start[State.SPEED_NORTH] - sin * start[State.SPEED_EAST];
    turned[State.SPEED_EAST] = sin * start[State.SPEED_NORTH] + cos * start[State.SPEED_EAST];
    turned[State.HEADING] = turn;
    Wind wind = new Wind(4, 2);
    double[] plain = flown(CRAFT, wind, start, 1);
    double[] other = flown(CRAFT, new Wind(4 * cos - 2 * sin, 4 * sin + 2 * cos), turned, 1);
    for (int[] pair :
        new int[][] {{State.NORTH, State.EAST}, {State.SPEED_NORTH, State.SPEED_EAST}}) {
      assertEquals(cos * plain[pair[0]] - sin * plain[pair[1]], other[pair[0]], 1e-6);
      assertEquals(sin * plain[pair[0]] + cos * plain[pair[1]], other[pair[1]], 1e-6);
    }
    assertEquals(plain[State.HEADING] + turn, other[State.HEADING], 1e-8);
    for (int same :
        new int[] {
          State.UP, State.SPEED_UP, State.PITCH, State.BANK, State.INDUCED, State.ROTOR_SPEED
        }) {
      assertEquals(plain[same], other[same], 1e-6);
    }
  }

  @Test
  void turningTheRotorTheOtherWayMirrorsTheFlight() {
    double[] start = hoverish();
    double[] mirrored = start.clone();
    mirrored[State.SPEED_EAST] = -start[State.SPEED_EAST];
    double[] plain = flown(CRAFT, new Wind(2, 3), start, 1);
    double[] other = flown(CRAFT.with(RotationSense.CLOCKWISE), new Wind(2, -3), mirrored, -1);
    for (int i = 0; i < State.SIZE; i++) {
      boolean flips =
          i == State.EAST
              || i == State.SPEED_EAST
              || i == State.BANK
              || i == State.BANK_RATE
              || i == State.HEADING
              || i == State.HEADING_RATE;
      assertEquals(flips ? -plain[i] : plain[i], other[i], 1e-7, "place " + i);
    }
  }

  /** Galileo: the same flight seen from ground that moves. */
  @Test
  void aUniformWindOnlyShiftsTheTrackOverTheGround() {
    double[] start = hoverish();
    double[] carried = start.clone();
    Wind wind = new Wind(6, -4);
    carried[State.SPEED_NORTH] += wind.north();
    carried[State.SPEED_EAST] += wind.east();
    double[] calm = flown(CRAFT, Wind.CALM, start, 1);
    double[] windy = flown(CRAFT, wind, carried, 1);
    assertEquals(calm[State.NORTH] + 12 * wind.north(), windy[State.NORTH], 1e-6);
    assertEquals(calm[State.EAST] + 12 * wind.east(), windy[State.EAST], 1e-6);
    assertEquals(calm[State.SPEED_NORTH] + wind.north(), windy[State.SPEED_NORTH], 1e-7);
    assertEquals(calm[State.SPEED_EAST] + wind.east(), windy[State.SPEED_EAST], 1e-7);
    assertEquals(calm[State.UP], windy[State.UP], 1e-6);
    assertEquals(calm[State.INDUCED], windy[State.INDUCED], 1e-6);
  }
}
