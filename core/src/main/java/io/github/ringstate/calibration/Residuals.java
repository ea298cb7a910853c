package io.github.ringstate.calibration;

import io.github.ringstate.quantity.UncertainNumbers;
import io.github.ringstate.study.OrderedWork;
import io.github.ringstate.study.Progress;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.ValueAndJacobianFunction;
import org.hipparchus.util.FastMath;
import org.hipparchus.util.Pair;

/**
 * All residuals as a function of all unknowns. Each unknown is standard normal before the
 * recordings are looked at: first those of the numbers asked for, by the root of their covariance,
 * then those of each demonstration. They are residuals themselves, after those of the readings: the
 * prior. Jacobians by differences; what belongs to one demonstration alone moves only its own
 * residuals.
 */
final class Residuals implements ValueAndJacobianFunction {

  /** Of the differences, in deviations of the prior. */
  private static final double STEP = 0.01;

  /** Residuals beyond so many deviations count less (P. J. Huber, 1964; from memory). */
  private static final double HUBER = 3;

  /** A deviation found from residuals is not less than this part of the expected one. */
  private static final double LEAST = 0.3;

  private final UncertainNumbers prior;
  private final List<? extends Observed> demonstrations;
  private final List<Map<Series, Double>> deviations = new ArrayList<>();
  private final List<Map<Series, Whitening>> whitenings = new ArrayList<>();
  private final int[] firstUnknown;
  private final int[] firstRow;
  private final double[] rootWeight;
  private final int unknowns;
  private final int rows;

  Residuals(UncertainNumbers prior, List<? extends Observed> demonstrations) {
    this.prior = prior;
    this.demonstrations = demonstrations;
    firstUnknown = new int[demonstrations.size() + 1];
    firstRow = new int[demonstrations.size() + 1];
    firstUnknown[0] = prior.parameters().size();
    for (int d = 0; d < demonstrations.size(); d++) {
      Observed one = demonstrations.get(d);
      firstUnknown[d + 1] = firstUnknown[d] + one.numbers();
      firstRow[d + 1] = firstRow[d] + one.size();
      deviations.add(one.deviations());
      whitenings.add(one.whitenings(deviations.get(d)));
    }
    unknowns = firstUnknown[demonstrations.size()];
    rows = firstRow[demonstrations.size()];
    rootWeight = new double[rows];
    weigh(1);
  }

  /** Gives all readings the same weight. */
  void weigh(double weight) {
    Arrays.fill(rootWeight, FastMath.sqrt(weight));
  }

  int unknowns() {
    return unknowns;
  }

  int rows() {
    return rows;
  }

  /** The place of the first unknown of a demonstration. */
  int firstUnknown(int demonstration) {
    return firstUnknown[demonstration];
  }

  /** The values of the numbers asked for. */
  double[] values(double... unknown) {
    return prior.draw(unknown);
  }

  private double[] residuals(int demonstration, double[] unknown) {
    double[] residuals =
        demonstrations
            .get(demonstration)
            .residuals(
                values(unknown),
                unknown,
                firstUnknown[demonstration],
                whitenings.get(demonstration));
    for (int i = 0; i < residuals.length; i++) {
      residuals[i] *= rootWeight[firstRow[demonstration] + i];
    }
    return residuals;
  }

  @Override
  public Pair<RealVector, RealMatrix> value(RealVector point) {
    double[] unknown = point.toArray();
    return new Pair<>(computeValue(unknown), computeJacobian(unknown));
  }

  @Override
  public RealVector computeValue(double[] unknown) {
    double[] value = new double[rows + unknowns];
    for (int d = 0; d < demonstrations.size(); d++) {
      double[] here = residuals(d, unknown);
      System.arraycopy(here, 0, value, firstRow[d], here.length);
    }
    System.arraycopy(unknown, 0, value, rows, unknowns);
    return new ArrayRealVector(value, false);
  }

  @Override
  public RealMatrix computeJacobian(double[] unknown) {
    List<double[]> here = new ArrayList<>();
    List<Moved> moves = new ArrayList<>();
    for (int d = 0; d < demonstrations.size(); d++) {
      here.add(residuals(d, unknown));
      for (int column = 0; column < firstUnknown[d + 1]; column++) {
        if (column < firstUnknown[0] || column >= firstUnknown[d]) {
          moves.add(new Moved(d, column));
        }
      }
    }
    RealMatrix jacobian = MatrixUtils.createRealMatrix(rows + unknowns, unknowns);
    Iterator<Moved> done = moves.iterator();
    OrderedWork.of(Progress.SILENT)
        .<double[]>run(
            moves.size(),
            () -> (number, ended) -> slopes(moves.get((int) number), here, unknown),
            slopes -> {
              Moved moved = done.next();
              for (int i = 0; i < slopes.length; i++) {
                jacobian.setEntry(firstRow[moved.demonstration()] + i, moved.column(), slopes[i]);
              }
            });
    for (int i = 0; i < unknowns; i++) {
      jacobian.setEntry(rows + i, i, 1);
    }
    return jacobian;
  }

  /** A flight of a demonstration with one unknown moved. */
  private record Moved(int demonstration, int column) {}

  private double[] slopes(Moved moved, List<double[]> all, double... unknown) {
    double[] here = all.get(moved.demonstration());
    double[] there = unknown.clone();
    // towards the middle, where the flight is the less extreme
    double step = unknown[moved.column()] > 0 ? -STEP : STEP;
    there[moved.column()] += step;
    double[] slopes = residuals(moved.demonstration(), there);
    for (int i = 0; i < slopes.length; i++) {
      slopes[i] = (slopes[i] - here[i]) / step;
    }
    return slopes;
  }

  /**
   * Weighs the readings anew by the residuals of a solution: those far off count less, and each
   * series is as uncertain as its residuals say, which is how output-error methods find the noise
   * of instruments (V. Klein and E. A. Morelli, Aircraft System Identification, 2006, chapter 6;
   * from memory).
   *
   * @param solution the unknowns
   * @param spent how many unknowns the readings of each demonstration have determined
   */
  void reweigh(double[] solution, double[] spent) {
    for (int d = 0; d < demonstrations.size(); d++) {
      double[] squares = squares(d, solution);
      Series[] series = demonstrations.get(d).series();
      double left = Math.max(0.2, 1 - spent[d] / squares.length);
      Map<Series, Double> expected = demonstrations.get(d).deviations();
      Map<Series, Double> found = new EnumMap<>(Series.class);
      Map<Series, Double> ratio = new EnumMap<>(Series.class);
      for (Map.Entry<Series, Double> one : deviations.get(d).entrySet()) {
        double sum = 0;
        int count = 0;
        for (int i = 0; i < squares.length; i++) {
          if (series[i] == one.getKey()) {
            sum += Math.min(squares[i], HUBER * HUBER);
            count++;
          }
        }
        double scale = FastMath.sqrt(sum / count / left);
        double least = LEAST * expected.getOrDefault(one.getKey(), one.getValue());
        double deviation = Math.max(scale * one.getValue(), least);
        found.put(one.getKey(), deviation);
        ratio.put(one.getKey(), deviation / one.getValue());
      }
      for (int i = 0; i < squares.length; i++) {
        double size = FastMath.sqrt(squares[i]) / ratio.getOrDefault(series[i], 1.0);
        rootWeight[firstRow[d] + i] = size > HUBER ? FastMath.sqrt(HUBER / size) : 1;
      }
      deviations.set(d, found);
      whitenings.set(d, demonstrations.get(d).whitenings(found));
    }
  }

  /** The squares of the residuals of a demonstration without their weights. */
  private double[] squares(int d, double[] solution) {
    double[] residuals = residuals(d, solution);
    for (int i = 0; i < residuals.length; i++) {
      double plain = residuals[i] / rootWeight[firstRow[d] + i];
      residuals[i] = plain * plain;
    }
    return residuals;
  }

  /**
   * Chi-square per degree of freedom of the heights and vertical speeds of a demonstration, by the
   * noise that their own recording shows.
   *
   * @param spent how many unknowns the readings of the demonstration have determined
   */
  double misfit(int d, double[] solution, double spent) {
    double[] squares = squares(d, solution);
    Series[] series = demonstrations.get(d).series();
    Map<Series, Double> expected = demonstrations.get(d).deviations();
    double sum = 0;
    int count = 0;
    for (int i = 0; i < squares.length; i++) {
      if (series[i].isVertical()) {
        double ratio =
            deviations.get(d).getOrDefault(series[i], 1.0) / expected.getOrDefault(series[i], 1.0);
        double weight = rootWeight[firstRow[d] + i];
        sum += squares[i] * weight * weight * ratio * ratio;
        count++;
      }
    }
    return sum / count / Math.max(0.2, 1 - spent / squares.length);
  }
}
