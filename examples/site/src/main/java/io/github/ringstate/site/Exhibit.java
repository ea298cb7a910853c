package io.github.ringstate.site;

import java.util.List;
import java.util.stream.Stream;

/**
 * A sheet of the gallery.
 *
 * @param file what it is called in the gallery
 * @param title what it is
 * @param words the command that makes it, without the file
 */
record Exhibit(String file, String title, List<String> words) {

  /** All of them, in the order in which they are used before, in and after a flight. */
  static final List<Exhibit> ALL =
      List.of(
          of("loss.pdf", "Altitude lost against delay, for the briefing", "loss"),
          of("floor.pdf", "Below which height not to fly", "floor --height-ft 300"),
          of(
              "runs.pdf",
              "Slow runs: which tracks to fly and which not",
              "runs --height-ft 600 --wind-from-deg 200 --wind-kt 12 --gust-kt 18"),
          of("card.pdf", "A card for the pocket", "card --recovery lateral"),
          of("lesson.pdf", "A lesson, and the record of it", "lesson --recovery lateral"),
          of("fly.html", "A flight to be moved with sliders, for the classroom", "fly"),
          of("review.pdf", "A recording reviewed, for the debriefing", "review --demo instruments"),
          of(
              "boundary.svg",
              "The boundary of the ring state and a flight through it",
              "boundary --recovery lateral"),
          of("equilibria.svg", "Steady descents and their folds", "equilibria --loop"),
          of("best.svg", "The best recovery that a search found", "best --delays 0.5,1,2"),
          of("sensitivity.svg", "What the loss depends on", "sensitivity --delay 1.5"));

  private static Exhibit of(String file, String title, String words) {
    return new Exhibit(file, title, List.of(words.split(" ", -1)));
  }

  /** The command as it is typed. */
  String command() {
    return "ringstate " + String.join(" ", words) + " --format " + format() + " --output " + file;
  }

  /** The words of the command. */
  List<String> arguments() {
    return Stream.concat(words.stream(), Stream.of("--format", format(), "--output", file))
        .toList();
  }

  /** The format that its name ends in. */
  String format() {
    return file.substring(file.lastIndexOf('.') + 1);
  }

  /** The picture to show of it, from the gallery's folder; empty if there is none. */
  String picture() {
    return switch (format()) {
      case "pdf" -> file + ".png";
      case "svg" -> file;
      default -> "";
    };
  }
}
