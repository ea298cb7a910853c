package io.github.ringstate.instructor.fly;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.io.CharacterEscapes;
import com.fasterxml.jackson.core.io.SerializedString;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.EventKind;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.conditions.ModelNote;
import io.github.ringstate.instructor.pilots.Situation;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.sheets.chart.Pen;
import io.github.ringstate.sheets.page.Page;
import io.github.ringstate.sheets.page.PageSettings;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/** A page for the classroom: the flights are in it, its script only draws them. */
final class ClassroomPage {

  private final FlyRequest request;
  private final ClassroomFlights flights;
  private final UnitSystem units;

  private final Outcome outcome;

  private ClassroomPage(FlyReport report, UnitSystem units) {
    request = report.request();
    flights = report.flown().lesson().orElseThrow();
    outcome = report.flown().outcome();
    this.units = units;
  }

  static Page of(FlyReport report, PageSettings settings) {
    return new ClassroomPage(report, settings.units()).page();
  }

  private Page page() {
    Map<String, Object> model = new HashMap<>();
    model.put(
        "heading",
        FlyMessages.SAY.classroomHeading(
            Situation.of(request.conditions().craft(), request.approach(), units),
            FlyFacts.of(request, outcome, units)));
    model.put("isEmpty", flights.flights().isEmpty());
    model.put("recoveries", flights.recoveries().stream().map(this::choice).toList());
    model.put("delayCount", flights.delays().size() - 1);
    model.put("delayChosen", flights.delays().indexOf(request.delay()));
    model.put("firstTime", Decimals.fixed(-ClassroomFlights.BEFORE, 1));
    model.put("lastTime", Decimals.fixed(ClassroomFlights.AFTER, 1));
    model.put("timeStep", Decimals.fixed(ClassroomFlights.STEP, 1));
    model.put("lengthUnit", units.length().symbol());
    model.put("sinkUnit", units.verticalSpeed().symbol());
    model.put("data", data());
    model.put("isMistaken", flights.recoveries().stream().anyMatch(Technique::isMistaken));
    model.put("parameters", ModelNote.standard());
    return new Page(
        ClassroomPage.class,
        "classroom.mustache",
        "Vortex ring state: one entry, every recovery",
        false,
        model,
        Map.of());
  }

  /** A recovery to tick. */
  record RecoveryChoice(String name, String shown, boolean isChosen) {}

  private RecoveryChoice choice(Technique kind) {
    boolean chosen = kind.equals(request.recovery()) || kind.equals(Technique.LATERAL);
    return new RecoveryChoice(kind.label(), kind.shown(), chosen);
  }

  /** Nothing in the data can end the element of the page that it stands in. */
  private static final class Harmless extends CharacterEscapes {

    private static final long serialVersionUID = 1L;

    @Override
    public int[] getEscapeCodesForAscii() {
      int[] codes = CharacterEscapes.standardAsciiEscapesForJSON();
      for (char c : new char[] {'<', '>', '&'}) {
        codes[c] = CharacterEscapes.ESCAPE_STANDARD;
      }
      return codes;
    }

    @Override
    public @Nullable SerializableString getEscapeSequence(int c) {
      return c == '<' || c == '>' || c == '&'
          ? new SerializedString(String.format(Locale.ROOT, "\\u%04x", c))
          : null;
    }
  }

  private String data() {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.setCharacterEscapes(new Harmless());
      json.writeStartObject();
      json.writeFieldName("delays");
      json.writeStartArray();
      for (double delay : flights.delays()) {
        json.writeNumber(Decimals.brief(delay));
      }
      json.writeEndArray();
      json.writeStringField("length", units.length().symbol());
      json.writeStringField("sink", units.verticalSpeed().symbol());
      json.writeNumberField("sinkDecimals", sinkDecimals());
      json.writeBooleanField("ground", request.approach().height().isPresent());
      json.writeArrayFieldStart("pens");
      for (int i = 0; i < flights.recoveries().size(); i++) {
        pen(json, flights.recoveries().get(i), Pen.of(i));
      }
      json.writeEndArray();
      json.writeArrayFieldStart("flights");
      for (ClassroomFlights.Flight flight : flights.flights()) {
        flight(json, flight);
      }
      json.writeEndArray();
      json.writeEndObject();
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
    return text.toString();
  }

  private static void pen(JsonGenerator json, Technique recovery, Pen pen) throws IOException {
    json.writeStartObject();
    json.writeStringField("name", recovery.label());
    json.writeStringField("shown", recovery.shown());
    json.writeStringField(
        "color", String.format(Locale.ROOT, "#%06x", pen.color().getRGB() & 0xffffff));
    json.writeArrayFieldStart("dash");
    float[] dash = pen.stroke().getDashArray();
    if (dash != null) {
      for (float length : dash) {
        json.writeNumber(Decimals.brief(length));
      }
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void flight(JsonGenerator json, ClassroomFlights.Flight flight) throws IOException {
    json.writeStartObject();
    json.writeStringField("recovery", flight.recovery().label());
    json.writeFieldName("delay");
    json.writeNumber(Decimals.brief(flight.delay()));
    json.writeStringField("ending", ending(flight.outcome().ending()));
    number(json, "loss", flight.outcome().altitudeLoss(), units.length(), 1);
    number(json, "impact", flight.outcome().impactSpeed(), units.verticalSpeed(), sinkDecimals());
    number(json, "acts", flight.when(EventKind.RECOGNITION), Unit.SECOND, 2);
    number(json, "arrest", flight.when(EventKind.ARREST), Unit.SECOND, 2);
    numbers(json, "t", flight, ClassroomFlights.Instant::time, 2);
    numbers(json, "x", flight, at -> units.length().fromSi(at.distance()), 1);
    numbers(json, "h", flight, at -> units.length().fromSi(at.height()), 1);
    numbers(
        json, "v", flight, at -> units.verticalSpeed().fromSi(at.verticalSpeed()), sinkDecimals());
    numbers(json, "i", flight, ClassroomFlights.Instant::inflow, 2);
    numbers(json, "p", flight, ClassroomFlights.Instant::power, 1);
    json.writeEndObject();
  }

  private int sinkDecimals() {
    return units == UnitSystem.AVIATION ? 0 : 2;
  }

  private static String ending(Ending ending) {
    return switch (ending) {
      case ARRESTED -> "arrested";
      case GROUND -> "ground";
      case NOT_ARRESTED -> "not arrested";
      case ARREST_NOT_LASTING -> "not for good";
      case STOPPED -> "stopped";
      case NO_ONSET -> "no ring state";
    };
  }

  private static void number(
      JsonGenerator json, String name, OptionalDouble si, Unit unit, int decimals)
      throws IOException {
    json.writeFieldName(name);
    if (si.isPresent()) {
      json.writeNumber(Decimals.fixed(unit.fromSi(si.getAsDouble()), decimals));
    } else {
      json.writeNull();
    }
  }

  private static void numbers(
      JsonGenerator json,
      String name,
      ClassroomFlights.Flight flight,
      ToDoubleFunction<ClassroomFlights.Instant> value,
      int decimals)
      throws IOException {
    json.writeArrayFieldStart(name);
    for (ClassroomFlights.Instant at : flight.samples()) {
      json.writeNumber(Decimals.fixed(value.applyAsDouble(at), decimals));
    }
    json.writeEndArray();
  }
}
