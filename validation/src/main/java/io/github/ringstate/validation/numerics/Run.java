package io.github.ringstate.validation.numerics;

/**
 * What an integration gave.
 *
 * @param error largest error of the state at the end
 * @param eventError largest error of an event's time, s; NaN if an event was missed or invented
 * @param evaluations how often the right-hand side was worked out
 */
public record Run(double error, double eventError, int evaluations) {}
