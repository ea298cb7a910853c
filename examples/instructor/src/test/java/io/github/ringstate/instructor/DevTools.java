package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.WebSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/**
 * A browser without a window that shows one page, driven as by a person at the keyboard (Chrome
 * DevTools Protocol).
 */
final class DevTools implements AutoCloseable {

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final long PATIENCE = 60;

  private final Process browser;
  private final WebSocket socket;
  private final BlockingQueue<JsonNode> answers = new LinkedBlockingQueue<>();
  private final List<String> complaints = Collections.synchronizedList(new ArrayList<>());
  private int last;

  /**
   * Opens a page from disk.
   *
   * @param program the browser
   * @param folder where it may keep its things
   * @param page the page
   */
  DevTools(String program, Path folder, Path page) throws IOException, InterruptedException {
    Path profile = Files.createTempDirectory(folder, "profile");
    browser =
        new ProcessBuilder(
                program,
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--remote-debugging-port=0",
                "--user-data-dir=" + profile,
                page.toUri().toString())
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    int port = port(profile.resolve("DevToolsActivePort"));
    HttpClient http = HttpClient.newHttpClient();
    socket =
        http.newWebSocketBuilder()
            .buildAsync(URI.create(target(http, port, page)), new Listening())
            .join();
    command("Runtime.enable", Map.of());
    command("Log.enable", Map.of());
    command("Page.bringToFront", Map.of());
    // the tab is there before the page is in it
    await(
        "document.readyState === 'complete' && location.href.endsWith('"
            + page.getFileName()
            + "')");
  }

  private static int port(Path file) throws IOException, InterruptedException {
    for (long i = 0; i < 10 * PATIENCE; i++) {
      if (Files.exists(file)) {
        List<String> lines = Files.readAllLines(file);
        if (lines.size() > 1) {
          return Integer.parseInt(lines.get(0));
        }
      }
      Thread.sleep(100);
    }
    throw new IllegalStateException("the browser does not answer");
  }

  private static String target(HttpClient http, int port, Path page)
      throws IOException, InterruptedException {
    HttpRequest list =
        HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + "/json/list")).build();
    for (long i = 0; i < 10 * PATIENCE; i++) {
      JsonNode targets =
          JSON.readTree(http.send(list, HttpResponse.BodyHandlers.ofString()).body());
      for (JsonNode target : targets) {
        if (target.path("url").asText().endsWith(page.getFileName().toString())) {
          return target.path("webSocketDebuggerUrl").asText();
        }
      }
      Thread.sleep(100);
    }
    throw new IllegalStateException("the browser does not show the page");
  }

  private final class Listening implements WebSocket.Listener {

    private final StringBuilder text = new StringBuilder();

    @Override
    public CompletionStage<?> onText(WebSocket webSocket, CharSequence data, boolean whole) {
      text.append(data);
      if (whole) {
        hear(text.toString());
        text.setLength(0);
      }
      webSocket.request(1);
      return null;
    }
  }

  private void hear(String message) {
    try {
      JsonNode node = JSON.readTree(message);
      String event = node.path("method").asText();
      if (node.has("id")) {
        answers.add(node);
      } else if (event.equals("Runtime.exceptionThrown")
          || event.equals("Runtime.consoleAPICalled")
          || event.equals("Log.entryAdded")) {
        complaints.add(node.path("params").toString());
      }
    } catch (IOException broken) {
      complaints.add(broken.toString());
    }
  }

  private JsonNode command(String method, Map<String, Object> parameters)
      throws IOException, InterruptedException {
    ObjectNode message = JSON.createObjectNode();
    message.put("id", ++last);
    message.put("method", method);
    message.set("params", JSON.valueToTree(parameters));
    socket.sendText(message.toString(), true).join();
    while (true) {
      JsonNode answer = answers.poll(PATIENCE, TimeUnit.SECONDS);
      assertTrue(answer != null, method + " is not answered");
      if (answer.path("id").asInt() == last) {
        assertTrue(!answer.has("error"), () -> method + ": " + answer.path("error"));
        return answer.path("result");
      }
    }
  }

  /**
   * What a script says of the page.
   *
   * @param script an expression
   * @return its value as text
   */
  String ask(String script) throws IOException, InterruptedException {
    JsonNode result = command("Runtime.evaluate", Map.of("expression", "String(" + script + ")"));
    return result.path("result").path("value").asText();
  }

  private void await(String script) throws IOException, InterruptedException {
    for (long i = 0; i < 10 * PATIENCE; i++) {
      if (ask(script).equals("true")) {
        return;
      }
      Thread.sleep(100);
    }
    throw new IllegalStateException(script);
  }

  /**
   * Presses a key and lets it go.
   *
   * @param key its name in the standard UI Events of the W3C, for instance {@code ArrowRight}
   */
  void press(String key) throws IOException, InterruptedException {
    int code =
        switch (key) {
          case "Tab" -> 9;
          case " " -> 32;
          case "End" -> 35;
          case "Home" -> 36;
          case "ArrowLeft" -> 37;
          case "ArrowRight" -> 39;
          default -> throw new IllegalArgumentException(key);
        };
    String name = key.equals(" ") ? "Space" : key;
    String type = key.equals(" ") ? "keyDown" : "rawKeyDown";
    command(
        "Input.dispatchKeyEvent",
        key.equals(" ")
            ? Map.of(
                "type", type, "key", key, "code", name, "windowsVirtualKeyCode", code, "text", " ")
            : Map.of("type", type, "key", key, "code", name, "windowsVirtualKeyCode", code));
    command(
        "Input.dispatchKeyEvent",
        Map.of("type", "keyUp", "key", key, "code", name, "windowsVirtualKeyCode", code));
  }

  /**
   * The page as it would be printed.
   *
   * @return a PDF
   */
  byte[] printed() throws IOException, InterruptedException {
    JsonNode result =
        command("Page.printToPDF", Map.of("preferCSSPageSize", true, "printBackground", false));
    return Base64.getDecoder().decode(result.path("data").asText());
  }

  /**
   * Makes the window that of a telephone.
   *
   * @param width its width, in pixels
   */
  void narrow(int width) throws IOException, InterruptedException {
    sized(width, 800);
  }

  /**
   * Makes the window of a size.
   *
   * @param width its width, in pixels
   * @param height its height
   */
  void sized(int width, int height) throws IOException, InterruptedException {
    command(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
    await("window.innerWidth === " + width);
    // the page hears of its new width when the next frame is drawn, in any case before the one
    // after
    command(
        "Runtime.evaluate",
        Map.of(
            "expression",
            "new Promise(function (drawn) { requestAnimationFrame(function () {"
                + " requestAnimationFrame(drawn); }); })",
            "awaitPromise",
            true));
  }

  /**
   * What went to the console.
   *
   * @return the messages
   */
  List<String> complaints() {
    return List.copyOf(complaints);
  }

  @Override
  public void close() {
    socket.abort();
    browser.destroy();
    try {
      if (!browser.waitFor(PATIENCE, TimeUnit.SECONDS)) {
        browser.destroyForcibly();
      }
    } catch (InterruptedException ended) {
      browser.destroyForcibly();
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "browser %d", browser.pid());
  }
}
