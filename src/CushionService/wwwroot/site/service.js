// Calls of the demonstration's own pages.

const TURNS = 5;

/** Sends an order to a call, again when the service is busy; the text of the answer, or an error with the service's own words. */
export async function send(call, order, accept) {
  for (let turn = 1; ; turn += 1) {
    const response = await fetch(`/v1/${call}`, {
      method: "POST",
      headers: { "Content-Type": "application/json", Accept: accept, "Accept-Language": document.documentElement.lang },
      body: JSON.stringify(order),
    });
    const text = await response.text();
    if (response.ok) {
      return text;
    }
    const busy = Number(response.headers.get("Retry-After"));
    if (!busy || turn === TURNS) {
      const problem = JSON.parse(text);
      throw new Error([problem.title, ...(problem.violations ?? []).map((violation) => violation.detail)].join(" "));
    }
    await new Promise((again) => setTimeout(again, busy * 1000));
  }
}

/** Where the cut sheet of an order is shown, in the page's language: the order is in the fragment, which no browser sends. */
export const sheetOf = (order) => `/cut-sheet.html?language=${document.documentElement.lang}#${encodeURIComponent(JSON.stringify(order))}`;
