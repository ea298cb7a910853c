package io.github.ringstate.cluster;

import io.github.ringstate.cluster.result.PortionPlaces;
import io.github.ringstate.cluster.result.ResultFiles;
import java.io.IOException;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import org.apache.hadoop.fs.Path;
import org.apache.spark.api.java.function.FlatMapFunction;
import org.apache.spark.broadcast.Broadcast;
import org.apache.spark.util.SerializableConfiguration;

/**
 * Reads the file of a portion that an earlier run left, and removes it if it is not what was put
 * there.
 *
 * @param places where the files of portions are
 * @param settings how to reach these places
 */
record PortionCheck(PortionPlaces places, Broadcast<SerializableConfiguration> settings)
    implements FlatMapFunction<Integer, String> {

  /**
   * Checks a portion.
   *
   * @param number its number
   * @return the name of its file if it was damaged and is no longer there, else nothing
   * @throws IOException if it cannot be read or removed
   */
  @Override
  public Iterator<String> call(Integer number) throws IOException {
    Path place = places.place(number);
    ResultFiles files = ResultFiles.at(place, settings.value().value());
    if (files.agreesWithDigest(place)) {
      return Collections.emptyIterator();
    }
    files.removeWithDigest(place);
    return List.of(place.getName()).iterator();
  }
}
