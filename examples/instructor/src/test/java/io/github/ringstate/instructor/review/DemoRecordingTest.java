package io.github.ringstate.instructor.review;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.EntryKind;
import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.recording.FoundEncounter;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DemoRecordingTest {

  private static Debrief debrief(DemoRecording demo) {
    var file = demo.read();
    return Debrief.of(
        new ReviewRequest(
            demo.name(),
            true,
            file,
            Conditions.of(DemoCraft.TRAINER, Encounter.of(DemoCraft.TRAINER).air()),
            EntryKind.STANDARD,
            DebriefedWind.estimated(file.recording()),
            OptionalDouble.empty(),
            Optional.empty()));
  }

  private static DemoRecording named(String name) {
    return DemoRecording.ALL.stream()
        .filter(one -> one.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @ValueSource(strings = {"gnss-1hz", "gnss-5hz", "instruments", "other-form"})
  void theKeptFileIsWhatItsGeneratorMakesAndSaysThatItIsInvented(String name) {
    byte[] kept = named(name).content();
    assertArrayEquals(InventedRecordings.content(name), kept);
    assertTrue(new String(kept, US_ASCII).toLowerCase(Locale.ROOT).contains("invented demo"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"gnss-1hz", "gnss-5hz", "instruments", "other-form"})
  void onsetAndLossOfTheFlightBehindItAreFound(String name) {
    Debrief debrief = debrief(named(name));
    assertEquals(1, debrief.descents().size());
    InventedFlight flight = InventedRecordings.flight(name);
    FoundEncounter found = debrief.descents().get(0).found();
    boolean fiveTimesASecond = !name.equals("gnss-1hz");
    double time = fiveTimesASecond ? 0.5 : 4 * found.onsetTime().deviation();
    double height = fiveTimesASecond ? Unit.FOOT.toSi(10) : 4 * found.altitudeLoss().deviation();
    assertEquals(flight.onset(), found.onsetTime().value(), time);
    assertEquals(flight.loss(), found.altitudeLoss().value(), height);
    // the wind of the standard entry is 8 kt from behind, and the craft heads north
    assertTrue(debrief.request().wind().known());
    assertEquals(
        Unit.KNOT.toSi(8),
        debrief.request().wind().wind().north(),
        2 * debrief.request().wind().deviation());
  }

  @ParameterizedTest
  @ValueSource(strings = {"instruments", "other-form"})
  void thePilotsDelayAndRecoveryAreSeenInAttitudeAndLever(String name) {
    FlownDescent one = debrief(named(name)).descents().get(0);
    double delay = name.equals("instruments") ? 2 : 1.3;
    assertEquals(delay, one.delay().orElseThrow(), 0.5);
    assertEquals("forward", one.recovery().orElseThrow().name());
  }

  @ParameterizedTest
  @ValueSource(strings = {"gnss-1hz", "gnss-5hz"})
  void nothingIsSaidOfThePilotWhereOnlyTheWayIsRecorded(String name) {
    for (FlownDescent one : debrief(named(name)).descents()) {
      assertEquals(OptionalDouble.empty(), one.delay());
      assertEquals(Optional.empty(), one.recovery());
    }
  }
}
