package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.files.text.Caution;
import io.github.ringstate.study.ModelRevision;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PdfTest {

  private static String text(PDDocument document) throws IOException {
    return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // A4 is 210 x 297 mm (ISO 216), letter 8.5 x 11 in; a point is 1/72 in
        "loss --pilots 8 --height-ft 300 --format pdf|2|595.3|841.9",
        "loss --pilots 8 --state distracted --format pdf|2|595.3|841.9",
        "loss --pilots 8 --delays 0,1,2,3,4,6 --mass-kg 520,600 --pressure-altitude-ft 0,4000 --height-ft 300"
            + " --paper letter --format pdf|3|612|792",
        // the answer on the front, the words on the back
        "floor --pilots 8 --height-ft 300 --format pdf|2|595.3|841.9",
        "floor --pilots 8 --state distracted --units si --paper letter --format pdf|2|612|792",
        // A6 is 105 x 148 mm (ISO 216), whatever the paper of other sheets
        "card --pilots 8 --format pdf|2|297.6|419.5",
        "card --pilots 8 --craft heavy --recovery autorotation --units si --paper letter --abort-height-ft 50"
            + " --format pdf|2|297.6|419.5",
        "lesson --pilots 8 --recovery forward --format pdf|2|595.3|841.9",
        // the second condition on the back
        "floor --pilots 8 --mass-kg 550 --compare 50,10,1 --format pdf|2|595.3|841.9",
        "floor --pilots 8 --mass-kg 550 --compare 50,10,1 --paper letter --format pdf|2|612|792",
        "runs --wind-from-deg 200 --wind-kt 12 --gust-kt 18 --pilots 8 --mass-kg 550 --compare 50,10,1"
            + " --paper letter --format pdf|2|792|612",
        // one page, lying on its longer side, whatever is to be said
        "runs --wind-from-deg 240 --wind-kt 12 --pilots 8 --format pdf|1|841.9|595.3",
        "runs --wind-from-deg 240 --pilots 8 --recovery autorotation --craft heavy --mass-kg 9600 --oat-c 25"
            + " --pressure-altitude-ft 9000 --wind-kt 20 --units si --format pdf|1|841.9|595.3",
        "runs --wind-from-deg 240 --wind-kt 12 --pilots 8 --craft heavy --mass-kg 9600 --oat-c 25"
            + " --pressure-altitude-ft 9000 --paper letter --format pdf|1|792|612",
        "runs --wind-from-deg 240 --wind-kt 12 --pilots 8 --craft utility --units si --gust-kt 30 --paper letter --format pdf|1|792|612"
      })
  void theSheetFillsNoMorePaperThanItShouldAndIsTaggedAndReadable(
      String command, int pages, double width, double height) throws IOException {
    try (PDDocument document = Loader.loadPDF(Documents.shared(command.split(" ", -1)))) {
      assertEquals(pages, document.getNumberOfPages());
      assertEquals(width, document.getPage(0).getMediaBox().getWidth(), 1);
      assertEquals(height, document.getPage(0).getMediaBox().getHeight(), 1.5);
      assertTrue(document.getDocumentCatalog().getMarkInfo().isMarked());
      assertTrue(document.getDocumentCatalog().getStructureTreeRoot() != null);
      assertEquals("en", document.getDocumentCatalog().getLanguage());
      assertTrue(!document.getDocumentInformation().getTitle().isBlank());
      assertTrue(text(document).contains(Caution.TEXT), text(document));
      assertTrue(
          text(document)
              .contains(
                  "model revision "
                      + ModelRevision.current()
                      + ": prints of any other revision are void"),
          text(document));
      for (PDPage page : document.getPages()) {
        assertLettersAreEmbedded(page.getResources());
      }
      PrintedLetters.assertLegible(document);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "loss --pilots 8 --mass-kg 420,520,600 --pressure-altitude-ft 0,4000 --format pdf",
        "loss --pilots 8 --mass-kg 420,480,520,600 --pressure-altitude-ft 0,2000,4000"
            + " --paper letter --format pdf",
        "loss --pilots 4 --delays 0,1,2,3,4,5,6,7,8,9,10,11,12,13,14,15,16,17,18,19,20,21,22,23"
            + " --format pdf"
      })
  void ofALongSheetEveryPageHasTheWholeCautionAndItsNumber(String command) throws IOException {
    try (PDDocument document = Loader.loadPDF(Documents.shared(command.split(" ", -1)))) {
      int pages = document.getNumberOfPages();
      assertTrue(pages >= 2 && pages <= 4, pages + " pages");
      PDFTextStripper page = new PDFTextStripper();
      for (int i = 1; i <= pages; i++) {
        page.setStartPage(i);
        page.setEndPage(i);
        String text = page.getText(document).replaceAll("\\s+", " ");
        assertTrue(text.contains(Caution.TEXT + " Page " + i + " of " + pages + "."), text);
        // the frame around the caution is not torn by the end of a page
        assertEquals(i == pages, text.contains("CAUTION. " + Caution.TEXT), text);
        assertEquals(i == pages, text.contains("No number says that a height is safe"), text);
        assertLettersAreEmbedded(document.getPage(i - 1).getResources());
      }
    }
  }

  private static void assertLettersAreEmbedded(PDResources resources) throws IOException {
    for (COSName name : resources.getFontNames()) {
      PDFont font = resources.getFont(name);
      assertTrue(font.isEmbedded(), font.getName());
      assertTrue(font.getName().contains("SourceSans3"), font.getName());
    }
  }

  @Test
  void whatStandsAlongTheAxesCanBeSearchedAndCopied() throws IOException {
    try (PDDocument document = Loader.loadPDF(Documents.shared(split(ONE)))) {
      String text = text(document);
      for (String title :
          List.of(
              "altitude loss, ft", "delay, s", "height from onset, ft", "time since onset, s")) {
        // an upright title comes out of this reader in pieces, a few letters to a line
        assertTrue(bare(text).contains(bare(title)), title + " is not in " + text);
      }
      // numbers along an axis, in the order in which they are drawn
      assertTrue(text.contains(" 0 0.5 1 1.5 2 "), text);
    }
  }

  @Test
  void whatStandsAlongTheAxesIsTextInHtmlAndSvgToo() {
    String page = Documents.text(ONE.replace("pdf", "html"));
    String picture = Documents.text("boundary --format svg");
    for (String title : List.of("altitude loss, ft", "delay, s", "0", "1", "2")) {
      assertTrue(page.contains(">" + title + "</text"), title);
    }
    assertTrue(picture.contains("@font-face") && picture.contains("base64,"), "letters");
    for (String title : List.of("edgewise airspeed, kt", "-1000", "10")) {
      assertTrue(picture.contains(">" + title + "</text"), title);
    }
  }

  private static String bare(String text) {
    return text.replaceAll("\\s", "");
  }

  private static String[] split(String command) {
    return command.split(" ", -1);
  }

  private static final String ONE =
      "loss --pilots 4 --delays 0,2.0 --recovery forward --format pdf";

  @ParameterizedTest
  @CsvSource({"Привет Ελλάδα Łódź, false", "\u76f4\u5347\u673a, true"})
  void aSheetSaysThatItsTypefaceLacksALetterWhereItDoes(
      String typed, boolean lacks, @TempDir Path folder) throws IOException {
    Path craft = Documents.described(typed, folder.resolve("odd.toml"));
    String command = "loss --pilots 4 --delays 0 --format pdf --craft " + craft;
    try (PDDocument document = Loader.loadPDF(Documents.of(split(command)))) {
      String text = text(document);
      assertEquals(!lacks, text.contains("trainer: " + typed), text);
      assertEquals(lacks, text.contains("# stands for a letter that the typeface lacks."), text);
    }
  }

  @Test
  void whatUsersTypedIsPrintedAsTyped(@TempDir Path folder) throws IOException {
    String typed = "Ünicode <b>&amp; </td> it's";
    Path craft = Documents.described(typed, folder.resolve("odd.toml"));
    String command = "loss --pilots 4 --delays 0 --format pdf --craft " + craft;
    try (PDDocument document = Loader.loadPDF(Documents.of(split(command)))) {
      assertTrue(text(document).contains("trainer: " + typed), text(document));
    }
  }
}
