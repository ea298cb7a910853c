/* Reports as the tool lays them out, put on the page. Text goes in as text, never as markup. */

export function made(name, attributes = {}, ...inside) {
  const node = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) {
    if (value !== null && value !== false) {
      node.setAttribute(key, value === true ? "" : value);
    }
  }
  node.append(...inside);
  return node;
}

function terms(list, spoken) {
  const node = made("dl", { class: "terms" });
  for (const [word, meaning] of list) {
    node.append(made("dt", {}, word), made("dd", {}, spoken(meaning)));
  }
  return node;
}

function head(column) {
  const cell = made("th", { scope: "col", class: column.left ? "words" : null });
  column.head.forEach((line, i) => {
    if (i > 0) {
      cell.append(made("br"));
    }
    cell.append(line);
  });
  return cell;
}

/* On a telephone a table of more columns stands line by line, each figure behind its name. */
const MOST_SIDE_BY_SIDE = 4;
/* Two such figures with their names stand beside each other; a longer one takes the whole line. */
const LETTERS_OF_HALF_A_LINE = 17;

/* Only a table or a drawing that is wider than its place is a stop of the keyboard, from where arrows move it. */
const widths = new ResizeObserver((entries) => entries.forEach(({ target }) => { target.tabIndex = target.scrollWidth > target.clientWidth ? 0 : -1; }));

function grid(block, caption) {
  const many = block.columns.length > MOST_SIDE_BY_SIDE;
  const heads = block.columns.map((column) => column.head.join(" ").trim());
  const table = made("table", { class: many ? "grid many" : "grid", role: "table" }, made("caption", { class: "unseen" }, caption));
  table.append(made("thead", {}, made("tr", {}, ...block.columns.map(head))));
  const body = made("tbody");
  let above = "";
  for (const row of block.rows) {
    above = row[0] || above;
    const line = made("tr", { role: "row" });
    row.forEach((text, i) => {
      const left = block.columns[i].left;
      line.append(i === 0
        ? made("th", { scope: "row", role: "rowheader", class: left ? "words" : null, "data-head": heads[0], "aria-label": left && text === "" ? above : null }, text)
        : made("td", { role: "cell", class: left ? "words" : heads[i].length + text.length > LETTERS_OF_HALF_A_LINE ? "long" : null, "data-head": heads[i] }, text));
    });
    body.append(line);
  }
  table.append(body);
  const scroll = made("div", { class: "scroll", role: "group", "aria-label": caption }, table);
  widths.observe(scroll);
  return scroll;
}

function folded(title, inside) {
  return made("details", { class: "folded" }, made("summary", {}, title), inside);
}

const DEFINITIONS = "Definitions";

/* The drawings are made for paper, with letters of its size. */
const LARGER = 1.3;
/* Smaller they are not read on a telephone: there they are moved to and fro. */
const SMALLEST = 0.85;
/* A legend is a line; drawings stand beside each other below it. */
const A_LINE = 4;

/* A drawing of the tool's own, taken in as a picture of its parts; nothing in it can run. */
export function drawing(markup) {
  const svg = new DOMParser().parseFromString(markup, "image/svg+xml").documentElement;
  svg.setAttribute("width", LARGER * svg.viewBox.baseVal.width);
  svg.removeAttribute("height");
  const { width, height } = svg.viewBox.baseVal;
  const drawn = document.importNode(svg, true);
  drawn.style.minWidth = `${SMALLEST * width}px`;
  const scroll = made("div", { class: width > A_LINE * height ? "drawn scroll line" : "drawn scroll", role: "group", "aria-label": "Drawing" }, drawn);
  widths.observe(scroll);
  return scroll;
}

/* How well the figures are known is no definition: it stays in sight. */
const isKnown = ([word]) => word.endsWith("known to");

/* The blocks of a report: conditions and definitions are folded away, the caution stands below the page. */
export function sheet(report, caption, spoken = (text) => text) {
  const inside = document.createDocumentFragment();
  const blocks = report.blocks.filter((block) => block.kind !== "heading" || block.text !== DEFINITIONS);
  const lists = blocks.filter((block) => block.kind === "terms");
  const conditions = lists.length > 1 && blocks[1] === lists[0] ? lists[0] : null;
  const defined = blocks.some((block) => block.kind === "grid") ? lists[lists.length - 1] : null;
  let named = caption;
  for (const block of blocks) {
    if (block === conditions) {
      inside.append(folded("Conditions in full", terms(block.terms, spoken)));
    } else if (block === defined) {
      const known = block.terms.filter(isKnown);
      inside.append(...(known.length > 0 ? [terms(known, spoken)] : []));
      inside.append(folded(DEFINITIONS, terms(block.terms.filter((term) => !isKnown(term)), spoken)));
    } else if (block.kind === "terms") {
      inside.append(terms(block.terms, spoken));
    } else if (block.kind === "grid") {
      inside.append(grid(block, named));
    } else if (block.kind === "heading") {
      named = block.text;
      inside.append(made("h3", {}, block.text));
    } else if (block.kind === "paragraph" && !block.text.startsWith("CAUTION.")) {
      inside.append(made("p", { class: "take" }, spoken(block.text)));
    } else if (block.kind === "verbatim") {
      inside.append(made("pre", {}, block.lines.join("\n")));
    }
  }
  return inside;
}
