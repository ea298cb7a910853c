package io.github.ringstate.sheets.page;

import io.github.ringstate.files.report.Report;
import io.github.ringstate.files.report.ReportWriter;
import io.github.ringstate.sheets.page.Pictured.Picture;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import javax.imageio.ImageIO;

/**
 * Writes a picture in dots, fine enough for a projector.
 *
 * @param settings units
 * @param provenance where the file comes from, as JSON; empty for none
 */
public record PngWriter(PageSettings settings, String provenance) implements ReportWriter {

  private static final int DOTS = 2;

  @Override
  public void write(Report report, OutputStream out) throws IOException {
    Picture picture = ((Pictured) report).picture(settings);
    BufferedImage image =
        new BufferedImage(
            DOTS * picture.width(), DOTS * picture.height(), BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    graphics.scale(DOTS, DOTS);
    picture.paint(graphics);
    graphics.dispose();
    ImageIO.setUseCache(false);
    ByteArrayOutputStream png = new ByteArrayOutputStream();
    ImageIO.write(image, "png", png);
    out.write(
        provenance.isEmpty()
            ? png.toByteArray()
            : ProvenanceMark.intoPng(png.toByteArray(), provenance));
    out.flush();
  }
}
