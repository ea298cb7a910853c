package io.github.ringstate.instructor.desk;

import io.github.ringstate.files.plan.PlanFile.Part;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/** The fields of the page: the options that a plan may hold. */
final class Fields {

  private final Map<Part, Map<String, String>> described = new EnumMap<>(Part.class);

  /**
   * Asks what there is.
   *
   * @param described what each option of a part is for, by name
   */
  Fields(Function<Part, Map<String, String>> described) {
    for (Part part : Part.values()) {
      this.described.put(part, described.apply(part));
    }
  }

  /** The names of the options of a part. */
  Set<String> of(Part part) {
    return described(part).keySet();
  }

  /** What each option of a part is for. */
  Map<String, String> described(Part part) {
    return described.getOrDefault(part, Map.of());
  }
}
