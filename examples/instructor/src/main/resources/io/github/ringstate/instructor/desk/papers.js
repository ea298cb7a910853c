/* Paper: sheets, the plan as a file, a craft from a file or from the numbers of its flight manual. */

import { ask, bytes } from "./ask.js";
import { made, sheet } from "./blocks.js";
import * as form from "./form.js";
import { say } from "./words.js";

const LARGEST = 65536;
const byId = (id) => document.getElementById(id);
const said = byId("paper-said");

/* Hands a file to the browser to keep. */
export function hand(name, content, type) {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = made("a", { href: address, download: name });
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10000);
}

export function wrong(id, sentence) {
  const place = byId(id);
  place.textContent = sentence;
  place.hidden = sentence === "";
}

function refused(sentence) {
  form.unmark("paper");
  said.textContent = form.mark("paper", sentence) ? say("at-field") : form.spoken(sentence, "paper");
}

async function print(button, state) {
  const { sheet: kind, format } = button.dataset;
  const name = `${kind}.${format}`;
  said.textContent = say("printing", { name });
  const answer = await bytes("sheet", { ...state(), sheet: kind, format });
  if (answer.headers.get("Content-Type") === "application/json") {
    refused((await answer.json()).refused);
    return;
  }
  form.unmark("paper");
  hand(name, await answer.arrayBuffer(), format === "pdf" ? "application/pdf" : "text/html");
  said.textContent = say("printed", { name });
}

let last = null;

/* The plan as a file; the one of the last answer if the tool has ended. */
async function save(state, saved) {
  const sent = state();
  let answer;
  try {
    answer = await ask("save", sent);
    last = answer.text ? answer : last;
  } catch (gone) {
    answer = last;
    if (!last) {
      throw gone;
    }
    hand("plan.toml", last.text, "application/toml");
    said.textContent = say("unchecked");
    return;
  }
  if (answer.refused) {
    refused(answer.refused);
    return;
  }
  form.unmark("paper");
  hand("plan.toml", answer.text, "application/toml");
  if (sent.craft) {
    hand(sent.craft.name, sent.craft.text, "application/toml");
  }
  said.textContent = sent.craft ? say("saved-craft", { name: sent.craft.name }) : say("saved");
  saved();
}

/* Kept for the case that the tool ends before the plan is saved. */
export async function note(state) {
  const answer = await ask("save", state());
  last = answer.text ? answer : last;
}

async function text(file) {
  if (file.size > LARGEST) {
    throw new RangeError(say("too-large", { name: file.name, size: file.size }));
  }
  return file.text();
}

async function takeCraft(file, desk) {
  try {
    const content = await text(file);
    const answer = await ask("craft", { name: file.name, text: content });
    wrong("craft-file-wrong", answer.refused || "");
    if (!answer.refused) {
      desk.take({ name: answer.name, text: content, words: [answer.words, ...answer.notices].join(". ") });
    }
  } catch (failed) {
    wrong("craft-file-wrong", failed.message);
  }
}

/* What no manual need say; every other number is wanted. */
const MAY_BE_LEFT_OUT = ["autorotation-fpm"];

async function makeCraft(desk) {
  const numbers = {};
  const fields = Array.from(document.querySelectorAll("[data-number]"));
  for (const field of fields) {
    numbers[field.dataset.number] = form.value(field);
  }
  form.unmark("manual");
  byId("manual-said").replaceChildren();
  byId("craft-keep").hidden = true;
  const missing = fields.filter(({ dataset }) => numbers[dataset.number] === "" && !MAY_BE_LEFT_OUT.includes(dataset.number));
  if (missing.length > 0) {
    missing.forEach((field) => form.markField(field, "manual", say("missing", { what: form.labelOf(field) })));
    wrong("manual-wrong", say("missing-some", { n: missing.length }));
    return;
  }
  const answer = await ask("manual", { numbers, units: desk.state().units });
  if (answer.refused) {
    wrong("manual-wrong", form.mark("manual", answer.refused) ? say("at-field") : form.spoken(answer.refused, "manual"));
    return;
  }
  wrong("manual-wrong", "");
  byId("manual-said").replaceChildren(sheet(answer.sheet, "The model beside the flight manual", (text) => form.spoken(text, "manual")));
  byId("craft-keep").hidden = false;
  byId("craft-keep").onclick = () => hand(answer.name, answer.text, "application/toml");
  desk.take({ name: answer.name, text: answer.text, words: answer.words });
}

async function open(file, desk) {
  const answer = await ask("open", { text: await text(file) });
  if (answer.refused) {
    said.textContent = say("not-opened", { name: file.name, why: answer.refused });
    return;
  }
  desk.lay(answer.plan);
  said.textContent = say("opened", { name: file.name });
}

export function dropped(place, taken) {
  place.addEventListener("dragover", (event) => event.preventDefault());
  place.addEventListener("drop", (event) => {
    event.preventDefault();
    event.stopPropagation();
    if (event.dataTransfer.files.length > 0) {
      taken(event.dataTransfer.files[0]);
    }
  });
}

export function equip(desk) {
  const guarded = (task) => task.catch((failed) => { said.textContent = failed.message; desk.silent(failed); });
  document.querySelectorAll("[data-sheet]").forEach((button) => {
    button.addEventListener("click", () => guarded(print(button, desk.state)));
  });
  byId("save").addEventListener("click", () => guarded(save(desk.state, desk.saved)));
  byId("manual-make").addEventListener("click", () => guarded(makeCraft(desk)));
  byId("craft-file").addEventListener("change", (event) => {
    if (event.target.files.length > 0) {
      takeCraft(event.target.files[0], desk);
    }
  });
  byId("plan-file").addEventListener("change", (event) => {
    if (event.target.files.length > 0) {
      guarded(open(event.target.files[0], desk)).then(() => { event.target.value = ""; });
    }
  });
  dropped(byId("craft"), (file) => takeCraft(file, desk));
}
