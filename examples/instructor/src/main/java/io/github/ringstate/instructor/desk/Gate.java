package io.github.ringstate.instructor.desk;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.List;

/**
 * Who is let in: a browser of this machine that was given the address. Another site that a browser
 * shows can send requests here, but knows no secret, names itself as the origin, and under a name
 * of its own for this machine also as the host.
 *
 * @param port the port
 * @param secret the part of the address that nobody guesses
 */
record Gate(int port, String secret) {

  /** The loopback address, RFC 1122. A name could be made to mean another machine. */
  static final String HOST = "127.0.0.1";

  /** What the page sends; no form can, and another origin only if it is allowed to (it is not). */
  static final String TYPE = "application/vnd.ringstate.desk+json";

  /** What the page sends with a recording behind it. */
  private static final String RECORDING_TYPE = "application/vnd.ringstate.desk+recording";

  private static final int SECRET_BYTES = 24;

  /** Pages of other origins have their requests marked by the browser (W3C Fetch Metadata). */
  private static final List<String> SITES = List.of("same-origin", "none");

  /** A gate with a new secret. */
  static Gate of(int port) {
    byte[] random = new byte[SECRET_BYTES];
    new SecureRandom().nextBytes(random);
    return new Gate(port, Base64.getUrlEncoder().withoutPadding().encodeToString(random));
  }

  /** The address of the page. */
  String address() {
    return origin() + "/" + secret + "/";
  }

  private String origin() {
    return "http://" + HOST + ":" + port;
  }

  /**
   * Lets a request in.
   *
   * @param exchange the request
   * @return what it asks for: the path behind the secret
   * @throws Refused if it is not let in
   */
  String admit(HttpExchange exchange) throws Refused {
    Headers headers = exchange.getRequestHeaders();
    boolean post = exchange.getRequestMethod().equals("POST");
    if (!only(headers, "Host").equals(HOST + ":" + port)) {
      throw new Refused(Refused.FORBIDDEN, "wrong host");
    }
    String from = only(headers, "Origin");
    if (post ? !from.equals(origin()) : !from.isEmpty() && !from.equals(origin())) {
      throw new Refused(Refused.FORBIDDEN, "wrong origin");
    }
    String site = only(headers, "Sec-Fetch-Site");
    if (!site.isEmpty() && !SITES.contains(site)) {
      throw new Refused(Refused.FORBIDDEN, "wrong site");
    }
    String path = exchange.getRequestURI().getRawPath();
    int end = path.indexOf('/', 1);
    if (end < 0 || !isSecret(path.substring(1, end))) {
      throw new Refused(Refused.NOT_FOUND, "nothing here");
    }
    if (post && !only(headers, "Content-Type").equals(TYPE) && !isRecording(exchange)) {
      throw new Refused(Refused.WRONG_TYPE, "wrong type");
    }
    return path.substring(end + 1);
  }

  /** Whether a recorded flight is sent along. */
  static boolean isRecording(HttpExchange exchange) {
    return RECORDING_TYPE.equals(exchange.getRequestHeaders().getFirst("Content-Type"));
  }

  /** In a time that does not depend on how much of it was right. */
  private boolean isSecret(String given) {
    return MessageDigest.isEqual(
        given.getBytes(StandardCharsets.UTF_8), secret.getBytes(StandardCharsets.UTF_8));
  }

  private static String only(Headers headers, String name) throws Refused {
    List<String> values = headers.getOrDefault(name, List.of());
    if (values.size() > 1) {
      throw new Refused(Refused.BAD_REQUEST, name + " stands twice");
    }
    return values.isEmpty() ? "" : values.get(0);
  }
}
