package io.github.ringstate.instructor.sheet;

import io.github.ringstate.instructor.report.UnitSystem;

/**
 * What a user settles for all sheets.
 *
 * @param paper the paper
 * @param units the units
 * @param date the date printed
 */
public record PageSettings(Paper paper, UnitSystem units, PrintDate date) {}
