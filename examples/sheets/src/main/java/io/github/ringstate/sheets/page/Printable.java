package io.github.ringstate.sheets.page;

import io.github.ringstate.files.report.Report;

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
