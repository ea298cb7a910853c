package io.github.ringstate.crooked.inflow;

import io.github.ringstate.crooked.rotor.RotorOnItsInflow;

public record InflowThatKnowsItsRotor(RotorOnItsInflow rotor) {}
