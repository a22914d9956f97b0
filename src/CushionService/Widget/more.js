// What is folded under the answer: compare fabrics, fabric at home, a link, printing.

import { button, element, folded } from "./elements.js";
import { unpriced } from "./draft.js";
import { FABRIC } from "./form-plan.js";
import { linkTo } from "./link.js";
import { withUnits } from "./shop-units.js";
import { readLength, showNumber, withUnit } from "./lengths.js";

/** The panels; each asks the service only once it is opened. */
export function panels(host) {
  const { words, shop } = host;
  return [
    opened(words.say("look"), (place) => look(host, place), host),
    shop.fabrics.length > 1 ? opened(words.say("compare"), (place) => compare(host, place), host) : null,
    have(host),
    folded(words.say("keep"), {}, keep(host)),
  ];
}

function opened(title, fill, host) {
  const place = element("div", {});
  const panel = folded(title, {}, place);
  const show = () => panel.open && fill(place);
  panel.addEventListener("toggle", show);
  host.onAnswer.push(show);
  return panel;
}

// The service's own picture, with the print where the layout puts it.
async function look(host, place) {
  const call = `pictures?cushion=${encodeURIComponent(host.draft.id)}`;
  const { answer } = await host.service.ask(call, host.order(), { accept: "image/svg+xml" });
  if (!answer) {
    return place.replaceChildren(element("p", { class: "because" }, host.words.say("noLook")));
  }
  // A policy of the page may forbid what is inline in the drawing: styles that a script sets are the script's.
  const sheets = [];
  const bare = answer
    .replace(/<style[^>]*>([^]*?)<\/style>/g, (_, rules) => {
      const sheet = new CSSStyleSheet();
      sheet.replaceSync(rules);
      sheets.push(sheet);
      return "";
    })
    // Only a tag begins with "<"; in texts and values it is escaped.
    .replace(/(<[^<>]*) style="/g, '$1 data-style="');
  const drawing = document.importNode(new DOMParser().parseFromString(bare, "image/svg+xml").documentElement, true);
  for (const styled of drawing.querySelectorAll("[data-style]")) {
    styled.style.cssText = styled.dataset.style;
  }
  const frame = element("div", { class: "look" });
  const root = frame.attachShadow({ mode: "open" });
  root.adoptedStyleSheets = sheets;
  root.append(drawing);
  place.replaceChildren(frame);
}

// The order with each fabric of the shop, cheapest first.
async function compare(host, place) {
  const { words, shop, draft, units, keyed } = host;
  const own = draft.fabrics[0];
  const order = host.order();
  const options = shop.fabrics.filter(({ id }) => id !== own).map((fabric) => withUnits(fabric, "/fabrics/*", shop.units ?? "in"));
  if (place.childElementCount === 0) {
    place.replaceChildren(element("p", { class: "because" }, words.say("working")));
  }
  const { answer, problem } = await host.service.ask("comparisons", {
    ...order,
    candidates: [{ fabric: own, options: unpriced({ fabrics: options }, keyed).fabrics }],
  });
  if (!answer) {
    return place.replaceChildren(element("p", { class: "fault" }, problem?.violations[0]?.detail ?? words.say("fault.setup")));
  }
  const rows = [{ ...answer.given, id: own }, ...answer.options.map((option) => ({ ...option, id: option.option }))];
  const worth = ({ total, yardage }) =>
    total === null || total === undefined ? (yardage.length ? yardage[0].soldLength * 1e6 : Infinity) : Number(total);
  rows.sort((a, b) => (a.yardage.length === 0) - (b.yardage.length === 0) || worth(a) - worth(b));
  place.replaceChildren(
    element(
      "ul",
      { class: "offers" },
      ...rows.map((row, i) => {
        const line = row.yardage.find(({ fabric }) => fabric === own || fabric === row.id) ?? row.yardage[0];
        const much = line
          ? [words.amount(line.soldLength, line.soldUnit), row.total && words.money(row.total, answer.currency)].filter(Boolean).join(" · ")
          : words.say("notMade");
        const note = [row.id === own && words.say("chosen"), i === 0 && words.say("cheapest")].filter(Boolean).join(", ");
        const take = button("", () => host.type(FABRIC, row.id), { class: "way", disabled: !line, "aria-pressed": `${row.id === own}` });
        take.append(element("span", {}, words.name(row.id)), element("small", {}, [much, note].filter(Boolean).join(" · ")));
        return element("li", {}, take);
      }),
    ),
  );
}

function have(host) {
  const { words } = host;
  const field = (name, label) => {
    const input = element("input", { type: "text", id: name, autocomplete: "off", "aria-describedby": "have-said" });
    return [
      input,
      element("div", { class: "field" }, element("label", { for: name }, label), element("span", { class: "control" }, input)),
    ];
  };
  const [length, lengthField] = field("have-length", words.say("haveLength"));
  const [width, widthField] = field("have-width", words.say("haveWidth"));
  const said = element("p", { id: "have-said", role: "status" });
  const check = button(words.say("haveCheck"), () => answer(), { class: "quiet" });
  const panel = folded(words.say("have"), {}, element("div", { class: "fields" }, lengthField, widthField), check, said);
  panel.addEventListener("toggle", () => {
    const fabric = host.shop.fabrics.find(({ id }) => id === host.draft.fabrics[0]);
    width.value ||= fabric.width === undefined ? "" : withUnit(`${fabric.width}`, host.shop.units ?? "in");
  });
  const answer = async () => {
    const sold = host.answered?.yardage[0]?.soldUnit;
    // A length of fabric without a unit is in the unit that it is sold in.
    const onHand = {
      length: withUnit(length.value, sold === "m" || sold === "yd" ? sold : host.units),
      width: withUnit(width.value, host.units),
    };
    if (!(readLength(onHand.length)?.value > 0 && readLength(onHand.width)?.value > 0)) {
      return (said.textContent = words.say("haveWrong"));
    }
    const order = host.order();
    const fabrics = order.fabrics.map((fabric) => (fabric.id === host.draft.fabrics[0] ? { ...fabric, onHand: [onHand] } : fabric));
    said.textContent = words.say("working");
    const outcome = await host.service.ask("fits", { ...order, fabrics });
    said.textContent = outcome.answer
      ? verdict(outcome.answer, host)
      : (outcome.problem?.violations[0]?.detail ?? words.say("fault.outage"));
  };
  return panel;
}

function verdict({ fits, largest, units }, host) {
  const { words } = host;
  if (fits) {
    return words.say("enough");
  }
  const line = host.answered?.yardage[0];
  const best = largest.find(({ free }) => free === "both") ?? largest[0];
  const sizes =
    best &&
    [best.width, best.depth, best.diameter]
      .filter((each) => each !== null && each !== undefined)
      .map((each) => showNumber(each, units, words.locale));
  return [
    line ? words.say("notEnough", { quantity: words.amount(line.soldLength, line.soldUnit) }) : words.say("notEnoughPiece"),
    sizes?.length > 0 ? words.say("largest", { size: `${sizes.join(" × ")} ${units}` }) : "",
  ].join(" ");
}

function keep(host) {
  const { words } = host;
  const said = element("p", { role: "status" });
  const shown = element("input", { type: "text", readonly: true, hidden: true, "aria-label": words.say("shareThis") });
  const share = button(
    words.say("share"),
    async () => {
      shown.value = linkTo(host.plan);
      const copied = await navigator.clipboard?.writeText(shown.value).then(
        () => true,
        () => false,
      );
      shown.hidden = copied === true;
      said.textContent = copied ? words.say("shared") : words.say("shareThis");
    },
    { class: "quiet" },
  );
  const print = (key, call, accept) =>
    button(
      words.say(key),
      async () => {
        // Opened at once, since browsers open no window later.
        const page = window.open("", "_blank");
        const { answer } = await host.service.ask(call, host.order(), { accept });
        if (!answer || !page) {
          page?.close();
          return (said.textContent = words.say("notPrinted"));
        }
        page.location.href = URL.createObjectURL(answer instanceof Blob ? answer : new Blob([answer], { type: `${accept};charset=utf-8` }));
      },
      { class: "quiet" },
    );
  return element(
    "div",
    { class: "keep" },
    share,
    // Papers of the workroom are not for callers in scope estimate.
    ...(host.keyed ? [] : [print("ticket", "quotes", "text/html"), print("pattern", "pieces", "application/pdf")]),
    shown,
    said,
  );
}
