package io.github.ringstate.study.sweep;

import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * A column of one's own in the rows of a sweep.
 *
 * @param name lower case with underscores, the unit last; no name of a built-in column
 * @param value the value of a row, in the unit of the name, from the flight of its point; empty
 *     where the row has none. It must be finite. Asked by several threads, each with a flight of
 *     its own
 */
public record OutputColumn(String name, Function<FlownPoint, OptionalDouble> value) {}
