package io.github.ringstate.instructor;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.locks.LockSupport;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The briefing desk, opened by its command on a thread of its own. */
final class OpenDesk implements AutoCloseable {

  static final String TYPE = "application/vnd.ringstate.desk+json";
  static final String RECORDING = "application/vnd.ringstate.desk+recording";

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Pattern ADDRESS = Pattern.compile("http://127\\.0\\.0\\.1:[0-9]+/[^ ]+/");
  private static final int PATIENCE = 600;

  private final Thread thread;
  private final URI address;
  private final HttpClient http = HttpClient.newHttpClient();

  OpenDesk() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    thread = new Thread(() -> Main.commandLine(out).execute("desk", "--no-browser"));
    thread.start();
    address = URI.create(address(out));
  }

  private static String address(ByteArrayOutputStream out) {
    for (int i = 0; i < PATIENCE; i++) {
      Matcher found = ADDRESS.matcher(out.toString(UTF_8));
      if (found.find()) {
        return found.group();
      }
      LockSupport.parkNanos(50_000_000);
    }
    throw new IllegalStateException("the desk says no address");
  }

  /** A recording of so many bytes, blank behind its end. */
  static byte[] large(int bytes) throws IOException {
    byte[] flight = Documents.recording("gnss-1hz.gpx");
    byte[] large = Arrays.copyOf(flight, bytes);
    Arrays.fill(large, flight.length, bytes, (byte) ' ');
    return large;
  }

  /** The address that the command printed. */
  URI address() {
    return address;
  }

  /** As a page names itself. */
  String origin() {
    return "http://127.0.0.1:" + address.getPort();
  }

  /** A request such as the page sends. */
  HttpRequest.Builder request(String action) {
    return HttpRequest.newBuilder(address.resolve(action))
        .header("Origin", origin())
        .header("Content-Type", TYPE);
  }

  /** What the desk answers. */
  HttpResponse<String> send(HttpRequest request) throws IOException, InterruptedException {
    return http.send(request, HttpResponse.BodyHandlers.ofString());
  }

  /** What the desk answers, byte for byte. */
  HttpResponse<byte[]> bytes(HttpRequest request) throws IOException, InterruptedException {
    return http.send(request, HttpResponse.BodyHandlers.ofByteArray());
  }

  /** What the desk answers the page. */
  HttpResponse<String> post(String action, String body) throws IOException, InterruptedException {
    return send(request(action).POST(HttpRequest.BodyPublishers.ofString(body)).build());
  }

  /** What the desk answers about a recording: a line of JSON, and the file behind it. */
  HttpResponse<byte[]> review(String line, byte[] recording)
      throws IOException, InterruptedException {
    return bytes(
        HttpRequest.newBuilder(address.resolve("review"))
            .header("Origin", origin())
            .header("Content-Type", RECORDING)
            .POST(
                HttpRequest.BodyPublishers.concat(
                    HttpRequest.BodyPublishers.ofString(line),
                    HttpRequest.BodyPublishers.ofByteArray(recording)))
            .build());
  }

  private HttpRequest study(String plan) {
    String body = "{\"tab\":\"a\",\"units\":\"aviation\",\"plan\":" + plan + "}";
    return request("study").POST(HttpRequest.BodyPublishers.ofString(body)).build();
  }

  /** A study of a page that reads on when it has asked for the next. */
  CompletableFuture<HttpResponse<String>> studyToTheEnd() {
    return http.sendAsync(study("{}"), HttpResponse.BodyHandlers.ofString());
  }

  /** The first lines of a study; the page then goes away. */
  List<JsonNode> study(String plan, int count) throws IOException, InterruptedException {
    HttpResponse<Stream<String>> answer =
        http.send(study(plan), HttpResponse.BodyHandlers.ofLines());
    assertEquals(200, answer.statusCode());
    List<JsonNode> lines = new ArrayList<>();
    try (Stream<String> all = answer.body()) {
      for (String line : (Iterable<String>) all.limit(count)::iterator) {
        lines.add(JSON.readTree(line));
      }
    }
    return lines;
  }

  /** Whether the command has ended. */
  boolean isEnded() throws InterruptedException {
    thread.join(10_000);
    return !thread.isAlive();
  }

  @Override
  public void close() {
    thread.interrupt();
    try {
      thread.join();
    } catch (InterruptedException ended) {
      Thread.currentThread().interrupt();
    }
  }
}
