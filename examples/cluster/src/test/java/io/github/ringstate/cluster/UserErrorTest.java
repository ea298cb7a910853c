package io.github.ringstate.cluster;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.cluster.portion.Cut;
import io.github.ringstate.cluster.result.Manifest;
import io.github.ringstate.cluster.result.ResultFolder;
import io.github.ringstate.files.sweep.SweepFile;
import io.github.ringstate.files.text.Caution;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.apache.hadoop.conf.Configuration;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the program refuses, before it asks for a cluster. */
class UserErrorTest {

  private static final String SWEEP =
      """
      [pilot]
      delay_s = { from = 0, to = 2, values = 1000 }
      """;

  @TempDir Path folder;

  @BeforeEach
  void writeFiles() throws IOException {
    Files.writeString(folder.resolve("good.toml"), SWEEP);
    Files.writeString(folder.resolve("other.toml"), SWEEP.replace("1000", "1001"));
    Files.writeString(folder.resolve("commented.toml"), "# again\n" + SWEEP);
    Files.writeString(folder.resolve("no-toml.toml"), "[pilot\n");
    Files.writeString(folder.resolve("bad-value.toml"), "[pilot]\ndelay_s = 61\n");
    Files.writeString(folder.resolve("large.toml"), SWEEP + "count = 1000000\n");
    Files.writeString(folder.resolve("file"), "");
    Files.createDirectory(folder.resolve("full"));
    Files.writeString(folder.resolve("full/letter.txt"), "");
    Files.createDirectory(folder.resolve("damaged"));
    Files.writeString(folder.resolve("damaged/sweep.manifest"), "ringstate sweep on a cluster\n");
    SweepFile good = SweepFile.read(folder.resolve("good.toml").toString());
    begun("begun").begin(Manifest.of(good, new Cut(1000, 100)));
    begun("newer").begin(new Manifest("99", good.digests(), new Cut(1000, 100)));
  }

  private ResultFolder begun(String name) {
    return ResultFolder.named(folder.resolve(name).toString(), new Configuration());
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "nothing | 2 | \"\" | 0 names",
        "no folder | 2 | DIR/good.toml | SPEC OUTPUT",
        "too much | 2 | DIR/good.toml DIR/out more | 3 names",
        "unknown option | 2 | DIR/good.toml DIR/out --threads 2 | '--threads'",
        "portion of none | 2 | DIR/good.toml DIR/out --portion 0 | '0'",
        "portion of half | 2 | DIR/good.toml DIR/out --portion=1.5 | '1.5'",
        "huge portion | 2 | DIR/good.toml DIR/out --portion 99999999999 | 2147483647",
        "no portion | 2 | DIR/good.toml DIR/out --portion | ''",
        "crumbs | 2 | DIR/large.toml DIR/out --portion 9999 | 10000 points or more",
        "no such file | 1 | DIR/missing.toml DIR/out | there is no such file",
        "no TOML | 1 | DIR/no-toml.toml DIR/out | line 1",
        "bad value | 1 | DIR/bad-value.toml DIR/out | pilot.delay_s cannot be '61.0'",
        "output is a file | 1 | DIR/good.toml DIR/file | it is a file",
        "output has other things | 1 | DIR/good.toml DIR/full | other things",
        "output below a file | 1 | DIR/good.toml DIR/file/out | DIR/file/out cannot",
        "no such file system | 1 | DIR/good.toml nowhere://out | of this kind",
        "no library for it | 1 | DIR/good.toml s3a://bucket/out | of this kind",
        "no host | 1 | DIR/good.toml hdfs:///out | authority",
        "no such host | 1 | DIR/good.toml hdfs://no.host.invalid/out | no host no.host.invalid",
        "a file on a host | 1 | DIR/good.toml file://host/out | file://host/out",
        "damaged manifest | 1 | DIR/good.toml DIR/damaged | manifest is damaged",
        "another sweep | 1 | DIR/other.toml DIR/begun | another sweep: that one has 'points 1000'",
        "another text | 1 | DIR/commented.toml DIR/begun | 'digest of SPEC ",
        "another version | 1 | DIR/good.toml DIR/newer | 'version 99'",
        "another cut | 1 | DIR/good.toml DIR/begun --portion 50 | portion 100'",
      })
  void whatCannotBeIsRefusedInOneSentenceWithAStatusAndNothingIsTouched(
      String what, int status, String args, String part) throws IOException {
    List<String> before = everything();
    Captured captured = new Captured();
    List<String> words =
        args.isEmpty()
            ? List.of()
            : Arrays.stream(args.split(" ", -1))
                .map(word -> word.replace("DIR", folder.toString()))
                .toList();
    int actual = SweepJob.run(words, captured.out(), captured.err());
    String message = captured.errText();
    assertAll(
        () -> assertEquals(status, actual, message),
        () -> assertEquals(1, message.lines().count(), message),
        () -> assertTrue(message.startsWith("ringstate-cluster: "), message),
        () -> assertTrue(message.contains(part.replace("DIR", folder.toString())), message),
        () -> assertEquals("", captured.outText()),
        () -> assertEquals(before, everything()));
  }

  private List<String> everything() throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.map(Path::toString).sorted().toList();
    }
  }

  @Test
  void helpCarriesTheCaution() {
    Captured captured = new Captured();
    assertEquals(0, SweepJob.run(List.of("--help"), captured.out(), captured.err()));
    assertTrue(captured.outText().contains(Caution.TEXT));
  }
}
