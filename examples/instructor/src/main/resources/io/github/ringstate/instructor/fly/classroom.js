"use strict";
(function () {
  var SVG = "http://www.w3.org/2000/svg";
  var data = JSON.parse(document.getElementById("data").textContent);
  var delay = document.getElementById("delay");
  var time = document.getElementById("time");
  var others = document.getElementById("others");
  var side = document.getElementById("side");
  var strips = document.getElementById("strips");
  var ticks = Array.prototype.slice.call(document.getElementsByName("recovery"));
  var STRIPS = [
    { key: "h", title: "height, " + data.length },
    { key: "v", title: "vertical speed, " + data.sink },
    { key: "i", title: "induced velocity / hover induced velocity" },
    { key: "p", title: "power, % of continuous" }
  ];

  function element(parent, name, attributes, text) {
    var made = document.createElementNS(SVG, name);
    Object.keys(attributes).forEach(function (key) { made.setAttribute(key, attributes[key]); });
    if (text !== undefined) { made.textContent = text; }
    parent.appendChild(made);
    return made;
  }

  /* The plots are as wide as the window shows them, so that letters keep their size; on paper they
     are low, so that all of it is one page. */
  var SCREEN = { side: 380, strips: 640 };
  /* A projector or a laptop: both drawings stand beside each other, all of it in one window. */
  var PROJECTOR = { side: 290, strips: 500, least: 190 };
  var PAPER = { side: 262, strips: 460, wide: 960 };
  /* A letter of a name is not wider. */
  var LETTER = 8;
  /* From one text to the next below it. */
  var LINE = 17;
  var TERRAIN = "terrain";
  var LEAST = 420;
  var MOST = 960;
  var shape = screen();

  function screen() {
    return window.matchMedia("(min-width: 1200px) and (min-height: 640px)").matches
      ? PROJECTOR : SCREEN;
  }

  function wide() {
    return shape.wide || Math.round(Math.min(MOST, Math.max(LEAST, side.clientWidth || MOST)));
  }

  function sized(plot, height) {
    empty(plot);
    plot.setAttribute("viewBox", "0 0 " + wide() + " " + height);
    return { left: 70, right: wide() - 100 };
  }

  function empty(node) { while (node.firstChild) { node.removeChild(node.firstChild); } }

  function pen(name) {
    return data.pens.filter(function (one) { return one.name === name; })[0];
  }

  /* Round numbers that cover a range. */
  function scale(low, high, count) {
    if (!(high > low)) { high = low + 1; }
    var raw = (high - low) / count;
    var power = Math.pow(10, Math.floor(Math.log(raw) / Math.LN10));
    var step = [1, 2, 5, 10].map(function (m) { return m * power; })
      .filter(function (s) { return s >= raw * 0.999; })[0];
    var marks = [];
    for (var at = Math.ceil(low / step - 1e-9); at * step <= high + step * 1e-9; at++) {
      marks.push(Math.round(at * step * 1e6) / 1e6);
    }
    return marks;
  }

  function range(flights, key) {
    var low = Infinity;
    var high = -Infinity;
    flights.forEach(function (flight) {
      flight[key].forEach(function (value) {
        low = Math.min(low, value);
        high = Math.max(high, value);
      });
    });
    var room = 0.05 * (high - low);
    return low < high ? [low - room, high + room] : [0, 1];
  }

  /* The sample at or before a time; the last one where the flight is over. */
  function place(flight, at) {
    var found = 0;
    flight.t.forEach(function (t, i) { if (t <= at + 1e-6) { found = i; } });
    return found;
  }

  /* What a flight has at a time, on the line between its samples. */
  function valueAt(flight, key, at) {
    var i = place(flight, at);
    if (i + 1 === flight.t.length || at <= flight.t[i]) { return flight[key][i]; }
    var part = (at - flight.t[i]) / (flight.t[i + 1] - flight.t[i]);
    return flight[key][i] + part * (flight[key][i + 1] - flight[key][i]);
  }

  function mapped(from, to, low, high) {
    return function (value) { return low + (value - from) / (to - from) * (high - low); };
  }

  function line(parent, flight, across, up, x, y, thin) {
    var style = pen(flight.recovery);
    var points = flight[x].map(function (value, i) {
      return across(value).toFixed(1) + "," + up(flight[y][i]).toFixed(1);
    }).join(" ");
    element(parent, "polyline", {
      points: points, fill: "none", stroke: style.color,
      "stroke-width": thin ? 0.7 : 2.4, "stroke-opacity": thin ? 0.55 : 1,
      "stroke-dasharray": style.dash.length ? style.dash.join(" ") : "none",
      "stroke-linejoin": "round", "data-recovery": flight.recovery, "data-delay": flight.delay
    });
  }

  function diamond(parent, x, y) {
    element(parent, "path", { d: "M" + x + " " + (y - 7) + "l7 7l-7 7l-7 -7z", fill: "#111" });
  }

  function marks(parent, flight, across, up, x, y) {
    var now = Number(time.value);
    if (flight.acts !== null) {
      diamond(parent, across(valueAt(flight, x, flight.acts)), up(valueAt(flight, y, flight.acts)));
    }
    if (flight.arrest !== null) {
      var low = place(flight, flight.arrest);
      element(parent, "rect", {
        x: across(flight[x][low]) - 5, y: up(flight[y][low]) - 5, width: 10, height: 10, fill: "#111"
      });
    }
    element(parent, "circle", {
      cx: across(valueAt(flight, x, now)), cy: up(valueAt(flight, y, now)), r: 8, fill: "#fff",
      stroke: pen(flight.recovery).color, "stroke-width": 3, "class": "now",
      "data-recovery": flight.recovery
    });
  }

  function axes(parent, box, xs, ys, across, up, xTitle, yTitle) {
    ys.forEach(function (y) {
      element(parent, "line", {
        x1: box.left, x2: box.right, y1: up(y), y2: up(y), stroke: "#d0d0d0", "stroke-width": 0.8
      });
      element(parent, "text", { x: box.left - 8, y: up(y) + 5, "text-anchor": "end" }, String(y));
    });
    xs.forEach(function (x) {
      element(parent, "line", {
        x1: across(x), x2: across(x), y1: box.top, y2: box.bottom, stroke: "#d0d0d0",
        "stroke-width": 0.8
      });
      if (xTitle !== null) {
        element(parent, "text", {
          x: across(x), y: box.bottom + 18, "text-anchor": "middle"
        }, String(x));
      }
    });
    element(parent, "path", {
      d: "M" + box.left + " " + box.top + "V" + box.bottom + "H" + box.right, fill: "none",
      stroke: "#111", "stroke-width": 1.2
    });
    if (xTitle !== null) {
      element(parent, "text", {
        x: (box.left + box.right) / 2, y: box.bottom + 38, "text-anchor": "middle"
      }, xTitle);
    }
    element(parent, "text", { x: box.left, y: box.top - 8, "font-weight": 600 }, yTitle);
  }

  /* Where a name begins: behind the end of its line, and behind the ends of others that would lie
     on it. */
  function behind(flights, own, width, across, up, x, y) {
    function end(flight, key, map) { return map(flight[key][flight[key].length - 1]); }
    var begins = end(own, x, across) + 12;
    flights.map(function (flight) { return [end(flight, x, across), end(flight, y, up)]; })
      .sort(function (one, other) { return one[0] - other[0]; })
      .forEach(function (at) {
        if (Math.abs(at[1] - end(own, y, up)) < LINE && at[0] > begins - 12 && at[0] < begins + width) {
          begins = at[0] + 12;
        }
      });
    return begins;
  }

  /* Names at the ends of lines, inside the box, moved apart where they would lie on each other. */
  function names(parent, flights, box, across, up, x, y) {
    var labels = flights.map(function (flight) {
      var last = flight[x].length - 1;
      var name = pen(flight.recovery).shown;
      var width = LETTER * name.length;
      return {
        name: name,
        width: width,
        x: Math.min(behind(flights, flight, width, across, up, x, y), box.right + 8, wide() - width),
        y: Math.min(up(flight[y][last]) + 5, box.bottom - 3)
      };
    }).sort(function (one, other) { return other.y - one.y; });
    labels.forEach(function (label, i) {
      labels.slice(0, i).forEach(function (below) {
        if (label.x < below.x + below.width && below.x < label.x + label.width) { label.y = Math.min(label.y, below.y - LINE); }
      });
    });
    /* The title stands above the box: names that would reach into it go down, and push those below. */
    labels.slice().reverse().forEach(function (label, i, downward) {
      label.y = Math.max(label.y, box.top + 12);
      downward.slice(0, i).forEach(function (above) {
        if (label.x < above.x + above.width && above.x < label.x + label.width) { label.y = Math.max(label.y, above.y + LINE); }
      });
    });
    labels.forEach(function (label) {
      element(parent, "text", {
        x: label.x, y: label.y, "font-weight": 600,
        stroke: "#fff", "stroke-width": 3, "paint-order": "stroke"
      }, label.name);
    });
    return labels;
  }

  /* How high the terrain stands at a distance; nothing beyond its first and last point. */
  function terrainAt(distance) {
    for (var i = 1; i < data.terrain.length; i++) {
      var one = data.terrain[i - 1];
      var other = data.terrain[i];
      if (distance >= one[0] && distance <= other[0]) {
        return one[1] + (distance - one[0]) / (other[0] - one[0]) * (other[1] - one[1]);
      }
    }
    return null;
  }

  /* Where a flight is nearest above the terrain, and when it first comes below it. Both are
     straight between their points, so the least height is at a point of one of them. */
  function overTerrain(flight) {
    var found = { least: Infinity, struck: null };
    function look(at, distance, height) {
      var ground = terrainAt(distance);
      if (ground === null) { return; }
      found.least = Math.min(found.least, height - ground);
      if (height < ground && found.struck === null) { found.struck = at; }
    }
    flight.t.forEach(function (at, i) {
      var next = i + 1;
      look(at, flight.x[i], flight.h[i]);
      if (next === flight.t.length) { return; }
      data.terrain.map(function (point) {
        return (point[0] - flight.x[i]) / (flight.x[next] - flight.x[i]);
      }).filter(function (part) { return part > 0 && part < 1; }).sort(function (one, other) {
        return one - other;
      }).forEach(function (part) {
        look(at + part * (flight.t[next] - at), flight.x[i] + part * (flight.x[next] - flight.x[i]),
          flight.h[i] + part * (flight.h[next] - flight.h[i]));
      });
    });
    return found;
  }

  function drawTerrain(box, far, across, up) {
    var shown = data.terrain.filter(function (at) { return at[0] > far[0] && at[0] < far[1]; });
    [far[0], far[1]].forEach(function (end, i) {
      var height = terrainAt(end);
      if (height !== null) { shown.splice(i === 0 ? 0 : shown.length, 0, [end, height]); }
    });
    if (shown.length < 2) { return []; }
    var top = shown.map(function (at) { return across(at[0]).toFixed(1) + "," + up(at[1]).toFixed(1); });
    var last = shown[shown.length - 1];
    element(side, "polygon", {
      points: top.concat([across(last[0]).toFixed(1) + "," + box.bottom, across(shown[0][0]).toFixed(1) + "," + box.bottom]).join(" "),
      fill: "#ddd", "class": "terrain"
    });
    element(side, "polyline", { points: top.join(" "), fill: "none", stroke: "#111", "stroke-width": 3 });
    var width = LETTER * TERRAIN.length;
    return shown.slice().sort(function (one, other) { return other[1] - one[1]; }).map(function (at) {
      return {
        x: Math.max(box.left + 4, Math.min(across(at[0]) - width / 2, box.right - width)),
        y: Math.min(up(at[1]) + LINE + 3, box.bottom - 6),
        width: width
      };
    });
  }

  /* The word for the terrain below its highest point where nothing else is written. */
  function nameTerrain(places, written) {
    places.some(function (place) {
      if (written.some(function (other) { return meet(place, other); })) { return false; }
      written.push(place);
      element(side, "text", {
        x: place.x, y: place.y, "font-weight": 600, stroke: "#ddd", "stroke-width": 3, "paint-order": "stroke"
      }, TERRAIN);
      return true;
    });
  }

  /* Time runs along each line: a dot every five seconds, with its number where nothing else is
     written. Each text is the box that its letters fill. */
  function seconds(chosen, across, up, written) {
    chosen.forEach(function (flight) {
      for (var at = 5; at <= flight.t[flight.t.length - 1]; at += 5) {
        var x = across(valueAt(flight, "x", at));
        var y = up(valueAt(flight, "h", at));
        element(side, "circle", { cx: x, cy: y, r: 3.5, fill: pen(flight.recovery).color, "class": "second" });
        var text = at + " s";
        var width = LETTER * text.length;
        [y - 7, y + 19].some(function (base) {
          var box = { x: x - width / 2, y: base, width: width };
          if (written.some(function (other) { return meet(box, other); })) { return false; }
          written.push(box);
          element(side, "text", {
            x: x, y: base, "text-anchor": "middle", stroke: "#fff", "stroke-width": 3, "paint-order": "stroke"
          }, text);
          return true;
        });
      }
    });
  }

  /* Whether two texts would touch; each stands on its y. */
  function meet(one, other) {
    return one.x < other.x + other.width && other.x < one.x + one.width && Math.abs(one.y - other.y) < LINE;
  }

  function drawSide(chosen, all) {
    var box = sized(side, shape.side);
    box.top = 30;
    box.bottom = shape.side - 50;
    var far = range(all, "x");
    var high = range(all, "h");
    data.terrain.forEach(function (at) {
      if (at[0] >= far[0] && at[0] <= far[1]) {
        high = [Math.min(high[0], at[1]), Math.max(high[1], at[1])];
      }
    });
    var across = mapped(far[0], far[1], box.left, box.right);
    var up = mapped(high[0], high[1], box.bottom, box.top);
    var shades = drawTerrain(box, far, across, up);
    axes(side, box, scale(far[0], far[1], wide() / 96), scale(high[0], high[1], 6), across, up,
      "distance from the point of onset, " + data.length,
      (data.ground ? "height above ground, " : "height from that of onset, ") + data.length);
    if (others.checked) {
      all.forEach(function (flight) { line(side, flight, across, up, "x", "h", true); });
    }
    chosen.forEach(function (flight) { line(side, flight, across, up, "x", "h", false); });
    chosen.forEach(function (flight) { marks(side, flight, across, up, "x", "h"); });
    var written = names(side, chosen, box, across, up, "x", "h");
    nameTerrain(shades, written);
    seconds(chosen, across, up, written);
  }

  function drawStrips(chosen, all) {
    var frame = sized(strips, shape.strips);
    var left = frame.left;
    var right = frame.right;
    var across = mapped(Number(time.min), Number(time.max), left, right);
    var gap = 34;
    var tall = (shape.strips - 90 + gap) / STRIPS.length - gap;
    STRIPS.forEach(function (strip, i) {
      var top = 26 + i * (tall + gap);
      var box = { left: left, right: right, top: top, bottom: top + tall };
      var values = range(all, strip.key);
      var up = mapped(values[0], values[1], box.bottom, box.top);
      axes(strips, box, scale(Number(time.min), Number(time.max), wide() / 80),
        scale(values[0], values[1], 4), across, up,
        i === STRIPS.length - 1 ? "time since onset, s" : null, strip.title);
      if (others.checked) {
        all.forEach(function (flight) { line(strips, flight, across, up, "t", strip.key, true); });
      }
      chosen.forEach(function (flight) {
        line(strips, flight, across, up, "t", strip.key, false);
      });
      chosen.forEach(function (flight) { marks(strips, flight, across, up, "t", strip.key); });
      names(strips, chosen, box, across, up, "t", strip.key);
    });
    var now = across(Number(time.value));
    element(strips, "line", {
      x1: now, x2: now, y1: 26, y2: 26 + STRIPS.length * (tall + gap) - gap, stroke: "#111",
      "stroke-width": 1.4, id: "now-line"
    });
  }

  function cell(row, name, text, words) {
    var made = document.createElement(name);
    if (name === "th") { made.setAttribute("scope", "row"); }
    if (words) { made.className = "words"; }
    made.textContent = text;
    row.appendChild(made);
  }

  function fixed(value, decimals) {
    var text = value.toFixed(decimals);
    return Number(text) === 0 ? (0).toFixed(decimals) : text;
  }

  function ending(flight) {
    var over = overTerrain(flight);
    if (over.least === Infinity) { return inTheEnd(flight); }
    return over.struck === null
      ? inTheEnd(flight) + "; least height above the terrain " + Math.floor(over.least) + " " + data.length
      : "below the terrain at " + over.struck.toFixed(1) + " s; " + inTheEnd(flight);
  }

  function leastAbove(flight) {
    var over = overTerrain(flight);
    if (over.least === Infinity) { return "–"; }
    return over.struck === null ? Math.floor(over.least) : "below at " + over.struck.toFixed(1) + " s";
  }

  function inTheEnd(flight) {
    if (flight.impact !== null) {
      return "reaches the ground at " + flight.impact + " " + data.sink;
    }
    if (flight.loss === null) { return flight.ending; }
    return flight.ending + ", " + Math.round(flight.loss) + " " + data.length + " lost";
  }

  function readOut(chosen) {
    var body = document.getElementById("readout").tBodies[0];
    empty(body);
    chosen.forEach(function (flight) {
      var now = Number(time.value);
      var row = document.createElement("tr");
      cell(row, "th", pen(flight.recovery).shown, true);
      cell(row, "td", Math.round(valueAt(flight, "h", now)));
      cell(row, "td", fixed(valueAt(flight, "v", now), data.sinkDecimals));
      cell(row, "td", valueAt(flight, "i", now).toFixed(2));
      cell(row, "td", Math.round(valueAt(flight, "p", now)));
      cell(row, "td", flight.acts === null ? "–" : flight.acts.toFixed(1));
      if (data.terrain.length > 0) { cell(row, "td", leastAbove(flight)); }
      cell(row, "td", inTheEnd(flight), true);
      body.appendChild(row);
    });
    document.getElementById("said").textContent = chosen.length === 0
      ? "No recovery is ticked."
      : "Delay " + data.delays[delay.value] + " s: " + chosen.map(function (flight) {
        return pen(flight.recovery).shown + " " + ending(flight);
      }).join("; ") + ".";
  }

  function draw() {
    var wanted = data.delays[delay.value];
    var names = ticks.filter(function (t) { return t.checked; }).map(function (t) {
      return t.value;
    });
    var all = data.flights.filter(function (flight) {
      return names.indexOf(flight.recovery) >= 0;
    });
    var chosen = all.filter(function (flight) { return flight.delay === wanted; });
    document.getElementById("delay-out").textContent = wanted.toFixed(1) + " s";
    document.getElementById("time-out").textContent = Number(time.value).toFixed(1) + " s";
    delay.setAttribute("aria-valuetext", wanted + " seconds");
    time.setAttribute("aria-valuetext", Number(time.value).toFixed(1) + " seconds");
    drawSide(chosen, all);
    drawStrips(chosen, all);
    readOut(chosen);
    fit(chosen, all);
  }

  /* The more is told below the drawings, the lower they are, so that all stays in the window. */
  function fit(chosen, all) {
    var over = document.documentElement.scrollHeight - window.innerHeight;
    if (shape.least && over > 0) {
      var whole = shape;
      shape = { side: Math.max(whole.least, whole.side - over), strips: whole.strips - Math.min(over, 60) };
      drawSide(chosen, all);
      drawStrips(chosen, all);
      shape = whole;
    }
  }

  Array.prototype.slice.call(document.querySelectorAll(".swatch")).forEach(function (swatch) {
    var style = pen(swatch.getAttribute("data-name"));
    element(swatch, "line", {
      x1: 0, x2: 40, y1: 5, y2: 5, stroke: style.color, "stroke-width": 2.6,
      "stroke-dasharray": style.dash.length ? style.dash.join(" ") : "none"
    });
  });
  document.getElementById("controls").addEventListener("submit", function (event) {
    event.preventDefault();
  });
  [delay, time, others].concat(ticks).forEach(function (control) {
    control.addEventListener("input", draw);
  });
  function drawFor(medium) {
    return function () {
      shape = medium;
      draw();
    };
  }
  window.addEventListener("resize", function () { drawFor(screen())(); });
  window.addEventListener("beforeprint", drawFor(PAPER));
  window.addEventListener("afterprint", function () { drawFor(screen())(); });
  draw();
})();
