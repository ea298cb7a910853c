package io.github.ringstate.files.report;

/**
 * A word with what it stands for: a condition with its value, or a term with its meaning.
 *
 * @param word the word
 * @param meaning what stands beside it
 */
public record Term(String word, String meaning) {}
