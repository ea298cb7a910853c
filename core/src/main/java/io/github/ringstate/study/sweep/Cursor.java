package io.github.ringstate.study.sweep;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;

/**
 * Goes to any point of a sweep: the index is a number whose digits are the places of the factors.
 * For one thread.
 */
final class Cursor {

  private static final Set<String> PILOT = Set.of("pilot");

  private final Values values;
  private final List<Factor> factors = new ArrayList<>();
  private final int[] places;
  private final long perScene;
  private final long count;
  private long index;

  Cursor(SweepSpec spec, List<String> keys, Map<String, DoubleUnaryOperator> laws) {
    values = new Values(keys);
    for (Axis axis : spec.fixed()) {
      Factor.of(axis, values.slot(axis.key())).set(0, values);
    }
    List<Factor> grid = new ArrayList<>();
    for (Axis axis : spec.axes()) {
      grid.add(Factor.of(axis, values.slot(axis.key())));
    }
    grid.sort(Comparator.comparingInt(factor -> Settings.GROUPS.indexOf(factor.groups().get(0))));
    factors.addAll(grid);
    if (!spec.sample().dimensions().isEmpty()) {
      int[] slots =
          spec.sample().dimensions().stream()
              .mapToInt(dimension -> values.slot(dimension.key()))
              .toArray();
      List<DoubleUnaryOperator> spreads =
          spec.sample().dimensions().stream()
              .map(dimension -> Objects.requireNonNull(laws.get(dimension.key())))
              .toList();
      Factor sample =
          Factor.of(spec.sample(), Spread.of(spec.sample(), spec.seed()), slots, spreads);
      // what concerns pilots alone varies fastest, so that all else is flown once for them
      int place = onlyPilots(sample) ? firstOfPilots(factors) : 0;
      factors.add(place, sample);
    }
    if (spec.pilots() > 0) {
      factors.add(Factor.ofPilots(spec.pilots()));
    }
    places = new int[factors.size()];
    Arrays.fill(places, -1);
    perScene = product(factors.subList(firstOfPilots(factors), factors.size()));
    count = product(factors);
  }

  private static boolean onlyPilots(Factor factor) {
    return PILOT.containsAll(factor.groups());
  }

  private static int firstOfPilots(List<Factor> factors) {
    int place = factors.size();
    while (place > 0 && onlyPilots(factors.get(place - 1))) {
      place--;
    }
    return place;
  }

  private static long product(List<Factor> factors) {
    long product = 1;
    for (Factor factor : factors) {
      if (product > Sweep.MOST_POINTS / factor.size()) {
        throw new SettingException(
            "the sweep", "has too many points", "at most " + Sweep.MOST_POINTS + " points");
      }
      product *= factor.size();
    }
    return product;
  }

  long count() {
    return count;
  }

  /** How many points in a row differ in nothing but the pilot. */
  long perScene() {
    return perScene;
  }

  /** Whether the place within its scene alone says what the pilot of a point does. */
  boolean pilotsApart() {
    return factors.subList(0, firstOfPilots(factors)).stream()
        .noneMatch(factor -> factor.groups().contains("pilot"));
  }

  /** How many points share what some group sets. */
  long perValue(String group) {
    long others = count;
    for (Factor factor : factors) {
      if (factor.groups().contains(group)) {
        others /= factor.size();
      }
    }
    return others;
  }

  Values values() {
    return values;
  }

  /** The number of the scene, all but the pilot, of the point. */
  long scene() {
    return index / perScene;
  }

  long placeInScene() {
    return index % perScene;
  }

  void move(long to) {
    index = to;
    long rest = index;
    for (int i = factors.size() - 1; i >= 0; i--) {
      Factor factor = factors.get(i);
      int place = (int) (rest % factor.size());
      rest /= factor.size();
      if (place != places[i]) {
        places[i] = place;
        factor.set(place, values);
      }
    }
  }
}
