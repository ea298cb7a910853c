package io.github.ringstate.cluster.portion;

import io.github.ringstate.files.sweep.SweepFile;
import java.io.Serializable;
import org.jspecify.annotations.Nullable;

/**
 * The text of a sweep on its way to the executors. Each process reads it once, and its tasks share
 * the sweep with what it keeps: tables of inflow and drawn pilots.
 */
public final class CarriedSweep implements Serializable {

  private static final long serialVersionUID = 1L;

  private final String name;
  private final String text;
  private transient @Nullable SweepFile file;

  /**
   * Packs a sweep.
   *
   * @param file the sweep
   */
  public CarriedSweep(SweepFile file) {
    name = file.name();
    text = file.text();
  }

  /**
   * Unpacks the sweep.
   *
   * @return the sweep, the same for all who ask in this process
   */
  public synchronized SweepFile file() {
    SweepFile read = file;
    if (read == null) {
      read = SweepFile.parse(name, text);
      file = read;
    }
    return read;
  }
}
