package io.github.ringstate.instructor.desk;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.sun.net.httpserver.HttpExchange;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;

/**
 * What a request carries: an object in JSON, and behind its line the bytes of a recorded flight if
 * one is sent along. They are in memory for as long as the request takes.
 */
final class Body {

  /** A craft and a plan of the largest size, with room for the rest. */
  static final int LARGEST = 262_144;

  /** Five hours of a reading a second with all quantities are a third of it. */
  static final int LARGEST_RECORDING = 50 << 20;

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final byte[] NO_RECORDING = {};

  private final JsonNode sent;
  private final byte[] recording;

  private Body(JsonNode sent, byte[] recording) {
    this.sent = sent;
    this.recording = recording;
  }

  /** The object. */
  JsonNode sent() {
    return sent;
  }

  /** The bytes of the recording; none if none is sent along. */
  byte[] recording() {
    return recording;
  }

  /** Reads an object. */
  static Body object(HttpExchange exchange) throws Refused, IOException {
    refuseAbove(LARGEST, exchange);
    try (InputStream in = exchange.getRequestBody()) {
      byte[] bytes = in.readNBytes(LARGEST + 1);
      if (bytes.length > LARGEST) {
        throw tooLarge(LARGEST);
      }
      return new Body(parsed(bytes), NO_RECORDING);
    }
  }

  /** Reads an object in one line, and the recording behind it. */
  static Body withRecording(HttpExchange exchange) throws Refused, IOException {
    refuseAbove(LARGEST + LARGEST_RECORDING, exchange);
    try (InputStream in = exchange.getRequestBody()) {
      JsonNode sent = parsed(line(in));
      byte[] recording = in.readNBytes(LARGEST_RECORDING + 1);
      if (recording.length > LARGEST_RECORDING) {
        throw tooLarge(LARGEST_RECORDING);
      }
      return new Body(sent, recording);
    }
  }

  private static byte[] line(InputStream in) throws Refused, IOException {
    ByteArrayOutputStream line = new ByteArrayOutputStream();
    for (int one = in.read(); one >= 0 && one != '\n'; one = in.read()) {
      if (line.size() >= LARGEST) {
        throw tooLarge(LARGEST);
      }
      line.write(one);
    }
    return line.toByteArray();
  }

  private static void refuseAbove(int most, HttpExchange exchange) throws Refused {
    String length = exchange.getRequestHeaders().getFirst("Content-Length");
    if (length != null && (length.length() > 9 || Integer.parseInt(length) > most)) {
      throw tooLarge(most);
    }
  }

  private static Refused tooLarge(int most) {
    return new Refused(Refused.TOO_LARGE, "more than " + most + " bytes");
  }

  private static JsonNode parsed(byte[] bytes) throws Refused, IOException {
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
}
