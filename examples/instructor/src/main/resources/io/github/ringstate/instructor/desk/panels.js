/* The results: each report goes to its panel when it comes. */

import { drawing, made, sheet } from "./blocks.js";
import * as form from "./form.js";

const progress = document.getElementById("progress");
let pilots = 0;

function place(panel) {
  return document.querySelector(`[data-panel="${panel}"]`);
}

/* What is on the page stays, marked as that of before, until the new figures are there. */
export function begin() {
  pilots = 0;
  document.querySelectorAll(".said").forEach((said) => said.classList.add("old"));
  progress.textContent = "Flying …";
}

export function still() {
  progress.textContent = "";
}

export function hear(line) {
  if (line.done) {
    progress.textContent = `Settled: ${pilots} simulated pilots a line.`;
    return;
  }
  const said = place(line.panel);
  if (line.panel === "loss") {
    form.unmark();
  }
  said.classList.remove("old");
  if (line.refused !== undefined) {
    const marked = form.mark(line.panel, line.refused);
    said.replaceChildren(made("p", { class: "refused" }, marked ? "See the field marked on the form." : line.refused));
    return;
  }
  if (line.pilots > 0) {
    pilots = Math.max(pilots, line.pilots);
    progress.textContent = `${pilots} simulated pilots a line so far; more are flown.`;
  }
  const title = document.getElementById(`h-${line.panel}`).textContent;
  const open = Array.from(said.querySelectorAll("details")).map((one) => one.open);
  const inside = sheet(line.sheet, title);
  inside.querySelectorAll("details").forEach((one, i) => { one.open = open[i] || false; });
  const drawn = Object.values(line.drawings || {}).map((markup) => made("div", { class: "drawn" }, drawing(markup)));
  said.replaceChildren(...drawn, inside);
}
