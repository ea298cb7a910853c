package io.github.ringstate.instructor.floor;

import io.github.ringstate.files.text.Caution;
import java.io.OutputStream;
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

  /**
   * Creates the command.
   *
   * @param terminal where the report goes if no file is given
   */
  public LessonCommand(OutputStream terminal) {
    super(BriefedReport.Kind.LESSON, terminal);
  }
}
