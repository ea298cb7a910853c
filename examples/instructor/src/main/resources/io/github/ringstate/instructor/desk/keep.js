/* What is on the form is kept by the browser, for this page, until it is saved: a reload loses nothing. */

import { tab } from "./ask.js";

const NAME = "ringstate-desk-";
const MOST = 4;

function all() {
  return Object.keys(localStorage)
    .filter((key) => key.startsWith(NAME))
    .map((key) => ({ key, ...JSON.parse(localStorage.getItem(key)) }))
    .sort((one, other) => other.at - one.at);
}

export function keep(left) {
  try {
    localStorage.setItem(NAME + tab, JSON.stringify({ at: Date.now(), left }));
    all().slice(MOST).forEach((old) => localStorage.removeItem(old.key));
  } catch (full) {
    /* a browser that keeps nothing: the plan can be saved as a file */
  }
}

/* Once the plan is a file, nothing of it stays behind when the page is closed. */
export function saved(left) {
  forget();
  sessionStorage.setItem("left", JSON.stringify(left));
}

export function forget() {
  localStorage.removeItem(NAME + tab);
  sessionStorage.removeItem("left");
}

/* What this page had; for a new page, what another one left unsaved. */
export function left() {
  const own = localStorage.getItem(NAME + tab);
  if (own) {
    return JSON.parse(own).left;
  }
  const known = sessionStorage.getItem("left");
  if (known) {
    return JSON.parse(known);
  }
  const others = all();
  return others.length > 0 ? others[0].left : null;
}
