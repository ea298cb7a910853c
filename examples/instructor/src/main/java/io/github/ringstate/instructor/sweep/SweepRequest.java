package io.github.ringstate.instructor.sweep;

import io.github.ringstate.files.row.RowFormat;
import io.github.ringstate.files.sweep.SweepFile;
import io.github.ringstate.files.whole.WholeFile;

/**
 * A sweep that is to be flown into a file.
 *
 * @param sweep what is flown
 * @param output the name of the file of rows, as the user gave it
 * @param place the file of rows
 * @param ending one of {@link RowFormat#ENDINGS}
 * @param threads how many threads fly
 * @param resume whether to go on with a run that was ended
 */
public record SweepRequest(
    SweepFile sweep, String output, WholeFile place, String ending, int threads, boolean resume) {

  RowFormat format() {
    return RowFormat.of(ending, sweep.sweep().rowColumns(), sweep.text());
  }
}
