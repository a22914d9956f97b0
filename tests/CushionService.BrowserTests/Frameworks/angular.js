// A page of Angular: the order is made anew at every turn. The component is compiled in the page, so that no tool of the framework is
// needed to build it.

import "@angular/compiler";
import { Component, CUSTOM_ELEMENTS_SCHEMA, provideZonelessChangeDetection, signal } from "@angular/core";
import { bootstrapApplication } from "@angular/platform-browser";

class Page {
  turns = signal(0);
  heard = signal("");
  order = signal(structuredClone(bench));

  hear({ detail }) {
    this.heard.set(`${detail.soldLength} ${detail.soldUnit}`);
  }

  turn() {
    this.turns.update((turns) => turns + 1);
    this.order.set(structuredClone(bench));
  }
}

const Shown = Component({
  selector: "shop-page",
  schemas: [CUSTOM_ELEMENTS_SCHEMA],
  template: `
    <cushion-estimate [order]="order()" (estimate)="hear($event)"></cushion-estimate>
    <button id="turn" (click)="turn()">Turn</button>
    <p id="turns">{{ turns() }}</p>
    <p id="heard">{{ heard() }}</p>
  `,
})(Page);

document.getElementById("root").append(document.createElement("shop-page"));
bootstrapApplication(Shown ?? Page, { providers: [provideZonelessChangeDetection()] });
