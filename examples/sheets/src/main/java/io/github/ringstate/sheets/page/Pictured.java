package io.github.ringstate.sheets.page;

import io.github.ringstate.files.report.Report;
import java.awt.Graphics2D;

/** A report that can be had as one picture. */
public interface Pictured extends Report {

  /**
   * The picture.
   *
   * @param settings units
   * @return the picture
   */
  Picture picture(PageSettings settings);

  /** A picture that can be drawn anywhere. */
  interface Picture {

    /**
     * Its width.
     *
     * @return pixels
     */
    int width();

    /**
     * Its height.
     *
     * @return pixels
     */
    int height();

    /**
     * What it shows, for those who cannot see it.
     *
     * @return a sentence or two
     */
    String description();

    /**
     * Draws it.
     *
     * @param graphics where to
     */
    void paint(Graphics2D graphics);
  }
}
