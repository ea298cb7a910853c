/* One flight from the side, in time: drawn from the samples of the command fly. */

import { say } from "./words.js";

const SVG = "http://www.w3.org/2000/svg";
const TALL = 300;
const ROOM = { left: 62, right: 20, top: 24, bottom: 44 };

const plot = document.getElementById("side");
const time = document.getElementById("time");
const timeOut = document.getElementById("time-out");
const now = document.getElementById("side-now");
const play = document.getElementById("play");

let flight = null;
let timer = null;

function element(name, attributes, text) {
  const node = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) {
    node.setAttribute(key, value);
  }
  if (text !== undefined) {
    node.textContent = text;
  }
  plot.append(node);
  return node;
}

function column(table, name) {
  const at = table.columns.indexOf(name);
  return table.rows.map((row) => row[at]);
}

/* Distance is ground speed over time; the samples stand a tenth of a second apart. */
function travelled(t, speed, metresPerKnot) {
  let far = 0;
  return t.map((at, i) => {
    far += i === 0 ? 0 : (at - t[i - 1]) * (speed[i] + speed[i - 1]) / 2 * metresPerKnot;
    return far;
  });
}

function steps(low, high, count) {
  const raw = (high - low) / count;
  const power = 10 ** Math.floor(Math.log10(raw));
  const step = [1, 2, 5, 10].map((m) => m * power).find((s) => s >= raw * 0.999);
  const marks = [];
  for (let at = Math.ceil(low / step); at * step <= high; at++) {
    marks.push(at * step);
  }
  return marks;
}

const between = (list, i, part) => list[i] + part * ((i + 1 < list.length ? list[i + 1] : list[i]) - list[i]);

export function take(line) {
  const samples = line.tables.samples;
  const scale = line.scale;
  const t = column(samples, "time_s");
  const h = column(samples, "height_ft").map((v) => v * scale.length);
  const x = travelled(t, column(samples, "ground_speed_kt"), scale.distance);
  const onset = line.tables.events.rows.find((row) => row[0] === "ONSET");
  const zero = onset ? onset[1] : 0;
  const [at, part] = moment(t, zero);
  flight = {
    t: t.map((one) => one - zero),
    h: h.map((one) => one - between(h, at, part)),
    x: x.map((one) => one - between(x, at, part)),
    v: column(samples, "vertical_speed_fpm").map((v) => v * scale.sink),
    phase: column(samples, "phase"),
    scale,
  };
  time.min = Math.ceil(Math.max(-5, flight.t[0]) * 10) / 10;
  time.max = flight.t[flight.t.length - 1].toFixed(1);
  age(false);
  draw();
}

/* The sample before a time, and which part of the way to the next one has passed. */
function moment(t, at) {
  const i = Math.max(0, t.findLastIndex((one) => one <= at));
  return [i, i + 1 < t.length ? Math.min(1, Math.max(0, (at - t[i]) / (t[i + 1] - t[i]))) : 0];
}

/* What was flown before does not stay where nothing is flown now. */
export function clear() {
  flight = null;
  age(false);
  plot.replaceChildren();
  plot.removeAttribute("viewBox");
  plot.setAttribute("aria-label", say("no-flight"));
  now.textContent = "";
}

export function age(old) {
  [plot, now].forEach((one) => one.classList.toggle("old", old));
}

export function draw() {
  timeOut.textContent = `${fixed(Number(time.value), 1)} s`;
  if (!flight) {
    return;
  }
  const wide = Math.max(280, Math.min(900, plot.clientWidth || 600));
  plot.replaceChildren();
  plot.setAttribute("viewBox", `0 0 ${wide} ${TALL}`);
  const from = moment(flight.t, Number(time.min))[0];
  const xs = flight.x.slice(from);
  const hs = flight.h.slice(from);
  const low = [Math.min(...xs), Math.min(...hs)];
  const high = [Math.max(...xs) + 1, Math.max(...hs) + 1];
  const pad = 0.06 * (high[1] - low[1]);
  const across = (v) => ROOM.left + (v - low[0]) / (high[0] - low[0]) * (wide - ROOM.left - ROOM.right);
  const up = (v) => TALL - ROOM.bottom - (v - low[1] + pad) / (high[1] - low[1] + 2 * pad) * (TALL - ROOM.top - ROOM.bottom);
  for (const mark of steps(low[1], high[1], 5)) {
    element("line", { x1: ROOM.left, x2: wide - ROOM.right, y1: up(mark), y2: up(mark), class: "ruled" });
    element("text", { x: ROOM.left - 8, y: up(mark) + 5, "text-anchor": "end" }, String(mark));
  }
  for (const mark of steps(low[0], high[0], wide / 110)) {
    element("text", { x: across(mark), y: TALL - ROOM.bottom + 18, "text-anchor": "middle" }, String(mark));
  }
  element("text", { x: ROOM.left, y: 14, class: "axis" }, `height from that of onset, ${flight.scale.lengthUnit}`);
  element("text", { x: wide - ROOM.right, y: TALL - 6, "text-anchor": "end", class: "axis" }, `distance over the ground, ${flight.scale.lengthUnit}`);
  element("polyline", { points: xs.map((x, i) => `${across(x).toFixed(1)},${up(hs[i]).toFixed(1)}`).join(" "), class: "path" });
  const [i, part] = moment(flight.t, Number(time.value));
  const height = between(flight.h, i, part);
  element("circle", { cx: across(between(flight.x, i, part)), cy: up(height), r: 8, class: "craft" });
  now.textContent = say("now", {
    t: fixed(Number(time.value), 1),
    h: `${fixed(height, 0)} ${flight.scale.lengthUnit}`,
    v: `${fixed(between(flight.v, i, part), flight.scale.sinkDecimals)} ${flight.scale.sinkUnit}`,
    phase: flight.phase[i],
  });
  time.setAttribute("aria-valuetext", now.textContent);
  plot.setAttribute("aria-label", say("drawn", {
    high: `${fixed(high[1] - 1, 0)} ${flight.scale.lengthUnit}`,
    low: `${fixed(low[1], 0)} ${flight.scale.lengthUnit}`,
    far: `${fixed(high[0] - 1, 0)} ${flight.scale.lengthUnit}`,
  }));
}

/* A number that is printed as nothing has no sign. */
function fixed(number, decimals) {
  const text = number.toFixed(decimals);
  return Number(text) === 0 ? (0).toFixed(decimals) : text;
}

function stop() {
  clearInterval(timer);
  timer = null;
  play.textContent = "Play";
}

export function equip() {
  time.addEventListener("input", draw);
  window.addEventListener("resize", draw);
  play.addEventListener("click", () => {
    if (timer !== null) {
      stop();
      return;
    }
    if (Number(time.value) >= Number(time.max)) {
      time.value = time.min;
    }
    play.textContent = "Stop";
    timer = setInterval(() => {
      time.value = Number(time.value) + 0.1;
      draw();
      if (Number(time.value) >= Number(time.max)) {
        stop();
      }
    }, 100);
  });
}
