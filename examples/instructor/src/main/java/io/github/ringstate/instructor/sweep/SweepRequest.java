package io.github.ringstate.instructor.sweep;

import io.github.ringstate.files.provenance.Provenance;
import io.github.ringstate.files.provenance.ProvenanceJson;
import io.github.ringstate.files.row.RowFormat;
import io.github.ringstate.files.sweep.SweepFile;
import io.github.ringstate.files.whole.WholeFile;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A sweep that is to be flown into a file.
 *
 * @param sweep what is flown
 * @param output the name of the file of rows, as the user gave it
 * @param place the file of rows
 * @param ending one of {@link RowFormat#ENDINGS}
 * @param threads how many threads fly
 * @param resume whether to go on with a run that was ended
 * @param provenance where the rows come from
 */
public record SweepRequest(
    SweepFile sweep,
    String output,
    WholeFile place,
    String ending,
    int threads,
    boolean resume,
    Provenance provenance) {

  RowFormat format() {
    Map<String, String> said = new LinkedHashMap<>();
    said.put("sweep", sweep.text());
    said.put(ProvenanceJson.NAME, ProvenanceJson.text(provenance));
    return RowFormat.of(ending, sweep.sweep().rowColumns(), said);
  }

  /** Whether the format has no place for the provenance. */
  boolean needsSidecar() {
    return ending.equals("csv");
  }
}
