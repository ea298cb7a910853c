package io.github.ringstate.instructor.desk;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/** The answer to one request. */
final class Reply {

  /** Scripts, styles, letters and requests of this page alone; drawings may be data. */
  private static final String POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self'; font-src 'self';"
          + " img-src 'self' data:; connect-src 'self'; form-action 'none';"
          + " frame-ancestors 'none'; base-uri 'none'";

  private static final String JSON_TYPE = "application/json";
  private static final ObjectMapper JSON = new ObjectMapper();

  private final HttpExchange exchange;

  Reply(HttpExchange exchange) {
    this.exchange = exchange;
    Headers headers = exchange.getResponseHeaders();
    headers.set("Content-Security-Policy", POLICY);
    headers.set("X-Content-Type-Options", "nosniff");
    headers.set("Referrer-Policy", "no-referrer");
    headers.set("Cross-Origin-Resource-Policy", "same-origin");
    headers.set("Cross-Origin-Opener-Policy", "same-origin");
    headers.set("Cache-Control", "no-store");
  }

  /** Sends bytes. */
  void send(int status, String type, byte[] bytes) throws IOException {
    exchange.getResponseHeaders().set("Content-Type", type);
    if (exchange.getRequestMethod().equals("HEAD")) {
      exchange.getResponseHeaders().set("Content-Length", String.valueOf(bytes.length));
      exchange.sendResponseHeaders(status, -1);
      return;
    }
    exchange.sendResponseHeaders(status, bytes.length == 0 ? -1 : bytes.length);
    exchange.getResponseBody().write(bytes);
    // JDK 25 keeps the head with the bytes, and a request that is not read to its end loses both
    exchange.getResponseBody().flush();
  }

  /** Sends a refusal, and hangs up: what is left of the request is not read. */
  void refuse(Refused why) throws IOException {
    exchange.getResponseHeaders().set("Connection", "close");
    if (why.status() == Refused.METHOD_NOT_ALLOWED) {
      exchange.getResponseHeaders().set("Allow", "GET, HEAD, POST");
    }
    send(
        why.status(),
        "text/plain; charset=utf-8",
        String.valueOf(why.getMessage()).getBytes(StandardCharsets.UTF_8));
  }

  /** Sends JSON. */
  void send(JsonNode json) throws IOException {
    send(200, JSON_TYPE, JSON.writeValueAsBytes(json));
  }

  /** Begins an answer of many lines, each JSON. */
  Lines lines() throws IOException {
    exchange.getResponseHeaders().set("Content-Type", "application/x-ndjson");
    exchange.sendResponseHeaders(200, 0);
    return new Lines(exchange.getResponseBody());
  }

  /**
   * An answer of many lines.
   *
   * @param out where they go
   */
  record Lines(OutputStream out) {

    /** Sends a line at once. */
    void send(JsonNode line) throws IOException {
      out.write(JSON.writeValueAsBytes(line));
      out.write('\n');
      out.flush();
    }
  }
}
