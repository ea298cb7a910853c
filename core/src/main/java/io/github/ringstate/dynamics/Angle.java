package io.github.ringstate.dynamics;

import org.hipparchus.util.FastMath;

/**
 * Sine and cosine of attitude angles. Up to 1.1 rad, which is beyond every attitude limit, they
 * come from Taylor's series, cut where its next term is below 1e-15; beyond that from FastMath. A
 * third of the time of the right-hand side went into FastMath's exact reduction, which attitudes do
 * not need.
 */
final class Angle {

  private static final double SMALL = 1.1;

  private Angle() {}

  static double sin(double x) {
    if (x == 0) {
      return 0;
    }
    if (!(Math.abs(x) <= SMALL)) {
      return FastMath.sin(x);
    }
    // in pairs rather than one after the other: a processor works on several at a time
    double y = x * x;
    double y2 = y * y;
    double low = -1.0 / 6 + y * (1.0 / 120) + y2 * (-1.0 / 5040 + y * (1.0 / 362_880));
    double high =
        -1.0 / 39_916_800
            + y * (1.0 / 6_227_020_800.0)
            + y2 * (-1.0 / 1_307_674_368_000.0 + y * (1.0 / 355_687_428_096_000.0));
    return x + x * y * (low + y2 * y2 * high);
  }

  static double cos(double x) {
    if (x == 0) {
      return 1;
    }
    if (!(Math.abs(x) <= SMALL)) {
      return FastMath.cos(x);
    }
    double y = x * x;
    double y2 = y * y;
    double low = -0.5 + y * (1.0 / 24) + y2 * (-1.0 / 720 + y * (1.0 / 40_320));
    double high =
        -1.0 / 3_628_800
            + y * (1.0 / 479_001_600)
            + y2 * (-1.0 / 87_178_291_200.0 + y * (1.0 / 20_922_789_888_000.0));
    return 1 + y * (low + y2 * y2 * high);
  }
}
