package io.github.ringstate.study;

import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.pilot.Technique;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import java.util.zip.CRC32;

/**
 * A short name for the model of flight that changes whenever its numbers do.
 *
 * <p>It is the check sum (CRC-32, ISO/IEC/IEEE 8802-3) of the losses of a fixed set of reference
 * flights: every demo craft, every way out, prompt and late. Two builds of the same name lose the
 * same in each of them, to the last bit; a changed equation, constant or default that moves any of
 * them changes the name, without anybody having to think of it. What moves none of these flights
 * keeps it.
 */
public final class ModelRevision {

  private static final List<Technique> FLOWN =
      List.of(Technique.FORWARD, Technique.LATERAL, Technique.AUTOROTATION);

  /** From onset to the pilot's action, s. */
  private static final List<Double> DELAYS = List.of(0.5, 3.0);

  private ModelRevision() {}

  /**
   * The revision of this build.
   *
   * @return eight digits and letters; the same on every machine
   */
  public static String current() {
    return Flown.NAME;
  }

  /**
   * The name of a set of losses.
   *
   * @param losses heights, m; NaN where a flight has none
   * @return eight digits and letters
   */
  static String of(double... losses) {
    CRC32 sum = new CRC32();
    for (double loss : losses) {
      long bits = Double.doubleToLongBits(loss);
      for (int shift = Long.SIZE - Byte.SIZE; shift >= 0; shift -= Byte.SIZE) {
        sum.update((int) (bits >>> shift)); // of which the lowest byte counts
      }
    }
    return String.format(Locale.ROOT, "%08x", sum.getValue());
  }

  private static String flown() {
    return of(
        LossTable.fly(
                Encounter.of(DemoCraft.TRAINER),
                DemoCraft.ALL,
                List.of(StandardAtmosphere.at(0)),
                FLOWN.stream().map(Technique::standard).toList(),
                DELAYS)
            .cells()
            .stream()
            .map(LossCell::outcome)
            .map(Outcome::altitudeLoss)
            .mapToDouble(loss -> loss.orElse(Double.NaN))
            .toArray());
  }

  /**
   * Flown once, and not before somebody asks; on a thread of its own, for an interruption of who
   * asks would end the flights, and a class that fails to begin never does (JLS 12.4.2).
   */
  private static final class Flown {

    private static final String NAME =
        CompletableFuture.supplyAsync(ModelRevision::flown, flying -> new Thread(flying).start())
            .join();
  }
}
