/* The form: what is filled in, as the parts of a plan; what the tool has to say of a field, beside it. */

import { made } from "./blocks.js";

const PARTS = ["conditions", "encounter", "run", "agreed", "facts"];

export const fields = () => Array.from(document.querySelectorAll("[data-field]"));

function ticks(field) {
  return Array.from(field.querySelectorAll("input[type=checkbox]"));
}

export function value(field) {
  const all = ticks(field);
  if (all.length > 0) {
    const chosen = all.filter((tick) => tick.checked).map((tick) => tick.value);
    return chosen.length === all.length && all.length > 1 ? "" : chosen.join(",");
  }
  return field.querySelector("input, select").value.trim();
}

export function fill(field, text) {
  const all = ticks(field);
  if (all.length > 0) {
    const chosen = text === "" ? null : text.split(",");
    all.forEach((tick) => { tick.checked = chosen === null ? all.length > 1 : chosen.includes(tick.value); });
    return;
  }
  field.querySelector("input, select").value = text;
}

/* The plan on the form: only what is filled in. */
export function plan() {
  const filled = { facts: {}, conditions: {}, encounter: {}, agreed: {}, crew: "", technique: "" };
  for (const field of fields()) {
    const [part, name] = field.dataset.field.split(".");
    const text = value(field);
    if (text === "" || field.closest("[hidden]")) {
      continue;
    }
    if (name === undefined) {
      filled[part] = text;
    } else {
      filled[part] = filled[part] || {};
      filled[part][name] = text;
    }
  }
  return filled;
}

export function lay(saved) {
  for (const field of fields()) {
    const [part, name] = field.dataset.field.split(".");
    const text = name === undefined ? saved[part] : (saved[part] || {})[name];
    fill(field, text || "");
  }
}

/* Each field gets its help and a place for what is wrong with it. */
export function equip(words) {
  for (const field of fields()) {
    const [part, name] = field.dataset.field.split(".");
    const help = words[part] && name ? words[part][name] : null;
    const control = field.querySelector("input, select");
    const label = field.querySelector("label, .caption");
    const wrong = made("p", { class: "wrong", id: `w-${field.dataset.field.replace(".", "-")}`, role: "alert", hidden: true });
    if (help) {
      const id = `h-${field.dataset.field.replace(".", "-")}`;
      const text = made("p", { class: "help", id, hidden: true }, help);
      const button = made("button", { type: "button", class: "ask", "aria-expanded": "false", "aria-controls": id, "aria-label": `What is: ${label.textContent}` }, "?");
      button.addEventListener("click", () => {
        text.hidden = !text.hidden;
        button.setAttribute("aria-expanded", String(!text.hidden));
      });
      label.after(button);
      field.append(text);
    }
    field.append(wrong);
    control.setAttribute("aria-describedby", wrong.id);
  }
}

function find(option, panel) {
  const parts = panel === "runs" ? ["run", "conditions"] : PARTS;
  for (const part of parts) {
    const field = document.querySelector(`[data-field="${part}.${option}"]`);
    if (field) {
      return field;
    }
  }
  return document.querySelector(`[data-field="${option}"]`);
}

export function mark(panel, sentence) {
  const option = /--([a-z][a-z-]*)/.exec(sentence);
  const field = option ? find(option[1], panel) : null;
  if (!field) {
    return false;
  }
  const wrong = field.querySelector(".wrong");
  const label = field.querySelector("label, .caption").textContent;
  wrong.textContent = sentence.replace(/^--[a-z-]+ /, `${label} `);
  wrong.hidden = false;
  field.classList.add("is-wrong");
  field.querySelectorAll("input, select").forEach((control) => control.setAttribute("aria-invalid", "true"));
  return true;
}

export function unmark() {
  for (const field of document.querySelectorAll(".field.is-wrong")) {
    field.classList.remove("is-wrong");
    field.querySelector(".wrong").hidden = true;
    field.querySelectorAll("input, select").forEach((control) => control.removeAttribute("aria-invalid"));
  }
}
