package io.github.ringstate.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.lang.reflect.Method;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ModelRevisionTest {

  @Test
  void theNameIsACheckSumOfTheLosses() {
    // the check value of CRC-32 for no input at all is zero (ISO/IEC/IEEE 8802-3)
    assertEquals("00000000", ModelRevision.of());
    assertEquals(ModelRevision.of(30, 40), ModelRevision.of(30, 40));
    assertNotEquals(ModelRevision.of(30, 40), ModelRevision.of(30, Math.nextUp(40)));
    assertNotEquals(ModelRevision.of(30, 40), ModelRevision.of(40, 30));
  }

  @Test
  void theRevisionOfThisBuildIsOneName() {
    assertTrue(ModelRevision.current().matches("[0-9a-f]{8}"), ModelRevision.current());
    assertEquals(ModelRevision.current(), ModelRevision.current());
  }

  @Test
  void anInterruptionOfWhoAsksFirstDoesNotEndTheFlights() throws Exception {
    URL[] classes =
        Stream.of(System.getProperty("java.class.path").split(File.pathSeparator, -1))
            .map(entry -> url(Path.of(entry)))
            .toArray(URL[]::new);
    // classes that nobody has asked for yet
    try (URLClassLoader fresh = new URLClassLoader(classes, ClassLoader.getPlatformClassLoader())) {
      Method current = fresh.loadClass(ModelRevision.class.getName()).getMethod("current");
      Thread.currentThread().interrupt();
      Object name = current.invoke(null);
      assertTrue(Thread.interrupted(), "the interruption is for who asked");
      assertEquals(ModelRevision.current(), name);
    }
  }

  private static URL url(Path entry) {
    try {
      return entry.toUri().toURL();
    } catch (MalformedURLException wrong) {
      throw new IllegalStateException(wrong);
    }
  }
}
