package io.github.ringstate.files.report;

import java.util.function.Function;

/**
 * A column of a table for machines.
 *
 * @param name the column's name, the unit last
 * @param value the field of a row
 * @param <R> a row
 */
public record Column<R>(String name, Function<R, Cell> value) {}
