import { addHours, type Instant, instant } from "../../calendar/index.js";
import {
  allOf,
  checks,
  expectFields,
  expectFlag,
  expectList,
  expectNumber,
  expectQuantity,
  expectText,
  type FactSource,
  fail,
  frozen,
  outOfRange,
  type Quantity,
} from "../../quantity/index.js";
import { expectSource } from "../expect-source.js";

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

const rule: FactSource = /* @__PURE__ */ frozen({
  title: "Interim restricted-entry intervals, 40 CFR 156.208(c)",
  publisher: "US EPA",
  where: "as quoted in the reregistration decision for bromacil",
});
const reduced: FactSource = /* @__PURE__ */ frozen({
  title: "PR Notice 95-3: reduction of interim restricted entry intervals for certain low risk pesticides",
  publisher: "US EPA",
  year: 1995,
});

const category = (input: unknown, path: string): number => {
  const n = expectNumber(input, path, { min: 1, max: 4 });
  return Number.isInteger(n) ? n : outOfRange(path, n, { step: 1, min: 1, max: 4 }, "a category, {}");
};

/**
 * The interim restricted-entry interval of an active ingredient, in hours: 48 where its dermal, eye or
 * skin category is I, else 24 where one is II, else 12; and 4 for a low-risk active in categories III and
 * IV whose label carries it. It goes by the active ingredient, not by the signal word of the product. The
 * label's own figure comes first, whether longer or shorter.
 *
 * For an organophosphate that inhibits cholinesterase and lies in category I it is 72 hours instead of 48 on outdoor
 * sites where less than 25 in of rain fall in an average year: 48 hours are the interval of category I alone. That is not
 * computed here.
 *
 * It holds on farms, nurseries and sod farms. Ornamental gardens, parks, landscaping and lawns that are kept for
 * their looks are excepted from the standard (40 CFR 170.303 (b)(2)): there the label's own words on entry hold.
 *
 * @throws RatewrightError `range`, `not-finite`, `type`; `conflict` for a low-risk active in category I or II
 * Source: US EPA, 40 CFR 156.208(c), as quoted in its decision for bromacil; PR Notice 95-3, 1995; the 72 hours: US EPA,
 * pesticide label review training, module 3, section 6.
 *
 * @example
 * ```ts
 * import { interimRestrictedEntryHours } from "ratewright";
 * interimRestrictedEntryHours({ dermal: 3, eye: 2, skin: 4 }); // => 24
 * interimRestrictedEntryHours({ dermal: 3, eye: 3, skin: 4, lowRisk: true }); // => 4
 * ```
 */
export const interimRestrictedEntryHours = (categories: EntryCategories): 4 | 12 | 24 | 48 => {
  const { dermal, eye, skin, lowRisk } = expectFields(
    categories,
    ["dermal", "eye", "skin", "lowRisk"],
    "categories",
    "a record of categories",
  );
  const read = allOf({
    dermal: () => category(dermal, "dermal"),
    eye: () => category(eye, "eye"),
    skin: () => category(skin, "skin"),
    low: () => lowRisk !== undefined && expectFlag(lowRisk, "lowRisk"),
  });
  const worst = Math.min(read.dermal, read.eye, read.skin);
  if (read.low && worst < 3) {
    fail("conflict", "lowRisk", true, "no category I or II: the list holds only III and IV");
  }
  return worst === 1 ? 48 : worst === 2 ? 24 : read.low ? 4 : 12;
};

/** What the interim rule leaves open, whatever the categories are. */
const limitsOfInterim: readonly string[] = [
  "The interim rule is for farms, nurseries and sod farms, not for parks, landscaping and lawns kept for their looks (40 CFR 170.303 (b)(2)): there the label's own words on entry apply.",
  "For organophosphates of category I the interim rule is 72 hours instead of 48 outdoors where less than 25 in of rain fall in an average year (US EPA, label review training, which has 72 hours instead of 48, the interval of category I).",
];

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
export interface RestrictedEntryInterval {
  readonly type: "restricted-entry-interval";
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

type Reason = RestrictedEntryInterval["reasons"][number];

/** What one product says on entry. */
interface Stated {
  readonly reasons: readonly Reason[];
  readonly conditions: RestrictedEntryInterval["conditions"];
  readonly notChecked: readonly string[];
  /** Whether the interim rule was asked. */
  readonly interim: boolean;
}

const interimReasons = (input: unknown, product: string, path: string): readonly Reason[] => {
  const problems = checks();
  const reasons = expectList(input, path, "record of categories").flatMap(
    (categories, i): readonly Reason[] => {
      const hours = problems.run(
        () => interimRestrictedEntryHours(categories as EntryCategories),
        `${path}[${i}]`,
      );
      const basis = "active ingredient category";
      return hours === undefined ? [] : [{ product, hours, basis, source: hours === 4 ? reduced : rule }];
    },
  );
  problems.done();
  return reasons;
};

/** Reads one product: the figure of its label where there is one, else the categories of its actives. */
const statedOn = (input: unknown, path: string): Stated => {
  const { label, until, actives, ...named } = expectFields(
    input,
    ["product", "label", "until", "actives"],
    path,
    "a product with what is stated",
  );
  const noActives = actives === undefined || (Array.isArray(actives) && actives.length === 0);
  const { product, condition, hours } = allOf({
    product: () => expectText(named.product, `${path}.product`, "the name of the product"),
    condition: () =>
      until === undefined ? undefined : expectText(until, `${path}.until`, "a text that is not empty"),
    hours: () =>
      label === undefined
        ? undefined
        : expectQuantity(label, { dimension: "time", of: "none", bound: "non-negative" }, `${path}.label`).in(
            "h",
          ),
    actives: () => (noActives ? [] : interimReasons(actives, "", `${path}.actives`)),
  });
  const conditions = condition === undefined ? [] : [{ product, until: condition }];
  if (hours !== undefined) {
    const reasons: readonly Reason[] = [{ product, hours, basis: "label", source: "the label" }];
    return { reasons, conditions, notChecked: [], interim: false };
  }
  if (noActives) {
    const lacks = `${product}: neither a figure of the label nor the categories of its actives are given.`;
    return { reasons: [], conditions, notChecked: [lacks], interim: false };
  }
  return {
    reasons: interimReasons(actives, product, `${path}.actives`),
    conditions,
    notChecked: [`${product}: its label. A figure on the label overrides the interim rule.`],
    interim: true,
  };
};

const postingReason = (input: unknown): Reason => {
  const { hours, source } = expectFields(input, ["hours", "source"], "posting");
  const read = allOf({
    hours: () => expectNumber(hours, "posting.hours", { min: 0 }),
    source: () => expectSource(source, "posting.source"),
  });
  return { product: "posting", ...read, basis: "posting rule" };
};

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
 * without its source, `range`, `unit/mismatch`, `type`; what is wrong is told together
 * Source: US EPA, 40 CFR 170.407: the longest of the intervals that apply; read in the edition before the
 * revision of 2015, where it is 170.112 (a)(3).
 *
 * @example
 * ```ts
 * import { restrictedEntryInterval, quantity } from "ratewright";
 * const entry = restrictedEntryInterval({
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
export const restrictedEntryInterval = (input: {
  readonly end: Instant;
  readonly products: readonly EntryStatement[];
  readonly posting?: { readonly hours: number; readonly source: FactSource };
}): RestrictedEntryInterval => {
  const { end, products, posting } = expectFields(input, ["end", "products", "posting"]);
  const read = allOf({
    end: () => instant(end as Instant, "end"),
    products: () => {
      const problems = checks();
      const list = expectList(products, "products", "product");
      const stated = list.map((one, i) => problems.run(() => statedOn(one, `products[${i}]`)));
      problems.done();
      return stated.flatMap((one) => one ?? []);
    },
    posting: () => (posting === undefined ? [] : [postingReason(posting)]),
  });
  const reasons = [...read.products.flatMap((one) => one.reasons), ...read.posting];
  const hours = reasons.length === 0 ? null : Math.max(...reasons.map((reason) => reason.hours));
  return {
    type: "restricted-entry-interval",
    version: 1,
    hours,
    until: hours === null ? null : addHours(read.end, hours),
    decidedBy: [...new Set(reasons.filter((reason) => reason.hours === hours).map(({ product }) => product))],
    reasons,
    conditions: read.products.flatMap((one) => one.conditions),
    notChecked: [
      ...read.products.flatMap((one) => one.notChecked),
      ...(posting === undefined ? ["Posting: no local rule is given."] : []),
      ...(read.products.some((one) => one.interim) ? limitsOfInterim : []),
      "Conditions of the label without a number, ventilation, protective equipment, local codes.",
    ],
  };
};
