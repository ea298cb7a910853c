package io.github.ringstate.validation.figure;

import java.util.function.Supplier;

/**
 * A plot with the words that belong to it.
 *
 * @param id a word that is unique among figures
 * @param title a short title
 * @param caption what it shows and what to see in it
 * @param plot draws the plot; asked only when a report is written
 */
public record Figure(String id, String title, String caption, Supplier<Plot> plot) {}
