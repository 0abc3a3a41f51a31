import { type Fertilizer, fertilizer, percentOf } from "../../nutrient/index.js";
import { perOf, Quantity, quantityOf } from "../../quantity/index.js";
import { type Completion, completeRates, type NutrientRates, type Wanted } from "../rates/nutrient-rates.js";
import { areaRatesOf, type Shares, suppliedRates } from "../rates/supplied-rates.js";
import { unweighedOf, weighedContents } from "../rates/unweighed.js";
import type { Stated } from "../stated.js";
import { namesIn } from "./active-names.js";
import type { Content } from "./content.js";
import type { HistoryRow } from "./history.js";
import type { LedgerEntry } from "./ledger-entry.js";

type Any = Quantity<string, string>;

/** Labels that were read, by what they state: a ledger names the same few products over and over. */
export interface Labels {
  /** By grade, for dry and liquid. */
  readonly byGrade: { readonly dry: Map<string, Fertilizer>; readonly liquid: Map<string, Fertilizer> };
  /** By all that is stated, where that is more than a grade. */
  readonly byText: Map<string, Fertilizer>;
  readonly shares: Shares;
}

/** No label read yet. */
export const noLabels = (): Labels => ({
  byGrade: { dry: new Map(), liquid: new Map() },
  byText: new Map(),
  shares: new Map(),
});

/** The label of an entry, read once for all entries that state the same. */
export const labelOf = (
  entry: Omit<LedgerEntry, "id">,
  labels: Labels,
  path = "application",
): Fertilizer | undefined => {
  const { analysis, slowNitrogen, form = "dry" } = entry;
  if (analysis === undefined) return undefined;
  const plain = typeof analysis === "string" && slowNitrogen === undefined;
  const key = plain ? analysis : JSON.stringify([form, analysis, slowNitrogen]);
  const map = plain ? labels.byGrade[form] : labels.byText;
  const known = map.get(key);
  if (known !== undefined) return known;
  const label = fertilizer(
    {
      id: "it",
      form,
      analysis,
      // As it is stated, in one of several kinds: fertilizer reads it.
      ...(slowNitrogen === undefined ? {} : { slowNitrogen: slowNitrogen as never }),
    },
    path === "" ? "application" : path,
  );
  map.set(key, label);
  return label;
};

const stated = ({ value, unit }: Stated, of: string, path: string): Any => quantityOf(value, unit, of, path);

/** Product per area: the rate that is stated, or the amount over the area. */
const productRateOf = (entry: Omit<LedgerEntry, "id">): Any | undefined => {
  if (entry.rate !== undefined) return stated(entry.rate, "product", "rate");
  if (entry.amount === undefined || entry.area === undefined) return undefined;
  return perOf(stated(entry.amount, "product", "amount"), stated(entry.area, "none", "area"));
};

/** What limits ask of an application, where that is not all. */
export interface Asked {
  readonly substances: Wanted;
  /** The forms of a label that can tell them; all of them where it is left out. */
  readonly telling?: Wanted;
  /** Whether a limit is about a product, and not about what it holds. */
  readonly products: boolean;
}

/** Active ingredients that an entry names in words, and states no amount of: they went down, nobody knows how much. */
const namedOnly = ({
  activeIngredient,
  contents = [],
  supplies = [],
}: Omit<LedgerEntry, "id">): readonly string[] => {
  if (activeIngredient === undefined) return [];
  const stated = new Set(
    [...contents, ...supplies].map(({ of = "" }) =>
      of.replace(/\/.*$/, "").replace(/^ae:/, "ai:").toLowerCase(),
    ),
  );
  return namesIn(activeIngredient)
    .map((name) => `ai:${name.toLowerCase()}`)
    .filter((of) => !stated.has(of));
};

/** What an application puts down per area, as far as it is stated; of what it holds no more than is asked for. */
export const entryRates = (
  entry: Omit<LedgerEntry, "id">,
  labels: Labels,
  asked?: Asked,
): {
  readonly rates: NutrientRates | undefined;
  readonly completed: readonly Completion[];
  readonly productRates: readonly Any[];
  readonly content: Content;
  readonly unweighed?: readonly string[];
} => {
  const label = labelOf(entry, labels);
  const content: Content = (of) =>
    label === undefined ? undefined : { percent: percentOf(label.analysis, of as "N"), all: true };
  const density =
    entry.density && (stated(entry.density, "none", "density") as Quantity<"mass/volume", "none">);
  const areaRates = areaRatesOf(productRateOf(entry), density);
  const named = entry.product === undefined ? "product" : `product:${entry.product}`;
  const productRates: Any[] = [];
  if (asked?.products !== false) {
    for (const q of [areaRates.byMass, areaRates.byVolume])
      if (q !== undefined) productRates.push(new Quantity(q.value, q.unit, named, q.dimension));
  }
  if (entry.supplies !== undefined) {
    const supplied: Record<string, Quantity<"mass/area", string>> = {};
    for (const item of entry.supplies) {
      const of = item.of as string;
      supplied[of] = stated(item, of, "supplies") as Quantity<"mass/area", string>;
    }
    const { rates, completed } = completeRates(supplied, asked?.substances);
    const onlyNamed = namedOnly(entry);
    return { rates, completed, productRates, content, ...(onlyNamed.length > 0 && { unweighed: onlyNamed }) };
  }
  const contents = entry.contents?.map((item) => stated(item, item.of as string, "contents"));
  const whole = suppliedRates({ fertilizer: label, contents }, areaRates, labels.shares, asked?.telling);
  // What is stated per volume can be weighed beside what is not.
  const told = label !== undefined || (contents !== undefined && contents.length > 0);
  const rates = whole ?? (told ? weighedContents(contents ?? [], areaRates) : undefined);
  const noSlow =
    label !== undefined && label.slowNitrogen === undefined && percentOf(label.analysis, "N") > 0;
  const unweighed = [
    ...(whole === undefined ? unweighedOf({ fertilizer: label, contents }, areaRates) : []),
    ...namedOnly(entry),
  ];
  return {
    rates,
    completed: whole && noSlow ? ["no slow stated"] : [],
    productRates,
    content,
    ...(unweighed.length > 0 && { unweighed }),
  };
};

/** An application as the limits see it. */
export const entryRow = (
  entry: Omit<LedgerEntry, "id">,
  from: string,
  labels: Labels,
  asked?: Asked,
): HistoryRow => {
  const { rates, productRates, unweighed } = entryRates(entry, labels, asked);
  return {
    date: entry.date,
    from,
    parts: entry.parts ?? [],
    products: entry.product === undefined ? [] : [entry.product],
    productRates,
    rates,
    treatment: entry.treatment,
    ...(unweighed && { unweighed }),
  };
};
