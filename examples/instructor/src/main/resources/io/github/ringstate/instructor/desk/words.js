/* The sentences of the page stand in its HTML, where an editor finds them. */

const template = document.getElementById("words");

export function say(name, parts = {}) {
  const text = template.content.querySelector(`[data-word="${name}"]`).textContent;
  return text.replace(/\{([a-z]+)\}/g, (all, part) => (part in parts ? parts[part] : all));
}
