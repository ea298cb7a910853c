package io.github.ringstate.instructor.floor;

import io.github.ringstate.files.text.Caution;
import io.github.ringstate.instructor.delivery.Delivery;
import io.github.ringstate.instructor.option.AgreedHeights;
import io.github.ringstate.instructor.option.Checked;
import io.github.ringstate.instructor.option.SheetOutput;
import io.github.ringstate.instructor.progress.Work;
import java.io.OutputStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

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
      "  ringstate lesson --craft utility --technique lateral --format pdf --output lesson.pdf",
      "",
      Caution.TEXT
    })
public final class LessonCommand implements Runnable, Checked {

  private final OutputStream terminal;

  @Mixin private final BriefedOptions options = new BriefedOptions();
  @Mixin private final AgreedHeights agreed = new AgreedHeights();
  @Mixin private final SheetOutput output = new SheetOutput();

  /**
   * Creates the command.
   *
   * @param terminal where the report goes if no file is given
   */
  public LessonCommand(OutputStream terminal) {
    this.terminal = terminal;
  }

  @Override
  public void check() {
    options.request();
    agreed.heights();
  }

  @Override
  public void run() {
    Delivery delivery = output.delivery(terminal);
    FloorRequest request = options.request();
    BriefedTechnique briefed;
    try (Work work = Work.of(request.flights())) {
      briefed = BriefedTechnique.of(request, FloorStudy.run(request, work).get(0));
    }
    delivery.deliver(new BriefedReport(BriefedReport.Kind.LESSON, briefed, agreed.heights()));
  }
}
