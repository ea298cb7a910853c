package io.github.ringstate.pilot;

import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import java.util.List;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/** The cues that {@link Cues} makes, as values: cues of equal numbers are equal. */
final class BuiltInCues {

  /** Rates of descent and speeds that a cue accepts. */
  private static final Quantity SPEED =
      new Quantity("speed of a cue", Unit.METRE_PER_SECOND, 0, 60);

  /** Fluctuations of thrust over weight that a cue accepts. */
  private static final Quantity FLUCTUATION = new Quantity("fluctuation of a cue", Unit.ONE, 0, 1);

  private BuiltInCues() {}

  record SinkShown(double intended, double margin) implements Cue {

    SinkShown {
      SPEED.check(intended);
      SPEED.check(margin);
    }

    @Override
    public String name() {
      return "sink shown";
    }

    @Override
    public String toString() {
      return name() + ": " + margin + " m/s beyond " + intended + " m/s";
    }

    @Override
    public double level(Cockpit seen) {
      return -seen.indicatedVerticalSpeed() - intended - margin;
    }
  }

  record SinkNotAnswering(double sink, double noticedCollective, double noticedAcceleration)
      implements Cue {

    SinkNotAnswering {
      SPEED.check(sink);
    }

    @Override
    public String name() {
      return "sink not answering collective";
    }

    @Override
    public String toString() {
      return name()
          + ": beyond "
          + sink
          + " m/s, collective by "
          + noticedCollective
          + " rad, acceleration below "
          + noticedAcceleration
          + " m/s2";
    }

    @Override
    public double level(Cockpit seen) {
      // each in units of its own size of notice, sink in m/s
      double sinking = -seen.verticalSpeed() - sink;
      double raised = (seen.collective() - seen.hoverCollective()) / noticedCollective;
      double unanswered = 1 - seen.verticalAcceleration() / noticedAcceleration;
      return Math.min(sinking, Math.min(raised, unanswered));
    }
  }

  record Vibration(double threshold) implements Cue {

    Vibration {
      FLUCTUATION.check(threshold);
    }

    @Override
    public String name() {
      return "vibration";
    }

    @Override
    public String toString() {
      return name() + ": " + threshold + " of the thrust";
    }

    @Override
    public double level(Cockpit seen) {
      return seen.roughness() - threshold;
    }
  }

  record LowAirspeed(double airspeed, double reliable) implements Cue {

    LowAirspeed {
      SPEED.check(airspeed);
      SPEED.check(reliable);
    }

    @Override
    public String name() {
      return "low airspeed";
    }

    @Override
    public String toString() {
      return name() + ": " + airspeed + " m/s, reliable from " + reliable + " m/s";
    }

    @Override
    public double level(Cockpit seen) {
      double forward = Math.max(0, seen.forwardAirspeed());
      return airspeed - (forward >= reliable ? forward : forward * forward / reliable);
    }
  }

  record OverGround(double intended, double margin) implements Cue {

    OverGround {
      SPEED.check(intended);
      SPEED.check(margin);
    }

    @Override
    public String name() {
      return "drift";
    }

    @Override
    public String toString() {
      return name() + ": " + margin + " m/s from " + intended + " m/s";
    }

    @Override
    public double level(Cockpit seen) {
      double along = seen.groundSpeed() - intended;
      double across = seen.sidewaysGroundSpeed();
      return Math.sqrt(along * along + across * across) - margin;
    }
  }

  record SinceRecognition(double seconds) implements Cue {

    SinceRecognition {
      Recognition.DELAY.check(seconds);
    }

    @Override
    public String name() {
      return "time since recognition";
    }

    @Override
    public String toString() {
      return name() + ": " + seconds + " s";
    }

    @Override
    public double level(Cockpit seen) {
      return seen.sinceRecognition() - seconds;
    }
  }

  record Together(List<Cue> cues) implements Cue {

    Together {
      cues = several(cues);
    }

    @Override
    public String name() {
      return names(cues, " and ");
    }

    @Override
    public double level(Cockpit seen) {
      double weakest = Double.POSITIVE_INFINITY;
      for (Cue cue : cues) {
        weakest = Math.min(weakest, cue.level(seen));
      }
      return weakest;
    }
  }

  record First(List<Cue> cues) implements Cue {

    First {
      cues = several(cues);
    }

    @Override
    public String name() {
      return names(cues, " or ");
    }

    @Override
    public double level(Cockpit seen) {
      double strongest = Double.NEGATIVE_INFINITY;
      for (Cue cue : cues) {
        strongest = Math.max(strongest, cue.level(seen));
      }
      return strongest;
    }
  }

  /** Equal only where the level is the same object; a record of one's own is the better cue. */
  record Plain(String name, ToDoubleFunction<Cockpit> function) implements Cue {

    Plain {
      Objects.requireNonNull(name, "name");
      Objects.requireNonNull(function, "level");
    }

    @Override
    public String toString() {
      return name;
    }

    @Override
    public double level(Cockpit seen) {
      return function.applyAsDouble(seen);
    }
  }

  private static List<Cue> several(List<Cue> cues) {
    if (cues.isEmpty()) {
      throw new IllegalArgumentException("a pilot needs at least one cue");
    }
    return List.copyOf(cues);
  }

  private static String names(List<Cue> cues, String between) {
    return cues.stream().map(Cue::name).collect(Collectors.joining(between));
  }
}
