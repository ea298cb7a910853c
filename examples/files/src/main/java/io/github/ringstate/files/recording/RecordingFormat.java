package io.github.ringstate.files.recording;

import java.util.regex.Pattern;

/** How a recorded flight is written down. */
public enum RecordingFormat {
  /** GPX 1.1, the exchange format for positions by satellite. */
  GPX("GPX"),
  /** Sentences of NMEA 0183. */
  NMEA("NMEA 0183"),
  /** Values separated by commas (RFC 4180), semicolons or tabs. */
  CSV("CSV");

  private static final int HEAD = 65_536;
  private static final Pattern SENTENCE =
      Pattern.compile("^[$!][A-Z]{2}[A-Z]{3},", Pattern.MULTILINE);
  private static final Pattern ELEMENT = Pattern.compile("<(?:[A-Za-z]+:)?(?:gpx|trkpt)\\b");

  private final String label;

  RecordingFormat(String label) {
    this.label = label;
  }

  /**
   * The format's name.
   *
   * @return the name
   */
  public String label() {
    return label;
  }

  /** The format of a text, by its beginning; what is neither of the others is CSV. */
  static RecordingFormat of(String text) {
    String head = text.substring(0, Math.min(HEAD, text.length()));
    if (ELEMENT.matcher(head).find() || head.stripLeading().startsWith("<")) {
      return GPX;
    }
    return SENTENCE.matcher(head).find() ? NMEA : CSV;
  }
}
