import { addHours, type Instant, instant } from "../../calendar/index.js";
import {
  checks,
  expectNumber,
  expectQuantity,
  expectRecord,
  type FactSource,
  fail,
  type Quantity,
} from "../../quantity/index.js";

/** An acute toxicity category, I to IV as a number. */
export type ToxicityCategory = 1 | 2 | 3 | 4;

/** The categories of an active ingredient that decide on its entry interval. */
export interface EntryCategories {
  readonly dermal: ToxicityCategory;
  readonly eye: ToxicityCategory;
  readonly skin: ToxicityCategory;
  /** On the published list of low-risk actives, with a label that carries the shorter interval. */
  readonly lowRisk?: boolean;
}

const rule: FactSource = {
  title: "Interim restricted-entry intervals, 40 CFR 156.208(c)",
  publisher: "US EPA",
  where: "as quoted in the reregistration decision for bromacil",
};
const reduced: FactSource = {
  title: "PR Notice 95-3: reduction of interim restricted entry intervals for certain low risk pesticides",
  publisher: "US EPA",
  year: 1995,
};

const category = (input: unknown, path: string): number => {
  const n = expectNumber(input, path, { min: 1, max: 4 });
  return Number.isInteger(n) ? n : fail("range", path, n, "a category, 1 to 4");
};

/**
 * The interim restricted-entry interval of an active ingredient, in hours: 48 where its dermal, eye or
 * skin category is I, else 24 where one is II, else 12; and 4 for a low-risk active in categories III and
 * IV whose label carries it. It goes by the active ingredient, not by the signal word of the product. The
 * label's own figure comes first, whether longer or shorter. For some organophosphates of category I it is
 * 72 hours outdoors where less than 25 in of rain fall in a year (from memory); that is not computed.
 *
 * It holds on farms, nurseries and sod farms. Lawns, parks and grounds that are kept for their looks are
 * excepted from the standard (40 CFR 170.103 (d), 2007): there the label's own words on entry hold.
 *
 * @throws RatewrightError `range`, `not-finite`; `conflict` for a low-risk active in category I or II
 * Source: US EPA, 40 CFR 156.208(c), as quoted in its decision for bromacil; PR Notice 95-3, 1995.
 *
 * @example
 * ```ts
 * import { interimEntryHours } from "ratewright";
 * interimEntryHours({ dermal: 3, eye: 2, skin: 4 }); // => 24
 * interimEntryHours({ dermal: 3, eye: 3, skin: 4, lowRisk: true }); // => 4
 * ```
 */
export const interimEntryHours = (categories: EntryCategories): 4 | 12 | 24 | 48 => {
  if (typeof categories !== "object" || categories === null) {
    return fail("type", "categories", categories, "a record of categories");
  }
  const worst = Math.min(
    category(categories.dermal, "dermal"),
    category(categories.eye, "eye"),
    category(categories.skin, "skin"),
  );
  if (categories.lowRisk && worst < 3) {
    fail("conflict", "lowRisk", true, "no category I or II: the list holds only III and IV");
  }
  return worst === 1 ? 48 : worst === 2 ? 24 : categories.lowRisk ? 4 : 12;
};

/** What the interim rule leaves open, whatever the categories are. */
const limitsOfInterim: readonly string[] = [
  "The interim rule is for farms, nurseries and sod farms, not for lawns, parks and grounds that are kept for their looks (40 CFR 170.103 (d), 2007): there the label's own words on entry hold.",
  "The interim rule adds 72 hours for some organophosphates of category I outdoors where less than 25 in of rain fall in a year (from memory).",
];

const expectName = (input: unknown, path: string): string =>
  typeof input === "string" && input.trim() !== ""
    ? input
    : fail("missing", path, input, "a text that is not empty");

/** One product of a mixture, with what is stated on entry after it. */
export interface EntryStatement {
  /** The product, for the reader. */
  readonly product: string;
  /** The figure of its label. */
  readonly label?: Quantity<"time", "none">;
  /** The condition of its label, such as "until the spray has dried": no hours can be counted for it. */
  readonly until?: string;
  /** The categories of its actives: what the interim rule gives for them is used where the label states no figure. */
  readonly actives?: readonly EntryCategories[];
}

/** Until when entry is restricted, and why. */
export interface EntryInterval {
  readonly type: "entry-interval";
  readonly version: 1;
  /** The longest stated interval, counted from the end of the application; `null` where none is stated. */
  readonly hours: number | null;
  readonly until: Instant | null;
  /** The products whose figure is the longest. */
  readonly decidedBy: readonly string[];
  /** Every figure, with where it comes from. */
  readonly reasons: readonly {
    readonly product: string;
    readonly hours: number;
    readonly basis: "label" | "active ingredient category" | "posting rule";
    readonly source: FactSource;
  }[];
  /** Conditions without a number of hours; each holds beside `until`. */
  readonly conditions: readonly { readonly product: string; readonly until: string }[];
  readonly notChecked: readonly string[];
}

/**
 * Until when entry is restricted after an application: the longest of what the labels and, for a product
 * whose label states no figure, the categories of its active ingredients give; counted in hours from the
 * END of the application, never in whole days.
 *
 * It says when the stated time has passed, not that a place may be entered: conditions, protective
 * equipment and local posting rules stand beside it.
 *
 * @param input.end - when the application ended, with its offset
 * @param input.products - everything in the tank or spreader
 * @param input.posting - hours that a local rule asks for at least, with its source
 * @throws RatewrightError `date`, `missing` for an empty list, a product without a name or a posting rule
 * without its source, `range`, `unit/mismatch`, `type`; what is wrong with the products is told together
 * Source: US EPA, 40 CFR 170.112 (2007): the longest of the intervals that apply.
 *
 * @example
 * ```ts
 * import { entryInterval, quantity } from "ratewright";
 * const entry = entryInterval({
 *   end: "2026-06-03T15:30-05:00",
 *   products: [
 *     { product: "prodiamine WDG", label: quantity(12, "h") },
 *     { product: "herbicide EC", actives: [{ dermal: 3, eye: 2, skin: 3 }] },
 *   ],
 * });
 * entry.until; // => "2026-06-04T15:30-05:00"
 * entry.decidedBy; // => ["herbicide EC"]
 * ```
 */
export const entryInterval = (input: {
  readonly end: Instant;
  readonly products: readonly EntryStatement[];
  readonly posting?: { readonly hours: number; readonly source: FactSource };
}): EntryInterval => {
  expectRecord(input, "input");
  const end = instant(input.end, "end");
  if (!Array.isArray(input.products)) return fail("type", "products", input.products, "a list of products");
  if (input.products.length === 0) fail("missing", "products", "an empty list", "at least one product");
  const reasons: EntryInterval["reasons"][number][] = [];
  const conditions: { product: string; until: string }[] = [];
  const notChecked: string[] = [];
  const door = checks();
  let interim = false;
  for (const [i, one] of (input.products as readonly EntryStatement[]).entries()) {
    const at = `products[${i}]`;
    if (door.run(() => expectRecord(one, at, "a product with what is stated")) === undefined) continue;
    const { label, until, actives } = one;
    const product = door.run(() => expectName(one.product, `${at}.product`)) ?? "";
    if (until !== undefined) {
      door.run(() => conditions.push({ product, until: expectName(until, `${at}.until`) }));
    }
    if (label !== undefined) {
      const wanted = { dimension: "time", of: "none", bound: "non-negative" } as const;
      const hours = door.run(() => expectQuantity(label, wanted, `${at}.label`).in("h"));
      if (hours !== undefined) reasons.push({ product, hours, basis: "label", source: "the label" });
      continue;
    }
    if (actives !== undefined && !Array.isArray(actives)) {
      door.run(() => fail("type", `${at}.actives`, actives, "a list of categories"));
      continue;
    }
    if (actives === undefined || actives.length === 0) {
      notChecked.push(
        `${product}: neither a figure of the label nor the categories of its actives are given.`,
      );
      continue;
    }
    interim = true;
    for (const [j, categories] of (actives as readonly EntryCategories[]).entries()) {
      const hours = door.run(() => interimEntryHours(categories), `${at}.actives[${j}]`);
      if (hours === undefined) continue;
      const source = hours === 4 ? reduced : rule;
      reasons.push({ product, hours, basis: "active ingredient category", source });
    }
    notChecked.push(`${product}: what its label states; its figure comes before the interim rule.`);
  }
  const { posting } = input;
  if (posting !== undefined) {
    const hours = door.run(() => {
      expectRecord(posting, "posting");
      if (posting.source === undefined || posting.source === "") {
        fail("missing", "posting.source", "nothing", "where the rule is stated");
      }
      return expectNumber(posting.hours, "posting.hours", { min: 0 });
    });
    if (hours !== undefined) {
      reasons.push({ product: "posting", hours, basis: "posting rule", source: posting.source });
    }
  } else notChecked.push("Posting: no local rule is given.");
  door.done();
  if (interim) notChecked.push(...limitsOfInterim);
  notChecked.push(
    "Conditions of the label without a number, ventilation, protective equipment, local codes.",
  );
  const hours = reasons.length === 0 ? null : Math.max(...reasons.map((reason) => reason.hours));
  return {
    type: "entry-interval",
    version: 1,
    hours,
    until: hours === null ? null : addHours(end, hours),
    decidedBy: [...new Set(reasons.filter((reason) => reason.hours === hours).map(({ product }) => product))],
    reasons,
    conditions,
    notChecked,
  };
};

/**
 * What the rule on short entries before the end of the interval speaks against: more than 1 hour in 24,
 * the first 4 hours after the application, hand labour. An empty list is no leave to enter: the label's
 * protective equipment and its inhalation criteria are not looked at. Like {@link interimEntryHours} it is
 * for farms, nurseries and sod farms.
 *
 * @param input.hoursSinceEnd - since the end of the application, zero or more
 * @param input.minutesInDay - how long the person would be there within any 24 hours
 * @param input.handLabour - whether it is work with the hands on treated plants or soil
 * @throws RatewrightError `range`, `not-finite`, `type`
 * Source: US EPA, 40 CFR 170.112 (c), 2007 edition.
 *
 * @example
 * ```ts
 * import { earlyEntryObjections } from "ratewright";
 * earlyEntryObjections({ hoursSinceEnd: 3, minutesInDay: 45, handLabour: false });
 * // => ["within 4 hours of the end of the application"]
 * ```
 */
export const earlyEntryObjections = (input: {
  readonly hoursSinceEnd: number;
  readonly minutesInDay: number;
  readonly handLabour: boolean;
}): readonly string[] => {
  expectRecord(input, "input");
  const hours = expectNumber(input.hoursSinceEnd, "hoursSinceEnd", { min: 0 });
  const minutes = expectNumber(input.minutesInDay, "minutesInDay", { min: 0, max: 1440 });
  if (typeof input.handLabour !== "boolean") fail("type", "handLabour", input.handLabour, "true or false");
  return [
    ...(hours < 4 ? ["within 4 hours of the end of the application"] : []),
    ...(minutes > 60 ? ["more than 1 hour in 24"] : []),
    ...(input.handLabour ? ["hand labour"] : []),
  ];
};
