package io.github.ringstate.sheets.page;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import io.github.ringstate.files.provenance.ProvenanceJson;
import io.github.ringstate.files.report.Report;
import io.github.ringstate.files.report.ReportWriter;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.TimeZone;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * Prints the same page as {@link HtmlWriter} as PDF: tagged for screen readers (PDF/UA), letters
 * embedded, drawings in vectors.
 *
 * @param settings paper, units and date
 * @param provenance where the file comes from, as JSON; empty for none
 */
public record PdfWriter(PageSettings settings, String provenance) implements ReportWriter {

  private static final String PRODUCER = "ringstate";

  @Override
  public void write(Report report, OutputStream out) throws IOException {
    Page page = settings.dress(((Printable) report).page(settings));
    XRLog.setLoggingEnabled(false);
    PdfRendererBuilder builder = new PdfRendererBuilder();
    String filled = Template.fill(page, PictureDrawer::place);
    if (SheetFont.REGULAR.lacksSome(filled)) {
      filled = Template.fill(page.with(Template.LACKING, true), PictureDrawer::place);
    }
    builder.withHtmlContent(filled, null);
    builder.usePdfUaAccessibility(true);
    builder.withProducer(PRODUCER);
    for (SheetFont font : SheetFont.values()) {
      byte[] bytes = font.bytes();
      builder.useFont(
          () -> new ByteArrayInputStream(bytes),
          SheetFont.FAMILY,
          font.weight(),
          FontStyle.NORMAL,
          true);
    }
    try (PDDocument document = new PDDocument()) {
      builder.usePDDocument(document);
      builder.useSVGDrawer(new PictureDrawer(page.pictures(), document));
      try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
        renderer.createPDFWithoutClosing();
      }
      Calendar printed = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
      printed.setTimeInMillis(settings.date().instant().toEpochMilli());
      document.getDocumentInformation().setCreationDate(printed);
      document.getDocumentInformation().setModificationDate(printed);
      if (!provenance.isEmpty()) {
        document.getDocumentInformation().setCustomMetadataValue(ProvenanceJson.NAME, provenance);
      }
      document.setDocumentId(settings.date().instant().getEpochSecond());
      document.save(out);
    }
  }
}
