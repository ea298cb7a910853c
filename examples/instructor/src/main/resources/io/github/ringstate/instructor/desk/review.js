/* After the flight: a recording is reviewed beside the plan. The page holds its file; the tool keeps nothing. */

import { review } from "./ask.js";
import { drawing, made, sheet } from "./blocks.js";
import * as form from "./form.js";
import { dropped, hand, wrong } from "./papers.js";
import { say } from "./words.js";

const LARGEST = 50 * 1024 * 1024;
const HEAD = 65536;
const HEADER_WITHIN = 50;
const PAUSE = 600;

const byId = (id) => document.getElementById(id);
const panel = byId("review");
const place = panel.querySelector(".said");
const told = byId("recording-said");
const rows = byId("columns-rows");

let file = null;
let under = null;
let due = null;
let state = null;
let quantities = {};

/* The columns that were chosen, by what they hold. */
function columns() {
  const chosen = {};
  for (const row of rows.querySelectorAll("tr")) {
    const [column, unit] = row.querySelectorAll("select");
    if (column.value !== "") {
      chosen[row.dataset.quantity] = { column: column.value, unit: unit.value };
    }
  }
  return chosen;
}

function question(format) {
  return { ...state(), review: form.reviewed(), columns: columns(), name: file.name, format };
}

function refused(answer) {
  const why = answer.refused;
  const panel = answer.of === "plan" ? "paper" : "review";
  const marked = form.mark(panel, why);
  told.textContent = "";
  wrong("recording-wrong", say(answer.of === "plan" ? "plan-wrong" : "review-wrong", { name: file.name, why: marked ? say("at-field") : form.spoken(why, panel) }));
}

function show(answer) {
  const spoken = (text) => form.spoken(text, "review");
  const notices = answer.notices.map((notice) => made("p", { class: "note" }, spoken(notice)));
  const inside = sheet(answer.sheet, byId("h-review").textContent, spoken);
  const drawn = Object.keys(answer.drawings).sort().map((name) => drawing(answer.drawings[name]));
  place.replaceChildren(...notices, inside, made("div", { class: "drawings" }, ...drawn));
  told.textContent = say("reviewed", { name: file.name });
}

/* The file is sent anew with each question; an answer that is overtaken is not shown. */
async function run() {
  due = null;
  const own = new AbortController();
  under = own;
  try {
    const answer = await (await review(question(""), file, own.signal)).json();
    if (own !== under) {
      return;
    }
    form.unmark("review");
    place.classList.remove("old");
    if (answer.refused !== undefined) {
      place.replaceChildren();
      panel.hidden = true;
      refused(answer);
    } else {
      wrong("recording-wrong", "");
      panel.hidden = false;
      show(answer);
    }
  } catch (failed) {
    if (own === under) {
      told.textContent = "";
      wrong("recording-wrong", failed.message);
    }
  }
}

/* What is on the form has changed: the review is made again when the hand is still. */
export function later() {
  if (file === null) {
    return;
  }
  if (under) {
    under.abort();
    under = null;
  }
  place.classList.add("old");
  told.textContent = say("reviewing", { name: file.name });
  clearTimeout(due);
  due = setTimeout(run, PAUSE);
}

function names(line, separator) {
  return line.split(separator).map((name) => name.replaceAll('"', "").trim()).filter((name) => name !== "" && Number.isNaN(Number(name.replace(",", "."))));
}

/* The names in the header of a CSV file: of its first lines that with the most words. */
async function header() {
  const lines = (await file.slice(0, HEAD).text()).split(/\r?\n/).slice(0, HEADER_WITHIN);
  if (lines.join("\n").trimStart().startsWith("<") || lines.some((line) => /^[$!][A-Z]{5},/.test(line))) {
    return [];
  }
  return lines.flatMap((line) => [",", ";", "\t"].map((separator) => names(line, separator))).reduce((most, found) => (found.length > most.length ? found : most), []);
}

async function offerColumns() {
  const found = await header();
  byId("columns").hidden = found.length < 2;
  rows.replaceChildren();
  for (const [quantity, units] of Object.entries(found.length < 2 ? {} : quantities)) {
    const words = quantity.replaceAll("_", " ");
    const column = made("select", { "aria-label": `Column of ${words}` }, made("option", { value: "" }, say("by-name")), ...found.map((name) => made("option", { value: name }, name)));
    const unit = made("select", { "aria-label": `Unit of ${words}` }, ...units.map((one) => made("option", { value: one }, one)));
    rows.append(made("tr", { "data-quantity": quantity }, made("th", { scope: "row", class: "words" }, words), made("td", { class: "words" }, column), made("td", { class: "words" }, unit)));
  }
}

async function take(chosen) {
  away();
  if (chosen.size > LARGEST) {
    wrong("recording-wrong", say("recording-too-large", { name: chosen.name, size: chosen.size }));
    return;
  }
  file = chosen;
  ["recorded", "debrief"].forEach((id) => { byId(id).hidden = false; });
  await offerColumns();
  later();
}

function away() {
  if (under) {
    under.abort();
    under = null;
  }
  clearTimeout(due);
  file = null;
  form.unmark("review");
  wrong("recording-wrong", "");
  told.textContent = "";
  place.replaceChildren();
  panel.hidden = true;
  ["recorded", "debrief", "columns"].forEach((id) => { byId(id).hidden = true; });
}

async function print(format) {
  const name = `debrief.${format}`;
  told.textContent = say("printing", { name });
  try {
    const answer = await review(question(format), file);
    if (answer.headers.get("Content-Type") === "application/json") {
      refused(await answer.json());
      return;
    }
    hand(name, await answer.arrayBuffer(), format === "pdf" ? "application/pdf" : "text/html");
    told.textContent = say("printed", { name });
  } catch (failed) {
    told.textContent = failed.message;
  }
}

export function equip(desk, words) {
  state = desk.state;
  quantities = words.recorded;
  byId("recording-file").addEventListener("change", (event) => {
    if (event.target.files.length > 0) {
      take(event.target.files[0]);
    }
  });
  byId("recording-away").addEventListener("click", () => {
    away();
    byId("recording-file").value = "";
    told.textContent = say("put-away");
  });
  document.querySelectorAll("[data-debrief]").forEach((button) => {
    button.addEventListener("click", () => print(button.dataset.debrief));
  });
  dropped(document.body, take);
}
