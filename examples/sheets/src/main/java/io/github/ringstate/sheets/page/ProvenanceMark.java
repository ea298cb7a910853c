package io.github.ringstate.sheets.page;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;

import io.github.ringstate.files.provenance.ProvenanceJson;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.CRC32;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * Where a sheet or picture keeps its provenance: HTML as a script of data, SVG as metadata, PNG as
 * an international text chunk (PNG specification, iTXt), PDF as a field of the document's
 * information.
 */
public final class ProvenanceMark {

  private static final Pattern HTML =
      Pattern.compile(
          "<script type=\"application/json\" id=\"provenance\">(.*?)</script>", Pattern.DOTALL);
  private static final Pattern SVG =
      Pattern.compile("<metadata id=\"provenance\">(.*?)</metadata>", Pattern.DOTALL);

  /** The signature of a PNG and its first chunk, which has a fixed length. */
  private static final int BEHIND_HEADER = 8 + 25;

  private static final String TEXT_CHUNK = "iTXt";

  private ProvenanceMark() {}

  /** A page with its provenance at the end of its head. */
  static String intoHtml(String page, String json) {
    int head = page.indexOf("</head>");
    return head < 0
        ? page
        : page.substring(0, head)
            + "<script type=\"application/json\" id=\"provenance\">"
            + json.replace("<", "\\u003c")
            + "</script>\n"
            + page.substring(head);
  }

  /** A drawing with its provenance as its first part. */
  static String intoSvg(String drawing, String json) {
    int open = drawing.indexOf('>') + 1;
    return drawing.substring(0, open)
        + "<metadata id=\"provenance\">"
        + json.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")
        + "</metadata>"
        + drawing.substring(open);
  }

  /** A picture with its provenance as a chunk behind the first. */
  static byte[] intoPng(byte[] png, String json) {
    ByteArrayOutputStream data = new ByteArrayOutputStream();
    data.writeBytes(TEXT_CHUNK.getBytes(ISO_8859_1));
    data.writeBytes(ProvenanceJson.NAME.getBytes(ISO_8859_1));
    data.writeBytes(
        new byte[5]); // end of keyword, not compressed, method, no language, no translation
    data.writeBytes(json.getBytes(UTF_8));
    byte[] chunk = data.toByteArray();
    CRC32 crc = new CRC32();
    crc.update(chunk);
    ByteArrayOutputStream out = new ByteArrayOutputStream(png.length + chunk.length + 8);
    out.write(png, 0, BEHIND_HEADER);
    out.writeBytes(ByteBuffer.allocate(4).putInt(chunk.length - TEXT_CHUNK.length()).array());
    out.writeBytes(chunk);
    out.writeBytes(ByteBuffer.allocate(4).putInt((int) crc.getValue()).array());
    out.write(png, BEHIND_HEADER, png.length - BEHIND_HEADER);
    return out.toByteArray();
  }

  /**
   * The provenance in a page or drawing.
   *
   * @param markup HTML or SVG
   * @return a JSON object; empty if there is none
   */
  public static Optional<String> inMarkup(String markup) {
    Matcher html = HTML.matcher(markup);
    if (html.find()) {
      return Optional.of(html.group(1));
    }
    Matcher svg = SVG.matcher(markup);
    return svg.find()
        ? Optional.of(svg.group(1).replace("&gt;", ">").replace("&lt;", "<").replace("&amp;", "&"))
        : Optional.empty();
  }

  /**
   * The provenance in a picture.
   *
   * @param png the content of a PNG file
   * @return a JSON object; empty if there is none
   */
  public static Optional<String> inPng(byte[] png) {
    String start = TEXT_CHUNK + ProvenanceJson.NAME + "\0\0\0\0\0";
    ByteBuffer buffer = ByteBuffer.wrap(png);
    int at = 8;
    while (at + 8 <= png.length) {
      int length = buffer.getInt(at);
      if (length < 0 || length > png.length - at - 12) {
        return Optional.empty();
      }
      String chunk = new String(png, at + 4, length + 4, UTF_8);
      if (chunk.startsWith(start)) {
        return Optional.of(chunk.substring(start.length()));
      }
      at += length + 12;
    }
    return Optional.empty();
  }

  /**
   * The provenance in a document.
   *
   * @param pdf the content of a PDF file
   * @return a JSON object; empty if there is none
   * @throws IOException if the content is no PDF
   */
  public static Optional<String> inPdf(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return Optional.ofNullable(
          document.getDocumentInformation().getCustomMetadataValue(ProvenanceJson.NAME));
    }
  }
}
