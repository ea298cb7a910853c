package io.github.ringstate.validation.losses;

import io.github.ringstate.air.Air;
import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.EntryKind;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.study.DirectionOrPower;
import io.github.ringstate.study.EqualTerms;
import java.util.ArrayList;
import java.util.List;

/**
 * All that the page tells of one craft.
 *
 * @param craft the craft
 * @param hover power that its hover takes at sea level, W
 * @param blocks losses for each entry and power to spare
 * @param comparisons direction and power for each entry
 */
public record CraftLosses(
    Helicopter craft, double hover, List<Block> blocks, List<Comparison> comparisons) {

  /** Take-off power over that of the hover, less one. */
  public static final List<Double> SPARE = List.of(0.0, 0.13, 0.30, 0.56);

  /** The entries: the standard one, and the one that flatters power. */
  public static final List<EntryKind> ENTRIES = List.of(EntryKind.STANDARD, EntryKind.SETTLING);

  /**
   * Losses from one entry with one power to spare.
   *
   * @param entry the entry
   * @param spare take-off power over that of the hover, less one
   * @param rows a row for each technique
   */
  public record Block(EntryKind entry, double spare, List<LossRows> rows) {}

  /**
   * Direction and power from one entry, the engine as the craft has it.
   *
   * @param entry the entry
   * @param delays one for each delay
   */
  public record Comparison(EntryKind entry, List<DirectionOrPower> delays) {}

  /**
   * Flies one craft.
   *
   * @param craft the craft
   * @return what came of it
   */
  public static CraftLosses of(Helicopter craft) {
    Air air = StandardAtmosphere.at(0);
    List<Block> blocks = new ArrayList<>();
    List<Comparison> comparisons = new ArrayList<>();
    for (EntryKind entry : ENTRIES) {
      Encounter base = Encounter.of(craft).withAir(air).withEntry(entry.standard());
      for (double spare : SPARE) {
        Helicopter changed = SparePower.of(craft, air, spare).craft();
        blocks.add(new Block(entry, spare, LossRows.of(base.withCraft(changed))));
      }
      comparisons.add(
          new Comparison(
              entry,
              DirectionOrPower.fly(
                  base, ParameterSet.standard(EqualTerms.PARAMETERS), LossRows.DELAYS)));
    }
    return new CraftLosses(craft, SparePower.of(craft, air, 0).hover(), blocks, comparisons);
  }
}
