// Making elements. Text is always set as text, so that nothing that a shop or the service sends is read as markup.

const SVG = "http://www.w3.org/2000/svg";

export function element(name, attributes = {}, ...children) {
  return filled(document.createElement(name), attributes, children);
}

export function drawn(name, attributes = {}, ...children) {
  return filled(document.createElementNS(SVG, name), attributes, children);
}

export function button(text, pressed, attributes = {}) {
  const made = element("button", { type: "button", ...attributes }, text);
  made.addEventListener("click", pressed);
  return made;
}

export function folded(summary, attributes, ...children) {
  return element("details", attributes, element("summary", {}, summary), ...children);
}

function filled(made, attributes, children) {
  for (const [name, value] of Object.entries(attributes)) {
    if (value !== null && value !== undefined && value !== false) {
      made.setAttribute(name, value === true ? "" : value);
    }
  }
  made.append(...children.filter((child) => child !== null && child !== undefined));
  return made;
}
