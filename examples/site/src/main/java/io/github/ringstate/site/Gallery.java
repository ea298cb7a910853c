package io.github.ringstate.site;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;

/** The sheets of the gallery, each made by the tool that is built. */
final class Gallery {

  /** Dots per inch of the small pictures. */
  private static final float SMALL = 70;

  private Gallery() {}

  /**
   * Makes the sheets, and a picture of each first page.
   *
   * @param jar the tool
   * @param folder where to put them, made if missing
   * @throws IOException if one cannot be made
   * @throws InterruptedException if this thread is told to stop
   */
  static void make(Path jar, Path folder) throws IOException, InterruptedException {
    Files.createDirectories(folder);
    for (Exhibit exhibit : Exhibit.ALL) {
      fly(jar, folder, exhibit);
      if (exhibit.format().equals("pdf")) {
        Path sheet = folder.resolve(exhibit.file());
        try (PDDocument document = Loader.loadPDF(sheet.toFile())) {
          ImageIO.write(
              new PDFRenderer(document).renderImageWithDPI(0, SMALL),
              "png",
              folder.resolve(exhibit.picture()).toFile());
        }
      }
    }
  }

  private static void fly(Path jar, Path folder, Exhibit exhibit)
      throws IOException, InterruptedException {
    String java = ProcessHandle.current().info().command().orElse("java");
    List<String> command =
        Stream.concat(
                Stream.of(java, "-jar", jar.toAbsolutePath().toString()),
                exhibit.arguments().stream())
            .toList();
    int status =
        new ProcessBuilder(command).directory(folder.toFile()).inheritIO().start().waitFor();
    if (status != 0) {
      throw new IOException(exhibit.command() + " ended with the exit status " + status);
    }
  }
}
