package io.github.ringstate.files.recording;

import java.util.Optional;

/**
 * One sort of thing that was left out of a recording or mended.
 *
 * @param kind what was done
 * @param quantity to what; empty if to whole readings
 * @param count how often, 1 at least
 * @param first time of the first, s on the recording's clock; that of the reading nearest to it if
 *     it has none of its own
 * @param last time of the last, s, the same way
 */
public record Repair(
    RepairKind kind, Optional<RecordedQuantity> quantity, int count, double first, double last) {}
