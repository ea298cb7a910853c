package io.github.ringstate.crooked.study;

/** Breaks no rule; others do by using it. */
public record HonestStudy(int flights) {}
