import { Component, CUSTOM_ELEMENTS_SCHEMA, Input } from "@angular/core";
import "cushion-estimate";
import type { AddToBasketDetail, ShopOrder } from "cushion-estimate";

@Component({
  selector: "app-cushion",
  schemas: [CUSTOM_ELEMENTS_SCHEMA],
  template: `<cushion-estimate [order]="order" service="https://cushions.example" (add-to-basket)="add($event)"></cushion-estimate>`,
})
export class CushionComponent {
  @Input() order!: ShopOrder;

  add({ detail }: CustomEvent<AddToBasketDetail>): void {
    detail.respondWith(fetch("/basket", { method: "POST", body: JSON.stringify(detail.lines) }));
  }
}
