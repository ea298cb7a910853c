package io.github.ringstate.instructor.floor;

import io.github.ringstate.files.text.Caution;
import picocli.CommandLine.Command;

/** Prints what is briefed as a lesson. */
@Command(
    name = "lesson",
    description = {
      "Print a lesson: setting up at height, cues, what to say and do, abort height, questions with answers, record of the demonstration.",
      ""
    },
    footer = {
      "",
      "Example",
      "  ringstate lesson --craft utility --recovery lateral --format pdf --output lesson.pdf",
      "",
      Caution.TEXT
    })
public final class LessonCommand extends BriefedCommand {

  /** Made by the tool. */
  public LessonCommand() {
    super(BriefedReport.Kind.LESSON);
  }
}
