package io.github.ringstate.study.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.chance.IndependentStream;
import io.github.ringstate.chance.RandomStream;
import io.github.ringstate.study.Workers;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AcceptedTest {

  private record At(double x, double y) {

    static At drawn(long number) {
      RandomStream draws = new IndependentStream(8, number);
      return new At(draws.uniform(), draws.uniform());
    }

    boolean inTheDisc() {
      return x * x + y * y <= 1;
    }
  }

  /**
   * Even over the unit square, kept within the quarter disc: pi / 4 of the draws, with a mean of x
   * of 4 / (3 pi) and a mean of x^2 of 1/4 (elementary integrals).
   */
  @Test
  void whatIsKeptOfASquareIsEvenOverTheQuarterDisc() {
    int wanted = 20_000;
    Accepted<At> accepted = Accepted.first(wanted, 100_000, At::drawn, At::inTheDisc);
    double share = Math.PI / 4;
    // four standard errors each
    assertEquals(share, accepted.share(), 4 * Math.sqrt(share * (1 - share) / accepted.draws()));
    double mean = accepted.kept().stream().mapToDouble(At::x).average().orElseThrow();
    double expected = 4 / (3 * Math.PI);
    assertEquals(expected, mean, 4 * Math.sqrt((0.25 - expected * expected) / wanted));
    double square = accepted.kept().stream().mapToDouble(at -> at.x() * at.x()).average().orElse(0);
    assertEquals(0.25, square, 4 * Math.sqrt((0.125 - 0.0625) / wanted)); // E x^4 = 1/8
  }

  /** A second count, one draw after the other. */
  @Test
  void theAcceptanceIsThatOfARecount() {
    Accepted<At> accepted = Accepted.first(5000, 100_000, At::drawn, At::inTheDisc);
    List<At> again =
        LongStream.range(0, accepted.draws()).mapToObj(At::drawn).filter(At::inTheDisc).toList();
    assertEquals(again, accepted.kept());
    assertTrue(At.drawn(accepted.draws() - 1).inTheDisc(), "the last draw is one that was kept");
    assertEquals(5000.0 / accepted.draws(), accepted.share());
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 5})
  void whatIsKeptDoesNotDependOnTheNumberOfThreads(int threads) throws Exception {
    Accepted<At> here = Accepted.first(6000, 100_000, At::drawn, At::inTheDisc);
    assertEquals(
        here, Workers.with(threads, () -> Accepted.first(6000, 100_000, At::drawn, At::inTheDisc)));
  }

  @Test
  void tooFewAreRefusedWithTheNumbers() {
    IllegalStateException none =
        assertThrows(
            IllegalStateException.class, () -> Accepted.first(3, 500, At::drawn, at -> false));
    assertEquals("of 500 draws only 0" + Accepted.TOO_FEW + 3, none.getMessage());
    IllegalStateException two =
        assertThrows(
            IllegalStateException.class,
            () -> Accepted.first(3, 10_000, number -> number, number -> number % 5000 == 7));
    assertEquals("of 10000 draws only 2" + Accepted.TOO_FEW + 3, two.getMessage());
    assertThrows(
        IllegalArgumentException.class, () -> Accepted.first(0, 500, At::drawn, At::inTheDisc));
  }
}
