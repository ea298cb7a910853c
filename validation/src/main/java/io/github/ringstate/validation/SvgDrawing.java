package io.github.ringstate.validation;

import java.awt.Dimension;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGraphics2D;
import org.knowm.xchart.XYChart;
import org.w3c.dom.Document;

/** A chart as a drawing in Scalable Vector Graphics. */
public final class SvgDrawing {

  private SvgDrawing() {}

  /**
   * Draws a chart at its own size.
   *
   * @param chart the chart
   * @return the document
   */
  public static String of(XYChart chart) {
    SVGGraphics2D graphics = new SVGGraphics2D(emptyDocument());
    graphics.setSVGCanvasSize(new Dimension(chart.getWidth(), chart.getHeight()));
    chart.paint(graphics, chart.getWidth(), chart.getHeight());
    StringWriter drawing = new StringWriter();
    try {
      graphics.stream(drawing, true);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write to memory", e);
    }
    return drawing.toString();
  }

  private static Document emptyDocument() {
    try {
      return DocumentBuilderFactory.newDefaultInstance()
          .newDocumentBuilder()
          .getDOMImplementation()
          .createDocument("http://www.w3.org/2000/svg", "svg", null);
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException("the Java platform's own XML parser cannot be set up", e);
    }
  }
}
