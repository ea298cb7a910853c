package io.github.ringstate.validation.report;

import static java.nio.charset.StandardCharsets.UTF_8;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.validation.open.ModelSets;
import io.github.ringstate.validation.open.Worth;
import io.github.ringstate.validation.results.Against;
import io.github.ringstate.validation.results.Effort;
import io.github.ringstate.validation.results.LossLine;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Flies the results and writes their page; minutes, so no build does it. */
public final class ResultsReport {

  /** Asks for everything. */
  private static final String ALL = "all";

  private static final List<Helicopter> CRAFT = List.of(DemoCraft.TRAINER, DemoCraft.HEAVY);

  /** Models that are drawn to tell what a number would be worth. */
  private static final int MODELS = 1000;

  private ResultsReport() {}

  /**
   * Writes {@code results.html} and {@code results.csv}.
   *
   * @param arguments the folder to write to, made if missing, and the name of a figure or {@code
   *     all}
   * @throws IOException if a file cannot be written
   */
  public static void main(String[] arguments) throws IOException {
    if (arguments.length != 2) {
      throw new IllegalArgumentException("two arguments are wanted: a folder, and what to make");
    }
    write(Path.of(arguments[0]), made(arguments[1]));
  }

  static void write(Path folder, ResultsPage page) throws IOException {
    Files.createDirectories(folder);
    Files.writeString(folder.resolve("results.html"), page.html(), UTF_8);
    Files.writeString(folder.resolve("results.csv"), page.csv(), UTF_8);
  }

  private static ResultsPage made(String wanted) {
    if (!names().contains(wanted)) {
      throw new IllegalArgumentException("no result " + wanted + "; there are " + names());
    }
    Effort effort = Effort.full();
    List<LossLine> lines = new ArrayList<>();
    for (Against against : Against.values()) {
      for (Helicopter craft : CRAFT) {
        if (List.of(ALL, ResultsFigure.id(craft, against)).contains(wanted)) {
          lines.add(LossLine.fly(craft, against, effort));
        }
      }
    }
    return new ResultsPage(
        effort, lines, List.of(ALL, ResultsPage.WORTH).contains(wanted) ? worths() : List.of());
  }

  private static List<String> names() {
    List<String> names = new ArrayList<>(List.of(ALL, ResultsPage.WORTH));
    for (Against against : Against.values()) {
      CRAFT.forEach(craft -> names.add(ResultsFigure.id(craft, against)));
    }
    return names;
  }

  private static List<Worth> worths() {
    ModelSets models = ModelSets.draw(MODELS);
    return CRAFT.stream()
        .flatMap(craft -> Worth.fly(craft, models.accepted().kept()).stream())
        .toList();
  }
}
