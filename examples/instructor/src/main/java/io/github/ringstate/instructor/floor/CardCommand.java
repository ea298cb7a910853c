package io.github.ringstate.instructor.floor;

import io.github.ringstate.files.text.Caution;
import picocli.CommandLine.Command;

/** Prints what is briefed as a card. */
@Command(
    name = "card",
    description = {
      "Print a card for the pocket, A6, both sides: least height, technique and side, cues, words to say.",
      ""
    },
    footer = {
      "",
      "Example",
      "  ringstate card --craft utility --recovery lateral --format pdf --output card.pdf",
      "",
      Caution.TEXT
    })
public final class CardCommand extends BriefedCommand {

  /** Made by the tool. */
  public CardCommand() {
    super(BriefedReport.Kind.CARD);
  }
}
