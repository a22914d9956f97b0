// Shows the cut sheet of the order in the address, as a page of its own that can be printed.

import { send } from "./service.js";
import { say } from "./words.js";

async function show() {
  try {
    const order = JSON.parse(decodeURIComponent(location.hash.slice(1)));
    // The page's policy forbids inline styles; a style sheet that a script makes of the sheet's own rules is the page's.
    const styles = [];
    const bare = (await send("quotes", order, "text/html")).replace(/<style>([^]*?)<\/style>/g, (element, rules) => {
      const style = new CSSStyleSheet();
      style.replaceSync(rules);
      styles.push(style);
      return "";
    });
    const sheet = new DOMParser().parseFromString(bare, "text/html");
    document.adoptedStyleSheets = styles;
    document.title = sheet.title;
    document.body.replaceWith(document.adoptNode(sheet.body));
  } catch (fault) {
    document.querySelector("[role=status]").textContent = say("js.none", { reason: fault.message });
  }
}

addEventListener("hashchange", () => location.reload());
show();
