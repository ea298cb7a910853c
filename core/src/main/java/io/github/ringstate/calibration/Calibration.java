package io.github.ringstate.calibration;

import io.github.ringstate.craft.FittedModel;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.UncertainNumbers;
import io.github.ringstate.recording.Estimate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * A fit of numbers of the ring state and of a craft to recorded encounters, all at once.
 *
 * <p>Each demonstration has its own mass and air: the same helicopter may be flown on a hot day and
 * on a cold one. All other numbers of its craft must be those of the craft that is fitted.
 *
 * @param prior what is known of the numbers before; see {@link Prior}
 * @param craft the craft; of the ring state, its {@linkplain Helicopter#inflow inflow} has the
 *     numbers that are not fitted
 */
public record Calibration(UncertainNumbers prior, Helicopter craft) {

  /** Fewer encounters are refused. */
  public static final int FEWEST = 2;

  /**
   * Chi-square per degree of freedom beyond which the model does not follow the readings. Where the
   * form of the model is right its median is 0.93, and 2 of 157 round trips are above this bound,
   * counted with a search that more often missed the lowest minimum.
   */
  private static final double FOLLOWS = 1.5;

  /** A probability of the numbers, before the recordings, below which they are not believed. */
  private static final double AGREES = 0.001;

  /** Beyond so many deviations of the prior a number is not believed. */
  private static final double FARTHEST = 3.5;

  /** A number nearer to an end of its range than this part of it is at the end. */
  private static final double AT_THE_END = 0.002;

  /** Deviation after over deviation before, above which a number is as little known as it was. */
  private static final double NOTHING = 0.95;

  private static final int DRAWS = 400;
  private static final long SEED = 0x6C65667421L;

  /**
   * Fits.
   *
   * @param demonstrations the encounters; each with an arrest
   * @return the fit
   * @throws UnsupportedFitException if the recordings cannot support a fit
   * @throws IllegalArgumentException if a demonstration is of another craft
   */
  public Fit fit(List<Demonstration> demonstrations) {
    return fit(demonstrations, false);
  }

  /**
   * Fits, and predicts each encounter from the others.
   *
   * @param demonstrations the encounters; each with an arrest
   * @return the fit with its test
   * @throws UnsupportedFitException if the recordings cannot support a fit
   * @throws IllegalArgumentException if a demonstration is of another craft
   */
  public Fit fitAndTest(List<Demonstration> demonstrations) {
    return fit(demonstrations, true);
  }

  private Fit fit(List<Demonstration> demonstrations, boolean tested) {
    demonstrations.forEach(this::requireFit);
    if (demonstrations.size() < FEWEST) {
      throw new UnsupportedFitException(
          UnsupportedFitException.Reason.TOO_FEW, Integer.toString(demonstrations.size()));
    }
    List<FlownDemonstration> flown = demonstrations.stream().map(one -> flown(one, true)).toList();
    requireDifferent(flown);
    Solution solution = Solution.of(prior, flown);
    List<FittedEncounter> encounters = encounters(solution, flown);
    double chiSquare = chiSquare(encounters);
    UncertainNumbers posterior = solution.weakened(chiSquare).posterior(prior);
    Fit fit = new Fit(prior, posterior, chiSquare, encounters, List.of());
    requireSupport(fit, demonstrations);
    return tested
        ? new Fit(prior, posterior, chiSquare, encounters, leftOut(solution, flown, chiSquare))
        : fit;
  }

  private void requireFit(Demonstration one) {
    if (one.found().arrestTime().isEmpty()) {
      throw new UnsupportedFitException(UnsupportedFitException.Reason.NO_ARREST, one.name());
    }
    Helicopter other = one.flown().craft();
    for (Parameter parameter : craft.numbers().parameters()) {
      double here = craft.numbers().get(parameter);
      if (!parameter.equals(Helicopter.MASS) && other.numbers().get(parameter) != here) {
        throw new IllegalArgumentException(
            "the "
                + parameter.name()
                + " of the craft of "
                + one.name()
                + " is "
                + other.numbers().get(parameter)
                + " and that of the craft to be fitted is "
                + here
                + "; they may differ in mass alone");
      }
    }
  }

  /** The same readings twice would count as two measurements. */
  private static void requireDifferent(List<FlownDemonstration> flown) {
    for (int d = 0; d < flown.size(); d++) {
      for (int before = 0; before < d; before++) {
        if (flown.get(d).isSameAs(flown.get(before))) {
          throw new UnsupportedFitException(
              UnsupportedFitException.Reason.REPEATED,
              flown.get(before).demonstration().name()
                  + " and "
                  + flown.get(d).demonstration().name());
        }
      }
    }
  }

  private FlownDemonstration flown(Demonstration demonstration, boolean heightsToTheEnd) {
    FittedModel template =
        new FittedModel(craft.inflow().numbers(), prior, 1, List.of(), "", "", 0);
    return new FlownDemonstration(demonstration, template, heightsToTheEnd);
  }

  private static List<FittedEncounter> encounters(
      Solution solution, List<FlownDemonstration> flown) {
    double[] spent = solution.spent(flown.size());
    double[] values = solution.residuals().values(solution.unknown());
    List<FittedEncounter> encounters = new ArrayList<>();
    for (int d = 0; d < flown.size(); d++) {
      FlownDemonstration one = flown.get(d);
      encounters.add(
          new FittedEncounter(
              one.demonstration().name(),
              one.size(),
              solution.residuals().misfit(d, solution.unknown(), spent[d]),
              one.demonstration().found().altitudeLoss(),
              one.loss(values, solution.unknown(), solution.residuals().firstUnknown(d))));
    }
    return encounters;
  }

  private static double chiSquare(List<FittedEncounter> encounters) {
    double sum = 0;
    double readings = 0;
    for (FittedEncounter one : encounters) {
      sum += one.chiSquare() * one.readings();
      readings += one.readings();
    }
    return sum / readings;
  }

  /** Refuses what bands would not hold for; see {@link UnsupportedFitException.Reason}. */
  void requireSupport(Fit fit, List<Demonstration> demonstrations) {
    if (!(fit.chiSquare() <= FOLLOWS)) {
      throw new UnsupportedFitException(
          UnsupportedFitException.Reason.MISFIT,
          "chi-square per degree of freedom is "
              + rounded(fit.chiSquare())
              + ", above "
              + FOLLOWS
              + " ("
              + each(fit.encounters(), demonstrations)
              + "); bands of such a fit do not hold for late recoveries. An entry or a recovery"
              + " other than was taken shows so too");
    }
    if (!(fit.agreement() >= AGREES)) {
      throw new UnsupportedFitException(
          UnsupportedFitException.Reason.APART,
          "the mean square of their shifts is "
              + rounded(fit.strain())
              + ", where about 1 is expected");
    }
    boolean told = false;
    for (int i = 0; i < prior.parameters().size(); i++) {
      Parameter parameter = prior.parameters().get(i);
      double value = fit.posterior().median(i);
      double moved = Math.abs(fit.posterior().mean()[i] - prior.mean()[i]) / prior.deviation(i);
      double room = AT_THE_END * (parameter.quantity().high() - parameter.quantity().low());
      boolean inside =
          value > parameter.quantity().low() + room && value < parameter.quantity().high() - room;
      if (!(moved <= FARTHEST) || !(inside || fit.ratio(i) > NOTHING)) {
        throw new UnsupportedFitException(
            UnsupportedFitException.Reason.BEYOND, parameter.name() + " " + rounded(value));
      }
      told |= fit.ratio(i) <= NOTHING;
    }
    if (!told) {
      throw new UnsupportedFitException(
          UnsupportedFitException.Reason.NOTHING_TOLD,
          prior.parameters().stream().map(Parameter::name).toList().toString());
    }
  }

  /** The chi-square of each, with the recovery that was taken for it. */
  private static String each(List<FittedEncounter> encounters, List<Demonstration> demonstrations) {
    return IntStream.range(0, encounters.size())
        .mapToObj(
            d ->
                encounters.get(d).name()
                    + " taken as "
                    + demonstrations.get(d).technique().name()
                    + ": "
                    + rounded(encounters.get(d).chiSquare()))
        .collect(Collectors.joining(", "));
  }

  private static double rounded(double value) {
    return Math.rint(1000 * value) / 1000;
  }

  private List<LeftOut> leftOut(Solution all, List<FlownDemonstration> flown, double chiSquare) {
    List<LeftOut> tests = new ArrayList<>();
    for (int d = 0; d < flown.size(); d++) {
      List<FlownDemonstration> others = new ArrayList<>(flown);
      others.remove(d);
      UncertainNumbers known =
          Solution.of(prior, others, without(all, d, flown.size()))
              .weakened(chiSquare)
              .posterior(prior);
      tests.add(new Calibration(known, craft).predicted(flown.get(d).demonstration()));
    }
    return tests;
  }

  /** The unknowns of a solution without those of one demonstration. */
  private static double[] without(Solution all, int d, int count) {
    double[] unknown = all.unknown();
    int from = all.residuals().firstUnknown(d);
    int to = d + 1 < count ? all.residuals().firstUnknown(d + 1) : unknown.length;
    double[] kept = Arrays.copyOf(unknown, unknown.length - (to - from));
    System.arraycopy(unknown, to, kept, from, unknown.length - to);
    return kept;
  }

  /** Predicts the loss of an encounter from what is known without it, as {@link LeftOut} says. */
  private LeftOut predicted(Demonstration demonstration) {
    FlownDemonstration flown = flown(demonstration, false);
    Solution solution = Solution.of(prior, List.of(flown));
    RealMatrix root = new CholeskyDecomposition(solution.covariance(), 1e-9, 0).getL();
    RealVector middle = new ArrayRealVector(solution.unknown());
    Estimate recorded = demonstration.found().altitudeLoss();
    int size = solution.unknown().length;
    double[] losses =
        Arrays.stream(LossBand.normals(DRAWS, size + 1, SEED))
            .mapToDouble(
                normals -> {
                  double[] unknown =
                      root.operate(new ArrayRealVector(normals, 0, size)).add(middle).toArray();
                  double loss =
                      flown.loss(
                          solution.residuals().values(unknown),
                          unknown,
                          solution.residuals().firstUnknown(0));
                  return loss + recorded.deviation() * normals[size];
                })
            .toArray();
    LossBand band = LossBand.of(losses);
    return new LeftOut(demonstration.name(), recorded, band.middle(), band.low(), band.high());
  }
}
