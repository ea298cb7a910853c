package io.github.ringstate.sheets.page;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * The typeface of the sheets: Source Sans 3, SIL Open Font License 1.1. It comes with the tool, so
 * that a chart is laid out alike on every machine and a PDF carries its letters.
 */
public enum SheetFont {
  /** For text. */
  REGULAR("SourceSans3-Regular.ttf", 400),
  /** For headings. */
  SEMIBOLD("SourceSans3-SemiBold.ttf", 600);

  /** What style sheets call it. */
  public static final String FAMILY = "Source Sans 3";

  private static final String TABLES =
      "head hhea hmtx maxp cmap loca glyf name post OS/2 cvt fpgm prep";

  private static final int NO_BREAK_SPACE = 0xA0;

  private final String file;
  private final int weight;

  SheetFont(String file, int weight) {
    this.file = file;
    this.weight = weight;
  }

  /**
   * Its weight.
   *
   * @return as style sheets count it
   */
  public int weight() {
    return weight;
  }

  /**
   * The whole font.
   *
   * @return the bytes of a TrueType file
   */
  public byte[] bytes() {
    try (InputStream in = SheetFont.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalStateException("the font " + file + " is missing from the tool");
      }
      return in.readAllBytes();
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  /**
   * The font for drawing.
   *
   * @param size its size, in pixels
   * @return the font
   */
  public Font sized(double size) {
    return Drawn.of(this).deriveFont((float) size);
  }

  /**
   * The fonts as the platform draws them, read once. Where the platform cannot, this class is not
   * initialized, an error of linkage by which the machine's lack is told from a fault of ours.
   */
  private static final class Drawn {

    private static final Font FOR_TEXT = drawn(REGULAR);
    private static final Font FOR_HEADINGS = drawn(SEMIBOLD);

    static Font of(SheetFont font) {
      return switch (font) {
        case REGULAR -> FOR_TEXT;
        case SEMIBOLD -> FOR_HEADINGS;
      };
    }

    private static Font drawn(SheetFont font) {
      try {
        return Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(font.bytes()));
      } catch (FontFormatException | IOException failed) {
        throw new IllegalStateException("the font " + font.file + " cannot be used", failed);
      }
    }
  }

  /**
   * Whether the font has no shape for some of the letters.
   *
   * @param text the text
   * @return true if some letter cannot be drawn
   */
  boolean lacksSome(String text) {
    int[] rare = text.codePoints().filter(c -> c > NO_BREAK_SPACE).distinct().toArray();
    if (rare.length == 0) {
      return false;
    }
    try (TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(bytes()))) {
      CmapLookup shapes = font.getUnicodeCmapLookup();
      return IntStream.of(rare).anyMatch(c -> shapes.getGlyphId(c) == 0);
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  /**
   * The letters of a text as style sheets take them in.
   *
   * @param text all the text of a page or picture
   * @return a rule for each weight
   */
  static String faces(String text) {
    StringBuilder faces = new StringBuilder();
    for (SheetFont font : values()) {
      faces
          .append("@font-face{font-family:\"")
          .append(FAMILY)
          .append("\";font-weight:")
          .append(font.weight())
          .append(";src:url(data:font/ttf;base64,")
          .append(font.subset(text))
          .append(")}\n");
    }
    return faces.toString();
  }

  /**
   * As much of the font as a page needs, to be part of that page.
   *
   * @param text all the text of the page
   * @return a TrueType file, base 64
   */
  String subset(String text) {
    try (TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(bytes()))) {
      TTFSubsetter subsetter = new TTFSubsetter(font, List.of(TABLES.split(" ", -1)));
      // a letter may stand in the text as an entity of HTML: the plain letters are always there
      IntStream.concat(IntStream.rangeClosed(' ', '~'), IntStream.of(NO_BREAK_SPACE))
          .forEach(subsetter::add);
      text.codePoints().filter(c -> c > NO_BREAK_SPACE).distinct().sorted().forEach(subsetter::add);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      subsetter.writeToStream(out);
      return Base64.getEncoder().encodeToString(out.toByteArray());
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }
}
