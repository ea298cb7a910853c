package io.github.ringstate.validation.catalogue;

import io.github.ringstate.validation.check.Section;
import java.util.List;

/** All topics, in the order in which a reader meets them. */
public final class Catalogue {

  private static final List<Topic> TOPICS =
      List.of(
          new AxialFlow(),
          new InclinedFlow(),
          new DescentFits(),
          new WholeRange(),
          new RingPower(),
          new RingLife(),
          new VerticalAutorotation(),
          new Boundaries(),
          new Hover(),
          new HeaveDampingChecks(),
          new InflowLagChecks(),
          new DynamicInflow(),
          new GroundEffectChecks(),
          new EnginePower(),
          new AtmosphereChecks(),
          new SinkRunaway(),
          new AltitudeLosses(),
          new ReportedPull(),
          new EnergyBalance(),
          new Integrators());

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
