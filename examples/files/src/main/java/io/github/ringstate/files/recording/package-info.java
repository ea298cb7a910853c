/**
 * Reads recorded flights from files: GPX 1.1, sentences of NMEA 0183, and CSV with a map of its
 * columns. Which it is, the content says.
 *
 * <p>A file from an instrument is seldom whole. What cannot be read is left out, what can be mended
 * is mended, and each such thing is in the list of {@link
 * io.github.ringstate.files.recording.Repair repairs}. What would change a number without a word (a
 * unit that another column contradicts, two clocks in one file) is refused.
 */
@NullMarked
package io.github.ringstate.files.recording;

import org.jspecify.annotations.NullMarked;
