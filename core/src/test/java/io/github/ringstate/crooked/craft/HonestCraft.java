package io.github.ringstate.crooked.craft;

/** Breaks no rule; others do by using it. */
public record HonestCraft(double mass) {}
