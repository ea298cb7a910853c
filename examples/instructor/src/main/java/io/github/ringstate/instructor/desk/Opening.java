package io.github.ringstate.instructor.desk;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.EntryKind;
import io.github.ringstate.files.plan.PlanFile.Part;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.option.Approach;
import io.github.ringstate.instructor.pilots.PilotTerms;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.sheets.message.Words;

/** What the page asks for first: what there is to choose from, and what each field is for. */
final class Opening {

  private Opening() {}

  static ObjectNode words(Fields fields) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("caution", Caution.TEXT);
    ArrayNode craft = json.putArray("craft");
    for (Helicopter demo : DemoCraft.ALL) {
      craft.addObject().put("name", demo.name()).put("words", demo.description());
    }
    ArrayNode techniques = json.putArray("techniques");
    Technique.ALL.stream()
        .filter(Technique::wayOut)
        .forEach(one -> techniques.addObject().put("name", one.name()).put("words", one.label()));
    ArrayNode entries = json.putArray("entries");
    for (EntryKind kind : EntryKind.ALL) {
      entries
          .addObject()
          .put("name", kind.name())
          .put("label", kind.label())
          .put(
              "words",
              Words.capital(Approach.standard(kind).description(UnitSystem.AVIATION)) + ".");
    }
    ArrayNode states = json.putArray("states");
    for (PilotState state : PilotState.values()) {
      states.addObject().put("name", state.label()).put("words", PilotTerms.delays(state));
    }
    for (Part part : Part.values()) {
      ObjectNode described = json.putObject(part.key());
      fields.described(part).forEach(described::put);
    }
    ObjectNode manual = json.putObject("manual");
    fields.describedManual().forEach(manual::put);
    ObjectNode review = json.putObject("review");
    Reviews.OPTIONS.forEach(name -> review.put(name, fields.describedReview().get(name)));
    json.set("recorded", Reviews.quantities());
    return json;
  }
}
