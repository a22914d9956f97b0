// Calls of the demonstration's own pages.

/** Sends an order to a call; the text of the answer, or an error with the service's own words. */
export async function send(call, order, accept) {
  const response = await fetch(`/v1/${call}`, { method: "POST", headers: { "Content-Type": "application/json", Accept: accept }, body: JSON.stringify(order) });
  const text = await response.text();
  if (!response.ok) {
    const problem = JSON.parse(text);
    throw new Error([problem.title, ...(problem.violations ?? []).map((violation) => violation.detail)].join(" "));
  }
  return text;
}

/** Where the cut sheet of an order is shown: the order stands in the fragment, which no browser sends. */
export const sheetOf = (order) => `/cut-sheet.html#${encodeURIComponent(JSON.stringify(order))}`;
