package io.github.ringstate.instructor.runs;

import io.github.ringstate.air.Wind;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.option.NumberText;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.run.RunWind;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Mean winds of a forecast at some heights, straight lines between their vectors.
 *
 * @param levels the winds, the lowest first; empty without a forecast
 */
record WindAloft(List<Level> levels) {

  static final String OPTION = "--wind-aloft";

  static final WindAloft NONE = new WindAloft(List.of());

  /** Above the 10 m (33 ft) of the reported wind, and up to where a run may be flown. */
  private static final Quantity HEIGHT = new Quantity("height above ground", Unit.FOOT, 50, 9000);

  private static final Pattern LEVEL = Pattern.compile("([^:/]+):([^:/]+)/([^:/]+)");

  /**
   * The mean wind at one height.
   *
   * @param height height above ground, m
   * @param from where the wind comes from, rad clockwise from north
   * @param speed mean speed, m/s
   */
  record Level(double height, double from, double speed) {

    Wind wind() {
      return Wind.from(from, speed);
    }
  }

  WindAloft {
    levels = List.copyOf(levels);
  }

  /**
   * Reads a forecast.
   *
   * @param text levels with commas between, for instance {@code 500:240/18,1000:250/25}
   * @return the winds
   * @throws UserError if a level is not written so, out of range, or not above the one before
   */
  static WindAloft read(String text) {
    List<Level> levels = new ArrayList<>();
    for (String part : text.split(",", -1)) {
      Matcher level = LEVEL.matcher(part.strip());
      if (!level.matches()) {
        throw UserError.option(
            OPTION,
            text,
            "height:direction/speed with commas between, as in 500:240/18,1000:250/25");
      }
      double height = NumberText.si(OPTION, level.group(1), HEIGHT);
      if (!levels.isEmpty() && !(height > levels.get(levels.size() - 1).height())) {
        throw UserError.option(OPTION, text, "every height above the one before it");
      }
      levels.add(
          new Level(
              height,
              NumberText.si(OPTION, level.group(2), RunWind.FROM),
              NumberText.si(OPTION, level.group(3), RunWind.SPEED)));
    }
    return new WindAloft(levels);
  }

  boolean isGiven() {
    return !levels.isEmpty();
  }

  /**
   * The wind at a height.
   *
   * @param height height above ground, m
   * @param ground the wind below the lowest level
   * @return on the straight line between the vectors of the levels next to it
   * @throws UserError if the height is above the highest level
   */
  Wind at(double height, Level ground) {
    Level below = ground;
    for (Level above : levels) {
      if (height <= above.height()) {
        double part = (height - below.height()) / (above.height() - below.height());
        return new Wind(
            below.wind().north() + part * (above.wind().north() - below.wind().north()),
            below.wind().east() + part * (above.wind().east() - below.wind().east()));
      }
      below = above;
    }
    throw UserError.usage(
        OPTION
            + " ends at "
            + feet(below.height())
            + " ft, below the height flown, "
            + feet(height)
            + " ft; give a wind at that height or above");
  }

  private static String feet(double height) {
    return Decimals.fixed(Unit.FOOT.fromSi(height), 0);
  }

  /**
   * The forecast in words.
   *
   * @param units the units to speak in
   * @return for instance {@code 500 ft: 240 deg, 18 kt; 1000 ft: 250 deg, 25 kt}; empty without one
   */
  String inWords(UnitSystem units) {
    return levels.stream()
        .map(
            level ->
                units.typed(Unit.FOOT, level.height())
                    + ": "
                    + Headings.windFrom(level.from())
                    + " deg, "
                    + units.typed(Unit.KNOT, level.speed()))
        .collect(Collectors.joining("; "));
  }
}
