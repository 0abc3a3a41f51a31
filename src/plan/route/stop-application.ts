import type { CivilDate } from "../../calendar/index.js";
import { addRates, entryRates, ledgerHistory, noLabels, wholeSite } from "../../ledger/house.js";
import type { LedgerEntry } from "../../ledger/index.js";
import { earliestWithin, limitsOn } from "../../limits/house.js";
import type { LimitTest, LimitUse } from "../../limits/index.js";
import { type Finding, fail, type Quantity } from "../../quantity/index.js";
import type { ProductAmount } from "../../tank/index.js";
import type { ReadProduct } from "../job/read-products.js";
import { applicatorLines, plain, productLines } from "../visit/visit-entries.js";
import type { WithFindings } from "../visit/with-findings.js";
import type { ReadRoute } from "./read-route.js";
import type { ReadStop } from "./read-stops.js";

/** What of a product goes down at a stop. */
export interface RouteProduct {
  readonly product: string;
  readonly productName: string;
  readonly amount: ProductAmount;
}

/** What the limits say of a stop. It does not authorize an application. */
export interface RouteLimits {
  /** Limits on amounts and counts. */
  readonly uses: readonly LimitUse[];
  /** All other limits. */
  readonly tests: readonly LimitTest[];
  /** The first day, from that of the route on, on which no limit that could be compared is violated. */
  readonly earliestByStatedRules: CivilDate | null;
}

/** The entries of a stop, one for each product, as a ledger takes them. */
export const stopEntries = (input: {
  readonly route: ReadRoute;
  readonly stop: ReadStop;
  readonly products: readonly { readonly product: ReadProduct; readonly amount: ProductAmount }[];
  readonly spray?: Quantity<"volume", string>;
}): readonly LedgerEntry[] => {
  const { route, stop, products, spray } = input;
  const written = new Set(stop.ledger.entries.map(({ id }) => id));
  return products.map(({ product, amount }): LedgerEntry => {
    const id = `${route.date} ${stop.id} ${product.id}`;
    if (written.has(id))
      fail(
        "duplicate",
        `${stop.path}.ledger`,
        id,
        "a ledger without the entries of this route: they would count twice",
      );
    return {
      id,
      date: route.date,
      area: plain(stop.area),
      ...productLines(product),
      amount: { value: amount.value, unit: amount.unit, of: "product" },
      treatment: route.title,
      method: route.treatment.method,
      ...(stop.turf !== undefined && { site: stop.turf }),
      ...(stop.address !== undefined && { location: stop.address }),
      ...applicatorLines(route.applicator),
      ...(spray && { carrierVolume: { value: spray.value, unit: spray.unit, of: "spray" } }),
    };
  });
};

/** Puts all products of a stop, as one application, to the limits of the route and of the stop. */
export const stopLimits = (
  route: ReadRoute,
  stop: ReadStop,
  entries: readonly LedgerEntry[],
): WithFindings<RouteLimits> => {
  const labels = noLabels();
  const seen = entries.map((entry) => entryRates(entry, labels));
  const known = seen.flatMap(({ rates }) => (rates === undefined ? [] : [rates]));
  const limits = [...route.limits, ...stop.limits];
  const history = ledgerHistory(stop.ledger, `${stop.path}.ledger`);
  const asked = {
    proposal: {
      facts: { ...route.facts, ...stop.facts },
      completed: [],
      content: (of: string) => {
        const told = seen.flatMap(({ content }) => content(of) ?? []);
        return told.length === 0
          ? undefined
          : {
              percent: Math.max(...told.map(({ percent }) => percent)),
              all: told.length === seen.length && told.every(({ all }) => all),
            };
      },
      row: {
        date: route.date,
        from: "this route",
        parts: [],
        products: entries.flatMap(({ product }) => product ?? []),
        productRates: seen.flatMap(({ productRates }) => productRates),
        rates: known.length === 0 ? undefined : addRates(known),
        unweighed: seen.flatMap(({ unweighed = [] }) => unweighed),
      },
    },
    date: route.date,
    parts: [...history.parts(), wholeSite],
    history,
    limits,
  };
  const { uses, tests, findings, notChecked } = limitsOn(asked);
  return {
    value: { uses, tests, earliestByStatedRules: earliestWithin(asked) },
    findings: findings.map(
      (finding): Finding => ({
        ...finding,
        path: stop.path,
        params: { ...finding.params, stop: stop.id },
        text: `${stop.name}: ${finding.text}`,
      }),
    ),
    notChecked: [
      ...notChecked.map((text) => `${stop.name}: ${text}`),
      ...(limits.length === 0 ? [`${stop.name}: limits, because none are stated.`] : []),
    ],
  };
};
