package io.github.ringstate.instructor.sheet;

import io.github.ringstate.instructor.report.Report;

/** A report that can be had as a page. */
public interface Printable extends Report {

  /**
   * The page.
   *
   * @param settings paper, units and date
   * @return the page
   */
  Page page(PageSettings settings);
}
