package io.github.ringstate.pilot;

import java.util.List;

/**
 * A recovery of one's own: a name and the phases it is flown in.
 *
 * @param name what it is called
 * @param phases what is flown, in order
 */
public record Phases(String name, List<Phase> phases) implements Recovery {}
