package io.github.ringstate.validation.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.HashSet;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class SvgDrawingTest {

  private static final double[] XS = {0, 1, 2, 3};
  private static final double[] YS = {0, 3, 5, 4};

  private static Figure figure(String id) {
    return new Figure(
        id,
        "Rate of descent < time",
        "An invented line & its points",
        () ->
            Plot.of("time, s", "rate, ft/min", 640, 400)
                .line("invented", Line.DASHED, XS, YS)
                .points("points", Mark.CIRCLE, XS, YS));
  }

  private static Element parsed(String svg) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    return factory
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(svg)))
        .getDocumentElement();
  }

  @Test
  void aFigureBecomesAnSvgElementOfItsSizeThatSaysWhatItShows() throws Exception {
    String svg = SvgDrawing.of(figure("one")).svg();

    Element root = parsed(svg);
    assertEquals("svg", root.getLocalName());
    assertEquals("http://www.w3.org/2000/svg", root.getNamespaceURI());
    assertEquals("0 0 640 400", root.getAttribute("viewBox"));
    assertEquals("one-title one-desc", root.getAttribute("aria-labelledby"));
    assertEquals("Rate of descent < time", root.getFirstChild().getTextContent());
    assertFalse(svg.startsWith("<?xml"), "it stands within a page");
  }

  @Test
  void aDashedLineIsOneLineSoThatItsDashesShow() throws Exception {
    NodeList lines = parsed(SvgDrawing.of(figure("one")).svg()).getElementsByTagName("polyline");

    assertEquals(1, lines.getLength());
    String points = ((Element) lines.item(0)).getAttribute("points");
    assertEquals(XS.length, points.trim().split(" +", -1).length);
  }

  @Test
  void twoFiguresOnOnePageShareNoIds() throws Exception {
    Set<String> ids = new HashSet<>();
    int count = 0;
    for (String id : new String[] {"one", "two"}) {
      NodeList all = parsed(SvgDrawing.of(figure(id)).svg()).getElementsByTagName("*");
      for (int i = 0; i < all.getLength(); i++) {
        String found = ((Element) all.item(i)).getAttribute("id");
        if (!found.isEmpty() && !found.equals("genericDefs")) {
          ids.add(found);
          count++;
        }
      }
    }
    assertTrue(count > 4, "the test has ids to look at");
    assertEquals(count, ids.size());
  }

  @Test
  void theLegendShowsEachLineAsItIsDrawn() {
    Drawing drawing = SvgDrawing.of(figure("one"));

    assertEquals("invented", drawing.keys().get(0).name());
    assertTrue(drawing.keys().get(0).sample().contains("stroke-dasharray"));
    assertTrue(drawing.keys().get(1).sample().contains("<circle"));
  }
}
