package io.github.ringstate.instructor.desk;

import io.github.ringstate.files.plan.PlanFile.Part;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/** The fields of the page: the options that a plan may hold. */
public final class Fields {

  private final Map<Part, Map<String, String>> described = new EnumMap<>(Part.class);
  private final Map<String, String> manual;
  private final Map<String, String> review;

  /**
   * Asks what there is.
   *
   * @param described what each option of a part is for, by name
   * @param manual what each number of a flight manual is, by name
   * @param review what each option of the review of a recording is for, by name
   */
  public Fields(
      Function<Part, Map<String, String>> described,
      Map<String, String> manual,
      Map<String, String> review) {
    this.manual = manual;
    this.review = review;
    for (Part part : Part.values()) {
      this.described.put(part, described.apply(part));
    }
  }

  /** The names of the options of a part. */
  Set<String> of(Part part) {
    return described(part).keySet();
  }

  /** The names of the numbers of a flight manual. */
  Set<String> ofManual() {
    return manual.keySet();
  }

  /** What each number of a flight manual is. */
  Map<String, String> describedManual() {
    return manual;
  }

  /** What each option of the review of a recording is for. */
  Map<String, String> describedReview() {
    return review;
  }

  /** What each option of a part is for. */
  Map<String, String> described(Part part) {
    return described.getOrDefault(part, Map.of());
  }
}
