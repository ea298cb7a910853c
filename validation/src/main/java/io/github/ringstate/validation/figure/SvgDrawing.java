package io.github.ringstate.validation.figure;

import java.awt.Dimension;
import java.io.StringWriter;
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
import org.apache.batik.svggen.SVGIDGenerator;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * A plot as an element of Scalable Vector Graphics that can stand in a page among others: its ids
 * carry the figure's, and it has a title and a description.
 *
 * <p>The tool draws for itself in much the same way: neither it nor this module may depend on the
 * other, the library does not draw, and what they share is too little for a module of its own.
 */
public final class SvgDrawing {

  private static final String SVG = "http://www.w3.org/2000/svg";

  private SvgDrawing() {}

  /**
   * Draws a figure at its plot's own size.
   *
   * @param figure the figure
   * @return the drawing
   */
  public static Drawing of(Figure figure) {
    Plot plot = figure.plot().get();
    int width = plot.chart().getWidth();
    int height = plot.chart().getHeight();
    Document document = emptyDocument();
    SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
    context.setIDGenerator(new PrefixedIds(figure.id()));
    context.setComment(null);
    context.setPrecision(2);
    SVGGraphics2D graphics = new SVGGraphics2D(context, false);
    graphics.setSVGCanvasSize(new Dimension(width, height));
    plot.chart().paint(graphics, width, height);
    Element root = graphics.getRoot();
    Polylines.join(root);
    root.setAttribute("viewBox", "0 0 " + width + " " + height);
    root.setAttribute("role", "img");
    root.setAttribute("aria-labelledby", figure.id() + "-title " + figure.id() + "-desc");
    Element description = text(document, "desc", figure.id() + "-desc", figure.caption());
    Element title = text(document, "title", figure.id() + "-title", figure.title());
    root.insertBefore(description, root.getFirstChild());
    root.insertBefore(title, description);
    return new Drawing(written(root), plot.keys());
  }

  private static Element text(Document document, String name, String id, String content) {
    Element element = document.createElementNS(SVG, name);
    element.setAttribute("id", id);
    element.setTextContent(content);
    return element;
  }

  private static String written(Element root) {
    try {
      Transformer transformer = TransformerFactory.newDefaultInstance().newTransformer();
      transformer.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, "yes");
      StringWriter drawing = new StringWriter();
      transformer.transform(new DOMSource(root), new StreamResult(drawing));
      return drawing.toString();
    } catch (TransformerException e) {
      throw new IllegalStateException("the drawing cannot be written to memory", e);
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

  private static final class PrefixedIds extends SVGIDGenerator {

    private final String stem;

    PrefixedIds(String stem) {
      this.stem = stem;
    }

    @Override
    public String generateID(String prefix) {
      return stem + "-" + super.generateID(prefix);
    }
  }
}
