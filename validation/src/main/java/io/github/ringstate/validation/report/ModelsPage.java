package io.github.ringstate.validation.report;

import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.sheets.page.HtmlWriter;
import io.github.ringstate.sheets.page.Page;
import io.github.ringstate.study.model.PublishedRanges;
import io.github.ringstate.validation.open.LossBand;
import io.github.ringstate.validation.open.ModelSets.NumberSpread;
import io.github.ringstate.validation.open.ModelSets.RangeShare;
import io.github.ringstate.validation.open.OpenStudy;
import io.github.ringstate.validation.open.Summary;
import io.github.ringstate.validation.open.Worth;
import java.util.List;
import java.util.Map;

/**
 * The page of what is not known: what {@code models.mustache} is filled with.
 *
 * @param study what was drawn and flown
 */
public record ModelsPage(OpenStudy study) {

  private record RangeEntry(
      String name, String range, String standard, boolean misses, String share, String source) {}

  private record NumberEntry(
      String name, String standard, List<String> even, List<String> accepted) {}

  private record BandEntry(
      String craft,
      String way,
      String delay,
      String standard,
      List<String> even,
      List<String> accepted) {}

  private record FlownEntry(
      String craft,
      String way,
      String alone,
      String band,
      String width,
      String delayed,
      String delay,
      String lost) {}

  /**
   * Writes the page.
   *
   * @return the whole of it, as HTML
   */
  public String html() {
    WorthTable table = WorthTable.of(study.worths());
    return HtmlWriter.html(
        new Page(
            ModelsPage.class,
            "models.mustache",
            "ringstate: what is not known, and what it would be worth",
            false,
            Map.ofEntries(
                Map.entry("draws", Long.toString(study.models().accepted().draws())),
                Map.entry("kept", Integer.toString(study.models().accepted().kept().size())),
                Map.entry("acceptance", percent(study.models().accepted().share(), 2)),
                Map.entry("looked", Integer.toString(study.models().even().size())),
                Map.entry("flown", Integer.toString(OpenStudy.FLOWN)),
                Map.entry(
                    "edges", Digits.of(edges().low(), 2) + " and " + Digits.of(edges().high(), 2)),
                Map.entry("ninety", Decimals.fixed(Worth.NINE_IN_TEN, 1)),
                Map.entry("ranges", study.ranges().stream().map(ModelsPage::entry).toList()),
                Map.entry("numbers", study.numbers().stream().map(ModelsPage::entry).toList()),
                Map.entry("bands", study.bands().stream().map(ModelsPage::entry).toList()),
                Map.entry("worths", study.worths().stream().map(ModelsPage::entry).toList()),
                Map.entry("table", table)),
            Map.of()));
  }

  /** How far out the boundaries of the accepted models reach, in hover induced velocities. */
  private Summary edges() {
    return Summary.of(
        study.models().accepted().kept().stream()
            .mapToDouble(PublishedRanges.REACH.measure())
            .toArray());
  }

  private static RangeEntry entry(RangeShare range) {
    return new RangeEntry(
        range.range().name(),
        Digits.of(range.range().low(), 3)
            + " to "
            + Digits.of(range.range().high(), 3)
            + unit(range.range().unit()),
        Digits.of(range.standard(), 3),
        !range.holds(),
        percent(range.share(), 0),
        range.range().source());
  }

  private static NumberEntry entry(NumberSpread number) {
    return new NumberEntry(
        name(number.parameter()),
        Digits.of(number.parameter().standard(), 3),
        numbers(number.even()),
        numbers(number.accepted()));
  }

  private static List<String> numbers(Summary summary) {
    return List.of(
        Digits.of(summary.mean(), 3), Digits.of(summary.low(), 3), Digits.of(summary.high(), 3));
  }

  private static BandEntry entry(LossBand band) {
    return new BandEntry(
        band.craft().name(),
        band.technique().label(),
        Decimals.fixed(band.delay(), 0),
        feet(band.standard()),
        losses(band.even()),
        losses(band.accepted()));
  }

  private static List<String> losses(Summary summary) {
    return List.of(feet(summary.low()), feet(summary.middle()), feet(summary.high()));
  }

  private static FlownEntry entry(Worth worth) {
    return new FlownEntry(
        worth.craft().name(),
        worth.technique().label(),
        feet(worth.alone().width()),
        feet(worth.band().low()) + " to " + feet(worth.band().high()),
        feet(worth.band().width()),
        feet(worth.delayed().width()),
        percent(worth.delay(), 0),
        percent((double) worth.lost() / (worth.flights() + worth.lost()), 0));
  }

  /** The name of a number, with its unit. */
  static String name(Parameter parameter) {
    return parameter.name() + unit(parameter.unit().symbol());
  }

  private static String unit(String symbol) {
    return symbol.isEmpty() || symbol.equals("1") ? "" : ", " + symbol;
  }

  static String percent(double share, int decimals) {
    return Decimals.fixed(Unit.PERCENT.fromSi(share), decimals).replace('-', '\u2212');
  }

  private static String feet(double metres) {
    return Double.isFinite(metres) ? UnitSystem.AVIATION.loss(metres) : "–";
  }
}
