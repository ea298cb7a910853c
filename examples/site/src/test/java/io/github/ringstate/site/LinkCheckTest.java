package io.github.ringstate.site;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LinkCheckTest {

  @TempDir private Path folder;

  private void page(String name, String body) throws IOException {
    Path page = folder.resolve(name);
    Files.createDirectories(page.getParent());
    Files.writeString(page, "<!DOCTYPE html><title>x</title><body>" + body);
  }

  @Test
  void linksToFilesPlacesAndTheNetworkAreNotBroken() throws IOException {
    page("a.html", "<h2 id='here'>x</h2><a href='b/c.html#there'>x</a><a href='#here'>x</a>");
    page("b/c.html", "<a name='there'>x</a><a href='../a.html'>x</a><a href='https://x/y'>x</a>");
    assertEquals(List.of(), LinkCheck.broken(folder));
  }

  @Test
  void aMissingFileAMissingPlaceAndAWayOutOfTheFolderAreBroken() throws IOException {
    page("a.html", "<a href='no.html'>x</a><img src='no.png'><a href='../b.html'>x</a>");
    page("b.html", "<a href='a.html#no'>x</a>");
    assertEquals(
        List.of("a.html: no.html", "a.html: ../b.html", "a.html: no.png", "b.html: a.html#no"),
        LinkCheck.broken(folder));
  }
}
