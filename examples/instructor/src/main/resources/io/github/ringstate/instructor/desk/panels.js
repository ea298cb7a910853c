/* The results: each report goes to its panel when it comes. */

import { drawing, made, sheet } from "./blocks.js";
import { compare } from "./change.js";
import * as form from "./form.js";
import * as side from "./side.js";
import { say } from "./words.js";

const progress = document.getElementById("progress");
let pilots = 0;

const place = (panel) => document.querySelector(`[data-panel="${panel}"].said`);

/* What is on the page stays, marked as that of before, until the new figures are there. */
export function begin() {
  pilots = 0;
  document.querySelectorAll(".said:not([data-panel=review])").forEach((said) => {
    said.classList.add("old");
    said.setAttribute("aria-busy", "true");
  });
  progress.textContent = say("flying");
}

export function still() {
  progress.textContent = "";
}

export function hear(line) {
  if (line.done) {
    progress.textContent = say("settled", { n: pilots });
    return;
  }
  const said = place(line.panel);
  said.classList.remove("old");
  said.removeAttribute("aria-busy");
  form.unmark(line.panel);
  if (line.refused !== undefined) {
    const marked = form.mark(line.panel, line.refused);
    said.replaceChildren(made("p", { class: "refused" }, marked ? say("at-field") : line.refused));
    return;
  }
  if (line.panel === "floor") {
    pilots = line.facts.pilots;
    progress.textContent = say("so-far", { n: pilots });
  }
  if (line.panel === "loss") {
    document.getElementById("change").textContent = compare(line.sheet);
  }
  if (line.panel === "fly") {
    side.take(line);
  }
  show(said, line, document.getElementById(`h-${line.panel}`).textContent);
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
  const drawn = Object.values(line.drawings || {}).map((markup) => made("div", { class: "drawn" }, drawing(markup)));
  said.replaceChildren(...(drawn.length > 0 ? [made("div", { class: "drawings" }, ...drawn)] : []), inside);
}
