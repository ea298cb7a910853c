package io.github.ringstate.validation.catalogue;

import io.github.ringstate.validation.check.Section;
import java.util.List;

/** All topics, in the order in which a reader meets them. */
public final class Catalogue {

  private static final List<Topic> TOPICS =
      List.of(
          AxialFlow::section,
          InclinedFlow::section,
          DescentFits::section,
          WholeRange::section,
          RingPower::section,
          RingLife::section,
          VerticalAutorotation::section,
          Boundaries::section,
          Hover::section,
          HeaveDampingChecks::section,
          InflowLagChecks::section,
          DynamicInflow::section,
          GroundEffectChecks::section,
          EnginePower::section,
          AtmosphereChecks::section,
          SinkRunaway::section,
          AltitudeLosses::section,
          ReportedPull::section,
          EnergyBalance::section,
          Integrators::section);

  private Catalogue() {}

  /**
   * The topics.
   *
   * @return an unmodifiable list
   */
  public static List<Topic> topics() {
    return TOPICS;
  }

  /**
   * Works all topics out.
   *
   * @param models what is under test
   * @return a section for each topic
   */
  public static List<Section> sections(Models models) {
    return TOPICS.stream().map(topic -> topic.section(models)).toList();
  }
}
