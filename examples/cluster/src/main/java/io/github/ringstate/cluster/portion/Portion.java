package io.github.ringstate.cluster.portion;

import java.io.Serializable;

/**
 * Some points of a sweep that follow each other: the work of one task.
 *
 * @param number which portion, from 0
 * @param from the index of its first point
 * @param size how many points, at least 1
 */
public record Portion(int number, long from, int size) implements Serializable {}
