/* The results: each report goes to its panel when it comes. */

import { drawing, made, sheet } from "./blocks.js";
import { compare, conditions } from "./change.js";
import * as form from "./form.js";
import * as side from "./side.js";
import { say } from "./words.js";

const progress = document.getElementById("progress");
const changed = document.getElementById("change");
const aloud = document.getElementById("aloud");
const keepBeside = document.getElementById("beside-keep");
let pilots = 0;
let most = "";

const place = (panel) => document.querySelector(`[data-panel="${panel}"].said`);

/* What is on the page stays, marked as that of before, until the new figures are there. */
export function begin() {
  pilots = 0;
  document.querySelectorAll(".said:not([data-panel=review])").forEach((said) => {
    said.classList.add("old");
    said.setAttribute("aria-busy", "true");
  });
  side.age(true);
  progress.textContent = say("flying");
}

export function still() {
  progress.textContent = "";
}

export function hear(line) {
  if (line.done) {
    progress.textContent = pilots > 0 ? say("settled", { n: pilots }) : say("not-flown");
    aloud.textContent = `${most} ${progress.textContent}`.trim();
    return;
  }
  const said = place(line.panel);
  said.classList.remove("old");
  said.removeAttribute("aria-busy");
  form.unmark(line.panel);
  if (line.refused !== undefined) {
    const marked = form.mark(line.panel, line.refused);
    said.replaceChildren(made("p", { class: "refused" }, marked ? say("at-field") : form.spoken(line.refused, line.panel)));
    none(line.panel);
    return;
  }
  if (line.panel === "floor") {
    pilots = line.facts.pilots;
    progress.textContent = say("so-far", { n: pilots });
  }
  if (line.panel === "loss") {
    most = compare(line.sheet);
    changed.textContent = most || say("try");
  }
  if (line.panel === "fly") {
    side.take(line);
  }
  show(said, line, document.getElementById(`h-${line.panel}`).textContent);
  besides(said, line.panel);
}

/* What stands on the form is named like what is kept beside it. */
function besides(said, panel) {
  if (panel === "loss") {
    keepBeside.disabled = false;
    document.getElementById("now-what").textContent = say("beside-now", { what: conditions(said) });
  }
  if (panel === "floor") {
    document.getElementById("now-floor").textContent = Array.from(said.querySelectorAll(":scope > .take"), (one) => one.textContent).join(" ");
  }
}

/* A refused panel leaves nothing of an earlier answer in sight. */
function none(panel) {
  if (panel === "fly") {
    side.clear();
  }
  if (panel === "loss") {
    most = "";
    changed.textContent = "";
    keepBeside.disabled = true;
    document.getElementById("now-what").textContent = "";
  }
  if (panel === "floor") {
    document.getElementById("now-floor").textContent = "";
  }
}

function show(said, line, title) {
  const open = Array.from(said.querySelectorAll("details")).map((one) => one.open);
  const inside = sheet(line.sheet, title);
  if (line.panel === "fly") {
    const history = inside.querySelectorAll(".scroll")[1];
    if (history) {
      const folded = made("details", { class: "folded" }, made("summary", {}, "Time history"));
      history.before(folded);
      folded.append(history);
      inside.querySelectorAll("h3")[1].remove();
    }
  }
  inside.querySelectorAll("details").forEach((one, i) => { one.open = open[i] || false; });
  const drawn = Object.keys(line.drawings || {}).sort().map((name) => drawing(line.drawings[name]));
  const notices = line.notices.map((notice) => made("p", { class: "note" }, form.spoken(notice, line.panel)));
  said.replaceChildren(...notices, ...(drawn.length > 0 ? [made("div", { class: "drawings" }, ...drawn)] : []), inside);
}
