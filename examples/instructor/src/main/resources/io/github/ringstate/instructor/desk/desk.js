/* The desk: every change of the form is flown at once, and what comes back is shown. */

import { ask, cease, stay, study } from "./ask.js";
import { made } from "./blocks.js";
import { beside, touch } from "./change.js";
import * as form from "./form.js";
import * as kept from "./keep.js";
import * as panels from "./panels.js";
import * as papers from "./papers.js";
import * as review from "./review.js";
import * as side from "./side.js";
import { say } from "./words.js";

const OFTEN = 40;
const ON_PAPER = ["facts", "crew", "agreed", "size"];
const byId = (id) => document.getElementById(id);
const trouble = byId("trouble");
const craftField = byId("f-conditions-craft");

let craft = null;
let words = null;
let last = 0;
let due = null;
let noted = null;
let keeping = null;

function state() {
  const plan = form.plan();
  const units = plan.units || "aviation";
  const paper = plan.size || "a4";
  delete plan.units;
  delete plan.size;
  return { plan, craft: craft && plan.conditions.craft === craft.name ? craft : null, units, paper, delay: byId("delay").value, shown: byId("shown").value };
}

function stop(sentence) {
  trouble.textContent = sentence;
  trouble.hidden = sentence === "";
}

/* A request that fails before it is answered has found nobody; any other is refused with a reason. */
function silent(failed) {
  panels.still();
  stop(failed instanceof TypeError ? say("silent") : say("busy", { why: failed.message }));
}

async function fly() {
  due = null;
  last = performance.now();
  try {
    await study(state(), panels.hear);
    stop("");
  } catch (failed) {
    silent(failed);
  }
}

function later() {
  panels.begin();
  if (due === null) {
    due = setTimeout(fly, Math.max(0, OFTEN - (performance.now() - last)));
  }
}

function left() {
  return { plan: form.plan(), craft, delay: byId("delay").value, shown: byId("shown").value, review: form.reviewed() };
}

/* Kept as soon as the hand lets the page, and at the latest when the page goes. */
function keep() {
  if (keeping !== null) {
    clearTimeout(keeping);
    keeping = null;
    kept.keep(left());
  }
}

/* What is only written on paper is kept, and changes no figure. */
function written() {
  if (keeping === null) {
    keeping = setTimeout(keep, OFTEN);
  }
  review.later();
  clearTimeout(noted);
  noted = setTimeout(() => papers.note(state).catch(() => {}), 1500);
}

function changed() {
  describe();
  written();
  later();
}

function choose(select, things) {
  for (const thing of things) {
    select.append(made("option", { value: thing.name }, thing.label || thing.name));
  }
}

function describe() {
  const chosen = craft && craftField.value === craft.name ? craft : words.craft.find((one) => one.name === craftField.value);
  byId("craft-words").textContent = chosen ? chosen.words : "";
  const entry = words.entries.find((one) => one.name === byId("f-encounter-entry").value);
  byId("entry-words").textContent = entry ? entry.words : "";
  const run = byId("run-planned").checked;
  if (!run) {
    form.unmark("runs");
  }
  byId("run").hidden = !run;
  byId("runs").hidden = !run;
  byId("print-runs").hidden = !run;
  document.querySelectorAll('[data-field="run.command-hours"], [data-field="run.type-hours"]').forEach((field) => { field.hidden = !run; });
  byId("delay-out").textContent = `${Number(byId("delay").value).toFixed(1)} s`;
}

function take(own) {
  Array.from(craftField.options).filter((one) => one.dataset.own).forEach((one) => one.remove());
  craft = own;
  if (own) {
    craftField.append(made("option", { value: own.name, "data-own": "yes" }, `${own.name} (yours)`));
    craftField.value = own.name;
  }
}

const desk = {
  state,
  silent,
  saved: () => { keep(); kept.saved(left()); },
  take: (own) => { take(own); touch("the craft"); changed(); },
  lay: (plan) => {
    form.lay(plan);
    const named = (plan.conditions || {}).craft || "";
    if (named !== "" && craftField.value !== named) {
      papers.wrong("craft-file-wrong", say("craft-wanted", { name: named }));
    }
    touch("the plan");
    changed();
  },
};

function besides() {
  byId("beside-keep").addEventListener("click", () => {
    beside(byId("beside"), document.querySelector("[data-panel=loss]"), Array.from(document.querySelectorAll("[data-panel=floor] > .take")));
    byId("beside-drop").hidden = false;
  });
  byId("beside-drop").addEventListener("click", () => {
    byId("beside").hidden = true;
    byId("beside-drop").hidden = true;
  });
}

function listen() {
  byId("form").addEventListener("submit", (event) => event.preventDefault());
  byId("form").addEventListener("input", (event) => {
    if (event.target.closest("#manual") || event.target.type === "file") {
      return;
    }
    if (event.target.closest("#flight")) {
      written();
      return;
    }
    const field = event.target.closest("[data-field]");
    if (field && ON_PAPER.includes(field.dataset.field.split(".")[0])) {
      written();
      return;
    }
    touch(field ? form.labelOf(field) : "the run");
    if (event.target.id === "f-units") {
      form.speak(event.target.value);
    }
    changed();
  });
  ["delay", "shown"].forEach((id) => byId(id).addEventListener("input", changed));
  byId("clear").addEventListener("click", () => {
    take(null);
    form.lay({});
    form.layReview({});
    form.unmark();
    touch("clearing the form");
    changed();
    keep();
    kept.forget();
  });
  byId("end").addEventListener("click", async () => {
    cease();
    await ask("end", {});
    panels.still();
    stop(say("ended"));
  });
  window.addEventListener("pagehide", keep);
  papers.equip(desk);
  review.equip(desk, words);
  side.equip();
  besides();
  stay();
}

async function begin() {
  words = await ask("start", {});
  choose(craftField, words.craft);
  choose(byId("f-encounter-entry"), words.entries);
  choose(byId("f-technique"), words.techniques);
  choose(byId("shown"), words.techniques);
  for (const one of words.states) {
    byId("f-state").append(made("label", { title: one.words }, made("input", { type: "checkbox", value: one.name, checked: true }), ` ${one.name}`));
  }
  form.equip(words);
  const before = kept.left();
  if (before) {
    take(before.craft);
    form.lay(before.plan);
    byId("delay").value = before.delay;
    byId("shown").value = before.shown;
    form.layReview(before.review || {});
  }
  listen();
  describe();
  later();
}

begin().catch(silent);
