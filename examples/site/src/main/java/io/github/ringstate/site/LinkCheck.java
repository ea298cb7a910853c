package io.github.ringstate.site;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;

/** Follows the links between the files of a folder. Addresses on the network are not followed. */
final class LinkCheck {

  private final Map<Path, Set<String>> places = new HashMap<>();
  private final List<String> broken = new ArrayList<>();

  private LinkCheck() {}

  /**
   * Follows every link of every page.
   *
   * @param folder the folder
   * @return one line for each link that leads nowhere or out of the folder, with its page
   * @throws IOException if a page cannot be read
   */
  static List<String> broken(Path folder) throws IOException {
    LinkCheck check = new LinkCheck();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path page : files.filter(LinkCheck::isPage).sorted().toList()) {
        check.follow(folder, page);
      }
    }
    return List.copyOf(check.broken);
  }

  private void follow(Path folder, Path page) throws IOException {
    Document document = Jsoup.parse(page.toFile());
    List<String> links = new ArrayList<>(document.select("[href]").eachAttr("href"));
    links.addAll(document.select("[src]").eachAttr("src"));
    for (String link : links) {
      if (!link.matches("(?s)[a-z]+:.*") && !leadsSomewhere(folder, page, link)) {
        broken.add(folder.relativize(page) + ": " + link);
      }
    }
  }

  private boolean leadsSomewhere(Path folder, Path page, String link) {
    int hash = link.indexOf('#');
    String file = hash < 0 ? link : link.substring(0, hash);
    String place = hash < 0 ? "" : URI.create(link.substring(hash)).getFragment();
    Path target =
        file.isEmpty() ? page : page.resolveSibling(URI.create(file).getPath()).normalize();
    return target.startsWith(folder.normalize())
        && Files.isRegularFile(target)
        && (place.isEmpty() || !isPage(target) || places(target).contains(place));
  }

  private Set<String> places(Path page) {
    return places.computeIfAbsent(
        page,
        read -> {
          try {
            Document document = Jsoup.parse(read.toFile());
            return Stream.concat(
                    document.select("[id]").eachAttr("id").stream(),
                    document.select("a[name]").eachAttr("name").stream())
                .collect(Collectors.toSet());
          } catch (IOException failed) {
            throw new UncheckedIOException(failed);
          }
        });
  }

  private static boolean isPage(Path file) {
    return file.toString().endsWith(".html");
  }
}
