package io.github.ringstate.site;

import static java.nio.charset.StandardCharsets.UTF_8;

import io.github.ringstate.sheets.page.HtmlWriter;
import io.github.ringstate.sheets.page.Page;
import io.github.ringstate.sheets.page.SheetFont;
import io.github.ringstate.validation.report.ResultsReport;
import io.github.ringstate.validation.report.ValidationReport;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Makes the site.
 *
 * @param repository the top of the repository
 * @param folder where the site is made
 */
public record Site(Path repository, Path folder) {

  private static final String START = "index.html";
  private static final String GALLERY = "gallery.html";

  /** Made so by the Javadoc tool of JDK 17, whose page of constants links to what it groups by. */
  private static final String NOT_OURS = "api/constant-values.html: #io.github";

  /**
   * Makes the site and follows its links. Takes minutes, since the page of results is flown.
   *
   * @param arguments the top of the repository, whose library has its Javadoc made and whose tool
   *     is built; and a folder of a build, in which the folder {@code site} is made anew
   * @throws IOException if something is missing, cannot be made or written, or a link leads nowhere
   * @throws InterruptedException if this thread is told to stop
   */
  public static void main(String[] arguments) throws IOException, InterruptedException {
    if (arguments.length != 2) {
      throw new IllegalArgumentException("two arguments are wanted: the repository and a folder");
    }
    Site site =
        new Site(Path.of(arguments[0]).normalize(), Path.of(arguments[1], "site").normalize());
    site.empty();
    site.write();
    List<String> broken =
        LinkCheck.broken(site.folder).stream().filter(link -> !link.equals(NOT_OURS)).toList();
    if (!broken.isEmpty()) {
      throw new IOException(broken.size() + " links lead nowhere:\n" + String.join("\n", broken));
    }
  }

  private void write() throws IOException, InterruptedException {
    for (Chapter chapter : Chapter.values()) {
      GuideText text =
          GuideText.of(
              chapter.source(), Files.readString(repository.resolve(chapter.source()), UTF_8));
      write(chapter.page(), "text.mustache", chapter.label(), Map.of("body", text.body()));
      for (String picture : text.pictures()) {
        copy(repository.resolve(picture), folder.resolve(GuideText.PICTURES));
      }
    }
    javadoc();
    ValidationReport.main(new String[] {folder.resolve("validation").toString()});
    ResultsReport.main(new String[] {folder.resolve("results").toString(), "all"});
    leadBack(folder.resolve("validation"));
    leadBack(folder.resolve("results"));
    Gallery.make(
        repository.resolve("examples/instructor/target/ringstate.jar"), folder.resolve("gallery"));
    write(GALLERY, "gallery.mustache", "Gallery", Map.of("exhibits", Exhibit.ALL));
    write(START, "start.mustache", "ringstate", Map.of());
  }

  /** The bar at the top of each page, and what the page has of its own. */
  private void write(String name, String template, String title, Map<String, Object> own)
      throws IOException {
    Map<String, Object> model = new HashMap<>(own);
    model.put("bar", bar(name));
    Page page = new Page(Site.class, template, title, false, model, Map.of());
    Files.writeString(folder.resolve(name), HtmlWriter.html(page), UTF_8);
  }

  private static List<Map<String, Object>> bar(String current) {
    List<Map<String, Object>> bar = new ArrayList<>();
    bar.add(entry("Start", START, current));
    for (Chapter chapter : Chapter.values()) {
      bar.add(entry(chapter.label(), chapter.page(), current));
    }
    bar.add(entry("Gallery", GALLERY, current));
    bar.add(entry("Results", "results/results.html", current));
    bar.add(entry("Validation", "validation/index.html", current));
    bar.add(entry("Javadoc", "api/index.html", current));
    return bar;
  }

  private static Map<String, Object> entry(String label, String page, String current) {
    return Map.of("label", label, "page", page, "current", page.equals(current));
  }

  /** The Javadoc, in the typeface and the colours of the site. */
  private void javadoc() throws IOException {
    Path made = repository.resolve("core/target/reports/apidocs");
    if (!Files.isDirectory(made)) {
      throw new IOException("the Javadoc is missing: " + made);
    }
    Path api = folder.resolve("api");
    try (Stream<Path> files = Files.walk(made)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        copy(file, api.resolve(made.relativize(file).toString()).resolveSibling(""));
      }
    }
    for (SheetFont font : SheetFont.values()) {
      Files.write(api.resolve(font.weight() + ".ttf"), font.bytes());
    }
    Path style = api.resolve("stylesheet.css");
    try (InputStream more = Site.class.getResourceAsStream("api.css")) {
      if (more == null) {
        throw new IllegalStateException("the style of the Javadoc is missing");
      }
      Files.writeString(
          style, Files.readString(style, UTF_8) + new String(more.readAllBytes(), UTF_8), UTF_8);
    }
  }

  /** Pages that stand by themselves elsewhere get a way back to the start. */
  private static void leadBack(Path pages) throws IOException {
    try (Stream<Path> files = Files.list(pages)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".html")).toList()) {
        String page = Files.readString(file, UTF_8);
        Files.writeString(
            file,
            page.replaceFirst("<body>", "<body>\n<p><a href=\"../index.html\">ringstate</a></p>"),
            UTF_8);
      }
    }
  }

  private static void copy(Path file, Path into) throws IOException {
    Files.createDirectories(into);
    Files.copy(file, into.resolve(file.getFileName()));
  }

  private void empty() throws IOException {
    if (Files.exists(folder)) {
      try (Stream<Path> files = Files.walk(folder)) {
        for (Path file : files.sorted((a, b) -> b.compareTo(a)).toList()) {
          Files.delete(file);
        }
      }
    }
    Files.createDirectories(folder);
  }
}
