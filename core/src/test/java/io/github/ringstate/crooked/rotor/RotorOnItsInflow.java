package io.github.ringstate.crooked.rotor;

import io.github.ringstate.crooked.inflow.InflowThatKnowsItsRotor;

/** Breaks no rule alone, but closes a circle. */
public record RotorOnItsInflow(InflowThatKnowsItsRotor inflow) {}
