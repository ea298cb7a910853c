package io.github.ringstate.crooked.rotor;

import io.github.ringstate.crooked.air.HonestAir;

record RotorThatKnowsTheAir(HonestAir air) {}
