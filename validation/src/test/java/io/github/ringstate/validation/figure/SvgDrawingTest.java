package io.github.ringstate.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.io.StringReader;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

class SvgDrawingTest {

  @Test
  void aChartBecomesAnSvgDocumentOfItsSizeThatHoldsItsLine() throws Exception {
    XYChart chart =
        new XYChartBuilder().width(640).height(400).title("Descent rate against time").build();
    chart
        .addSeries("invented", new double[] {0, 1, 2}, new double[] {0, 3, 5})
        .setLineColor(new Color(18, 52, 86));

    String drawing = SvgDrawing.of(chart);

    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    DocumentBuilder builder = factory.newDocumentBuilder();
    builder.setEntityResolver((publicId, systemId) -> new InputSource(new StringReader("")));
    Element root = builder.parse(new InputSource(new StringReader(drawing))).getDocumentElement();

    assertEquals("svg", root.getLocalName());
    assertEquals("http://www.w3.org/2000/svg", root.getNamespaceURI());
    assertEquals("640", root.getAttribute("width"));
    assertEquals("400", root.getAttribute("height"));
    assertTrue(drawing.contains("stroke:rgb(18,52,86)"), drawing);
  }
}
