package io.github.ringstate.sheets.chart;

/**
 * The part of a picture that the data are drawn in.
 *
 * @param left its left edge, in pixels from that of the picture
 * @param top its upper edge, in pixels from that of the picture
 * @param width its width, in pixels
 * @param height its height, in pixels
 * @param x the lower axis
 * @param y the left axis
 */
record Frame(int left, int top, int width, int height, Axis x, Axis y) {

  /** Where a value of the lower axis lies, in pixels from the left edge of the picture. */
  double across(double value) {
    return left + width * x.share(value);
  }

  /** Where a value of the left axis lies, in pixels from the upper edge of the picture. */
  double down(double value) {
    return top + height * (1 - y.share(value));
  }
}
