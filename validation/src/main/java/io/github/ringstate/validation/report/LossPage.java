package io.github.ringstate.validation.report;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.sheets.page.HtmlWriter;
import io.github.ringstate.sheets.page.Page;
import io.github.ringstate.study.DirectionOrPower;
import io.github.ringstate.validation.losses.CraftLosses;
import io.github.ringstate.validation.losses.CraftLosses.Block;
import io.github.ringstate.validation.losses.CraftLosses.Comparison;
import io.github.ringstate.validation.losses.LossRows;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * The page of losses: what {@code losses.mustache} is filled with, and the same rows as CSV.
 *
 * @param crafts the losses of each craft
 */
public record LossPage(List<CraftLosses> crafts) {

  private static final String NONE = "–";

  /** Copies the list. */
  public LossPage {
    crafts = List.copyOf(crafts);
  }

  /**
   * Flies all demo craft.
   *
   * @return the page, to be written
   */
  public static LossPage fly() {
    return new LossPage(DemoCraft.ALL.stream().map(CraftLosses::of).toList());
  }

  private record CraftEntry(
      String name,
      String description,
      String hover,
      List<EntryBlocks> entries,
      List<EntryParts> parts) {}

  private record EntryBlocks(String label, List<BlockEntry> blocks) {}

  private record BlockEntry(String spare, List<RowEntry> rows) {}

  private record RowEntry(
      String label, boolean isNoWayOut, List<String> release, List<String> today) {}

  private record EntryParts(String label, List<PartEntry> delays) {}

  private record PartEntry(String delay, List<String> losses, List<String> parts) {}

  /**
   * Writes the page.
   *
   * @return the whole of it, as HTML
   */
  public String html() {
    return HtmlWriter.html(
        new Page(
            LossPage.class,
            "losses.mustache",
            "ringstate: losses with power to spare",
            false,
            Map.of(
                "delays",
                LossRows.DELAYS.stream().map(LossPage::seconds).toList(),
                "crafts",
                crafts.stream().map(LossPage::entry).toList()),
            Map.of()));
  }

  /**
   * Writes the rows of losses.
   *
   * @return CSV with a header; a loss is empty where the descent was not arrested for good
   */
  public String csv() {
    StringBuilder csv =
        new StringBuilder(
            "craft,entry,spare_power_pct,technique,way_out,delay_s,release_loss_ft,loss_ft\n");
    for (CraftLosses craft : crafts) {
      for (Block block : craft.blocks()) {
        for (LossRows row : block.rows()) {
          for (int i = 0; i < LossRows.DELAYS.size(); i++) {
            csv.append(
                String.join(
                    ",",
                    craft.craft().name(),
                    block.entry().name(),
                    percent(block.spare()),
                    row.technique().name(),
                    String.valueOf(isWayOut(row)),
                    seconds(LossRows.DELAYS.get(i)),
                    feet(row.release()[i]),
                    feet(row.today()[i])));
            csv.append('\n');
          }
        }
      }
    }
    return csv.toString();
  }

  private static CraftEntry entry(CraftLosses losses) {
    return new CraftEntry(
        losses.craft().name(),
        losses.craft().description(),
        Decimals.fixed(Unit.KILOWATT.fromSi(losses.hover()), 0),
        CraftLosses.ENTRIES.stream()
            .map(
                entry ->
                    new EntryBlocks(
                        entry.label(),
                        losses.blocks().stream()
                            .filter(block -> block.entry().equals(entry))
                            .map(LossPage::entry)
                            .toList()))
            .toList(),
        losses.comparisons().stream().map(LossPage::entry).toList());
  }

  private static BlockEntry entry(Block block) {
    return new BlockEntry(
        percent(block.spare()),
        block.rows().stream()
            .map(
                row ->
                    new RowEntry(
                        row.technique().label(),
                        !isWayOut(row),
                        printed(row.release()),
                        printed(row.today())))
            .toList());
  }

  private static EntryParts entry(Comparison comparison) {
    return new EntryParts(
        comparison.entry().label(), comparison.delays().stream().map(LossPage::entry).toList());
  }

  private static PartEntry entry(DirectionOrPower at) {
    return new PartEntry(
        seconds(at.delay()),
        printed(
            at.forward(),
            at.lateral(),
            at.aheadReduced(),
            at.aheadAtOnce(),
            at.asideReduced(),
            at.asideAtOnce(),
            at.levelAtOnce()),
        List.of(printed(at.advantage()), printed(at.byDirection()), printed(at.byPower())));
  }

  private static List<String> printed(double... losses) {
    return Arrays.stream(losses)
        .mapToObj(loss -> Double.isFinite(loss) ? UnitSystem.AVIATION.loss(loss) : NONE)
        .toList();
  }

  private static String printed(OptionalDouble height) {
    return height.isPresent()
        ? Decimals.fixed(Unit.FOOT.fromSi(height.getAsDouble()), 0).replace('-', '−')
        : NONE;
  }

  private static boolean isWayOut(LossRows row) {
    return row.technique().purpose() == Technique.Purpose.WAY_OUT;
  }

  private static String feet(double loss) {
    return Double.isFinite(loss) ? Decimals.fixed(Unit.FOOT.fromSi(loss), 1) : "";
  }

  private static String percent(double part) {
    return Decimals.fixed(100 * part, 0);
  }

  private static String seconds(double delay) {
    return Decimals.fixed(delay, 0);
  }
}
