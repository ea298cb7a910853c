package io.github.ringstate.instructor.option;

import io.github.ringstate.craft.RotationSense;
import io.github.ringstate.files.report.Cell;
import io.github.ringstate.files.text.NotAWayOut;
import io.github.ringstate.pilot.Autorotation;
import io.github.ringstate.pilot.CollectiveOnly;
import io.github.ringstate.pilot.Forward;
import io.github.ringstate.pilot.Lateral;
import io.github.ringstate.pilot.NoRecovery;
import io.github.ringstate.pilot.Recovery;

/** The recoveries that the tool offers, in the words of its users. */
public enum RecoveryKind {
  /** Nose down and out ahead. */
  FORWARD(
      "forward",
      true,
      "nose down, collective reduced, power back as airspeed comes, then climb away"),
  /** Bank and out to the side. */
  LATERAL(
      "lateral",
      true,
      "climb power, bank to the side the tail rotor pushes to (%s), level once out"),
  /** Out below. */
  AUTOROTATION(
      "autorotation", true, "collective down, nose down, then a flare back into powered flight"),
  /** Power alone. */
  COLLECTIVE("collective", false, "all the power there is and nothing else"),
  /** Nothing. */
  NONE("none", false, "nothing is done");

  private final String label;
  private final boolean leavesTheWake;
  private final String description;

  RecoveryKind(String label, boolean leavesTheWake, String description) {
    this.label = label;
    this.leavesTheWake = leavesTheWake;
    this.description = description;
  }

  /**
   * The recovery's name.
   *
   * @return one lower-case word
   */
  public String label() {
    return label;
  }

  /**
   * The recovery's name for people.
   *
   * @return the name; with it, what power alone is not
   */
  public String shown() {
    return isMistaken() ? label + " (" + NotAWayOut.HEAD + ")" : label;
  }

  /**
   * Whether the technique is taken for a way out and is none.
   *
   * @return true for power alone
   */
  public boolean isMistaken() {
    return this == COLLECTIVE;
  }

  /**
   * Whether the technique is meant to fly the rotor out of its own wake.
   *
   * @return false for power alone and for nothing at all
   */
  public boolean leavesTheWake() {
    return leavesTheWake;
  }

  /**
   * The same for machines.
   *
   * @return {@code yes} or {@code no}
   */
  public Cell wayOut() {
    return Cell.text(leavesTheWake ? "yes" : "no");
  }

  /**
   * What the pilot does.
   *
   * @param sense which way the main rotor turns
   * @return a part of a sentence
   */
  public String description(RotationSense sense) {
    return description.replace("%s", sense.tailPush() > 0 ? "right" : "left");
  }

  /**
   * Makes the recovery.
   *
   * @return the recovery, its numbers standard
   */
  public Recovery recovery() {
    return switch (this) {
      case FORWARD -> new Forward();
      case LATERAL -> new Lateral();
      case AUTOROTATION -> new Autorotation();
      case COLLECTIVE -> new CollectiveOnly();
      case NONE -> new NoRecovery();
    };
  }
}
