package io.github.ringstate.study;

import io.github.ringstate.encounter.BulkFlight;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.Outcome;
import java.util.AbstractList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.RandomAccess;

/**
 * What came of each pilot of a study, by number. Only numbers are kept, some 50 bytes a pilot; what
 * a pilot was like is drawn again when it is asked for.
 *
 * <p>Pilots may be put down by several threads, each at its own place.
 */
final class FlownPilots {

  private static final int WIDTH = 6;

  private final PilotStudy study;
  private Ending[] endings = new Ending[0];
  private double[] numbers = new double[0];

  FlownPilots(PilotStudy study) {
    this.study = study;
  }

  /** Makes room for so many pilots in all; not while others are put down. */
  void ensure(int size) {
    if (size > endings.length) {
      int room = (int) Math.max(size, Math.min(2L * endings.length, Integer.MAX_VALUE / WIDTH));
      endings = Arrays.copyOf(endings, room);
      numbers = Arrays.copyOf(numbers, room * WIDTH);
    }
  }

  /** Puts down what came of a pilot. */
  void put(int number, Ending ending, BulkFlight flight, FittedLoss fitted) {
    double loss = flight.altitudeLoss();
    double more = fitted.more(ending, loss);
    endings[number] = fitted.ending(ending, loss + more);
    int at = number * WIDTH;
    numbers[at] = loss + more;
    numbers[at + 1] = flight.lossAfterRecognition() + more;
    numbers[at + 2] = flight.peakDescent();
    numbers[at + 3] = endings[number] == ending ? flight.timeToArrest() : Double.NaN;
    numbers[at + 4] = flight.impactSpeed();
    numbers[at + 5] = flight.onsetTime();
  }

  /** The spread of the losses of the first so many. */
  LossSpread spread(int size) {
    double[] losses = new double[size];
    Arrays.setAll(losses, number -> numbers[number * WIDTH]);
    return LossSpread.of(Arrays.copyOf(endings, size), losses, study.drawing())
        .with(new View(study, size, endings, numbers));
  }

  /** The first so many as a list; later ones do not change them. */
  private static final class View extends AbstractList<PilotFlight> implements RandomAccess {

    private final PilotStudy study;
    private final int size;
    private final Ending[] endings;
    private final double[] numbers;

    View(PilotStudy study, int size, Ending[] endings, double[] numbers) {
      this.study = study;
      this.size = size;
      this.endings = endings;
      this.numbers = numbers;
    }

    @Override
    public int size() {
      return size;
    }

    @Override
    public PilotFlight get(int number) {
      Objects.checkIndex(number, size);
      return new PilotFlight(number, study.encounter(number), outcome(number));
    }

    private Outcome outcome(int number) {
      int at = number * WIDTH;
      return endings[number] == Ending.NO_ONSET
          ? Outcome.NO_ONSET
          : new Outcome(
              endings[number],
              present(numbers[at]),
              present(numbers[at + 1]),
              present(numbers[at + 2]),
              present(numbers[at + 3]),
              present(numbers[at + 4]),
              present(numbers[at + 5]),
              List.of());
    }

    private static OptionalDouble present(double value) {
      return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
  }
}
