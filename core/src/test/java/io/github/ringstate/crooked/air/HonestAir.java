package io.github.ringstate.crooked.air;

/** Breaks no rule; others do by using it. */
public record HonestAir(double density) {}
