package io.github.ringstate.cluster.result;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.apache.hadoop.conf.Configuration;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ResultFilesTest {

  @TempDir Path folder;

  private org.apache.hadoop.fs.Path place;
  private Path file;
  private ResultFiles files;
  private final byte[] content = new byte[300_000];

  @BeforeEach
  void prepare() throws IOException {
    file = folder.resolve("place");
    place = new org.apache.hadoop.fs.Path(file.toUri());
    files = ResultFiles.at(place, new Configuration());
    new SplittableRandom(7).nextBytes(content);
  }

  private long filesInFolder() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.count();
    }
  }

  @Test
  void ofManyAttemptsAtOnePlaceOneFileIsLeftAndWhoeverLooksSeesItWhole() throws Exception {
    int attempts = 8;
    ExecutorService pool = Executors.newFixedThreadPool(attempts + 1);
    try {
      for (int round = 0; round < 20; round++) {
        Files.deleteIfExists(file);
        CountDownLatch start = new CountDownLatch(1);
        List<Future<?>> all = new ArrayList<>();
        for (int i = 0; i < attempts; i++) {
          all.add(
              pool.submit(
                  () -> {
                    start.await();
                    files.place(place, out -> out.write(content));
                    // placed by this attempt or by another: from now on it is there, and whole
                    for (int look = 0; look < 20; look++) {
                      assertArrayEquals(content, Files.readAllBytes(file));
                    }
                    return null;
                  }));
        }
        all.add(
            pool.submit(
                () -> {
                  start.await();
                  for (int look = 0; look < 200; look++) {
                    try {
                      assertEquals(content.length, Files.readAllBytes(file).length);
                    } catch (NoSuchFileException notYet) {
                      // nothing is there, which is not half of something
                    }
                  }
                  return null;
                }));
        start.countDown();
        for (Future<?> one : all) {
          one.get();
        }
        assertEquals(1, filesInFolder(), "a draft is left");
      }
    } finally {
      pool.shutdownNow();
    }
  }

  @Test
  void whatFailsHalfWayLeavesNeitherFileNorDraft() throws IOException {
    assertThrows(
        IOException.class,
        () ->
            files.place(
                place,
                out -> {
                  out.write(content);
                  throw new IOException("the disk is full");
                }));
    assertFalse(files.exists(place));
    assertEquals(0, filesInFolder());
  }

  @Test
  void aFolderThatIsNotThereIsNotMade() {
    org.apache.hadoop.fs.Path elsewhere =
        new org.apache.hadoop.fs.Path(folder.resolve("gone/place").toUri());
    assertThrows(
        FileNotFoundException.class, () -> files.place(elsewhere, out -> out.write(content)));
    assertFalse(Files.exists(folder.resolve("gone")));
  }
}
