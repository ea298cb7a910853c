package io.github.ringstate.files.recording;

import java.util.regex.Pattern;

/** How a recorded flight is written down. */
public enum RecordingFormat {
  /** GPX 1.1, the exchange format for positions by satellite. */
  GPX(
      "GPX",
      "each point needs a time element and an ele element, as a recorded track has them and a route has not"),
  /** Sentences of NMEA 0183. */
  NMEA("NMEA 0183", "record sentences GGA, which have time and height, and RMC or VTG"),
  /** Values separated by commas (RFC 4180), semicolons or tabs. */
  CSV("CSV", "below the header it needs a line for each reading");

  private static final int HEAD = 65_536;
  private static final Pattern SENTENCE =
      Pattern.compile("^[$!][A-Z]{2}[A-Z]{3},", Pattern.MULTILINE);
  private static final Pattern ELEMENT = Pattern.compile("<(?:[A-Za-z]+:)?(?:gpx|trkpt)\\b");

  private final String label;
  private final String needs;

  RecordingFormat(String label, String needs) {
    this.label = label;
    this.needs = needs;
  }

  /**
   * The format's name.
   *
   * @return the name
   */
  public String label() {
    return label;
  }

  /** What a file must hold to be read, in words. */
  String needs() {
    return needs;
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
