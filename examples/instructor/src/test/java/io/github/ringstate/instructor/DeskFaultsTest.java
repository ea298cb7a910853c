package io.github.ringstate.instructor;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.github.ringstate.Soak;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.SocketException;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What no page does to the desk, for a moment in each build and for minutes in the soak. */
@Tag("soak")
class DeskFaultsTest {

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String LENGTH = "\r\nContent-Length: ";

  @AutoClose private static OpenDesk desk = new OpenDesk();

  private static Socket connected() throws IOException {
    return new Socket(InetAddress.getLoopbackAddress(), desk.address().getPort());
  }

  private static void send(Socket socket, String text) throws IOException {
    socket.getOutputStream().write(text.getBytes(ISO_8859_1));
    socket.getOutputStream().flush();
  }

  /** The head of a request as the page sends it, without the empty line behind it. */
  private static String head(String action) {
    return "POST "
        + desk.address().getPath()
        + action
        + " HTTP/1.1\r\nHost: 127.0.0.1:"
        + desk.address().getPort()
        + "\r\nOrigin: "
        + desk.origin()
        + "\r\nContent-Type: "
        + OpenDesk.TYPE;
  }

  private static void assertAnswers() throws IOException, InterruptedException {
    long from = System.nanoTime();
    assertEquals(200, desk.post("start", "{}").statusCode());
    assertTrue(System.nanoTime() - from < 5_000_000_000L, "kept waiting");
  }

  @Test
  void pagesThatDoNotReadKeepNobodyElseWaiting() throws IOException, InterruptedException {
    for (int round = 0; round < (Soak.isWhole() ? 20 : 1); round++) {
      List<Socket> slow = new ArrayList<>();
      try {
        for (int i = 0; i < 3; i++) {
          String body = "{\"tab\":\"slow" + i + "\",\"units\":\"aviation\",\"plan\":{}}";
          Socket socket = connected();
          socket.setReceiveBufferSize(1024);
          slow.add(socket);
          send(socket, head("study") + LENGTH + body.length() + "\r\n\r\n" + body);
        }
        assertEquals(1, desk.study("{}", 1).size());
        assertAnswers();
      } finally {
        for (Socket socket : slow) {
          socket.close();
        }
      }
    }
  }

  @Test
  void everyStudyThatIsOvertakenHasAnAnswerThatEndsAsItShould()
      throws IOException, InterruptedException {
    // RFC 9112, 7.1 and 8: a chunked answer is whole with its last chunk; the client sees to it
    SplittableRandom random = new SplittableRandom(19);
    List<CompletableFuture<HttpResponse<String>>> answers = new ArrayList<>();
    for (int i = 0; i < (Soak.isWhole() ? 2_000 : 30); i++) {
      answers.add(desk.studyToTheEnd());
      Thread.sleep(30 + random.nextInt(20)); // the page asks every 40 ms at most
    }
    int whole = 0;
    for (CompletableFuture<HttpResponse<String>> one : answers) {
      HttpResponse<String> answer = one.join();
      assertEquals(200, answer.statusCode(), answer.body());
      List<String> lines = answer.body().lines().toList();
      JsonNode last = JSON.readTree(lines.get(lines.size() - 1));
      assertTrue(last.has("done") || last.has("overtaken"), last.toString());
      whole += last.has("done") ? 1 : 0;
    }
    assertTrue(whole >= 1, "none was flown to its end");
  }

  @Test
  void requestsThatTrickleInWithoutTheSecretKeepNobodyOut()
      throws IOException, InterruptedException {
    for (int round = 0; round < (Soak.isWhole() ? 20 : 1); round++) {
      List<Socket> slow = new ArrayList<>();
      try {
        for (int i = 0; i < 100; i++) {
          Socket socket = connected();
          slow.add(socket);
          send(socket, "GET / HTTP/1.1\r\nHost: ");
        }
        assertAnswers();
      } finally {
        for (Socket socket : slow) {
          socket.close();
        }
      }
    }
  }

  @Test
  void aLargeRecordingIsTakenAndALargerOneIsNot() throws IOException, InterruptedException {
    byte[] large = OpenDesk.large((Soak.isWhole() ? 50 : 2) << 20);
    for (int round = 0; round < (Soak.isWhole() ? 20 : 1); round++) {
      JsonNode answer = JSON.readTree(review(large).body());
      assertEquals("GPX", answer.path("facts").path("format").asText(), answer.toString());
    }
    String tooLarge =
        head("review").replace(OpenDesk.TYPE, OpenDesk.RECORDING) + LENGTH + (51 << 20);
    assertEquals("413", status(tooLarge + "\r\n\r\n"));
    if (Soak.isWhole()) {
      assertEquals(413, review(new byte[(50 << 20) + 1]).statusCode());
    }
  }

  private static HttpResponse<byte[]> review(byte[] recording)
      throws IOException, InterruptedException {
    String line = "{\"name\":\"x.gpx\",\"units\":\"aviation\",\"plan\":{}}\n";
    return desk.review(line, recording);
  }

  /** The status of the answer to what is sent; nothing if the server hangs up instead. */
  private static String status(String request) throws IOException {
    try (Socket socket = connected()) {
      socket.setSoTimeout(20_000);
      send(socket, request);
      socket.shutdownOutput();
      ByteArrayOutputStream line = new ByteArrayOutputStream();
      InputStream in = socket.getInputStream();
      for (int one = in.read(); one >= 0 && one != '\r'; one = in.read()) {
        line.write(one);
      }
      String[] words = line.toString(US_ASCII).split(" ", -1);
      return words.length > 1 ? words[1] : "";
    } catch (SocketException hungUp) {
      return "";
    }
  }

  /** A request of the page with one thing changed that lets a stranger in or breaks the server. */
  private static String attack(SplittableRandom random) {
    String secret = desk.address().getPath().replace("/", "");
    String body = "{\"numbers\":{}}";
    String whole = head("manual") + LENGTH + body.length() + "\r\n\r\n" + body;
    int at = random.nextInt(secret.length());
    char other = secret.charAt(at) == 'x' ? 'y' : 'x';
    return switch (random.nextInt(9)) {
      case 0 -> whole.replace(secret, secret.substring(0, at) + other + secret.substring(at + 1));
      case 1 -> whole.replace(secret, secret.substring(0, at));
      case 2 -> whole.replace("Host: 127.0.0.1", "Host: " + random.nextInt(256) + ".0.0.2");
      case 3 -> whole.replace("Origin: http:", "Origin: https:");
      case 4 -> whole.replace("\r\nOrigin: " + desk.origin(), "");
      case 5 -> whole.replace(OpenDesk.TYPE, "text/plain");
      case 6 -> whole.replace("\r\nOrigin", "\r\nSec-Fetch-Site: cross-site\r\nOrigin");
      case 7 -> whole.replace(secret + "/manual", secret + "/.." + "/".repeat(at) + "manual");
      default -> {
        // a byte that is no part of a request line or of JSON
        int cut = random.nextInt(whole.indexOf(" HTTP"));
        yield whole.substring(0, cut) + (char) random.nextInt(32) + whole.substring(cut + 1);
      }
    };
  }

  @Test
  void aRequestWithOneThingWrongIsNotAnswered() throws IOException, InterruptedException {
    SplittableRandom random = new SplittableRandom(19);
    for (int i = 0; i < (Soak.isWhole() ? 20_000 : 60); i++) {
      String attack = attack(random);
      String status = status(attack);
      assertTrue(status.isEmpty() || status.startsWith("4"), () -> status + " to " + attack);
    }
    assertAnswers();
  }
}
