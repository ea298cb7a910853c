package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.instructor.report.Caution;
import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
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
        "loss --pilots 20 --height-ft 300 --format pdf|1|595.3|841.9",
        "loss --pilots 20 --delays 0,1,2,3,4,6 --mass-kg 520,600 --pressure-altitude-ft 0,4000 --height-ft 300"
            + " --paper letter --format pdf|1|612|792",
        "runs --pilots 20 --technique lateral --format pdf|2|595.3|841.9",
        "runs --pilots 20 --technique lateral --craft utility --units si --paper letter --format pdf|2|612|792"
      })
  void theSheetFillsNoMorePaperThanItShouldAndIsTaggedAndReadable(
      String command, int pages, double width, double height) throws IOException {
    try (PDDocument document = Loader.loadPDF(Documents.of(command.split(" ", -1)))) {
      assertEquals(pages, document.getNumberOfPages());
      assertEquals(width, document.getPage(0).getMediaBox().getWidth(), 1);
      assertEquals(height, document.getPage(0).getMediaBox().getHeight(), 1.5);
      assertTrue(document.getDocumentCatalog().getMarkInfo().isMarked());
      assertTrue(document.getDocumentCatalog().getStructureTreeRoot() != null);
      assertEquals("en", document.getDocumentCatalog().getLanguage());
      assertTrue(!document.getDocumentInformation().getTitle().isBlank());
      assertTrue(text(document).contains(Caution.TEXT), text(document));
      for (PDPage page : document.getPages()) {
        assertLettersAreEmbedded(page.getResources());
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
}
