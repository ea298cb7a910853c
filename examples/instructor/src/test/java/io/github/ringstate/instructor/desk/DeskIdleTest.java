package io.github.ringstate.instructor.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A desk without a page. */
class DeskIdleTest {

  private static final Fields NONE = new Fields(part -> Map.of(), Map.of(), Map.of());

  @Test
  void aDeskThatNobodyAsksEndsAfterItsTimeAndNotBefore() throws IOException, InterruptedException {
    try (Desk desk = Desk.open(0, (arguments, kept, out, err, recipient) -> 0, NONE)) {
      HttpClient browser = HttpClient.newHttpClient();
      HttpRequest page = HttpRequest.newBuilder(URI.create(desk.address())).build();
      assertEquals(200, browser.send(page, BodyHandlers.discarding()).statusCode());
      long alone = Duration.ofMillis(1200).toNanos();
      long[] ended = new long[1];
      Thread waiting =
          new Thread(
              () -> {
                try {
                  desk.awaitEnd(alone);
                  ended[0] = System.nanoTime();
                } catch (InterruptedException given) {
                  Thread.currentThread().interrupt();
                }
              });
      waiting.start();
      Thread.sleep(300);
      long heard = System.nanoTime();
      assertEquals(200, browser.send(page, BodyHandlers.discarding()).statusCode());
      Thread.sleep(300);
      // one who does not know the secret keeps it open for nobody
      URI stranger = URI.create(desk.address()).resolve("/");
      browser.send(HttpRequest.newBuilder(stranger).build(), BodyHandlers.discarding());
      long last = System.nanoTime();
      waiting.join(10_000);
      assertTrue(ended[0] - heard >= alone, "ended while a page was there");
      assertTrue(ended[0] - last < alone, "kept open by a stranger");
    }
  }
}
