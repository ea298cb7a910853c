package io.github.ringstate.cluster.portion;

import io.github.ringstate.files.extension.ExtensionJar;
import io.github.ringstate.files.extension.Extensions;
import io.github.ringstate.files.provenance.Provenance;
import io.github.ringstate.files.provenance.ProvenanceJson;
import io.github.ringstate.files.sweep.SweepFile;
import java.io.Serializable;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A sweep on its way to the executors: its text, those of its craft files, and its extensions. Each
 * process reads it once, and its tasks share the sweep with what it keeps: tables of inflow and
 * drawn pilots.
 */
public final class CarriedSweep implements Serializable {

  private static final long serialVersionUID = 1L;

  private final String name;

  @SuppressWarnings("serial") // what is in it is a map that can be sent, and so is the list
  private final Map<String, String> texts;

  @SuppressWarnings("serial")
  private final List<ExtensionJar> jars;

  private final String provenance;
  private transient @Nullable SweepFile file;

  /**
   * Packs a sweep.
   *
   * @param file the sweep
   * @param provenance where its rows come from
   */
  public CarriedSweep(SweepFile file, Provenance provenance) {
    this.provenance = ProvenanceJson.text(provenance);
    name = file.name();
    Map<String, String> all = new HashMap<>(file.crafts());
    all.put(name, file.text());
    texts = Map.copyOf(all);
    jars = file.extensions().jars();
  }

  /**
   * Where the rows come from.
   *
   * @return the provenance as JSON
   */
  public String provenance() {
    return provenance;
  }

  /**
   * Unpacks the sweep.
   *
   * @return the sweep, the same for all who ask in this process
   */
  public synchronized SweepFile file() {
    SweepFile read = file;
    if (read == null) {
      read =
          SweepFile.read(
              name,
              Extensions.of(jars),
              (asked, what, largest) -> Objects.requireNonNull(texts.get(asked), asked));
      file = read;
    }
    return read;
  }
}
