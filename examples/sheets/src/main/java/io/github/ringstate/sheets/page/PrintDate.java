package io.github.ringstate.sheets.page;

import io.github.ringstate.files.error.UserError;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import org.jspecify.annotations.Nullable;

/**
 * The date on a sheet, in universal time. The environment variable {@code SOURCE_DATE_EPOCH}
 * (reproducible-builds.org, seconds since 1970) stands in for the clock, so that the same command
 * gives the same bytes.
 *
 * @param instant the instant
 */
public record PrintDate(Instant instant) {

  /** The environment variable. */
  public static final String VARIABLE = "SOURCE_DATE_EPOCH";

  /**
   * The date to print.
   *
   * @param epoch what the environment says, or null
   * @param clock the clock to ask otherwise
   * @return the date
   * @throws UserError if the environment says nothing sensible
   */
  public static PrintDate of(@Nullable String epoch, Clock clock) {
    if (epoch == null) {
      return new PrintDate(clock.instant());
    }
    try {
      PrintDate date = new PrintDate(Instant.ofEpochSecond(Long.parseLong(epoch.strip())));
      int year = date.day().getYear();
      if (year >= 1970 && year <= 9999) {
        return date;
      }
    } catch (NumberFormatException | DateTimeException wrong) {
      // refused below
    }
    throw UserError.option(VARIABLE, epoch, "whole seconds since 1970, up to the year 9999");
  }

  /**
   * The day.
   *
   * @return the day, in universal time
   */
  public LocalDate day() {
    return LocalDate.ofInstant(instant, ZoneOffset.UTC);
  }

  @Override
  public String toString() {
    return day().toString();
  }
}
