package io.github.ringstate.cluster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The job's jar, submitted as the guide says, on the cores of this machine. */
class SubmitIT {

  @TempDir Path folder;

  @Test
  void aUserErrorEndsTheProgramWithItsStatusAndASentence()
      throws IOException, InterruptedException {
    try (SparkOnLoopback spark = new SparkOnLoopback(folder)) {
      Path missing = folder.resolve("missing.toml");
      Process refused = spark.submit("local[*]", missing, folder.resolve("out"));
      assertEquals(1, refused.waitFor());
      assertTrue(spark.logs().contains(missing + " cannot be read: there is no such file"));
      assertFalse(Files.exists(folder.resolve("out")));
    }
  }

  @Test
  void theJarFliesOnAllCoresOfThisMachineToTheRowsOfTheLocalTool()
      throws IOException, InterruptedException {
    Path spec =
        Files.writeString(
            folder.resolve("sweep.toml"),
            """
            [pilot]
            technique = ["forward", "lateral"]
            delay_s = { from = 0, to = 2, values = 50 }
            """);
    try (SparkOnLoopback spark = new SparkOnLoopback(folder)) {
      spark.awaitEnd(spark.submit("local[*]", spec, folder.resolve("out")));
    }
    assertEquals(
        LocalTool.fly(spec, folder.resolve("local.parquet")),
        RowTable.ofPortions(folder.resolve("out")));
  }
}
