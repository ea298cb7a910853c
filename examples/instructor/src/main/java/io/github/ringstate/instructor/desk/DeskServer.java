package io.github.ringstate.instructor.desk;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.Map;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/**
 * Listens on the loopback address and answers the page alone. The server is the JDK's own: it
 * carries a page and a few requests, and brings nothing into the jar.
 */
final class DeskServer implements AutoCloseable {

  private static final int WAITING = 64;

  /** A recording waits so long for the one before it, s. */
  private static final int PATIENCE = 60;

  private final HttpServer server;
  private final Readers threads = new Readers();
  private final Gate gate;
  private final PageFiles files = new PageFiles();

  /** Recordings are large: one at a time is in memory. */
  private final Semaphore recordings = new Semaphore(1, true);

  private volatile long heard = System.nanoTime();
  private Map<String, Action> actions = Map.of();

  /** What the page can ask for. */
  @FunctionalInterface
  interface Action {

    /**
     * Answers.
     *
     * @param body what the page sent
     * @param reply where the answer goes
     * @throws Refused if it is not answered
     * @throws IOException if the page does not listen
     */
    void answer(Body body, Reply reply) throws Refused, IOException;
  }

  private DeskServer(HttpServer server) {
    this.server = server;
    gate = Gate.of(server.getAddress().getPort());
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

  /**
   * The server of the JDK reads these when it is first made; unless set, it waits for ever, and for
   * the rest of a request that was refused. The rest of one that was answered is empty, which it
   * sees only if it may look.
   */
  private static void limitTimes() {
    for (Map.Entry<String, String> limit :
        Map.of(
                "sun.net.httpserver.maxReqTime", "10",
                "sun.net.httpserver.drainAmount", "1",
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
      } catch (RuntimeException fault) {
        // the server would pass over it in silence
        Thread thread = Thread.currentThread();
        thread.getUncaughtExceptionHandler().uncaughtException(thread, fault);
        if (exchange.getResponseCode() < 0) {
          reply.refuse(new Refused(Refused.FAULT, "a fault of the tool, which it has printed"));
        }
      }
    }
  }

  private void answer(HttpExchange exchange, Reply reply) throws Refused, IOException {
    String asked = gate.admit(exchange);
    threads.admit();
    heard = System.nanoTime();
    switch (exchange.getRequestMethod()) {
      case "GET", "HEAD" -> {
        String type =
            files.type(asked).orElseThrow(() -> new Refused(Refused.NOT_FOUND, "nothing here"));
        reply.send(200, type, files.bytes(asked));
      }
      case "POST" -> {
        @Nullable Action action = actions.get(asked);
        if (action == null) {
          throw new Refused(Refused.NOT_FOUND, "nothing here");
        }
        act(action, exchange, reply);
      }
      default -> throw new Refused(Refused.METHOD_NOT_ALLOWED, "GET, HEAD and POST alone");
    }
  }

  private void act(Action action, HttpExchange exchange, Reply reply) throws Refused, IOException {
    if (!Gate.isRecording(exchange)) {
      action.answer(Body.object(exchange), reply);
      return;
    }
    boolean alone = false;
    try {
      alone = recordings.tryAcquire(PATIENCE, TimeUnit.SECONDS);
      if (!alone) {
        throw new Refused(Refused.BUSY, "another recording is being reviewed");
      }
      action.answer(Body.withRecording(exchange), reply);
    } catch (InterruptedException ended) {
      Thread.currentThread().interrupt();
    } finally {
      if (alone) {
        recordings.release();
      }
    }
  }

  /** How long nobody that was let in has been heard, ns. */
  long silence() {
    return System.nanoTime() - heard;
  }

  @Override
  public void close() {
    server.stop(0);
    threads.close();
  }
}
