package io.github.ringstate.files.recording;

import io.github.ringstate.files.error.UserError;
import io.github.ringstate.quantity.Unit;
import java.io.IOException;
import java.io.PushbackReader;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;

/**
 * Readings from GPX 1.1: the points of its tracks, with place, height, time, and speed and course
 * where an extension of that name gives them, in metres per second and degrees, as GPX 1.0 did.
 *
 * <p>A document type is refused, so that nothing outside the file is ever asked for and no entity
 * grows. Where the file is no XML, reading goes on at the next point of a track.
 */
final class GpxReadings {

  /** GPX itself nests five deep, extensions some more. */
  private static final int DEEPEST = 64;

  /** A file that is broken in more places is no recording. */
  private static final int MOST_BREAKS = 10_000;

  private static final int LONGEST_TEXT = 64;
  private static final String POINT = "trkpt";
  private static final String AGAIN = "<gpx><trk><trkseg>";

  private static final Pattern BEGIN = Pattern.compile("<(?:[A-Za-z]+:)?trkpt\\b");

  private final XMLInputFactory factory;
  private final Readings readings;
  private final String text;
  private final StringBuilder content = new StringBuilder();

  /** A point of a track as far as it is read. */
  private @Nullable Map<RecordedQuantity, Double> point;

  private int depth;

  /** How many points began since reading began or went on. */
  private int begun;

  private GpxReadings(String text, Readings readings) {
    this.text = text;
    this.readings = readings;
    factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_COALESCING, false);
    factory.setProperty(
        XMLInputFactory.IS_NAMESPACE_AWARE, false); // none is declared after a break
    factory.setXMLResolver(
        (publicId, systemId, base, namespace) -> {
          throw new XMLStreamException("nothing outside the file is read");
        });
  }

  /** Reads all of a text; times are seconds since 1970. */
  static void read(String text, Readings readings) {
    new GpxReadings(text, readings).all();
  }

  private void all() {
    int from = 0;
    int breaks = 0;
    while (from >= 0 && !isWhole(from)) {
      if (begun > 0 || from == 0) { // else it is still the same place
        readings.note(RepairKind.UNREADABLE, null);
      }
      breaks++;
      if (breaks > MOST_BREAKS) {
        throw UserError.file(readings.file(), "is broken in more than " + MOST_BREAKS + " places");
      }
      from = next(from);
    }
  }

  /**
   * Where the point begins that follows the last one begun, for the parser's own count of
   * characters is off near the ends of its buffer; negative if there is none.
   */
  private int next(int from) {
    Matcher begins = BEGIN.matcher(text);
    begins.region(from, text.length());
    for (int i = 0; i < Math.max(1, begun); i++) {
      if (!begins.find()) {
        return -1;
      }
    }
    return (from == 0 && begun == 0) || begins.find() ? begins.start() : -1;
  }

  /** Reads until the end; false if something before it is no XML. */
  private boolean isWhole(int from) {
    depth = 0;
    begun = 0;
    point = null;
    try {
      XMLStreamReader xml = factory.createXMLStreamReader(rest(from));
      while (xml.hasNext()) {
        event(xml.next(), xml);
      }
      return true;
    } catch (XMLStreamException broken) {
      return false;
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible); // it is in memory
    }
  }

  private void event(int event, XMLStreamReader xml) {
    switch (event) {
      case XMLStreamConstants.DTD, XMLStreamConstants.ENTITY_REFERENCE ->
          throw UserError.file(
              readings.file(),
              "cannot be read: it has a document type or an entity, and GPX has none");
      case XMLStreamConstants.START_ELEMENT -> start(xml);
      case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> {
        if (point != null && content.length() < LONGEST_TEXT) {
          content.append(xml.getText(), 0, Math.min(xml.getTextLength(), LONGEST_TEXT));
        }
      }
      case XMLStreamConstants.END_ELEMENT -> end(local(xml));
      default -> {}
    }
  }

  private void start(XMLStreamReader xml) {
    depth++;
    if (depth > DEEPEST) {
      throw UserError.file(
          readings.file(),
          "cannot be read: its elements are nested more than " + DEEPEST + " deep");
    }
    content.setLength(0);
    if (local(xml).equals(POINT)) {
      Map<RecordedQuantity, Double> next = new EnumMap<>(RecordedQuantity.class);
      next.put(RecordedQuantity.LATITUDE, degrees(xml.getAttributeValue(null, "lat")));
      next.put(RecordedQuantity.LONGITUDE, degrees(xml.getAttributeValue(null, "lon")));
      point = next;
      begun++;
    }
  }

  /** The name of an element without the prefix of a namespace. */
  private static String local(XMLStreamReader xml) {
    String name = xml.getLocalName();
    return name.substring(name.indexOf(':') + 1);
  }

  private static double degrees(@Nullable String text) {
    return text == null ? Double.NaN : Unit.DEGREE.toSi(Numerals.number(text));
  }

  private void end(String name) {
    depth--;
    Map<RecordedQuantity, Double> current = point;
    if (current == null) {
      return;
    }
    String said = content.toString();
    switch (name) {
      case "ele" -> number(current, RecordedQuantity.HEIGHT, said, Unit.METRE);
      case "time" -> current.put(RecordedQuantity.TIME, Moments.seconds(said));
      case "speed" -> number(current, RecordedQuantity.GROUND_SPEED, said, Unit.METRE_PER_SECOND);
      case "course" -> number(current, RecordedQuantity.TRACK, said, Unit.DEGREE);
      case POINT -> {
        Double time = current.remove(RecordedQuantity.TIME);
        readings.add(time == null ? Double.NaN : time);
        current.forEach(readings::put);
        point = null;
      }
      default -> {}
    }
    content.setLength(0);
  }

  private void number(
      Map<RecordedQuantity, Double> into, RecordedQuantity quantity, String said, Unit unit) {
    double value = Numerals.number(said);
    if (Double.isNaN(value)) {
      readings.note(RepairKind.NOT_A_NUMBER, quantity);
    }
    into.put(quantity, unit.toSi(value));
  }

  /** What is left of the text, behind what opens it; nothing is copied. */
  private Reader rest(int from) throws IOException {
    StringReader left = new StringReader(text);
    left.skip(from);
    PushbackReader rest = new PushbackReader(left, AGAIN.length());
    if (from > 0) {
      rest.unread(AGAIN.toCharArray());
    }
    return rest;
  }
}
