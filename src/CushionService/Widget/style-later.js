// How the drawings and what is folded under the answer look.

export const laterSheet = new CSSStyleSheet();

laterSheet.replaceSync(`
.more details > :not(summary) { margin-block-end: .7em; }
.line .fields { padding-block-start: .4em; }
.face, .side, .fold { stroke: var(--_ink); stroke-width: 1.2; stroke-linejoin: round; fill: var(--_fabric); }
.side { fill: color-mix(in oklab, var(--_fabric), var(--_ink) 22%); }
.smooth { stroke: color-mix(in oklab, var(--_fabric), var(--_ink) 22%); }
.fold { fill: none; opacity: .35; }
.measure { stroke: var(--_accent); stroke-width: 1.5; fill: none; }
.docks .longer .unit { display: none; }
.docks .longer input { padding-inline-end: .4em; }
@container estimate (max-width: 25em) {
  .docks input { font-weight: 500; padding-inline: .4em 1.7em; }
  .docks .unit { inset-inline-end: .3em; font-size: .75em; }
  .docks .long .unit { display: none; }
  .docks .long input { padding-inline-end: .4em; }
}
.ways { display: flex; flex-wrap: wrap; gap: .4em; }
.way { display: grid; line-height: 1.2; inline-size: 100%; }
.ways .way { flex: 1 1 11em; border-color: var(--_accent); }
.way span { font-weight: 600; }
.way small { font-size: .85em; color: var(--_soft); }
.offers { display: grid; gap: .35em; }
.keep { display: flex; flex-wrap: wrap; gap: .4em; }
.tiles { display: grid; grid-template-columns: repeat(auto-fill, minmax(5.6em, 1fr)); gap: .35em; padding-block-start: .4em; }
.tiles label { position: relative; display: grid; justify-items: center; align-content: start; gap: .2em; padding: .5em .2em;
  font-size: .8em; line-height: 1.15;
  text-align: center; border: 1px solid var(--_line); border-radius: var(--_radius);
  cursor: pointer; overflow-wrap: normal; hyphens: auto; }
.pictured { grid-column: 1 / -1; }
.tiles label:has(:checked) .glyph { stroke: var(--_on-accent); fill: none; }
table { border-collapse: collapse; inline-size: 100%; }
caption { text-align: start; font-weight: 600; }
th, td { text-align: start; padding-block: .3em; padding-inline: 0 .5em; border-block-start: 1px solid var(--_line);
  vertical-align: top; font-weight: 400; }
thead th { border-block-start: 0; font-size: .85em; color: var(--_soft); }
.money { text-align: end; padding-inline-end: 0; white-space: nowrap; }
.reasons ul { padding-inline-start: 1.2em; list-style: disc; font-size: .9em; }
.warning { border-inline-start: 4px solid var(--_ink); padding-inline-start: .7em; }
.drop { min-block-size: 2.25em; min-inline-size: 2.25em; padding: 0; border: 0; text-align: center; background: none; }
.tab[aria-pressed=true], .way[aria-pressed=true] { font-weight: 650; border: 2px solid var(--_accent); }
button.link { min-block-size: 1.5em; padding: 0 .1em; border: 0; background: none; color: inherit; font-weight: inherit;
  text-decoration: underline; }
@media print { form, .basket, .keep, .tabs { display: none; } }
.look { max-inline-size: 30em; padding: .6em; background: #fff; color: #000; border-radius: var(--_radius);
  --cushion-line: initial; --cushion-accent: initial; }
@media (forced-colors: active) {
  .face, .side { fill: Canvas; stroke: CanvasText; }
  .fold, .measure { stroke: CanvasText; fill: none; }
}
`);
