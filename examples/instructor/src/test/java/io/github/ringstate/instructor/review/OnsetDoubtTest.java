package io.github.ringstate.instructor.review;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.ringstate.air.Wind;
import io.github.ringstate.recording.RecordedOnset;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;

class OnsetDoubtTest {

  /**
   * What stands for the loss: the wind from behind, times 5 m/s over the ground along the track.
   */
  private static Optional<OptionalDouble> fromBehind(RecordedOnset onset) {
    double along = onset.ahead() * onset.wind().north() + onset.sideways() * onset.wind().east();
    return found(FastMath.rint(along * 1e6) / 1e6);
  }

  private static Optional<OptionalDouble> found(double loss) {
    return Optional.of(OptionalDouble.of(loss));
  }

  @Test
  void theWindIsOneDeviationMoreAndLessFromBehindOnTheTrack() {
    RecordedOnset noseFirst = new RecordedOnset(new Wind(4, 1), 5, 0, -4, -0.6, 0.2, -0.8);
    assertEquals(
        new OnsetDoubt(found(27.5), found(12.5), Optional.empty()),
        OnsetDoubt.of(noseFirst, 1.5, false, OnsetDoubtTest::fromBehind));
    RecordedOnset tailFirst = new RecordedOnset(new Wind(-4, -1), -5, 0, -4, 0.6, -0.2, -0.8);
    assertEquals(
        new OnsetDoubt(found(27.5), found(12.5), Optional.empty()),
        OnsetDoubt.of(tailFirst, 1.5, true, OnsetDoubtTest::fromBehind));
    RecordedOnset onItsSide = new RecordedOnset(new Wind(1, 4), 3, 4, -4, -0.6, 0.2, -0.8);
    assertEquals(
        new OnsetDoubt(found(26.5), found(11.5), Optional.empty()),
        OnsetDoubt.of(onItsSide, 1.5, true, OnsetDoubtTest::fromBehind));
  }

  @Test
  void aNoseThatIsTakenToPointBackIsTurnedToo() {
    RecordedOnset tailFirst = new RecordedOnset(new Wind(-4, -1), -5, 1, -4, 0.6, -0.2, -0.8);
    RecordedOnset noseFirst = new RecordedOnset(new Wind(4, 1), 5, -1, -4, -0.6, 0.2, -0.8);
    Function<RecordedOnset, Optional<OptionalDouble>> turned =
        onset -> onset.equals(noseFirst) ? found(7) : Optional.empty();
    assertEquals(
        new OnsetDoubt(Optional.empty(), Optional.empty(), Optional.of(found(7))),
        OnsetDoubt.of(tailFirst, 1.5, false, turned));
  }
}
