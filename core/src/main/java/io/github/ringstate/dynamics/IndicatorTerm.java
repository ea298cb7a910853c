package io.github.ringstate.dynamics;

import io.github.ringstate.craft.CraftLimits;
import io.github.ringstate.craft.Helicopter;

/** The vertical speed indicator, which follows the vertical speed with a lag of the first order. */
final class IndicatorTerm implements Term {

  private final double inverseLag;

  IndicatorTerm(Helicopter craft) {
    inverseLag = 1 / craft.si(CraftLimits.VERTICAL_SPEED_LAG);
  }

  @Override
  public void add(Motion at, double[] rates) {
    rates[State.INDICATED_VERTICAL_SPEED] =
        (at.state[State.SPEED_UP] - at.state[State.INDICATED_VERTICAL_SPEED]) * inverseLag;
  }
}
