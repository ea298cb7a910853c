package io.github.ringstate.instructor.desk;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.Map;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/**
 * Listens on the loopback address and answers the page alone. The server is the JDK's own: it
 * carries a page and a few requests, and brings nothing into the jar.
 */
final class DeskServer implements AutoCloseable {

  /** A craft and a plan of the largest size, with room for the rest. */
  static final int LARGEST_BODY = 262_144;

  private static final int THREADS = 12;
  private static final int WAITING = 64;
  private static final ObjectMapper JSON = new ObjectMapper();

  private final HttpServer server;
  private final ThreadPoolExecutor threads;
  private final Gate gate;
  private final PageFiles files = new PageFiles();
  private Map<String, Action> actions = Map.of();

  /** What the page can ask for. */
  @FunctionalInterface
  interface Action {

    /**
     * Answers.
     *
     * @param sent what the page sent
     * @param reply where the answer goes
     * @throws Refused if it is not answered
     * @throws IOException if the page does not listen
     */
    void answer(JsonNode sent, Reply reply) throws Refused, IOException;
  }

  private DeskServer(HttpServer server) {
    this.server = server;
    gate = Gate.of(server.getAddress().getPort());
    threads =
        new ThreadPoolExecutor(
            THREADS, THREADS, 1, TimeUnit.MINUTES, new LinkedBlockingQueue<>(WAITING));
    threads.allowCoreThreadTimeOut(true);
  }

  /**
   * Begins to listen; nothing is answered before {@link #serve}.
   *
   * @param port the port; 0 for any that is free
   * @return the server
   * @throws IOException if the port cannot be had
   */
  static DeskServer at(int port) throws IOException {
    limitTimes();
    InetAddress loopback = InetAddress.getByAddress(Gate.HOST, new byte[] {127, 0, 0, 1});
    return new DeskServer(HttpServer.create(new InetSocketAddress(loopback, port), WAITING));
  }

  /** The server of the JDK reads these when it is first made; unless set, it waits for ever. */
  private static void limitTimes() {
    for (Map.Entry<String, String> limit :
        Map.of(
                "sun.net.httpserver.maxReqTime", "20",
                "sun.net.httpserver.maxRspTime", "120",
                "sun.net.httpserver.maxReqHeaders", "60")
            .entrySet()) {
      if (System.getProperty(limit.getKey()) == null) {
        System.setProperty(limit.getKey(), limit.getValue());
      }
    }
  }

  /** The address of the page. */
  String address() {
    return gate.address();
  }

  /**
   * Begins to answer.
   *
   * @param answers what the page can ask for, by name
   */
  void serve(Map<String, Action> answers) {
    actions = Map.copyOf(answers);
    server.setExecutor(threads);
    server.createContext("/", this::handle);
    server.start();
  }

  private void handle(HttpExchange exchange) throws IOException {
    try (exchange) {
      Reply reply = new Reply(exchange);
      try {
        answer(exchange, reply);
      } catch (Refused refused) {
        reply.refuse(refused);
      }
    }
  }

  private void answer(HttpExchange exchange, Reply reply) throws Refused, IOException {
    String asked = gate.admit(exchange);
    switch (exchange.getRequestMethod()) {
      case "GET" -> {
        String type =
            files.type(asked).orElseThrow(() -> new Refused(Refused.NOT_FOUND, "nothing here"));
        reply.send(200, type, files.bytes(asked));
      }
      case "POST" -> {
        @Nullable Action action = actions.get(asked);
        if (action == null) {
          throw new Refused(Refused.NOT_FOUND, "nothing here");
        }
        action.answer(body(exchange), reply);
      }
      default -> throw new Refused(Refused.METHOD_NOT_ALLOWED, "GET and POST alone");
    }
  }

  private static JsonNode body(HttpExchange exchange) throws Refused, IOException {
    String length = exchange.getRequestHeaders().getFirst("Content-Length");
    if (length != null && (length.length() > 9 || Integer.parseInt(length) > LARGEST_BODY)) {
      throw new Refused(Refused.TOO_LARGE, "more than " + LARGEST_BODY + " bytes");
    }
    byte[] bytes;
    try (InputStream in = exchange.getRequestBody()) {
      bytes = in.readNBytes(LARGEST_BODY + 1);
      if (bytes.length > LARGEST_BODY) {
        throw new Refused(Refused.TOO_LARGE, "more than " + LARGEST_BODY + " bytes");
      }
    }
    try {
      JsonNode sent = JSON.readTree(bytes);
      if (sent != null && sent.isObject()) {
        return sent;
      }
    } catch (JsonProcessingException broken) {
      // refused below
    }
    throw new Refused(Refused.BAD_REQUEST, "no object in JSON");
  }

  @Override
  public void close() {
    server.stop(0);
    threads.shutdownNow();
  }
}
