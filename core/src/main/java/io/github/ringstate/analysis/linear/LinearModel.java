package io.github.ringstate.analysis.linear;

import io.github.ringstate.analysis.continuation.Slopes;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Motion;
import java.util.ArrayList;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.MatrixFeatures_DDRM;

/**
 * The equations of motion about a state, for small changes: dx/dt = rates + A x + B u. Controls are
 * not commanded; what is neither in x nor in u stays as it is.
 *
 * @param coordinates what x is made of, in order
 * @param inputs what u is made of, in order
 * @param a the state matrix A: the rate of each coordinate (row) by each coordinate (column), SI
 *     units and radians, per second
 * @param b the control matrix B: the rate of each coordinate (row) by each input (column)
 * @param rates the rate of each coordinate at the state itself, zero where it is in balance
 * @param error the largest estimated error of an element of A or B; not a bound
 */
@SuppressWarnings("ArrayRecordComponent") // a vector that goes straight to linear algebra
public record LinearModel(
    List<Coordinate> coordinates,
    List<Coordinate> inputs,
    DMatrixRMaj a,
    DMatrixRMaj b,
    double[] rates,
    double error) {

  /** Copies the lists. */
  public LinearModel {
    coordinates = List.copyOf(coordinates);
    inputs = List.copyOf(inputs);
  }

  /**
   * The linear model about a state.
   *
   * @param equations the equations of motion; nobody may command them
   * @param state the state, in the order of {@link io.github.ringstate.dynamics.State}
   * @param coordinates what may change by itself
   * @param inputs what is changed from outside; none of the coordinates
   * @return the model
   */
  public static LinearModel about(
      EquationsOfMotion equations,
      double[] state,
      List<Coordinate> coordinates,
      List<Coordinate> inputs) {
    List<Coordinate> all = new ArrayList<>(coordinates);
    all.addAll(inputs);
    double[] at = new double[all.size()];
    double[] steps = new double[all.size()];
    for (int j = 0; j < at.length; j++) {
      at[j] = state[all.get(j).place()];
      steps[j] = all.get(j).step();
    }
    double[] changed = state.clone();
    Slopes slopes =
        Slopes.of(
            x -> {
              for (int j = 0; j < x.length; j++) {
                changed[all.get(j).place()] = x[j];
              }
              return rates(equations, changed, coordinates);
            },
            at,
            steps);
    int n = coordinates.size();
    return new LinearModel(
        coordinates,
        inputs,
        columns(slopes.values(), 0, n),
        columns(slopes.values(), n, all.size()),
        rates(equations, state, coordinates),
        CommonOps_DDRM.elementMax(slopes.errors()));
  }

  private static DMatrixRMaj columns(DMatrixRMaj of, int from, int to) {
    DMatrixRMaj columns = new DMatrixRMaj(of.getNumRows(), to - from);
    for (int i = 0; i < of.getNumRows(); i++) {
      for (int j = from; j < to; j++) {
        columns.set(i, j - from, of.get(i, j));
      }
    }
    return columns;
  }

  private static double[] rates(
      EquationsOfMotion equations, double[] state, List<Coordinate> coordinates) {
    Motion motion = equations.at(0, state);
    double[] rates = new double[coordinates.size()];
    for (int i = 0; i < rates.length; i++) {
      rates[i] = motion.rate(coordinates.get(i).place());
    }
    return rates;
  }

  /**
   * The model with some coordinates held where they are by some inputs, at once and exactly, as a
   * pilot holds the airspeed by attitude.
   *
   * @param held what is held
   * @param by as many inputs that hold it
   * @return the model of the other coordinates, with the other inputs
   * @throws ArithmeticException if these inputs cannot hold it
   */
  public LinearModel holding(List<Coordinate> held, List<Coordinate> by) {
    List<Coordinate> kept = without(coordinates, held);
    List<Coordinate> free = without(inputs, by);
    DMatrixRMaj holds = new DMatrixRMaj(held.size(), held.size());
    // of small matrices the inverse of a singular one comes out without complaint, not finite
    if (!CommonOps_DDRM.invert(part(b, inputs, held, by), holds)
        || MatrixFeatures_DDRM.hasUncountable(holds)) {
      throw new ArithmeticException("the speeds cannot be held by these inputs");
    }
    // u = -holds (x's and the free inputs' part of the held rates)
    DMatrixRMaj byHeld = new DMatrixRMaj(kept.size(), held.size());
    CommonOps_DDRM.mult(part(b, inputs, kept, by), holds, byHeld);
    DMatrixRMaj newA = part(a, coordinates, kept, kept);
    CommonOps_DDRM.multAdd(-1, byHeld, part(a, coordinates, held, kept), newA);
    DMatrixRMaj newB = part(b, inputs, kept, free);
    CommonOps_DDRM.multAdd(-1, byHeld, part(b, inputs, held, free), newB);
    double[] newRates = new double[kept.size()];
    for (int i = 0; i < newRates.length; i++) {
      newRates[i] = rates[coordinates.indexOf(kept.get(i))];
      for (int j = 0; j < held.size(); j++) {
        newRates[i] -= byHeld.get(i, j) * rates[coordinates.indexOf(held.get(j))];
      }
    }
    return new LinearModel(kept, free, newA, newB, newRates, error);
  }

  private static List<Coordinate> without(List<Coordinate> all, List<Coordinate> some) {
    return all.stream().filter(one -> !some.contains(one)).toList();
  }

  private DMatrixRMaj part(
      DMatrixRMaj of, List<Coordinate> columnsOf, List<Coordinate> rows, List<Coordinate> columns) {
    DMatrixRMaj part = new DMatrixRMaj(rows.size(), columns.size());
    for (int i = 0; i < rows.size(); i++) {
      for (int j = 0; j < columns.size(); j++) {
        part.set(i, j, of.get(coordinates.indexOf(rows.get(i)), columnsOf.indexOf(columns.get(j))));
      }
    }
    return part;
  }

  /**
   * The modes, the one that grows most first.
   *
   * @return a mode for each real eigenvalue and each pair of complex ones
   */
  public List<Mode> modes() {
    return Modes.of(a, coordinates);
  }
}
