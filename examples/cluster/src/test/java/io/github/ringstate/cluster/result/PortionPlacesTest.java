package io.github.ringstate.cluster.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import io.github.ringstate.cluster.portion.Cut;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class PortionPlacesTest {

  private static final Manifest MANIFEST =
      new Manifest("1", List.of("digest of SPEC ab"), new Cut(1000, 10));

  private final PortionPlaces places = new PortionPlaces("/rows", MANIFEST.fingerprint());

  @ParameterizedTest
  @ValueSource(ints = {0, 7, 99_999})
  void aPlaceTellsItsPortion(int number) {
    assertEquals(OptionalInt.of(number), places.number(places.place(number).getName()));
  }

  @Test
  void draftsAndOtherFilesAreNoPortions() {
    String name = places.place(1).getName();
    for (String other : List.of("." + name, name + ".x", "portion-00001.parquet", "summary.csv")) {
      assertEquals(OptionalInt.empty(), places.number(other), other);
    }
  }

  static Stream<Manifest> others() {
    return Stream.of(
        new Manifest("2", List.of("digest of SPEC ab"), new Cut(1000, 10)),
        new Manifest("1", List.of("digest of SPEC ac"), new Cut(1000, 10)),
        new Manifest("1", List.of("digest of SPEC ab"), new Cut(1001, 10)),
        new Manifest("1", List.of("digest of SPEC ab"), new Cut(1000, 11)));
  }

  @ParameterizedTest
  @MethodSource("others")
  void aPortionOfAnythingElseIsNotTakenForOneOfThis(Manifest other) {
    assertNotEquals(MANIFEST.fingerprint(), other.fingerprint());
    String name = new PortionPlaces("/rows", other.fingerprint()).place(1).getName();
    assertEquals(OptionalInt.empty(), places.number(name));
  }

  @Test
  void aManifestIsReadAsItWasWritten() {
    assertEquals(Optional.of(MANIFEST), Manifest.read(MANIFEST.lines()));
    for (int i = 0; i < MANIFEST.lines().size(); i++) {
      List<String> lines = new java.util.ArrayList<>(MANIFEST.lines());
      lines.set(i, "x");
      assertEquals(Optional.empty(), Manifest.read(lines));
    }
  }
}
