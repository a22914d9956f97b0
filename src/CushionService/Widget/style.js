// How the element looks. A page themes it by the custom properties of :host; nothing is shown by colour alone. Sizes are in em of the
// reader's own size, directions are those of the text but for the drawing, colours follow the page's color-scheme.

export const sheet = new CSSStyleSheet();

sheet.replaceSync(`
:host {
  --_ink: var(--cushion-ink, light-dark(#1f2a27, #e9eeeb));
  --_soft: var(--cushion-soft, light-dark(#55635e, #aab8b1));
  --_paper: var(--cushion-paper, light-dark(#fff, #17201d));
  --_wash: var(--cushion-wash, light-dark(#f4f6f4, #202b27));
  --_line: var(--cushion-line, light-dark(#76837d, #84928b));
  --_accent: var(--cushion-accent, light-dark(#1d5c4d, #8fd3bf));
  --_on-accent: var(--cushion-on-accent, light-dark(#fff, #10201b));
  --_fault: var(--cushion-fault, light-dark(#9c1c1c, #ffb3a9));
  --_fabric: light-dark(#d9e4dd, #3d5a50);
  --_radius: var(--cushion-radius, 8px);
  display: block !important; box-sizing: border-box; inline-size: auto; min-inline-size: min(100%, 272px) !important; max-inline-size: 100%;
  flex: 1 1 320px; align-self: stretch; justify-self: stretch; color-scheme: inherit;
}
:host([hidden]) { display: none !important; }
:host::before { content: ". . . ." / ""; display: block; block-size: 0; overflow: hidden; word-spacing: 280px; }
.estimate {
  all: initial; display: block; container: estimate / inline-size; min-inline-size: 256px; min-block-size: 40em;
  font: var(--cushion-font, medium/1.4 system-ui, sans-serif); font-variant-numeric: tabular-nums;
  color: var(--_ink); background: var(--_paper); color-scheme: inherit; text-align: start; overflow-wrap: break-word;
}
* { box-sizing: border-box; }
p, ul, fieldset { margin: 0; padding: 0; border: 0; min-inline-size: 0; }
ul { list-style: none; }
.unseen { position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
:focus-visible { outline: 3px solid var(--_accent); outline-offset: 2px; }
input, select, button { font: inherit; color: inherit; letter-spacing: inherit; }
input[type=text], select {
  inline-size: 100%; min-block-size: 2.75em; padding: .35em .6em; background: var(--_paper);
  border: 1px solid var(--_line); border-radius: var(--_radius);
}
[aria-invalid=true] { border: 2px solid var(--_fault) !important; }
button {
  min-block-size: 2.75em; padding: .45em 1em; cursor: pointer; text-align: start; background: var(--_paper);
  border: 1px solid var(--_line); border-radius: var(--_radius); touch-action: manipulation;
}
.basket { font-weight: 650; text-align: center; color: var(--_on-accent); background: var(--_accent); border: 2px solid var(--_accent); }
button:disabled { cursor: default; color: var(--_soft); background: var(--_wash); border: 2px dashed var(--_line); }
.layout, .make, .more, .reasons { display: grid; grid-template-columns: minmax(0, 1fr); gap: .9em; align-content: start;
  min-inline-size: 0; }
form { display: grid; gap: .7em; min-inline-size: 0; }
.tabs { display: flex; flex-wrap: wrap; gap: .4em; }
.tab { min-block-size: 2.25em; padding: .2em .7em; }
.tab.add { border-style: dashed; }
.tabs span { display: inline-flex; }
.head { display: flex; flex-wrap: wrap; gap: .4em; justify-content: space-between; }
.kinds { display: grid; grid-template-columns: repeat(2, minmax(0, 1fr)); gap: .4em; }
.kind[open] { grid-column: 1 / -1; }
summary { cursor: pointer; font-weight: 600; padding: .45em 0; border-radius: 4px; }
.kind span { min-inline-size: 0; }
.kind > summary { display: flex; align-items: center; gap: .3em; min-block-size: 2.75em; padding: .2em .4em;
  font-size: clamp(.8em, 4.1cqi, 1em); line-height: 1.15;
  border: 1px solid var(--_line); border-radius: var(--_radius); list-style: none; }
.kind > summary::-webkit-details-marker { display: none; }
.kind > summary::after { content: "▾" / ""; margin-inline-start: auto; }
.kind small { display: block; font-weight: 400; }
.glyph { inline-size: 2em; block-size: 1.5em; flex: none; fill: var(--_fabric); stroke: var(--_ink); stroke-width: 1.3;
  stroke-linejoin: round; }
.tiles input, .switch input { position: absolute; inset: 0; inline-size: 100%; block-size: 100%; margin: 0; opacity: 0; cursor: pointer; }
:is(.tiles, .switch) label:has(:checked) { font-weight: 700; color: var(--_on-accent); background: var(--_accent);
  border-color: var(--_accent); }
:is(.tiles, .switch) label:has(:focus-visible) { outline: 3px solid var(--_accent); outline-offset: 2px; }
.switch { display: flex; border: 1px solid var(--_line); border-radius: var(--_radius); }
.switch label { position: relative; display: grid; place-items: center; min-inline-size: 2.6em; min-block-size: 2.25em;
  border-radius: calc(var(--_radius) - 1px); cursor: pointer; }
.stage { max-inline-size: 34em; inline-size: 100%; margin-inline: auto; background: var(--_wash); border-radius: var(--_radius); }
.picture { aspect-ratio: 420 / 190; }
.picture svg { display: block; inline-size: 100%; block-size: 100%; }
.field { display: grid; gap: .15em; align-content: start; min-inline-size: 0; }
.field label, .kind small { font-size: .8em; color: var(--_soft); }
.control { display: flex; position: relative; align-items: center; }
.unit { position: absolute; inset-inline-end: .5em; font-size: .8em; color: var(--_soft); pointer-events: none; }
.docks { display: grid; place-items: end left; }
.docks .field { grid-area: 1 / 1; inline-size: min(8em, 33%); padding: 0 .1em .3em; }
.docks input { font-weight: 650; padding-inline-end: 1.9em; }
.docks [data-dock=under] { justify-self: center; }
.docks [data-dock=end] { justify-self: right; }
.hint { display: none; color: var(--_soft); font-size: .85em; }
.hint.on { display: block; }
.notes { min-block-size: 1.25em; font-size: .85em; }
.fault { color: var(--_fault); font-size: .92em; font-weight: 600; }
.fault::before { content: "▲ " / ""; }
.fields { display: grid; gap: .6em .8em; grid-template-columns: repeat(auto-fill, minmax(min(100%, 9.5em), 1fr)); align-items: start; }
.fields:empty { display: none; }
.fabric { grid-template-columns: minmax(0, 1fr) 6em; }
.fabric .field:only-child { grid-column: 2; }
.line > summary { font-weight: 500; }
.bar { display: grid; gap: .4em; align-content: start; min-inline-size: 0; background: var(--_paper); }
.sum { display: flex; flex-wrap: wrap; gap: .5em 1em; align-items: end; justify-content: space-between; }
.told { min-inline-size: 0; min-block-size: 9.2em; flex: 1 1 10em; }
.buy, .also, .of, .because, .note, .help { color: var(--_soft); }
.amount { line-height: 1.1; }
.much { font-size: clamp(2.5em, 4.8cqi, 3.5em); font-weight: 700; letter-spacing: -.01em; overflow-wrap: normal; }
.amount ~ .amount .much { font-size: 1.5em; }
.also { font-size: 1.25em; white-space: nowrap; }
.total { font-weight: 650; }
.note { min-block-size: 1.4em; font-size: .9em; }
.because, .of { font-size: .9em; }
:host(:not([data-state=answered])) .told :is(.much, .total) { color: var(--_soft); font-weight: 500; }
.bone { background: var(--_wash); border-radius: var(--_radius); block-size: 1.2em; inline-size: 8em; margin-block-start: .3em; }
.amount.bone { block-size: 2.6em; inline-size: 11em; }
:host([data-state=fault]) .bone, :host([data-state=outage]) .bone { display: none; }
.problem:empty { display: none; }
.problem { display: grid; gap: .4em; padding: .6em .7em; border: 1px solid var(--_fault); border-inline-start-width: 5px;
  border-radius: var(--_radius); max-block-size: 50vh; overflow-y: auto; }
.more > details { border-block-start: 1px solid var(--_line); }
.make { margin-block-end: 1em; }
@container estimate (max-width: 43.99em) {
  .bar { position: sticky; inset-block-end: 0; z-index: 1; padding-block: .5em .3em; border-block-start: 2px solid var(--_ink);
  margin-block-end: .8em; }
  .told { flex-basis: 100%; min-block-size: 7em; }
  .bar .buy { display: none; }
  .note:empty { display: none; }
  .problem:not(:empty) + .sum .much { font-size: 1.5em; }
  .problem:not(:empty) + .sum :is(.of, .because, .total, .basket) { display: none; }
  .problem:not(:empty) + .sum .told { min-block-size: 0; }
}
@container estimate (max-width: 18em) { summary .glyph { display: none; } }
@container estimate (min-width: 44em) {
  .layout { grid-template: auto 1fr / minmax(0, 1.15fr) minmax(0, 1fr); gap: 0 2.25em; }
  .make { grid-row: 1 / 3; margin: 0; }
  .bar { padding-block-end: .8em; }
  .basket { min-inline-size: 11em; }
}
@media (forced-colors: active) {
  .glyph { stroke: CanvasText; fill: none; }
  :is(.tiles, .switch) label:has(:checked) { forced-color-adjust: none; color: HighlightText; background: Highlight; }
}
`);
