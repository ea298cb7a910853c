package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** The sheets against PDF/UA-1 (ISO 14289-1), as far as a machine can tell (veraPDF). */
class PdfAccessibilityTest {

  @BeforeAll
  static void validator() {
    VeraGreenfieldFoundryProvider.initialise();
  }

  private static List<String> complaints(byte[] pdf) throws Exception {
    try (PDFAParser parser =
            Foundries.defaultInstance()
                .createParser(new ByteArrayInputStream(pdf), PDFAFlavour.PDFUA_1);
        PDFAValidator validator =
            Foundries.defaultInstance().createValidator(PDFAFlavour.PDFUA_1, false)) {
      return validator.validate(parser).getTestAssertions().stream()
          .map(broken -> broken.getRuleId().getClause() + " " + broken.getMessage())
          .distinct()
          .toList();
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "loss --pilots 4 --delays 0,3.0 --height-ft 100 --format pdf",
        "loss --pilots 4 --delays 0 --mass-kg 520,600 --pressure-altitude-ft 0,3000 --units si"
            + " --paper letter --format pdf",
        "loss --pilots 20 --state startled --format pdf",
        "floor --pilots 20 --height-ft 300 --format pdf",
        "card --pilots 20 --format pdf",
        "lesson --pilots 20 --format pdf",
        "runs --wind-from-deg 240 --wind-kt 12 --pilots 20 --recovery lateral --format pdf"
      })
  void aSheetIsAccessible(String command) throws Exception {
    assertEquals(List.of(), complaints(Documents.of(command.split(" ", -1))));
  }

  @Test
  void theValidatorSeesWhatIsMissing() throws Exception {
    byte[] sheet = Documents.of("loss", "--pilots", "4", "--delays", "0", "--format", "pdf");
    ByteArrayOutputStream spoilt = new ByteArrayOutputStream();
    try (PDDocument document = Loader.loadPDF(sheet)) {
      document.getDocumentCatalog().setLanguage(null);
      document.getDocumentCatalog().setMarkInfo(null);
      document.save(spoilt);
    }
    assertFalse(complaints(spoilt.toByteArray()).isEmpty());
  }
}
