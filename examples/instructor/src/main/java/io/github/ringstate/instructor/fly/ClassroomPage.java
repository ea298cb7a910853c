package io.github.ringstate.instructor.fly;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
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
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** A page for the classroom: the flights are in it, its script only draws them. */
record ClassroomPage(FlyRequest request, FlownEncounter flown, UnitSystem units) {

  private static final ObjectMapper JSON =
      new ObjectMapper().enable(JsonGenerator.Feature.WRITE_BIGDECIMAL_AS_PLAIN);

  private ClassroomFlights flights() {
    return flown.lesson().orElseThrow();
  }

  Page page() {
    Map<String, Object> model = new HashMap<>();
    model.put(
        "heading",
        FlyMessages.SAY.classroomHeading(
            Situation.of(request.conditions().craft(), request.approach(), units),
            FlyFacts.of(request, flown, units)));
    model.put("isTerrain", !request.terrain().points().isEmpty());
    model.put("isEmpty", flights().flights().isEmpty());
    model.put("recoveries", flights().recoveries().stream().map(this::choice).toList());
    model.put("delayCount", flights().delays().size() - 1);
    model.put("delayChosen", flights().delays().indexOf(request.delay()));
    model.put("firstTime", Decimals.fixed(-ClassroomFlights.BEFORE, 1));
    model.put("lastTime", Decimals.fixed(ClassroomFlights.AFTER, 1));
    model.put("timeStep", Decimals.fixed(ClassroomFlights.STEP, 1));
    model.put("lengthUnit", units.length().symbol());
    model.put("sinkUnit", units.verticalSpeed().symbol());
    model.put("data", data());
    model.put("isMistaken", flights().recoveries().stream().anyMatch(Technique::isMistaken));
    model.put("parameters", ModelNote.of(request.conditions().craft()));
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

  /** How the flights of one recovery are drawn. */
  record Line(String name, String shown, String color, List<BigDecimal> dash) {}

  /** A flight: how it ended, when what happened, and the samples of each quantity. */
  record Drawn(
      String recovery,
      BigDecimal delay,
      String ending,
      @Nullable BigDecimal loss,
      @Nullable BigDecimal impact,
      @Nullable BigDecimal acts,
      @Nullable BigDecimal arrest,
      List<BigDecimal> t,
      List<BigDecimal> x,
      List<BigDecimal> h,
      List<BigDecimal> v,
      List<BigDecimal> i,
      List<BigDecimal> p) {}

  /** What the page's script reads; nothing in it can end the element that it stands in. */
  private String data() {
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("delays", flights().delays().stream().map(Decimals::rounded).toList());
    data.put("length", units.length().symbol());
    data.put("sink", units.verticalSpeed().symbol());
    data.put("sinkDecimals", sinkDecimals());
    data.put("ground", request.approach().height().isPresent());
    data.put(
        "terrain",
        request.terrain().points().stream()
            .map(
                at ->
                    List.of(
                        fixed(units.length().fromSi(at.distance()), 1),
                        fixed(units.length().fromSi(at.height()), 1)))
            .toList());
    data.put(
        "pens",
        IntStream.range(0, flights().recoveries().size())
            .mapToObj(i -> line(flights().recoveries().get(i), Pen.of(i)))
            .toList());
    data.put("flights", flights().flights().stream().map(this::drawn).toList());
    try {
      return JSON.writeValueAsString(data)
          .replace("<", "\\u003C")
          .replace(">", "\\u003E")
          .replace("&", "\\u0026");
    } catch (JsonProcessingException impossible) {
      throw new UncheckedIOException(impossible); // texts and numbers alone
    }
  }

  private static Line line(Technique recovery, Pen pen) {
    List<BigDecimal> dash = new ArrayList<>();
    float[] lengths = pen.stroke().getDashArray();
    for (int i = 0; lengths != null && i < lengths.length; i++) {
      dash.add(Decimals.rounded(lengths[i]));
    }
    String color = String.format(Locale.ROOT, "#%06x", pen.color().getRGB() & 0xffffff);
    return new Line(recovery.label(), recovery.shown(), color, dash);
  }

  private Drawn drawn(ClassroomFlights.Flight flight) {
    Outcome flown = flight.outcome();
    return new Drawn(
        flight.recovery().label(),
        Decimals.rounded(flight.delay()),
        ending(flown.ending()),
        number(flown.altitudeLoss(), units.length(), 1),
        number(flown.impactSpeed(), units.verticalSpeed(), sinkDecimals()),
        number(flight.when(EventKind.RECOGNITION), Unit.SECOND, 2),
        number(flight.when(EventKind.ARREST), Unit.SECOND, 2),
        numbers(flight, ClassroomFlights.Instant::time, 2),
        numbers(flight, at -> units.length().fromSi(at.distance()), 1),
        numbers(flight, at -> units.length().fromSi(at.height()), 1),
        numbers(flight, at -> units.verticalSpeed().fromSi(at.verticalSpeed()), sinkDecimals()),
        numbers(flight, ClassroomFlights.Instant::inflow, 2),
        numbers(flight, ClassroomFlights.Instant::power, 1));
  }

  private int sinkDecimals() {
    return units.isMetric() ? 2 : 0;
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

  private static @Nullable BigDecimal number(OptionalDouble si, Unit unit, int decimals) {
    return si.isPresent() ? fixed(unit.fromSi(si.getAsDouble()), decimals) : null;
  }

  private static List<BigDecimal> numbers(
      ClassroomFlights.Flight flight,
      ToDoubleFunction<ClassroomFlights.Instant> value,
      int decimals) {
    return flight.samples().stream().map(at -> fixed(value.applyAsDouble(at), decimals)).toList();
  }

  private static BigDecimal fixed(double value, int decimals) {
    return new BigDecimal(Decimals.fixed(value, decimals));
  }
}
