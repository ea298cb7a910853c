package io.github.ringstate.files.report;

import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.quantity.Unit;
import java.util.OptionalDouble;

/**
 * One field of a table: a number already rounded to text, a text, or nothing.
 *
 * @param text what is printed; empty if there is nothing
 * @param kind what the text is
 */
public record Cell(String text, Kind kind) {

  /** What a field holds. */
  public enum Kind {
    /** A decimal number. */
    NUMBER,
    /** A text. */
    TEXT,
    /** Nothing. */
    NOTHING
  }

  /** A field without a value. */
  public static final Cell NOTHING = new Cell("", Kind.NOTHING);

  /**
   * A text.
   *
   * @param text the text
   * @return the cell
   */
  public static Cell text(String text) {
    return new Cell(text, Kind.TEXT);
  }

  /**
   * An answer.
   *
   * @param is whether it is so
   * @return the cell, {@code yes} or {@code no}
   */
  public static Cell yesNo(boolean is) {
    return text(is ? "yes" : "no");
  }

  /**
   * A number with one decimal.
   *
   * @param value the number; finite
   * @return the cell
   */
  public static Cell number(double value) {
    return number(value, 1);
  }

  /**
   * A number.
   *
   * @param value the number; finite
   * @param decimals how many digits stand behind the point
   * @return the cell
   */
  public static Cell number(double value, int decimals) {
    return new Cell(Decimals.fixed(value, decimals), Kind.NUMBER);
  }

  /**
   * A number with one decimal, or nothing.
   *
   * @param value the number, finite, or empty
   * @return the cell
   */
  public static Cell number(OptionalDouble value) {
    return value.isPresent() ? number(value.getAsDouble()) : NOTHING;
  }

  /**
   * A number that a user gave: one decimal, or as many as it was given with, up to three.
   *
   * @param value the number; finite
   * @return the cell
   */
  public static Cell given(double value) {
    return new Cell(Decimals.given(value), Kind.NUMBER);
  }

  /**
   * A quantity with one decimal.
   *
   * @param unit the unit to write it in
   * @param si the quantity in SI units; finite
   * @return the cell
   */
  public static Cell in(Unit unit, double si) {
    return number(unit.fromSi(si));
  }

  /**
   * A quantity with one decimal, or nothing.
   *
   * @param unit the unit to write it in
   * @param si the quantity in SI units, finite, or empty
   * @return the cell
   */
  public static Cell in(Unit unit, OptionalDouble si) {
    return si.isPresent() ? in(unit, si.getAsDouble()) : NOTHING;
  }

  /**
   * A quantity that a user gave: one decimal, or as many as it was given with, up to three.
   *
   * @param unit the unit in which it was given
   * @param si the quantity in SI units; finite
   * @return the cell
   */
  public static Cell given(Unit unit, double si) {
    return given(unit.fromSi(si));
  }

  /**
   * A number with all its digits.
   *
   * @param value the number; finite
   * @return the cell
   */
  public static Cell exact(double value) {
    return new Cell(Double.toString(value), Kind.NUMBER);
  }
}
