package io.github.ringstate.validation.check;

import io.github.ringstate.sheets.chart.Graph;
import java.util.function.Supplier;

/**
 * A graph with the words that belong to it.
 *
 * @param id a word that is unique among figures
 * @param title a short title
 * @param caption what it shows and what to see in it
 * @param graph draws the graph; asked only when a report is written
 */
public record Figure(String id, String title, String caption, Supplier<Graph> graph) {}
