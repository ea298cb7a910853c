package io.github.ringstate.instructor.desk;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.github.ringstate.files.recording.RecordedQuantity;
import io.github.ringstate.files.recording.RecordedUnit;
import io.github.ringstate.files.report.Report;
import io.github.ringstate.instructor.origin.Kept;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Reviews a recorded flight beside the plan, as the command {@code review} does with the plan as it
 * would be saved. The recording comes with each request and is kept by the page alone.
 */
final class Reviews {

  /** Name of the file that the map of columns stands for. */
  private static final String COLUMNS = "columns.toml";

  /** Name of a recording whose own name is no plain one. */
  private static final String RECORDING = "recording";

  /** What a person knows of a flight that a recording does not say. */
  static final List<String> OPTIONS = List.of("wind-from-deg", "wind-kt", "ground-ft");

  private static final List<String> PAPERS = List.of("pdf", "html");

  private final Commands commands;
  private final Fields fields;

  Reviews(Commands commands, Fields fields) {
    this.commands = commands;
    this.fields = fields;
  }

  /** Answers with the review, or with its sheet if a format is asked for. */
  void answer(Body body, Reply reply) throws Refused, IOException {
    JsonNode sent = body.sent();
    Errand errand = Errand.of(sent, fields);
    String format = Errand.text(sent.path("format"));
    if (!format.isEmpty() && !PAPERS.contains(format)) {
      throw new Refused(Refused.BAD_REQUEST, "there is no such sheet");
    }
    List<String> arguments = arguments(sent.path("review"), errand.units());
    String name = name(Errand.text(sent.path("name")));
    arguments.add(name);
    String columns = columns(sent.path("columns"));
    if (!columns.isEmpty()) {
      arguments.add("--columns=" + COLUMNS);
    }
    Commands.Done plan =
        commands.print(errand.planArguments(), Kept.alone(errand.kept(), Map.of()));
    if (!plan.isWell()) {
      refuse(reply, "plan", plan);
      return;
    }
    Map<String, String> texts = new HashMap<>(errand.kept());
    texts.put(Studies.PLAN, plan.printed().toString(UTF_8));
    texts.put(COLUMNS, columns);
    Kept kept = Kept.alone(texts, Map.of(name, body.recording()));
    if (format.isEmpty()) {
      show(commands.report(arguments, kept), errand.units(), reply);
    } else {
      arguments.add("--paper=" + Errand.text(sent.path("paper")));
      arguments.add("--format=" + format);
      Commands.Done done = commands.print(arguments, kept);
      if (done.isWell()) {
        reply.send(200, Papers.A_FILE, done.printed().toByteArray());
      } else {
        refuse(reply, "review", done);
      }
    }
  }

  private static void show(Commands.Done done, String units, Reply reply) throws IOException {
    if (!done.isWell() || done.report().isEmpty()) {
      refuse(reply, "review", done);
      return;
    }
    Report report = done.report().get();
    ObjectNode answer = JsonNodeFactory.instance.objectNode();
    answer.set("sheet", ReportJson.sheet(report, Studies.units(units)));
    ReportJson.addTables(report, answer);
    ReportJson.addDrawings(report, Studies.units(units), answer, "review");
    done.said().forEach(answer.putArray("notices")::add);
    reply.send(answer);
  }

  private static void refuse(Reply reply, String of, Commands.Done done) throws IOException {
    reply.send(JsonNodeFactory.instance.objectNode().put("refused", done.refusal()).put("of", of));
  }

  private static List<String> arguments(JsonNode options, String units) throws Refused {
    List<String> arguments = new ArrayList<>(List.of("review", "--plan=" + Studies.PLAN));
    Errand.given(options, OPTIONS)
        .forEach((option, value) -> arguments.add("--" + option + "=" + value));
    arguments.add("--units=" + units);
    return arguments;
  }

  /** A name that can be no option, and no file in another folder. */
  private static String name(String given) {
    return given.matches("[\\p{L}\\p{N}][\\p{L}\\p{N} ._()+-]{0,119}") ? given : RECORDING;
  }

  /** The map of columns as a file: names in it may hold what separates them in an option. */
  private static String columns(JsonNode given) throws Refused {
    StringBuilder map = new StringBuilder();
    for (String quantity : (Iterable<String>) given::fieldNames) {
      String column = Errand.text(given.path(quantity).path("column"));
      String unit = Errand.text(given.path(quantity).path("unit"));
      if (Stream.of(RecordedQuantity.values()).noneMatch(one -> one.key().equals(quantity))) {
        throw new Refused(Refused.BAD_REQUEST, "there is no quantity of that name");
      }
      map.append('[').append(quantity).append("]\n");
      map.append("column = ").append(quoted(column)).append('\n');
      map.append("unit = ").append(quoted(unit)).append('\n');
    }
    return map.toString();
  }

  /** A basic string of TOML 1.0 has the escapes of JSON (RFC 8259, 7). */
  private static String quoted(String text) {
    return '"' + String.valueOf(JsonStringEncoder.getInstance().quoteAsString(text)) + '"';
  }

  /** What columns may hold, in which units. */
  static ObjectNode quantities() {
    ObjectNode quantities = JsonNodeFactory.instance.objectNode();
    for (RecordedQuantity quantity : RecordedQuantity.values()) {
      quantity.units().stream()
          .map(RecordedUnit::key)
          .forEach(quantities.putArray(quantity.key())::add);
    }
    return quantities;
  }
}
