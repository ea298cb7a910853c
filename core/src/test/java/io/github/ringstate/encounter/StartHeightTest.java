package io.github.ringstate.encounter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.dynamics.State;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The search for a start, on approaches whose heights of onset are formulas. */
class StartHeightTest {

  private static final double LEVEL = 100;

  private final List<Double> tried = new ArrayList<>();

  /** Approaches that last longer the higher they start, with the onset at a height; NaN is none. */
  private StartHeight.Tried find(DoubleUnaryOperator onset) {
    return StartHeight.find(LEVEL, start -> arrival(start, start / 10, onset));
  }

  private Arrival arrival(double start, double time, DoubleUnaryOperator onset) {
    tried.add(start);
    double[] state = new double[State.SIZE];
    double height = onset.applyAsDouble(start);
    state[State.UP] = height;
    EventKind end = Double.isNaN(height) ? null : EventKind.ONSET;
    return new Arrival(time, state, end, (seen, controls) -> {});
  }

  /** By hand: two flights give the line, and the third is on it. */
  @ParameterizedTest
  @CsvSource({"1, -30", "0.5, 10", "0.2, 95", "1.5, -80", "0.15, -20"})
  void anOnsetThatGoesUpInProportionIsFoundByTheThirdFlight(double slope, double foot) {
    StartHeight.Tried found = find(start -> foot + slope * start);
    assertEquals((LEVEL - foot) / slope, found.startHeight(), 1e-3 / slope);
    assertEquals(0, found.miss(), 1e-3);
    assertTrue(tried.size() <= 3, "flights from " + tried);
  }

  @Test
  void anOnsetAtTheHeightItselfTakesOneFlight() {
    StartHeight.Tried found = find(start -> LEVEL - 0.9e-3);
    assertEquals(LEVEL, found.startHeight());
    assertEquals(-0.9e-3, found.miss(), 1e-12);
    assertEquals(List.of(LEVEL), tried);
  }

  /** Second flight so much higher as the first missed; nothing but the height differs. */
  @Test
  void whereTheHeightIsOfNoMatterTheFirstFlightStands() {
    StartHeight.Tried found =
        StartHeight.find(LEVEL, start -> arrival(start, 7, higher -> higher - 30));
    assertEquals(LEVEL, found.startHeight());
    assertEquals(-30, found.miss(), 1e-12);
    assertEquals(List.of(LEVEL, LEVEL + 30), tried);
  }

  /**
   * A state that differs in one number is not alike. Below a line of slope 0.05 no secant is
   * followed: the interval is closed instead.
   */
  @ParameterizedTest
  @ValueSource(ints = {State.NORTH, State.SPEED_UP, State.RING, State.SIZE - 1})
  void aStateThatDiffersInOneNumberIsNotAlike(int index) {
    StartHeight.Tried found =
        StartHeight.find(
            LEVEL,
            start -> {
              Arrival arrival = arrival(start, 7, higher -> higher - 30);
              arrival.state()[index] += start > LEVEL ? 2e-6 : 0;
              return arrival;
            });
    assertEquals(LEVEL + 30, found.startHeight(), 1e-3);
    assertEquals(0, found.miss(), 1e-3);
  }

  @Test
  void anOnsetThatHardlyRisesIsFoundAllTheSame() {
    StartHeight.Tried found = find(start -> 94 + 0.05 * start);
    assertEquals(120, found.startHeight(), 1e-3 / 0.05);
    assertEquals(0, found.miss(), 1e-3);
  }

  /** Newton's parabola and a root: secants converge faster than in proportion. */
  @Test
  void anOnsetThatBendsIsFoundInFewFlights() {
    StartHeight.Tried found = find(start -> 12 * Math.sqrt(start) - 40);
    assertEquals(Math.pow(140 / 12.0, 2), found.startHeight(), 2e-3);
    assertTrue(tried.size() <= 6, "flights from " + tried);
  }

  /** Lower starts do not meet the ring state at all. */
  @ParameterizedTest
  @ValueSource(doubles = {101, 131, 250})
  void whereLowerStartsHaveNoOnsetHigherOnesAreTried(double least) {
    StartHeight.Tried found = find(start -> start < least ? Double.NaN : 2 * (start - 300) + LEVEL);
    assertEquals(300, found.startHeight(), 1e-3);
    assertEquals(0, found.miss(), 1e-3);
    assertTrue(tried.size() < 30, "flights from " + tried);
  }

  /** By hand: 2 m above none, then by the chord of a line, which meets it. */
  @Test
  void aStraightPieceIsMetByTheFirstChord() {
    StartHeight.Tried found =
        find(start -> start > 101.5 ? LEVEL + 0.5 * (start - 103) : Double.NaN);
    assertEquals(103, found.startHeight());
    assertEquals(List.of(LEVEL, 102.0, 104.0, 103.0), tried);
  }

  /** By hand, on a parabola: chords creep up from one side, so every other time it is halved. */
  @Test
  void aBentPieceIsClosedByChordsAndHalvesInTurn() {
    StartHeight.Tried found =
        find(start -> start > 101.5 ? LEVEL - 1 + (start - 102) * (start - 102) : Double.NaN);
    assertEquals(103, found.startHeight(), 1e-3);
    List<Double> expected = List.of(LEVEL, 102.0, 104.0, 102.5, 103.25, 102.5 + 0.75 * 4 / 7);
    for (int i = 0; i < expected.size(); i++) {
      assertEquals(expected.get(i), tried.get(i), 1e-12, "in " + tried);
    }
  }

  /** From starts above 125 m the ring state is not met any more, from lower ones too low. */
  @Test
  void aStartBelowThoseWithoutOnsetIsFound() {
    StartHeight.Tried found = find(start -> start < 125 ? 94 + 0.05 * start : Double.NaN);
    assertEquals(120, found.startHeight(), 1e-3 / 0.05);
    StartHeight.Tried none = find(start -> start < 118 ? 94 + 0.05 * start : Double.NaN);
    assertTrue(Double.isNaN(none.miss()));
  }

  /** The height of onset jumps over the one wanted, by less below or by less above. */
  @ParameterizedTest
  @CsvSource({"-1, 4, -1", "-4, 1, 1"})
  void theNearerSideOfAJumpIsTaken(double below, double above, double nearer) {
    StartHeight.Tried found = find(start -> LEVEL + (start < 137.3 ? below : above));
    assertEquals(nearer, found.miss(), 1e-9);
    assertEquals(137.3, found.startHeight(), 1e-4);
  }

  @Test
  void aJumpFromNoOnsetToOneThatIsTooHighIsNoStart() {
    StartHeight.Tried found = find(start -> start < 137.3 ? Double.NaN : LEVEL + 3);
    assertTrue(Double.isNaN(found.miss()));
    assertFalse(found.arrival().onset());
  }

  /** However high: the search goes to 512 m above and says that there is none. */
  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, 60})
  void withoutAStartThatLeadsThereTheFirstFlightIsKeptWithoutOnset(double height) {
    StartHeight.Tried found = find(start -> height);
    assertTrue(Double.isNaN(found.miss()));
    assertFalse(found.arrival().onset());
    assertEquals(LEVEL, found.startHeight());
    assertEquals(LEVEL / 10, found.arrival().time());
    assertEquals(LEVEL + 512, tried.get(tried.size() - 1), 1e-9);
    assertTrue(tried.size() < 20, "flights from " + tried);
  }

  @Test
  void anArrivalIsThatOfTheStartThatIsFound() {
    List<Arrival> flown = new ArrayList<>();
    StartHeight.Tried found =
        StartHeight.find(
            LEVEL,
            start -> {
              Arrival arrival = arrival(start, start / 10, higher -> higher - 25);
              flown.add(arrival);
              return arrival;
            });
    assertSame(flown.get(tried.lastIndexOf(found.startHeight())), found.arrival());
  }
}
