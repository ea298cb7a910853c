/* The form: what is filled in, as the parts of a plan; what the tool has to say of a field, beside it. */

import { made } from "./blocks.js";

const SI = { ft: "m", kt: "m/s", "ft/min": "m/s" };
const NUMBER = /^[+-]?[0-9.,]+$/;

export const fields = (root = document) => Array.from(root.querySelectorAll("[data-field]"));
const ticks = (field) => Array.from(field.querySelectorAll("input[type=checkbox]"));
const entry = (field) => field.querySelector("input, select");
const unit = (field) => field.querySelector("select.unit");
const controls = (field) => Array.from(field.querySelectorAll("input, select:not(.unit)"));
export const labelOf = (field) => field.querySelector(".caption, label").textContent;

/* Winds of a forecast, a line each: height above ground, where from, speed. */
const levels = (field) => Array.from(field.querySelectorAll(".level"), (line) => Array.from(line.querySelectorAll("input"), (one) => one.value.trim()));

/* A number in another unit than the option's has the unit behind it, as on the command line. */
export function value(field) {
  const all = ticks(field);
  if (all.length > 0) {
    const chosen = all.filter((tick) => tick.checked).map((tick) => tick.value);
    return chosen.length === all.length && all.length > 1 ? "" : chosen.join(",");
  }
  if (field.dataset.levels) {
    return levels(field).filter((line) => line.some((one) => one !== "")).map(([height, from, speed]) => `${height}:${from}/${speed}`).join(",");
  }
  const text = entry(field).value.trim();
  const chosen = unit(field);
  return chosen && NUMBER.test(text) ? text + chosen.value : text;
}

export function fill(field, text) {
  const all = ticks(field);
  if (all.length > 0) {
    all.forEach((tick) => { tick.checked = text === "" ? all.length > 1 : text.split(",").includes(tick.value); });
    return;
  }
  if (field.dataset.levels) {
    const winds = text.split(",");
    field.querySelectorAll(".level").forEach((line, i) => {
      const parts = (winds[i] || "").split(/[:/]/);
      line.querySelectorAll("input").forEach((one, k) => { one.value = (parts[k] || "").trim(); });
    });
    return;
  }
  const select = unit(field);
  const parts = /^([+-]?[0-9.]+) *(\D+)$/.exec(text);
  if (select && parts && Array.from(select.options).some((one) => one.value === parts[2])) {
    entry(field).value = parts[1];
    select.value = parts[2];
    return;
  }
  if (select) {
    select.selectedIndex = 0;
  }
  entry(field).value = text;
}

/* The plan on the form: only what is filled in. */
export function plan() {
  const filled = { facts: {}, conditions: {}, encounter: {}, agreed: {}, crew: "", technique: "" };
  const run = document.getElementById("run-planned").checked;
  for (const field of fields()) {
    const [part, name] = field.dataset.field.split(".");
    const text = value(field);
    if (text === "" || (part === "run" && !run)) {
      continue;
    }
    if (name === undefined) {
      filled[part] = text;
    } else {
      filled[part] = filled[part] || {};
      filled[part][name] = text;
    }
  }
  if (run) {
    filled.run = filled.run || {};
  }
  return filled;
}

export function lay(saved) {
  for (const field of fields()) {
    const [part, name] = field.dataset.field.split(".");
    const text = name === undefined ? saved[part] : (saved[part] || {})[name];
    if (text !== undefined || !["units", "size"].includes(part)) {
      fill(field, text || "");
    }
  }
  document.getElementById("run-planned").checked = saved.run !== undefined;
  for (const select of document.querySelectorAll("select")) {
    if (select.selectedIndex < 0) {
      select.selectedIndex = 0;
    }
  }
}

/* Empty boxes are filled in in the units of the results. */
export function speak(units) {
  for (const select of document.querySelectorAll("select.unit")) {
    const own = select.options[0].textContent;
    const wanted = units === "si" ? SI[own] || own : own;
    const empty = select.parentElement.querySelector("input").value === "";
    const at = Array.from(select.options).findIndex((one) => one.textContent === wanted);
    if (empty && at >= 0) {
      select.selectedIndex = at;
    }
  }
}

function equipUnits(field) {
  const units = (field.dataset.units || "").split(" ").filter((one) => one !== "");
  const place = field.querySelector(".entry");
  if (units.length === 1) {
    place.append(made("span", { class: "unit", id: `u-${entry(field).id}` }, units[0]));
  } else if (units.length > 1) {
    const choice = units.map((one, i) => made("option", { value: i === 0 ? "" : one }, one));
    place.append(made("select", { class: "unit", "aria-label": `Unit: ${labelOf(field)}` }, ...choice));
  }
}

const LEVEL = [["Height above ground", "ft"], ["Wind from", "deg"], ["Wind", "kt"]];

function equipLevels(field) {
  const lines = Number(field.dataset.levels || 0);
  for (let i = 1; i <= lines; i++) {
    const line = made("span", { class: "level" });
    for (const [label, symbol] of LEVEL) {
      line.append(made("input", { inputmode: "decimal", "aria-label": `${label}, ${symbol}, forecast ${i}` }), made("span", { class: "unit" }, symbol));
    }
    field.append(line);
  }
}

function equipHelp(field, key, help) {
  const id = `h-${key}`;
  const text = made("p", { class: "help", id, hidden: true }, help);
  const button = made("button", { type: "button", class: "ask", "aria-expanded": "false", "aria-controls": id, "aria-label": `What is: ${labelOf(field)}` }, "?");
  button.addEventListener("click", () => {
    text.hidden = !text.hidden;
    button.setAttribute("aria-expanded", String(!text.hidden));
  });
  field.querySelector(".caption, label").after(button);
  field.append(text);
}

function partOf(field) {
  const { number, review } = field.dataset;
  return number ? ["manual", number] : review ? ["review", review] : field.dataset.field.split(".");
}

/* What is known of the flight that was recorded. */
export function reviewed() {
  const filled = {};
  document.querySelectorAll("[data-review]").forEach((field) => { filled[field.dataset.review] = value(field); });
  return filled;
}

export function layReview(filled) {
  document.querySelectorAll("[data-review]").forEach((field) => fill(field, filled[field.dataset.review] || ""));
}

/* The states are explained by their delays. */
const explained = (words, part, name) =>
  (part === "encounter" && name === "state" ? ` ${words.states.map((one) => `${one.name}: ${one.words}`).join(". ")}.` : "");

/* Each field gets its units, its help in the words of the tool, and a place for what is wrong with it. */
export function equip(words) {
  for (const field of document.querySelectorAll("[data-field], [data-number], [data-review]")) {
    const [part, name] = partOf(field);
    const key = `${part}-${name || ""}`;
    equipLevels(field);
    equipUnits(field);
    const help = name && words[part] ? words[part][name] : undefined;
    if (help) {
      equipHelp(field, key, help + explained(words, part, name));
    }
    const wrong = made("p", { class: "wrong", id: `w-${key}`, role: "alert", hidden: true });
    field.append(wrong);
    const own = field.querySelector("span.unit[id]");
    controls(field).forEach((control) => control.setAttribute("aria-describedby", own ? `${own.id} ${wrong.id}` : wrong.id));
  }
}

function find(option, panel) {
  if (panel === "manual" || panel === "review") {
    return document.querySelector(`[data-${panel === "manual" ? "number" : "review"}="${option}"]`);
  }
  const parts = panel === "runs" ? ["run", "conditions"] : ["conditions", "encounter", "facts"];
  const names = parts.map((part) => `[data-field="${part}.${option}"]`);
  const heights = { "agreed-height-ft": "least_height_ft", "start-height-ft": "start_height_ft", "abort-height-ft": "abort_height_ft" };
  names.push(`[data-field="agreed.${heights[option]}"]`, `[data-field="${option}"]`);
  return names.map((name) => document.querySelector(name)).find((field) => field) || null;
}

/* What the tool says of its options is said of the fields that stand for them. */
export function spoken(sentence, panel) {
  return sentence.replace(/--(run-)?([a-z][a-z-]*)(=[^ ,;)]*)?/g, (all, run, name) => {
    const field = find(name, run ? "runs" : panel);
    return field ? `"${labelOf(field)}"` : all;
  });
}

/* What the tool says of an option goes to the field of that option; false if there is none. */
export function mark(panel, sentence) {
  const option = /--(run-)?([a-z][a-z-]*)/.exec(sentence);
  const field = option ? find(option[2], option[1] ? "runs" : panel) : null;
  if (!field) {
    return false;
  }
  markField(field, panel, spoken(sentence.replace(/^--[a-z-]+ /, `${labelOf(field)} `), panel));
  return true;
}

/* Panels that refuse the same thing say it once: it is read out when it appears. */
export function markField(field, panel, said) {
  const wrong = field.querySelector(".wrong");
  if (!wrong.hidden && wrong.textContent === said) {
    return;
  }
  wrong.textContent = said;
  wrong.hidden = false;
  wrong.dataset.by = panel;
  field.classList.add("is-wrong");
  controls(field).forEach((control) => control.setAttribute("aria-invalid", "true"));
}

/* Takes back what was said of the fields; of one panel's alone if it is named. */
export function unmark(panel) {
  for (const field of document.querySelectorAll(".is-wrong")) {
    const wrong = field.querySelector(".wrong");
    if (panel === undefined || wrong.dataset.by === panel) {
      field.classList.remove("is-wrong");
      wrong.hidden = true;
      wrong.textContent = "";
      controls(field).forEach((control) => control.removeAttribute("aria-invalid"));
    }
  }
}
