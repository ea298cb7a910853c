package io.github.ringstate.sheets.page;

import io.github.ringstate.files.unit.UnitSystem;

/**
 * What a user settles for all sheets.
 *
 * @param paper the paper
 * @param units the units
 * @param date the date printed
 */
public record PageSettings(Paper paper, UnitSystem units, PrintDate date) {}
