package io.github.ringstate.instructor.manual;

import io.github.ringstate.files.report.Report;

/** A report on a craft that was made, which can be written down. */
public interface MadeCraft extends Report {

  /**
   * The craft.
   *
   * @return the text of its file
   */
  String craftText();
}
