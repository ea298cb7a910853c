/* The desk: every change of the form is flown at once, and what comes back is shown. */

import { ask, study } from "./ask.js";
import * as form from "./form.js";
import * as panels from "./panels.js";
import { made } from "./blocks.js";

const OFTEN = 40;
const byId = (id) => document.getElementById(id);
const trouble = byId("trouble");

let craft = null;
let words = null;
let last = 0;
let due = null;

export function state() {
  const plan = form.plan();
  return { plan, craft: craft && plan.conditions.craft === craft.name ? craft : null, units: plan.units || "aviation" };
}

function stop(sentence) {
  trouble.textContent = sentence;
  trouble.hidden = false;
}

async function fly() {
  due = null;
  last = performance.now();
  panels.begin();
  try {
    await study(state(), panels.hear);
    trouble.hidden = true;
  } catch (failed) {
    stop(`The tool does not answer: ${failed.message || "it was ended"}. What is on the form is kept; start the tool again and open its new address.`);
    panels.still();
  }
}

function changed() {
  if (due === null) {
    due = setTimeout(fly, Math.max(0, OFTEN - (performance.now() - last)));
  }
}

function choose(select, things) {
  for (const thing of things) {
    select.append(made("option", { value: thing.name }, thing.label || thing.name));
  }
}

function describe() {
  const plan = form.plan();
  const chosen = words.craft.find((one) => one.name === plan.conditions.craft);
  byId("craft-words").textContent = chosen ? chosen.words : "";
  const entry = words.entries.find((one) => one.name === plan.encounter.entry);
  byId("entry-words").textContent = entry ? entry.words : "";
}

async function begin() {
  words = await ask("start", {});
  choose(byId("f-craft"), words.craft);
  choose(byId("f-entry"), words.entries);
  choose(byId("f-technique"), words.techniques);
  for (const one of words.states) {
    byId("f-state").append(made("label", {}, made("input", { type: "checkbox", value: one.name, checked: true }), ` ${one.name}`));
  }
  form.equip(words);
  byId("form").addEventListener("submit", (event) => event.preventDefault());
  byId("form").addEventListener("input", () => { describe(); changed(); });
  byId("end").addEventListener("click", async () => {
    await ask("end", {});
    stop("The desk is ended. This page can be closed.");
  });
  describe();
  changed();
}

begin().catch((failed) => stop(`The tool does not answer: ${failed.message}`));
