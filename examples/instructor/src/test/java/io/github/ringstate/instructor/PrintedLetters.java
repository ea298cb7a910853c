package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** How large letters are on paper, with the scale of the drawing in which they stand. */
final class PrintedLetters extends PDFTextStripper {

  /** Letters that are to be read at arm's length, points. */
  private static final double ARMS_LENGTH = 8;

  /** Letters of the note at the foot, which is not needed in the cockpit, points. */
  private static final double FOOT = 7;

  /** Sizes are written in a PDF with few digits. */
  private static final double ROUNDING = 0.02;

  private final StringBuilder small = new StringBuilder();
  private double smallest = Double.POSITIVE_INFINITY;
  private String smallestLetter = "";

  private PrintedLetters() {}

  @Override
  protected void processTextPosition(TextPosition letter) {
    if (letter.getUnicode().isBlank()) {
      return;
    }
    double size = letter.getTextMatrix().getScalingFactorY();
    if (size < smallest) {
      smallest = size;
      smallestLetter = letter.getUnicode();
    }
    if (!(size >= ARMS_LENGTH - ROUNDING)) {
      small.append(letter.getUnicode());
    }
  }

  /**
   * Holds a document to letters of 8 pt. The note at the foot, on where the sheet comes from, alone
   * may have 7 pt.
   */
  static void assertLegible(PDDocument document) throws IOException {
    PrintedLetters letters = new PrintedLetters();
    letters.getText(document);
    assertTrue(
        letters.smallest >= FOOT - ROUNDING,
        () -> letters.smallest + " pt: " + letters.smallestLetter + " of " + letters.small);
    assertTrue(
        letters.small.toString().matches("(ringstate.*Nonumbersaysthataheightissafe\\.)?"),
        () -> "below " + ARMS_LENGTH + " pt: " + letters.small);
  }
}
