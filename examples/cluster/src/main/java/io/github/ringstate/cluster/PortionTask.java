package io.github.ringstate.cluster;

import io.github.ringstate.cluster.portion.CarriedSweep;
import io.github.ringstate.cluster.portion.FlownPortion;
import io.github.ringstate.cluster.portion.Portion;
import io.github.ringstate.cluster.portion.PortionRows;
import io.github.ringstate.cluster.result.PortionPlaces;
import io.github.ringstate.cluster.result.ResultFiles;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.concurrent.CancellationException;
import org.apache.hadoop.fs.Path;
import org.apache.spark.TaskContext;
import org.apache.spark.TaskKilledException;
import org.apache.spark.api.java.function.Function;
import org.apache.spark.broadcast.Broadcast;
import org.apache.spark.util.SerializableConfiguration;

/**
 * Flies a portion and puts its file in its place: what an executor does. It may be done any number
 * of times, at once too, and nothing comes of that but the same file.
 *
 * @param sweep what to fly
 * @param places where the files of portions go
 * @param settings how to reach these places
 */
record PortionTask(
    Broadcast<CarriedSweep> sweep,
    PortionPlaces places,
    Broadcast<SerializableConfiguration> settings)
    implements Function<Portion, FlownPortion> {

  /**
   * Flies a portion, unless its file is there.
   *
   * @param portion the portion
   * @return what it cost
   * @throws IOException if the file cannot be written
   */
  @Override
  public FlownPortion call(Portion portion) throws IOException {
    Path place = places.place(portion.number());
    ResultFiles files = ResultFiles.at(place, settings.value().value());
    if (files.exists(place)) {
      return FlownPortion.THERE;
    }
    ThreadMXBean clock = ManagementFactory.getThreadMXBean();
    long start = clock.getCurrentThreadCpuTime();
    TaskContext task = TaskContext.get();
    CarriedSweep carried = sweep.value();
    PortionRows rows =
        new PortionRows(carried.file(), carried.provenance(), portion, task::isInterrupted);
    try {
      files.placeWithDigest(place, rows::writeTo);
      return new FlownPortion(portion.size(), clock.getCurrentThreadCpuTime() - start);
    } catch (CancellationException unwanted) {
      throw new TaskKilledException(String.valueOf(unwanted.getMessage()));
    }
  }
}
