package io.github.ringstate.instructor.desk;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.github.ringstate.files.craft.CraftFile;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.plan.PlanFile;
import io.github.ringstate.files.plan.PlanFile.Part;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.instructor.manual.MadeCraft;
import io.github.ringstate.instructor.origin.Kept;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What the desk makes for paper and takes from it: sheets, plans, craft. */
final class Papers {

  /** The sheets by the names of their commands, and the formats of each. */
  private static final Map<String, List<String>> SHEETS =
      Map.of(
          "loss", List.of("pdf", "html"),
          "floor", List.of("pdf", "html"),
          "card", List.of("pdf", "html"),
          "lesson", List.of("pdf", "html"),
          "runs", List.of("pdf", "html"),
          "fly", List.of("html"));

  /** Sent as what a browser only keeps: a page of the tool is no page of this address. */
  static final String A_FILE = "application/octet-stream";

  private static final String REFUSED = "refused";

  private final Commands commands;
  private final Fields fields;

  Papers(Commands commands, Fields fields) {
    this.commands = commands;
    this.fields = fields;
  }

  private static ObjectNode object() {
    return JsonNodeFactory.instance.objectNode();
  }

  /** Prints a sheet: the bytes that the command gives for the plan as it would be saved. */
  void sheet(Body body, Reply reply) throws Refused, IOException {
    JsonNode sent = body.sent();
    Errand errand = Errand.of(sent, fields);
    String sheet = Errand.text(sent.path("sheet"));
    String format = Errand.text(sent.path("format"));
    if (!SHEETS.getOrDefault(sheet, List.of()).contains(format)) {
      throw new Refused(Refused.BAD_REQUEST, "there is no such sheet");
    }
    Commands.Done plan =
        commands.print(errand.planArguments(), Kept.alone(errand.kept(), Map.of()));
    if (!plan.isWell()) {
      reply.send(object().put(REFUSED, plan.refusal()));
      return;
    }
    Map<String, String> kept = new HashMap<>(errand.kept());
    kept.put(Studies.PLAN, plan.printed().toString(UTF_8));
    Commands.Done done =
        commands.print(
            List.of(
                sheet,
                "--plan=" + Studies.PLAN,
                "--units=" + errand.units(),
                "--paper=" + Errand.text(sent.path("paper")),
                "--format=" + format),
            Kept.alone(kept, Map.of()));
    if (done.isWell()) {
      reply.send(200, A_FILE, done.printed().toByteArray());
    } else {
      reply.send(object().put(REFUSED, done.refusal()));
    }
  }

  /** Writes the plan down as its command does. */
  void save(Body body, Reply reply) throws Refused, IOException {
    JsonNode sent = body.sent();
    Errand errand = Errand.of(sent, fields);
    Commands.Done done =
        commands.print(errand.planArguments(), Kept.alone(errand.kept(), Map.of()));
    reply.send(
        done.isWell()
            ? object().put("text", done.printed().toString(UTF_8))
            : object().put(REFUSED, done.refusal()));
  }

  /** Reads a plan that the person chose. */
  void open(Body body, Reply reply) throws Refused, IOException {
    JsonNode sent = body.sent();
    String text = whole(sent);
    ObjectNode answer = object();
    try {
      PlanFile plan = PlanFile.read(Studies.PLAN, (name, what, largest) -> text);
      ObjectNode laid = object();
      ObjectNode facts = laid.putObject("facts");
      plan.facts().forEach((fact, said) -> facts.put(fact.key(), said));
      laid.put("crew", String.join(", ", plan.crew()));
      laid.put("technique", plan.technique());
      for (Part part : plan.options().keySet()) {
        ObjectNode options = laid.putObject(part.key());
        plan.options(part)
            .forEach(
                (name, value) -> {
                  if (!fields.of(part).contains(name)) {
                    throw UserError.file(
                        Studies.PLAN,
                        DeskMessages.SAY.unknownKey(part.key(), name.replace('-', '_')));
                  }
                  options.put(name, value);
                });
      }
      ObjectNode agreed = laid.putObject("agreed");
      plan.agreed().forEach((height, feet) -> agreed.put(height.key(), Decimals.brief(feet)));
      answer.set("plan", laid);
    } catch (UserError wrong) {
      answer.put(REFUSED, wrong.getMessage());
    }
    reply.send(answer);
  }

  private static String whole(JsonNode sent) throws Refused {
    JsonNode text = sent.path("text");
    if (!text.isTextual()) {
      throw new Refused(Refused.BAD_REQUEST, "no text");
    }
    return text.textValue();
  }

  /** Looks at the file of a craft. */
  void craft(Body body, Reply reply) throws Refused, IOException {
    JsonNode sent = body.sent();
    String text = whole(sent);
    String name = Errand.fileName(Errand.text(sent.path("name")));
    ObjectNode answer = object();
    try {
      CraftFile file = CraftFile.read(name, (asked, what, largest) -> text);
      answer.put("name", name);
      answer.put("words", words(file));
      file.notices().forEach(answer.putArray("notices")::add);
    } catch (UserError wrong) {
      answer.put(REFUSED, wrong.getMessage());
    }
    reply.send(answer);
  }

  private static String words(CraftFile file) {
    return file.craft().name() + ": " + file.craft().description();
  }

  /** Makes a craft of the numbers of a flight manual. */
  void manual(Body body, Reply reply) throws Refused, IOException {
    JsonNode sent = body.sent();
    List<String> arguments = new ArrayList<>(List.of("manual"));
    JsonNode numbers = sent.path("numbers");
    Errand.given(numbers, fields.ofManual())
        .forEach((name, value) -> arguments.add("--" + name + "=" + value));
    String units = Errand.text(sent.path("units"));
    arguments.add("--units=" + units);
    Commands.Done done = commands.report(arguments, Kept.alone(Map.of(), Map.of()));
    ObjectNode answer = object();
    if (done.isWell() && done.report().orElseThrow() instanceof MadeCraft made) {
      answer.set("sheet", ReportJson.sheet(made, Studies.units(units)));
      answer.put("name", Errand.fileName(Errand.text(numbers.path("name")) + ".toml"));
      answer.put("text", made.craftText());
      answer.put(
          "words", words(CraftFile.read(Studies.PLAN, (name, what, largest) -> made.craftText())));
    } else {
      answer.put(REFUSED, done.refusal());
    }
    reply.send(answer);
  }
}
