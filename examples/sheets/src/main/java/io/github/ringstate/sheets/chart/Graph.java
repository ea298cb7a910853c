package io.github.ringstate.sheets.chart;

import io.github.ringstate.sheets.page.Pictured.Picture;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * A plot of functions and tables, as a report of a study has them: lines and marks with names,
 * shaded regions, axes with given ends, and a legend made of the names. Colours, letters and grid
 * are those of {@link Plot}.
 */
public final class Graph {

  private static final int WIDTH = 600;
  private static final int HEIGHT = 390;

  private final Plot plot;
  private final List<Legend.Entry> entries = new ArrayList<>();

  private double left;
  private double right = 1;

  private Graph(Plot plot) {
    this.plot = plot;
  }

  /**
   * A graph of the usual size.
   *
   * @param across what is along the lower axis, with its unit
   * @param up what is along the left axis, with its unit
   * @return the graph, without lines
   */
  public static Graph of(String across, String up) {
    return of(across, up, WIDTH, HEIGHT);
  }

  /**
   * A graph.
   *
   * @param across what is along the lower axis, with its unit
   * @param up what is along the left axis, with its unit
   * @param width its width, in pixels
   * @param height its height, in pixels
   * @return the graph, without lines
   */
  public static Graph of(String across, String up, int width, int height) {
    return new Graph(Plot.of(width, height, across, up, up + " against " + across));
  }

  /**
   * Gives the ends of the lower axis.
   *
   * @param low its left end
   * @param high its right end, above the left
   * @return this graph
   */
  public Graph x(double low, double high) {
    plot.across(low, high, false);
    left = low;
    right = high;
    return this;
  }

  /**
   * Gives the ends of the left axis.
   *
   * @param low its lower end
   * @param high its upper end, above the lower
   * @return this graph
   */
  public Graph y(double low, double high) {
    plot.up(low, high, false);
    return this;
  }

  /**
   * Gives the ends of the lower axis and makes it logarithmic.
   *
   * @param low its left end, positive
   * @param high its right end, above the left
   * @return this graph
   */
  public Graph logarithmicX(double low, double high) {
    plot.across(low, high, true);
    return this;
  }

  /**
   * Gives the ends of the left axis and makes it logarithmic.
   *
   * @param low its lower end, positive
   * @param high its upper end, above the lower
   * @return this graph
   */
  public Graph logarithmicY(double low, double high) {
    plot.up(low, high, true);
    return this;
  }

  /**
   * Shades a rectangle. What is drawn later lies over it.
   *
   * @param left its left edge
   * @param right its right edge
   * @param low its lower edge
   * @param high its upper edge
   * @param grey how light, from 0, black, to 255, white
   * @return this graph
   */
  public Graph shade(double left, double right, double low, double high, int grey) {
    double[] atX = {left, right, right, left};
    double[] atY = {low, low, high, high};
    plot.area(Points.of(atX, atY), new Color(grey, grey, grey));
    return this;
  }

  /**
   * Draws a line that the legend names. Points that are far apart want {@link #marked}: dashes bend
   * between them.
   *
   * @param name its name
   * @param pen how it is drawn
   * @param atX where its points lie along the lower axis
   * @param atY where they lie along the left axis
   * @return this graph
   */
  public Graph line(String name, Pen pen, double[] atX, double[] atY) {
    entries.add(new Legend.Entry(name, pen, true, false));
    return line(pen, atX, atY);
  }

  /**
   * Draws a line that the legend does not name.
   *
   * @param pen how it is drawn
   * @param atX where its points lie along the lower axis
   * @param atY where they lie along the left axis
   * @return this graph
   */
  public Graph line(Pen pen, double[] atX, double[] atY) {
    plot.line(Points.of(atX, atY), pen, false);
    return this;
  }

  /**
   * Draws a line with a mark at each of its points. The legend names it.
   *
   * @param name its name
   * @param pen how it is drawn
   * @param atX where its points lie along the lower axis
   * @param atY where they lie along the left axis
   * @return this graph
   */
  public Graph marked(String name, Pen pen, double[] atX, double[] atY) {
    entries.add(new Legend.Entry(name, pen, true, true));
    plot.line(Points.of(atX, atY), pen, true);
    return this;
  }

  /**
   * Draws a function as a line that the legend names.
   *
   * @param name its name
   * @param pen how it is drawn
   * @param from where it begins
   * @param to where it ends
   * @param function the function; finite from end to end
   * @return this graph
   */
  public Graph curve(String name, Pen pen, double from, double to, DoubleUnaryOperator function) {
    entries.add(new Legend.Entry(name, pen, true, false));
    return curve(pen, from, to, function);
  }

  /**
   * Draws a function of the lower axis from its left end to its right, as {@link #x} gave them.
   *
   * @param name what it is, for the legend
   * @param pen how it looks
   * @param function the function
   * @return this graph
   */
  public Graph curve(String name, Pen pen, DoubleUnaryOperator function) {
    return curve(name, pen, left, right, function);
  }

  /**
   * Draws a function as a line that the legend does not name.
   *
   * @param pen how it is drawn
   * @param from where it begins
   * @param to where it ends
   * @param function the function; finite from end to end
   * @return this graph
   */
  public Graph curve(Pen pen, double from, double to, DoubleUnaryOperator function) {
    plot.line(Points.along(from, to, function), pen, false);
    return this;
  }

  /**
   * Draws marks that the legend names.
   *
   * @param name what they are
   * @param pen their colour and shape
   * @param atX where they lie along the lower axis
   * @param atY where they lie along the left axis
   * @return this graph
   */
  public Graph points(String name, Pen pen, double[] atX, double[] atY) {
    entries.add(new Legend.Entry(name, pen, false, true));
    plot.marks(Points.of(atX, atY), pen.marker(), pen.color());
    return this;
  }

  /**
   * Writes a label.
   *
   * @param text the label
   * @param atX where its middle stands
   * @param atY where its middle stands
   * @return this graph
   */
  public Graph label(String text, double atX, double atY) {
    plot.label(text, atX, atY);
    return this;
  }

  /**
   * What is drawn, without the legend.
   *
   * @return the picture
   */
  public Picture picture() {
    return plot;
  }

  /**
   * What the lines and marks mean, in the order in which they were drawn.
   *
   * @return a picture as wide as the graph
   */
  public Legend legend() {
    return new Legend(plot.width(), entries);
  }
}
