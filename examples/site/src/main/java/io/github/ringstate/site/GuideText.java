package io.github.ringstate.site;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.ext.heading.anchor.HeadingAnchorExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;

/**
 * A text in Markdown as HTML, its links led to the pages of the site. A link to a file or folder
 * that has no page becomes plain text.
 *
 * @param body the HTML
 * @param pictures the pictures that it shows, from the top of the repository; each stands in the
 *     site's folder of pictures under its own name
 */
record GuideText(String body, Set<String> pictures) {

  /** The site's folder of pictures. */
  static final String PICTURES = "pictures";

  private static final List<Extension> EXTENSIONS =
      List.of(TablesExtension.create(), HeadingAnchorExtension.create());

  /** Where to read about a folder. */
  private static final Map<String, String> FOLDERS =
      Map.of(
          "core", "api/index.html",
          "validation", "validation/index.html",
          "benchmarks", Chapter.BENCHMARKS.page(),
          "examples/embedding", Chapter.EMBEDDING.page(),
          "examples/cluster", Chapter.CLUSTER.page());

  /**
   * Reads a text.
   *
   * @param source where it lies, from the top of the repository
   * @param markdown the text
   */
  static GuideText of(String source, String markdown) {
    Node document = Parser.builder().extensions(EXTENSIONS).build().parse(markdown);
    Leader leader = new Leader(source);
    document.accept(leader);
    String body = HtmlRenderer.builder().extensions(EXTENSIONS).build().render(document);
    return new GuideText(
        body.replace("<table>", "<div class=\"wide\"><table>")
            .replace("</table>", "</table></div>"),
        leader.pictures);
  }

  /** Leads the links of one text. */
  private static final class Leader extends AbstractVisitor {

    private final Set<String> pictures = new TreeSet<>();
    private final Path folder;

    Leader(String source) {
      this.folder = Path.of("/", source).resolveSibling("");
    }

    @Override
    public void visit(Link link) {
      visitChildren(link);
      String to = link.getDestination();
      if (!to.contains(":") && !to.startsWith("#")) {
        page(to).ifPresentOrElse(link::setDestination, () -> unwrap(link));
      }
    }

    @Override
    public void visit(Image image) {
      String file = fromTop(image.getDestination());
      pictures.add(file);
      image.setDestination(PICTURES + "/" + Path.of(file).getFileName());
    }

    private Optional<String> page(String destination) {
      int hash = destination.indexOf('#');
      String file = fromTop(hash < 0 ? destination : destination.substring(0, hash));
      String place = hash < 0 ? "" : destination.substring(hash);
      return Chapter.pageOf(file)
          .or(() -> Optional.ofNullable(FOLDERS.get(file)))
          .map(page -> page + place);
    }

    private String fromTop(String destination) {
      return Path.of("/").relativize(folder.resolve(destination).normalize()).toString();
    }

    private static void unwrap(Link link) {
      for (Node child = link.getFirstChild(); child != null; child = link.getFirstChild()) {
        link.insertBefore(child);
      }
      link.unlink();
    }
  }
}
