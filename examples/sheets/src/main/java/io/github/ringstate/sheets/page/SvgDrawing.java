package io.github.ringstate.sheets.page;

import io.github.ringstate.sheets.page.Pictured.Picture;
import java.awt.Dimension;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** A picture as a drawing in Scalable Vector Graphics, fit to stand in a page. */
public final class SvgDrawing {

  private static final String SVG = "http://www.w3.org/2000/svg";

  /** What Batik writes on the drawing as a whole that says nothing or that HTML does not know. */
  private static final List<String> NEEDLESS =
      List.of(
          "contentScriptType",
          "contentStyleType",
          "zoomAndPan",
          "version",
          "preserveAspectRatio",
          "color-interpolation",
          "color-rendering",
          "image-rendering",
          "shape-rendering",
          "text-rendering");

  private SvgDrawing() {}

  /**
   * Draws a picture at its own size.
   *
   * @param picture the picture
   * @param id tells the parts of this drawing from those of others on the page
   * @return an {@code svg} element
   */
  public static String of(Picture picture, String id) {
    Document document = emptyDocument();
    SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
    context.setComment(null);
    context.setPrecision(2);
    SVGGraphics2D graphics = new SVGGraphics2D(context, false);
    graphics.setSVGCanvasSize(new Dimension(picture.width(), picture.height()));
    picture.paint(graphics);
    Element root = graphics.getRoot();
    root.setAttribute("viewBox", "0 0 " + picture.width() + " " + picture.height());
    root.setAttribute("role", "img");
    root.setAttribute("aria-label", picture.description());
    root.setAttribute("font-family", SheetFont.FAMILY);
    // a title is read out and shown by the pointer; openhtmltopdf takes it for the PDF as well
    Element title = root.getOwnerDocument().createElementNS(SVG, "title");
    title.setTextContent(picture.description());
    root.insertBefore(title, root.getFirstChild());
    tidy(root, id);
    return serialised(root);
  }

  private static void tidy(Element element, String id) {
    NEEDLESS.forEach(element::removeAttribute);
    element.removeAttributeNS("http://www.w3.org/XML/1998/namespace", "space");
    element.removeAttribute("xml:space");
    if (element.hasAttribute("id")) {
      element.setAttribute("id", id + element.getAttribute("id"));
    }
    for (String reference : List.of("clip-path", "fill", "stroke")) {
      String value = element.getAttribute(reference);
      if (value.startsWith("url(#")) {
        element.setAttribute(reference, "url(#" + id + value.substring("url(#".length()));
      }
    }
    String family = element.getAttribute("font-family");
    if (family.contains(SheetFont.FAMILY)) {
      element.setAttribute("font-family", "'" + SheetFont.FAMILY + "', sans-serif");
    }
    List<Element> children = new ArrayList<>();
    for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Element inner) {
        children.add(inner);
      }
    }
    for (Element child : children) {
      tidy(child, id);
      if (child.getTagName().matches("defs|g") && !child.hasChildNodes()) {
        element.removeChild(child);
      }
    }
  }

  private static String serialised(Element root) {
    try {
      Transformer transformer = TransformerFactory.newDefaultInstance().newTransformer();
      transformer.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, "yes");
      StringWriter drawing = new StringWriter();
      transformer.transform(new DOMSource(root), new StreamResult(drawing));
      return drawing.toString();
    } catch (TransformerException failed) {
      throw new IllegalStateException("a drawing cannot be written down", failed);
    }
  }

  private static Document emptyDocument() {
    try {
      return DocumentBuilderFactory.newDefaultInstance()
          .newDocumentBuilder()
          .getDOMImplementation()
          .createDocument(SVG, "svg", null);
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException("the Java platform's own XML parser cannot be set up", e);
    }
  }
}
