package io.github.ringstate.encounter;

import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.chance.IndependentStream;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.craft.RotationSense;
import io.github.ringstate.pilot.Autorotation;
import io.github.ringstate.pilot.CollectiveOnly;
import io.github.ringstate.pilot.Forward;
import io.github.ringstate.pilot.Lateral;
import io.github.ringstate.pilot.NoRecovery;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import java.util.List;
import java.util.SplittableRandom;

/** Encounters over all that is permitted: seeded random draws, within the limits and at them. */
final class DrawnEncounter {

  private final SplittableRandom random;
  private final int number;
  private final boolean atTheLimits;

  private DrawnEncounter(int number) {
    this.number = number;
    random = new SplittableRandom(number);
    atTheLimits = random.nextInt(4) == 0;
  }

  /** The encounter of a number, in still or steadily moving air. */
  static Encounter of(int number) {
    return new DrawnEncounter(number).encounter();
  }

  /** The encounter of a number, with gusts, shaking, shear or a wind that turns. */
  static Encounter disturbed(int number) {
    DrawnEncounter drawn = new DrawnEncounter(number);
    return drawn.encounter().withDisturbances(drawn.disturbances());
  }

  private Encounter encounter() {
    Helicopter demo = DemoCraft.ALL.get(random.nextInt(DemoCraft.ALL.size()));
    double mass =
        random.nextDouble(
            demo.numbers().get(Helicopter.MINIMUM_MASS),
            demo.numbers().get(Helicopter.MAXIMUM_MASS));
    RotationSense sense =
        random.nextBoolean() ? RotationSense.CLOCKWISE : RotationSense.COUNTER_CLOCKWISE;
    Encounter encounter =
        Encounter.of(demo.with(Helicopter.MASS, mass).with(sense))
            .withEntry(entry())
            .withRecovery(recovery())
            .withDelay(random.nextInt(5) == 0 ? 0 : random.nextDouble(0, 12))
            .withAir(StandardAtmosphere.at(random.nextDouble(0, 2400)));
    return random.nextInt(3) == 0 ? encounter.withHeight(random.nextDouble(1, 300)) : encounter;
  }

  private Entry entry() {
    return switch (random.nextInt(12)) {
      case 0 -> new Settling(drawn(Settling.PARAMETERS));
      case 1 -> new Steep(drawn(Steep.PARAMETERS));
      case 2 -> new Downwind(drawn(Downwind.PARAMETERS));
      case 3 -> new TailwindApproach(drawn(TailwindApproach.PARAMETERS));
      case 4 -> new QuickStop(drawn(QuickStop.PARAMETERS));
      case 5 -> new ShortHover(drawn(ShortHover.PARAMETERS));
      case 6 -> new PhotoDrift(drawn(PhotoDrift.PARAMETERS));
      case 7 -> new Settling();
      case 8 -> new Steep();
      case 9 -> new Downwind();
      default -> new TailwindApproach();
    };
  }

  private Recovery recovery() {
    return switch (random.nextInt(8)) {
      case 0 -> new Forward(drawn(Forward.PARAMETERS));
      case 1 -> new Lateral(drawn(Lateral.PARAMETERS));
      case 2 -> new Autorotation(drawn(Autorotation.PARAMETERS));
      case 3 -> new CollectiveOnly(drawn(CollectiveOnly.PARAMETERS));
      case 4 -> new NoRecovery();
      default ->
          Technique.ALL
              .get(random.nextInt(Technique.ALL.size()))
              .draw(new IndependentStream(3, number));
    };
  }

  private Disturbances disturbances() {
    ParameterSet numbers = ParameterSet.standard(Disturbances.PARAMETERS);
    int kind = random.nextInt(4);
    if (kind != 0) {
      numbers = numbers.with(Disturbances.GUST_WIND, random.nextDouble(0, 40));
    }
    if (kind != 1) {
      numbers = numbers.with(Disturbances.SHAKING, random.nextDouble(0, 20));
    }
    if (kind == 2) {
      numbers = numbers.with(Disturbances.SHEAR, random.nextDouble(0, 0.4));
    }
    if (kind == 3) {
      numbers = numbers.with(Disturbances.WIND_TURN, random.nextDouble(-180, 180));
    }
    return new Disturbances(numbers, random.nextLong());
  }

  private ParameterSet drawn(List<Parameter> parameters) {
    ParameterSet set = ParameterSet.standard(parameters);
    for (Parameter parameter : parameters) {
      double share = random.nextDouble();
      double low = parameter.quantity().low();
      double high = parameter.quantity().high();
      double between = low + share * (high - low);
      set = set.with(parameter, atTheLimits ? (share < 0.5 ? low : high) : between);
    }
    return set;
  }
}
