package io.github.ringstate.validation.report;

import io.github.ringstate.validation.catalogue.Catalogue;
import io.github.ringstate.validation.catalogue.Headline;
import io.github.ringstate.validation.catalogue.Models;
import io.github.ringstate.validation.check.Section;
import io.github.ringstate.validation.open.OpenStudy;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** Works the catalogue out and writes the report. */
public final class ValidationReport {

  private ValidationReport() {}

  /**
   * Writes the report and the pages beside it.
   *
   * @param sections the sections, worked out
   * @param models what the headline shows
   * @param folder where to put {@code index.html}, {@code losses.html} and {@code models.html}, and
   *     the files of their tables; made if missing
   * @throws IOException if a file cannot be written
   */
  public static void write(List<Section> sections, Models models, Path folder) throws IOException {
    Files.createDirectories(folder);
    LossPage losses = LossPage.fly();
    OpenStudy open = OpenStudy.run();
    Map<String, String> files =
        Map.of(
            "index.html", ReportPage.of(Headline.figures(models), sections),
            "summary.csv", SummaryCsv.of(sections),
            "losses.html", losses.html(),
            "losses.csv", losses.csv(),
            "models.html", new ModelsPage(open).html(),
            "ranges.csv", ModelsCsv.ranges(open),
            "spreads.csv", ModelsCsv.spreads(open),
            "worth.csv", ModelsCsv.worth(open));
    for (Map.Entry<String, String> file : files.entrySet()) {
      Files.writeString(folder.resolve(file.getKey()), file.getValue(), StandardCharsets.UTF_8);
    }
  }

  /**
   * Writes the report of the library as it is.
   *
   * @param arguments the folder to write to
   * @throws IOException if a file cannot be written
   */
  public static void main(String[] arguments) throws IOException {
    if (arguments.length != 1) {
      throw new IllegalArgumentException("one argument is wanted: the folder to write to");
    }
    Models models = new Models();
    write(Catalogue.sections(models), models, Path.of(arguments[0]));
  }
}
