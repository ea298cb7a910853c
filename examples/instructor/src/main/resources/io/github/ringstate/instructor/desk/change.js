/* What changed most when something on the form was changed, in figures as they are printed. */

import { made } from "./blocks.js";
import { say } from "./words.js";

let before = null;
let shown = null;
let moved = "";
let answered = true;

function figures(report) {
  const grid = report.blocks.find((block) => block.kind === "grid");
  const cells = new Map();
  for (const row of grid.rows) {
    grid.columns.slice(1).forEach((column, i) => {
      cells.set(`${column.head[0]} at ${row[0]} s`, { text: row[i + 1], unit: column.head[1].split(", ")[1] || "" });
    });
  }
  return cells;
}

/* A change begins from the table on the page. What is changed before an answer is there is answered with it. */
export function touch(what) {
  if (!answered && before !== null) {
    moved = moved.split(" and ").includes(what) ? moved : `${moved} and ${what}`;
  } else if (what !== moved || before === null) {
    before = shown;
    moved = what;
  }
  answered = false;
}

const number = (text) => (/^[0-9]+$/.test(text) ? Number(text) : NaN);

/* A figure that becomes a word, or a word that becomes a figure, changed more than any figure did. */
function distance(one, other) {
  const by = Math.abs(number(one.text) - number(other.text));
  return Number.isNaN(by) ? (one.text === other.text ? 0 : Infinity) : by;
}

const worded = (cell) => (Number.isNaN(number(cell.text)) ? cell.text : `${cell.text} ${cell.unit}`);

export function compare(report) {
  const now = figures(report);
  shown = now;
  answered = true;
  if (before === null || moved === "") {
    return "";
  }
  let most = 0;
  let where = "";
  let compared = false;
  for (const [place, cell] of now) {
    const old = before.get(place);
    const alike = old !== undefined && old.unit === cell.unit;
    compared = compared || alike;
    if (alike && distance(old, cell) > most) {
      most = distance(old, cell);
      where = place;
    }
  }
  if (where === "") {
    return compared ? say("same", { what: moved }) : "";
  }
  return say("changed", { what: moved, where, before: worded(before.get(where)), after: worded(now.get(where)) });
}

const CONDITIONS = ["Craft", "Entry", "Wind", "Conditions"];

/* For what the figures of a panel hold, in a line. */
export function conditions(panel) {
  const first = panel.querySelector(".terms");
  return Array.from(first ? first.querySelectorAll("dt") : [])
    .filter((word) => CONDITIONS.includes(word.textContent))
    .map((word) => word.nextSibling.textContent.split(":")[0])
    .join("; ");
}

/* A copy of a panel that stays while the form goes on, with what simulated pilots needed. */
export function beside(place, panel, floors) {
  const copy = panel.cloneNode(true);
  place.replaceChildren(made("p", { class: "what" }, say("beside", { what: conditions(panel) })), ...copy.childNodes, ...floors.map((said) => said.cloneNode(true)));
  place.hidden = false;
}
