package outside;

import io.github.ringstate.air.WindField;

/**
 * A tailwind that is the same in a shallow layer and fades out above it, and sets in with time.
 *
 * @param speed the tailwind in the layer, m/s
 * @param top the top of the layer, m above the ground
 * @param fade the depth in which it fades out above that, m
 * @param ramp how long it takes to set in, s; 0 for a wind that always blew
 */
public record SeaBreeze(double speed, double top, double fade, double ramp) implements WindField {

  @Override
  public void velocity(double time, double north, double east, double height, double[] result) {
    double since = ramp > 0 ? smooth(time / ramp) : 1;
    result[0] = speed * since * (1 - smooth((height - top) / fade));
    result[1] = 0;
    result[2] = 0;
  }

  private static double smooth(double x) {
    double share = Math.min(Math.max(x, 0), 1);
    return share * share * (3 - 2 * share);
  }
}
