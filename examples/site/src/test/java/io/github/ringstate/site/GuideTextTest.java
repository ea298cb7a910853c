package io.github.ringstate.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;

/** Texts of the repository as pages; expected by the specification of CommonMark 0.31. */
class GuideTextTest {

  @Test
  void aLinkToAnotherTextLeadsToItsPageAndItsPlace() {
    GuideText text = GuideText.of("benchmarks/README.md", "[see](../DEVELOPERS.md#tests)");
    assertEquals("<p><a href=\"developers.html#tests\">see</a></p>", text.body().strip());
  }

  @Test
  void aLinkToAFileWithoutAPageBecomesItsWords() {
    GuideText text = GuideText.of("README.md", "Licence: [Apache *2.0*](LICENSE).");
    assertEquals("<p>Licence: Apache <em>2.0</em>.</p>", text.body().strip());
  }

  @Test
  void aPictureStandsInTheFolderOfPictures() {
    GuideText text = GuideText.of("README.md", "![The desk](examples/instructor/desk.png)");
    assertEquals(Set.of("examples/instructor/desk.png"), text.pictures());
    assertTrue(text.body().contains("src=\"pictures/desk.png\""), text.body());
  }

  @Test
  void anAddressOnTheNetworkStays() {
    GuideText text = GuideText.of("README.md", "[a](https://example.org/x#y)");
    assertTrue(text.body().contains("href=\"https://example.org/x#y\""), text.body());
  }
}
