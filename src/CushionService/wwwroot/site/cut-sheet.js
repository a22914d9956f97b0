// Shows the cut sheet of the order in the address, as a page of its own that can be printed.

import { send } from "./service.js";

async function show() {
  try {
    const order = JSON.parse(decodeURIComponent(location.hash.slice(1)));
    const sheet = new DOMParser().parseFromString(await send("quotes", order, "text/html"), "text/html");
    // The page's policy forbids inline styles; a style sheet that a script makes of the sheet's own rules is the page's.
    document.adoptedStyleSheets = [...sheet.querySelectorAll("style")].map((style) => {
      const rules = new CSSStyleSheet();
      rules.replaceSync(style.textContent);
      return rules;
    });
    document.title = sheet.title;
    document.body.replaceWith(document.adoptNode(sheet.body));
  } catch (fault) {
    document.querySelector("[role=status]").textContent = `There is no cut sheet: ${fault.message}`;
  }
}

addEventListener("hashchange", () => location.reload());
show();
