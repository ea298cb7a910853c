package io.github.ringstate.instructor.floor;

import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.instructor.option.AgreedHeights;
import io.github.ringstate.instructor.option.Checked;
import io.github.ringstate.instructor.option.SheetOutput;
import io.github.ringstate.instructor.progress.Work;
import java.util.List;
import picocli.CommandLine.Mixin;

/** Prints what is briefed of one technique; a command says as what. */
abstract class BriefedCommand implements Runnable, Checked {

  private final BriefedReport.Kind kind;

  @Mixin private final BriefedOptions options = new BriefedOptions();
  @Mixin private final AgreedHeights agreed = new AgreedHeights();
  @Mixin private final SheetOutput output = new SheetOutput();

  BriefedCommand(BriefedReport.Kind kind) {
    this.kind = kind;
  }

  @Override
  public List<Encounter> flown() {
    agreed.heights();
    return options.request().flown();
  }

  @Override
  public void run() {
    output.deliver(this::report);
  }

  private BriefedReport report() {
    FloorRequest request = options.request();
    try (Work work = Work.of(request.flights())) {
      return new BriefedReport(
          kind,
          BriefedTechnique.of(request, FloorStudy.run(request, work).get(0)),
          agreed.heights());
    }
  }
}
