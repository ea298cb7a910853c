package io.github.ringstate.instructor.desk;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.files.plan.PlanFile;
import io.github.ringstate.files.plan.PlanFile.AgreedHeight;
import io.github.ringstate.files.plan.PlanFile.Fact;
import io.github.ringstate.files.plan.PlanFile.Part;
import io.github.ringstate.files.plan.PlanWriter;
import io.github.ringstate.study.ModelRevision;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What the page holds when it asks for something: the plan as the person filled it in, and the text
 * of a craft's file.
 *
 * @param facts place, date and registration, by their keys
 * @param crew who flies
 * @param technique the technique chosen; empty for none
 * @param options the options of each part of the plan, by name; only those that were filled in
 * @param agreed heights agreed on, by their keys
 * @param kept the craft's text by the name of its file; empty for a demo craft
 * @param units the name of the units to speak in
 */
record Errand(
    Map<String, String> facts,
    String crew,
    String technique,
    Map<Part, Map<String, String>> options,
    Map<String, String> agreed,
    Map<String, String> kept,
    String units) {

  /** What a craft's file is called if its own name is no plain one. */
  private static final String CRAFT = "craft";

  private static final String ENDING = ".toml";
  private static final int LONGEST = 300;

  /**
   * Reads what the page sent.
   *
   * @param sent the plan in JSON
   * @param fields the options that each part may have
   * @return what it says
   * @throws Refused if it is not what the page sends
   */
  static Errand of(JsonNode sent, Fields fields) throws Refused {
    JsonNode plan = sent.path("plan");
    Map<String, String> kept = craft(sent.path("craft"));
    Map<Part, Map<String, String>> options = new LinkedHashMap<>();
    for (Part part : Part.values()) {
      if (plan.has(part.key())) {
        options.put(part, given(plan.path(part.key()), fields.of(part)));
      }
    }
    refuseFiles(options.getOrDefault(Part.CONDITIONS, Map.of()).get("craft"), kept);
    return new Errand(
        given(plan.path("facts"), List.of(Fact.values()).stream().map(Fact::key).toList()),
        text(plan.path("crew")),
        text(plan.path("technique")),
        options,
        given(
            plan.path("agreed"),
            List.of(AgreedHeight.values()).stream().map(AgreedHeight::key).toList()),
        kept,
        text(sent.path("units")));
  }

  /** The page names demo craft and the text that it sent along, never a file of this machine. */
  private static void refuseFiles(@Nullable String craft, Map<String, String> kept) throws Refused {
    if (craft != null
        && !kept.containsKey(craft)
        && DemoCraft.ALL.stream().map(Helicopter::name).noneMatch(craft::equals)) {
      throw new Refused(Refused.BAD_REQUEST, "there is no such craft on the page");
    }
  }

  private static Map<String, String> craft(JsonNode sent) throws Refused {
    if (!sent.isObject()) {
      return Map.of();
    }
    JsonNode text = sent.path("text");
    if (!text.isTextual()) {
      throw new Refused(Refused.BAD_REQUEST, "a craft without text");
    }
    return Map.of(fileName(text(sent.path("name"))), text.textValue());
  }

  /** A plain file name: no folder, nothing that a command line would take for an option. */
  static String fileName(String name) {
    return name.matches("[A-Za-z0-9][A-Za-z0-9_-]{0,39}\\.toml") ? name : CRAFT + ENDING;
  }

  /**
   * The fields of an object that were filled in.
   *
   * @param object what the page sent
   * @param names the names of the fields that there are
   * @return their texts by name
   * @throws Refused if there is another, or one that holds no text of one line
   */
  static Map<String, String> given(JsonNode object, Collection<String> names) throws Refused {
    Map<String, String> given = new LinkedHashMap<>();
    for (String name : (Iterable<String>) object::fieldNames) {
      if (!names.contains(name)) {
        throw new Refused(Refused.BAD_REQUEST, "there is no field of that name");
      }
      String value = text(object.path(name));
      if (!value.isEmpty()) {
        given.put(name, value);
      }
    }
    return given;
  }

  static String text(JsonNode value) throws Refused {
    if (value.isMissingNode() || value.isNull()) {
      return "";
    }
    if (!value.isTextual()
        || value.textValue().length() > LONGEST
        || value.textValue().chars().anyMatch(Character::isISOControl)) {
      throw new Refused(
          Refused.BAD_REQUEST, "no text of one line of at most " + LONGEST + " characters");
    }
    return value.textValue().strip();
  }

  /**
   * The plan as a file, unchecked, without what concerns no number: each command finds fault with
   * its own options.
   *
   * @param without options of the encounter that are passed over
   */
  String planText(Set<String> without) {
    Map<Part, Map<String, String>> held = new LinkedHashMap<>(options);
    held.computeIfPresent(
        Part.ENCOUNTER,
        (part, given) -> {
          Map<String, String> rest = new LinkedHashMap<>(given);
          rest.keySet().removeAll(without);
          return rest;
        });
    return String.join(
            "\n",
            PlanWriter.lines(
                new PlanFile(
                    Map.of(), List.of(), technique, held, Map.of(), ModelRevision.current()),
                DeskMessages.SAY.head()))
        + "\n";
  }

  /** The arguments of {@code ringstate plan} that write this down. */
  List<String> planArguments() {
    List<String> arguments = new ArrayList<>();
    arguments.add("plan");
    facts.forEach((key, value) -> arguments.add("--" + key + "=" + value));
    if (!crew.isEmpty()) {
      arguments.add("--crew=" + crew);
    }
    if (!technique.isEmpty()) {
      arguments.add("--technique=" + technique);
    }
    options.forEach(
        (part, given) ->
            given.forEach(
                (name, value) -> {
                  String option = (part == Part.RUN ? "--run-" : "--") + name;
                  arguments.add(value.equals("true") ? option : option + "=" + value);
                }));
    agreed.forEach(
        (key, feet) ->
            arguments.add(
                (key.equals(AgreedHeight.LEAST.key())
                        ? "--agreed-height-ft"
                        : "--" + key.replace('_', '-'))
                    + "="
                    + feet));
    return arguments;
  }
}
