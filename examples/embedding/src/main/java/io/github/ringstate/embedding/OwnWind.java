package io.github.ringstate.embedding;

import io.github.ringstate.air.WindField;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Encounter;
import java.io.PrintStream;
import java.util.Locale;

/** Flies an encounter in a wind of one's own: a tailwind that fades towards the ground. */
public final class OwnWind {

  private OwnWind() {}

  /**
   * A wind from behind that is half as strong at the ground as at a height, and that height above
   * which it is the same.
   *
   * @param aloft the tailwind aloft, m/s
   * @param height the height, m
   */
  public record Fading(double aloft, double height) implements WindField {

    @Override
    public void velocity(double time, double north, double east, double up, double[] result) {
      double share = Math.min(Math.max(up / height, 0), 1);
      result[0] = aloft * (0.5 + 0.5 * share * share * (3 - 2 * share));
      result[1] = 0;
      result[2] = 0;
    }
  }

  /**
   * Runs the program.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    run(System.out);
  }

  static void run(PrintStream out) {
    Encounter encounter = Encounter.of(DemoCraft.TRAINER).withHeight(100).withDelay(2);
    double loss = encounter.withWind(new Fading(5, 150)).fly().altitudeLoss().orElseThrow();
    out.printf(Locale.ROOT, "%.1f m%n", loss);
  }
}
