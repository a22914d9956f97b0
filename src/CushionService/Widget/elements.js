// Making elements. Text is always set as text, so that nothing that a shop or the service sends is read as markup.

const SVG = "http://www.w3.org/2000/svg";

export function element(name, attributes = {}, ...children) {
  return filled(document.createElement(name), attributes, children);
}

export function drawn(name, attributes = {}, ...children) {
  return filled(document.createElementNS(SVG, name), attributes, children);
}

function filled(made, attributes, children) {
  for (const [name, value] of Object.entries(attributes)) {
    if (value !== null && value !== false) {
      made.setAttribute(name, value === true ? "" : value);
    }
  }
  made.append(...children.filter((child) => child !== null));
  return made;
}
