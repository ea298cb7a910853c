package io.github.ringstate.sheets.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.sheets.page.SvgDrawing;
import java.io.StringReader;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class GraphTest {

  private static final double[] XS = {0, 1, 2, 3};
  private static final double[] YS = {0, 3, 5, 4};

  private static Graph graph() {
    return Graph.of("time < 3, s", "rate & more, ft/min", 640, 400)
        .x(0, 3)
        .y(0, 6)
        .shade(1, 2, 0, 6, 230)
        .line("invented", Pen.of(1), XS, YS)
        .points("points", Pen.of(0), XS, YS);
  }

  private static Element parsed(String svg) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    return factory
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(svg)))
        .getDocumentElement();
  }

  private static List<Element> all(String svg) throws Exception {
    NodeList found = parsed(svg).getElementsByTagName("*");
    return IntStream.range(0, found.getLength()).mapToObj(i -> (Element) found.item(i)).toList();
  }

  @Test
  void aGraphBecomesADrawingOfItsSizeThatSaysWhatItShows() throws Exception {
    String svg = SvgDrawing.of(graph().picture(), "one-");

    Element root = parsed(svg);
    assertEquals("svg", root.getLocalName());
    assertEquals("0 0 640 400", root.getAttribute("viewBox"));
    assertEquals("rate & more, ft/min against time < 3, s", root.getAttribute("aria-label"));
    assertFalse(svg.startsWith("<?xml"), "it stands within a page");
  }

  private static boolean isBlue(Element part) {
    Element group = (Element) part.getParentNode();
    String own = part.getAttribute("stroke");
    return (own.isEmpty() ? group.getAttribute("stroke") : own).equals("rgb(11,79,138)");
  }

  @Test
  void aDashedLineIsOnePathSoThatItsDashesShow() throws Exception {
    List<Element> blue =
        all(SvgDrawing.of(graph().picture(), "one-")).stream().filter(GraphTest::isBlue).toList();

    assertEquals(1, blue.stream().filter(part -> part.getTagName().equals("path")).count());
    assertTrue(blue.stream().noneMatch(part -> part.getTagName().equals("line")));
  }

  @Test
  void twoDrawingsOnOnePageShareNoIds() throws Exception {
    Set<String> ids = new HashSet<>();
    int count = 0;
    for (String id : List.of("one-", "two-")) {
      for (Element element : all(SvgDrawing.of(graph().picture(), id))) {
        String found = element.getAttribute("id");
        if (!found.isEmpty()) {
          ids.add(found);
          count++;
        }
      }
    }
    assertTrue(count > 1, "the test has ids to look at");
    assertEquals(count, ids.size());
  }

  @Test
  void theLegendNamesLinesAndMarksInTurn() {
    List<Legend.Entry> entries = graph().legend().entries();

    assertEquals(List.of("invented", "points"), entries.stream().map(Legend.Entry::name).toList());
    assertTrue(entries.get(0).lined() && !entries.get(0).marked());
    assertTrue(entries.get(1).marked() && !entries.get(1).lined());
  }

  @Test
  void onALogarithmicAxisEqualRatiosAreEquallyLong() {
    Axis axis = Axis.decades(1e-6, 1e2);

    assertEquals(0, axis.share(1e-6), 1e-15);
    assertEquals(0.25, axis.share(1e-4), 1e-15);
    assertEquals(1, axis.share(1e2), 1e-15);
    assertEquals(
        List.of("1e-6", "1e-5", "1e-4", "0.001", "0.01", "0.1", "1", "10", "100"),
        axis.ticks().stream().map(axis::text).toList());
  }

  @Test
  void aTickAtTheVeryEndOfAnAxisIsThere() {
    // 13 times 0.1 is a little more than 1.3
    List<Double> ticks = Axis.exactly(0, 1.3, 13).ticks();

    assertEquals(14, ticks.size());
  }

  @Test
  void anAxisThatReachesNowhereIsRefused() {
    Graph graph = graph();
    assertThrows(IllegalArgumentException.class, () -> graph.x(1, 1));
    assertThrows(IllegalArgumentException.class, () -> graph.y(0, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> graph.logarithmicX(0, 1));
  }
}
