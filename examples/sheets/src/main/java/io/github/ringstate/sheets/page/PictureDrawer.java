package io.github.ringstate.sheets.page;

import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.RenderingContext;
import com.samskivert.mustache.Escapers;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import io.github.ringstate.sheets.page.Pictured.Picture;
import java.awt.Font;
import java.awt.Graphics2D;
import java.io.File;
import java.io.IOException;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.w3c.dom.Element;

/**
 * Draws the pictures of a page straight into a PDF, where the page only holds their places. No
 * reader of drawings is needed, and letters drawn as letters stay text.
 */
final class PictureDrawer implements SVGDrawer {

  private final Map<String, Picture> pictures;
  private final Letters letters;

  PictureDrawer(Map<String, Picture> pictures, PDDocument document) {
    this.pictures = pictures;
    letters = new Letters(document);
  }

  /**
   * The place of a picture on a page.
   *
   * @param name the picture's name
   * @param picture the picture
   * @return an empty drawing of its size
   */
  static String place(String name, Picture picture) {
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" id=\""
        + name
        + "\" width=\""
        + picture.width()
        + "\" height=\""
        + picture.height()
        + "\" alt=\""
        + Escapers.HTML.escape(picture.description())
        + "\"></svg>";
  }

  @Override
  public SVGImage buildSVGImage(
      Element place,
      Box box,
      CssContext css,
      double cssWidth,
      double cssHeight,
      double dotsPerPixel) {
    Picture picture = pictures.get(place.getAttribute("id"));
    if (picture == null) {
      throw new IllegalStateException("the page has a place for a picture that there is not");
    }
    double scale = cssWidth > 0 ? cssWidth / (picture.width() * dotsPerPixel) : 1;
    return new Placed(picture, scale, dotsPerPixel);
  }

  private final class Placed implements SVGImage {

    private final Picture picture;
    private final double scale;
    private final double dotsPerPixel;

    Placed(Picture picture, double scale, double dotsPerPixel) {
      this.picture = picture;
      this.scale = scale;
      this.dotsPerPixel = dotsPerPixel;
    }

    @Override
    public int getIntrinsicWidth() {
      return (int) Math.round(picture.width() * scale * dotsPerPixel);
    }

    @Override
    public int getIntrinsicHeight() {
      return (int) Math.round(picture.height() * scale * dotsPerPixel);
    }

    @Override
    public void drawSVG(OutputDevice device, RenderingContext context, double x, double y) {
      device.drawWithGraphics(
          (float) x,
          (float) y,
          (float) (picture.width() * scale),
          (float) (picture.height() * scale),
          graphics -> paint(graphics));
    }

    private void paint(Graphics2D graphics) {
      if (graphics instanceof PdfBoxGraphics2D pdf) {
        pdf.setFontTextDrawer(letters);
      }
      graphics.scale(scale, scale);
      picture.paint(graphics);
    }
  }

  /** The typeface of the sheets, embedded in the document. */
  private static final class Letters extends PdfBoxGraphics2DFontTextDrawer {

    private final PDDocument document;
    private final Map<SheetFont, PDFont> fonts = new EnumMap<>(SheetFont.class);

    Letters(PDDocument document) {
      this.document = document;
    }

    @Override
    protected PDFont mapFont(Font font, IFontTextDrawerEnv environment) throws IOException {
      SheetFont wanted =
          font.getFontName().contains("SemiBold") ? SheetFont.SEMIBOLD : SheetFont.REGULAR;
      PDFont known = fonts.get(wanted);
      if (known == null) {
        TrueTypeFont parsed = new TTFParser().parse(new RandomAccessReadBuffer(wanted.bytes()));
        // a ligature, as of "ft", would be a glyph that stands for no letter: nobody could search
        // it
        parsed.setEnableGsub(false);
        known = PDType0Font.load(document, parsed, true);
        fonts.put(wanted, known);
      }
      return known;
    }

    @Override
    protected boolean hasDynamicFontMapping() {
      return true;
    }
  }

  @Override
  public void importFontFaceRules(List<FontFaceRule> rules, SharedContext context) {
    // pictures use the typeface of the sheets alone
  }

  @Override
  public void addFontFile(File file, String family, Integer weight, FontStyle style) {
    // as above
  }

  @Override
  public void close() {
    // the document closes its fonts
  }
}
