package io.github.ringstate.files.sweep;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.files.craft.CraftFile;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.toml.Texts;
import io.github.ringstate.files.toml.TomlDocument;
import io.github.ringstate.study.sweep.Settings;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The craft files that a sweep names; a relative name starts from the folder of the sweep.
 *
 * @param crafts the craft by the words that name them
 * @param texts the texts of the files by their names, as they were read
 * @param notices what to tell the user of the files
 */
record SweepCrafts(
    Map<String, Helicopter> crafts, Map<String, String> texts, List<String> notices) {

  static SweepCrafts read(String sweep, TomlDocument document, Texts source) {
    List<String> path = List.of(Settings.CRAFT_NAME.split("\\.", 2));
    Map<String, Helicopter> crafts = new LinkedHashMap<>();
    Map<String, String> texts = new LinkedHashMap<>();
    List<String> notices = new ArrayList<>();
    for (String word : words(path, document)) {
      if (CraftFile.isNamed(word) && !crafts.containsKey(word)) {
        String name = beside(sweep, word, path, document);
        CraftFile file =
            CraftFile.read(
                name,
                (asked, what, largest) -> {
                  String text = source.read(asked, what, largest);
                  texts.put(asked, text);
                  return text;
                });
        if (file.craft().fitted().isPresent()) {
          throw document.refused(
              path,
              "craft.name " + UserError.quoted(word) + " is fitted to recordings",
              "a craft without [fitted]: a sweep flies the standard numbers of a model");
        }
        crafts.put(word, file.craft());
        notices.addAll(file.notices());
      }
    }
    return new SweepCrafts(crafts, texts, notices);
  }

  private static List<String> words(List<String> path, TomlDocument document) {
    List<String> words = new ArrayList<>();
    if (document.has(path)) {
      JsonNode node = document.get(path, "");
      (node.isArray() ? node : List.of(node))
          .forEach(word -> words.add(word.isTextual() ? word.textValue() : ""));
    }
    return words;
  }

  private static String beside(
      String sweep, String word, List<String> path, TomlDocument document) {
    try {
      return Path.of(sweep).resolveSibling(word).toString();
    } catch (InvalidPathException bad) {
      throw document.refused(path, "craft.name " + UserError.quoted(word), "the name of a file");
    }
  }
}
