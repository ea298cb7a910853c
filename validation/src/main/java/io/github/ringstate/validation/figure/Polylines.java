package io.github.ringstate.validation.figure;

import java.util.ArrayList;
import java.util.List;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Joins line after line into one line. The chart is drawn segment by segment, and a dash pattern
 * begins anew with each; only along a whole line does it show.
 */
final class Polylines {

  private static final List<String> ENDS = List.of("x1", "y1", "x2", "y2");

  private Polylines() {}

  /** Joins the segments in an element and in all that it holds. */
  static void join(Element parent) {
    List<Element> chain = new ArrayList<>();
    for (Node node : children(parent)) {
      if (node instanceof Element element && element.getTagName().equals("line")) {
        if (!chain.isEmpty() && !follows(chain.get(chain.size() - 1), element)) {
          replace(parent, chain);
        }
        chain.add(element);
      } else {
        replace(parent, chain);
        if (node instanceof Element element) {
          join(element);
        }
      }
    }
    replace(parent, chain);
  }

  private static List<Node> children(Element parent) {
    List<Node> children = new ArrayList<>();
    for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
      children.add(node);
    }
    return children;
  }

  private static boolean follows(Element before, Element after) {
    return before.getAttribute("x2").equals(after.getAttribute("x1"))
        && before.getAttribute("y2").equals(after.getAttribute("y1"))
        && before.getAttribute("clip-path").equals(after.getAttribute("clip-path"));
  }

  private static void replace(Element parent, List<Element> chain) {
    if (chain.size() > 1) {
      Element first = chain.get(0);
      Element joined =
          parent.getOwnerDocument().createElementNS(first.getNamespaceURI(), "polyline");
      for (int i = 0; i < first.getAttributes().getLength(); i++) {
        Node attribute = first.getAttributes().item(i);
        if (!ENDS.contains(attribute.getNodeName())) {
          joined.setAttribute(attribute.getNodeName(), attribute.getNodeValue());
        }
      }
      StringBuilder points = new StringBuilder(point(first, "x1", "y1"));
      for (Element line : chain) {
        points.append(' ').append(point(line, "x2", "y2"));
      }
      joined.setAttribute("points", points.toString());
      parent.insertBefore(joined, first);
      chain.forEach(parent::removeChild);
    }
    chain.clear();
  }

  private static String point(Element line, String x, String y) {
    return line.getAttribute(x) + "," + line.getAttribute(y);
  }
}
