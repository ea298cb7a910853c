package outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.air.Wind;
import io.github.ringstate.air.WindField;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Trim;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.pilot.Technique;
import org.junit.jupiter.api.Test;

/** Winds, inflows, recoveries and craft of one's own are flown. */
class OwnPartsTest {

  private static final Encounter BASE =
      Encounter.of(DemoCraft.TRAINER).withHeight(120).withDelay(1.5);

  private static double loss(Encounter encounter) {
    return encounter.fly().altitudeLoss().orElseThrow();
  }

  /** The same wind in one's own words is the same wind. */
  @Test
  void aWindLikeTheBuiltInOneGivesTheSameFlightToTheBit() {
    WindField builtIn = BASE.entry().wind();
    WindField own = (time, north, east, up, air) -> builtIn.velocity(time, north, east, up, air);
    assertEquals(BASE.fly(), BASE.withWind(own).fly());
  }

  @Test
  void aWindThatVariesWithHeightAndTimeChangesTheLoss() {
    double steady = loss(BASE.withWind(new SeaBreeze(4, 1000, 100, 0)));
    assertNotEquals(steady, loss(BASE.withWind(new SeaBreeze(4, 60, 100, 0))));
    assertNotEquals(steady, loss(BASE.withWind(new SeaBreeze(4, 1000, 100, 40))));
  }

  @Test
  void anInflowThatAddsNothingGivesTheSameLossAndOneThatAddsAnother() {
    RingStateInflow standard = RingStateInflow.standard();
    ThickerRing same = new ThickerRing(standard, 0);
    ThickerRing thicker = new ThickerRing(standard, 0.03);
    assertEquals(loss(BASE), loss(BASE.withInflow(same, new HeaveDamping(same))));
    assertNotEquals(loss(BASE), loss(BASE.withInflow(thicker, new HeaveDamping(thicker))));
  }

  @Test
  void aRecoveryOfOnesOwnArrestsTheDescentAndIsAValue() {
    Encounter encounter = BASE.withRecovery(new Diagonal());
    Outcome outcome = encounter.fly();
    assertEquals(Ending.ARRESTED, outcome.ending());
    assertEquals(BASE.withRecovery(new Diagonal()), encounter);
    assertEquals(11, encounter.recovery().numbers().get(Diagonal.LEAN));
    assertNotEquals(BASE.withRecovery(Technique.LATERAL.standard()), encounter);
  }

  /** Closed form: in a steady hover thrust carries the weight and the drag of the wake on it. */
  @Test
  void aCraftFromADataSheetIsTrimmedAndFlown() {
    Helicopter craft = DataSheet.craft();
    EquationsOfMotion motion =
        new EquationsOfMotion(
            craft, StandardAtmosphere.at(0), Wind.CALM, RingStateInflow.standard(), false);
    Trim hover = Trim.find(motion, 0, 0);
    double thrust = motion.at(0, hover.state(motion, 0, 0)).loads().thrust();
    double weight = 1350 * 9.80665;
    assertTrue(thrust > weight && thrust < 1.06 * weight, thrust + " N for " + weight + " N");
    assertTrue(BASE.withCraft(craft).fly().onsetTime().isPresent());
  }
}
