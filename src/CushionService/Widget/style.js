// How the element looks. A page themes it by the custom properties of :host; nothing is shown by colour alone.

export const sheet = new CSSStyleSheet();

sheet.replaceSync(`
:host {
  --_ink: var(--cushion-ink, #22302c);
  --_soft: var(--cushion-soft, #55635e);
  --_paper: var(--cushion-paper, #fff);
  --_line: var(--cushion-line, #7d8a84);
  --_accent: var(--cushion-accent, #1d5c4d);
  --_on-accent: var(--cushion-on-accent, #fff);
  --_fault: var(--cushion-fault, #9c1c1c);
  --_radius: var(--cushion-radius, 4px);
  display: block; font-variant-numeric: tabular-nums; container-type: inline-size; color: var(--_ink); background: var(--_paper);
  font: var(--cushion-font, 1rem/1.45 system-ui, sans-serif);
}
:host([hidden]) { display: none; }
* { box-sizing: border-box; }
p, figure, ul { margin: 0; }
.estimate { display: grid; gap: 1.5rem; }
fieldset { border: 0; margin: 0 0 1.25rem; padding: 0; min-width: 0; }
legend { padding: 0; font-weight: 600; margin-bottom: .5rem; }
.fields { display: grid; gap: .9rem 1rem; grid-template-columns: repeat(auto-fill, minmax(min(100%, 12rem), 1fr)); align-items: start; }
.field { display: grid; gap: .25rem; }
input[type=text], select {
  font: inherit; color: inherit; background: var(--_paper); width: 100%; min-height: 2.75rem; padding: .4rem .6rem;
  border: 1px solid var(--_line); border-radius: var(--_radius);
}
[aria-invalid=true] { border: 2px solid var(--_fault); }
:focus-visible { outline: 3px solid var(--_accent); outline-offset: 2px; }
.hint { color: var(--_soft); font-size: .85rem; }
.fault { color: var(--_fault); font-size: .9rem; font-weight: 600; }
.fault::before { content: "▲ " / ""; }
.result { border-top: 2px solid var(--_ink); padding-top: 1rem; min-width: 0; }
.buy { color: var(--_soft); }
[role=status] { font-size: 1.5rem; line-height: 1.25; font-weight: 650; }
:host(:not([data-state=answered])) .buy { visibility: hidden; }
:host(:not([data-state=answered])) [role=status] { font-size: 1.05rem; }
:host([data-state=working]) [part=answer] { opacity: .55; }
[part=answer] { display: grid; gap: .9rem; margin: .5rem 0 1rem; }
.because { color: var(--_soft); font-size: .9rem; }
.warning { border-left: 4px solid var(--_ink); padding-left: .7rem; }
.sketch { max-width: 26rem; }
.sketch.long { max-width: none; overflow-x: auto; }
.sketch svg { display: block; width: 100%; height: auto; }
.sketch.long svg { width: auto; }
.waste { stroke: var(--_ink); stroke-width: 1.5; }
.hatch { stroke: var(--_line); stroke-width: 1; }
.piece { fill: var(--_paper); stroke: var(--_ink); stroke-width: 1; }
text { fill: var(--_ink); text-anchor: middle; font-weight: 600; }
figcaption { font-size: .85rem; color: var(--_soft); margin-top: .35rem; }
summary { cursor: pointer; font-weight: 600; padding: .25rem 0; }
details ul { padding-left: 1.2rem; display: grid; gap: .35rem; }
table { border-collapse: collapse; width: 100%; }
caption { text-align: left; font-weight: 600; padding-bottom: .25rem; }
th, td { text-align: left; padding: .35rem .5rem .35rem 0; border-top: 1px solid var(--_line);
  vertical-align: top; font-weight: 400; overflow-wrap: anywhere; }
thead th { border-top: 0; font-size: .85rem; color: var(--_soft); }
tfoot th, tfoot td { border-top: 2px solid var(--_ink); font-weight: 650; }
.money { text-align: right; padding-right: 0; white-space: nowrap; }
button {
  font: inherit; font-weight: 600; min-height: 2.75rem; padding: .5rem 1.2rem; cursor: pointer;
  color: var(--_on-accent); background: var(--_accent); border: 2px solid var(--_accent); border-radius: var(--_radius);
}
button:disabled { cursor: default; color: var(--_soft); background: var(--_paper); border: 2px dashed var(--_line); }
@container (min-width: 52rem) {
  .estimate { grid-template-columns: minmax(0, 1.1fr) minmax(0, 1fr); gap: 2.5rem; }
  .result { border-top: 0; border-left: 2px solid var(--_ink); padding: 0 0 0 1.75rem; }
}
@media print { form, `);
