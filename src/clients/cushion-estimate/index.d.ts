// Types of the element <cushion-estimate>.

/** A length: a number in the order's units, or a text such as "15 1/2 in". */
export type Measure = number | string;

/** The shop's part of an order, in the words of the service's contract. */
export interface ShopOrder {
  units?: "in" | "cm" | "mm";
  currency?: string;
  cushions?: Record<string, unknown>[];
  fabrics: ({ id: string; label?: string; width?: Measure; item?: string } & Record<string, unknown>)[];
  [field: string]: unknown;
}

/** A line for a basket. Amounts are decimal texts; null where there is no price. */
export interface BasketLine {
  sku: string;
  label: string;
  quantity: number;
  unit: string;
  unitPrice: string | null;
  amount: string | null;
  size: string;
}

export interface EstimateDetail {
  /** The order as it was sent: quote it again from the shop's server before money moves. */
  order: ShopOrder;
  answer: Record<string, unknown>;
  lines: BasketLine[];
  fabric?: string;
  soldLength?: number;
  soldUnit?: string;
  total: string | null;
  currency: string | null;
  /** A link to the page in this state. */
  state: string;
}

export interface AddToBasketDetail extends EstimateDetail {
  /** Another one for each press of the button. */
  id: string;
  /** Tells the shopper how it went: a promise, or false for "not added". */
  respondWith(added: Promise<unknown> | boolean): void;
}

export interface FaultDetail {
  kind: "refused" | "order" | "setup" | "busy" | "outage" | "slow" | "offline";
  status: number;
  cause?: string;
  codes?: string[];
}

export interface CushionEstimateEvents {
  ready: CustomEvent<{ cushions: number; language: string }>;
  change: CustomEvent<{ field?: string; value?: string; cushions?: number }>;
  estimate: CustomEvent<EstimateDetail & { milliseconds: number }>;
  fault: CustomEvent<FaultDetail>;
  "add-to-basket": CustomEvent<AddToBasketDetail>;
}

export declare class CushionEstimate extends HTMLElement {
  static readonly formAssociated: true;
  get order(): ShopOrder | undefined;
  set order(value: ShopOrder | string | null | undefined);
  get strings(): Record<string, string> | undefined;
  set strings(value: Record<string, string> | string | null | undefined);
  get service(): string;
  set service(value: string | null | undefined);
  get language(): string;
  set language(value: string | null | undefined);
  get publishableKey(): string | null;
  set publishableKey(value: string | null | undefined);
}

declare global {
  interface HTMLElementTagNameMap {
    "cushion-estimate": CushionEstimate;
  }
}
