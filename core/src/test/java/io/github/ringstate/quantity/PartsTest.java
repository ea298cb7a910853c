package io.github.ringstate.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What parts are called in texts and messages, and when what is made of them is the same. */
class PartsTest {

  private static final class Pair extends MadeOf {
    Pair(Object one, Object other) {
      super(one, other);
    }
  }

  private static final class Couple extends MadeOf {
    Couple(Object one, Object other) {
      super(one, other);
    }
  }

  @Test
  void whatIsMadeOfEqualPartsIsEqualWithinOneClass() {
    assertEquals(new Pair(1, 2), new Pair(1, 2));
    assertEquals(new Pair(1, 2).hashCode(), new Pair(1, 2).hashCode());
    assertNotEquals(new Pair(1, 2), new Pair(2, 1));
    assertNotEquals(new Pair(1, 2).hashCode(), new Pair(2, 1).hashCode());
    assertNotEquals((Object) new Pair(1, 2), new Couple(1, 2));
    assertEquals("Pair(1, two)", new Pair(1, "two").toString());
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void whatIsNotFiniteIsRefusedByTheNameOfThePart(double value) {
    DoubleUnaryOperator lambda = x -> x;
    assertRefused("speed of the law", value, "the law");
    assertRefused("speed of " + Object.class.getName(), value, new Object());
    assertRefused("speed of a lambda of " + PartsTest.class.getName(), value, lambda);
  }

  private static void assertRefused(String name, double value, Object part) {
    String asked = "speed of";
    NotFiniteException refusal =
        assertThrows(NotFiniteException.class, () -> NotFiniteException.check(value, asked, part));
    String message = String.valueOf(refusal.getMessage());
    assertEquals(name + NotFiniteException.NOT_FINITE + value, message);
    assertEquals(-3.5, NotFiniteException.check(-3.5, asked, part));
  }
}
