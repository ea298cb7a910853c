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

function terms(block) {
  const list = made("dl", { class: "terms" });
  for (const [word, meaning] of block.terms) {
    list.append(made("dt", {}, word), made("dd", {}, meaning));
  }
  return list;
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

function grid(block, caption) {
  const many = block.columns.length > MOST_SIDE_BY_SIDE;
  const heads = block.columns.map((column) => column.head.join(" ").trim());
  const table = made("table", { class: many ? "grid many" : "grid", role: "table" }, made("caption", { class: "unseen" }, caption));
  table.append(made("thead", {}, made("tr", {}, ...block.columns.map(head))));
  const body = made("tbody");
  for (const row of block.rows) {
    const line = made("tr", { role: "row" });
    row.forEach((text, i) => {
      const left = block.columns[i].left;
      line.append(i === 0
        ? made("th", { scope: "row", role: "rowheader", class: left ? "words" : null, "data-head": heads[0] }, text)
        : made("td", { role: "cell", class: left ? "words" : heads[i].length + text.length > LETTERS_OF_HALF_A_LINE ? "long" : null, "data-head": heads[i] }, text));
    });
    body.append(line);
  }
  table.append(body);
  return made("div", { class: "scroll", tabindex: "0", role: "region", "aria-label": caption }, table);
}

function folded(title, inside) {
  return made("details", { class: "folded" }, made("summary", {}, title), inside);
}

/* The drawings are made for paper, with letters of its size. */
const LARGER = 1.3;

/* A drawing of the tool's own, taken in as a picture of its parts; nothing in it can run. */
export function drawing(markup) {
  const svg = new DOMParser().parseFromString(markup, "image/svg+xml").documentElement;
  svg.setAttribute("width", LARGER * svg.viewBox.baseVal.width);
  svg.removeAttribute("height");
  return document.importNode(svg, true);
}

/* The blocks of a report: conditions and definitions are folded away, the caution stands below the page. */
export function sheet(report, caption) {
  const inside = document.createDocumentFragment();
  const blocks = report.blocks;
  const lists = blocks.filter((block) => block.kind === "terms");
  const defined = blocks.some((block) => block.kind === "grid") ? lists[lists.length - 1] : null;
  let named = caption;
  for (const block of blocks) {
    if (block.kind === "terms" && lists.length > 1 && block === lists[0]) {
      inside.append(folded("Conditions in full", terms(block)));
    } else if (block.kind === "terms" && block === defined) {
      inside.append(folded("Definitions", terms(block)));
    } else if (block.kind === "terms") {
      inside.append(terms(block));
    } else if (block.kind === "grid") {
      inside.append(grid(block, named));
    } else if (block.kind === "heading") {
      named = block.text;
      inside.append(made("h3", {}, block.text));
    } else if (block.kind === "paragraph" && !block.text.startsWith("CAUTION.")) {
      inside.append(made("p", { class: "take" }, block.text));
    } else if (block.kind === "verbatim") {
      inside.append(made("pre", {}, block.lines.join("\n")));
    }
  }
  return inside;
}
