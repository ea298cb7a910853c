package io.github.ringstate.validation.report;

import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.validation.open.OpenStudy;
import io.github.ringstate.validation.open.Summary;
import io.github.ringstate.validation.open.Worth;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The tables of the page of what is not known, as files. */
final class ModelsCsv {

  private ModelsCsv() {}

  /** What each number is worth, a line for each craft, way out and number. */
  static String worth(OpenStudy study) {
    return "craft,technique,of,number,delay_s,band_narrower_pct,models_alone_narrower_pct,chance_pct,lasting_explained_pct\n"
        + study.worths().stream().map(ModelsCsv::worth).collect(Collectors.joining());
  }

  private static String worth(Worth worth) {
    String place = worth.craft().name() + "," + worth.technique().name() + ",";
    String chance = percent(worth.chance());
    return worth.numbers().stream()
            .map(
                known ->
                    place
                        + String.join(
                            ",",
                            known.of(),
                            known.parameter().key(),
                            Decimals.fixed(Worth.DELAY, 0),
                            percent(known.narrowing()),
                            percent(known.alone()),
                            chance,
                            percent(known.lasting()))
                        + "\n")
            .collect(Collectors.joining())
        + place
        + String.join(",", "pilot", "delay_s", "drawn", percent(worth.delay()), "", chance, "")
        + "\n";
  }

  /** Even and accepted draws of each number, and losses over them. */
  static String spreads(OpenStudy study) {
    return "what,standard,even_mean,even_low,even_high,accepted_mean,accepted_low,accepted_high\n"
        + study.numbers().stream()
            .map(
                number ->
                    line(
                        number.parameter().key(),
                        number.parameter().standard(),
                        number.even(),
                        number.accepted()))
            .collect(Collectors.joining())
        + study.bands().stream()
            .map(
                band ->
                    line(
                        String.join(
                            " ",
                            "loss_ft",
                            band.craft().name(),
                            band.technique().name(),
                            Decimals.fixed(band.delay(), 0) + "_s"),
                        Unit.FOOT.fromSi(band.standard()),
                        inFeet(band.even()),
                        inFeet(band.accepted())))
            .collect(Collectors.joining());
  }

  /** The published ranges and the part of the even draws that meets each. */
  static String ranges(OpenStudy study) {
    return "range,unit,low,high,standard,draws_meeting_it_pct,source\n"
        + study.ranges().stream()
            .map(
                range ->
                    Stream.of(
                                range.range().name(),
                                range.range().unit(),
                                number(range.range().low()),
                                number(range.range().high()),
                                number(range.standard()),
                                percent(range.share()),
                                range.range().source())
                            .map(SummaryCsv::field)
                            .collect(Collectors.joining(","))
                        + "\n")
            .collect(Collectors.joining());
  }

  private static String line(String what, double standard, Summary even, Summary accepted) {
    return what
        + ","
        + Stream.of(
                standard,
                even.mean(),
                even.low(),
                even.high(),
                accepted.mean(),
                accepted.low(),
                accepted.high())
            .map(ModelsCsv::number)
            .collect(Collectors.joining(","))
        + "\n";
  }

  private static Summary inFeet(Summary metres) {
    return new Summary(
        Unit.FOOT.fromSi(metres.mean()),
        Unit.FOOT.fromSi(metres.low()),
        Unit.FOOT.fromSi(metres.middle()),
        Unit.FOOT.fromSi(metres.high()));
  }

  private static String number(double value) {
    return Double.isFinite(value) ? Decimals.fixed(value, 3) : "";
  }

  private static String percent(double share) {
    return Decimals.fixed(Unit.PERCENT.fromSi(share), 1);
  }

  private static String percent(OptionalDouble share) {
    return share.isPresent() ? percent(share.getAsDouble()) : "";
  }
}
