package io.github.ringstate.study;

import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Outcome;

/**
 * One cell of a table of altitude losses.
 *
 * @param encounter what was flown
 * @param outcome what came of it
 */
public record LossCell(Encounter encounter, Outcome outcome) {}
