import { type Fertilizer, percentOf } from "../../nutrient/index.js";
import type { Quantity } from "../../quantity/index.js";
import { addRates, type NutrientRates } from "./nutrient-rates.js";
import { type AreaRates, suppliedRates } from "./supplied-rates.js";

type Any = Quantity<string, string>;

/** What of the contents can be weighed at a rate. */
export const weighedContents = (contents: readonly Any[], rates: AreaRates): NutrientRates =>
  addRates(
    contents.map((share) => suppliedRates({ contents: [share] }, rates)).filter((held) => held !== undefined),
  );

/** What a product holds by its label, in an amount that its rate does not tell. */
export const unweighedOf = (
  label: {
    readonly fertilizer?: Fertilizer | undefined;
    /** Each of `.../product`. */
    readonly contents?: readonly Any[] | undefined;
  },
  rates: AreaRates,
): readonly string[] => {
  const { fertilizer, contents = [] } = label;
  const others = contents
    .filter((share) => share.value > 0 && suppliedRates({ contents: [share] }, rates) === undefined)
    .map(({ of }) => of.slice(0, of.lastIndexOf("/")));
  return fertilizer === undefined || rates.byMass !== undefined ? others : [...heldBy(fertilizer), ...others];
};

/** The nutrients of a label, each form that it states, and the two kinds of its nitrogen. */
const heldBy = ({ analysis, slowNitrogen }: Fertilizer): readonly string[] => {
  const nitrogen = percentOf(analysis, "N");
  const slow = slowNitrogen?.in("% w/w") ?? 0;
  return [
    ...Object.entries(analysis.percent).flatMap(([of, percent]) => (percent > 0 ? [of] : [])),
    ...(slow > 0 ? ["N:slow"] : []),
    ...(nitrogen > slow ? ["N:quick"] : []),
  ];
};
