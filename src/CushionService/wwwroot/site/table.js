// A table of text that reads as a list of cards where it is narrow.

export function table(caption, heads, rows) {
  const made = document.createElement("table");
  made.createCaption().textContent = caption;
  const head = made.createTHead().insertRow();
  for (const text of heads) {
    head.append(Object.assign(document.createElement("th"), { scope: "col", textContent: text }));
  }
  const body = made.createTBody();
  for (const row of rows) {
    const line = body.insertRow();
    row.forEach((text, i) => {
      const cell = i === 0 ? Object.assign(document.createElement("th"), { scope: "row" }) : document.createElement("td");
      cell.textContent = text;
      cell.dataset.head = heads[i];
      line.append(cell);
    });
  }
  return made;
}
