import { exceeds } from "../../numeric/index.js";
import { type Finding, fail, numberIn, type Quantity } from "../../quantity/index.js";
import { amountText } from "../amount-text.js";
import type { ProductAmount } from "./load-amount-types.js";

/** What goes into one volume of spray of one product. */
export interface PartOfLoad {
  readonly id: string;
  /** What sentences call it. */
  readonly name: string;
  readonly amount: ProductAmount;
  /** Before it was rounded to what can be measured, where it was. */
  readonly exact?: ProductAmount;
  /** Whether its rate is per volume of spray: the slip of "per gal" for "per 100 gal" is possible then. */
  readonly perVolume: boolean;
  /** The unit that its rate was told in: the words for a slip follow it. */
  readonly rateUnit: string;
  readonly path: string;
}

/**
 * More dry product than this per volume of spray is no spray: a liter that holds a kilogram of powder or granules has
 * next to no room for water. Urea at its solubility is 0.57 kg per liter of solution.
 */
const mostDry = 1;

/** From here on few dry products dissolve or stay suspended: 2 lb per US gallon. */
const muchDry = 0.25;

/** From here on more product than water is in the tank. */
const muchLiquid = 0.5;

type Spray = Quantity<"volume", "spray">;

/** Whether a rate is a metric one; of a percentage the volume says it. */
const isMetric = (rateUnit: string, load: Spray): boolean =>
  /(?:ha|m2|L|m3)$/.test(rateUnit.includes("/") && !rateUnit.startsWith("%") ? rateUnit : load.unit);

const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

const tooStrong = (
  { name, path, amount, exact, rateUnit }: PartOfLoad,
  dry: boolean,
  load: Spray,
  what: string,
): never => {
  const asRated = exact && numberIn(exact, dry ? "kg" : "L") / load.in("L");
  return fail(
    "infeasible",
    path,
    amount,
    asRated !== undefined && !exceeds(asRated, dry ? mostDry : 1)
      ? `a load that holds the smallest measure of ${name}: ${lower(what)} is only ${amountText(load)} of spray; split the loads evenly, or measure in smaller steps`
      : `less product than ${lower(what)} holds (${amountText(load)} of spray); is the rate of ${name} per 100 ${isMetric(rateUnit, load) ? "L" : "gal"}, or is the volume of spray per area too small?`,
  );
};

/**
 * Refuses what cannot be in a volume of spray, and tells what is absurd in it.
 *
 * @throws RatewrightError `infeasible` for more liquid product than the load holds, of one product or of all together,
 *   and for more than 1 kg of dry product per liter
 */
export const strengthFindings = (
  parts: readonly PartOfLoad[],
  load: Spray,
  what: string,
): readonly Finding[] => {
  const liters = load.in("L");
  const shares = parts.map((part) => {
    const dry = part.amount.dimension === "mass";
    return { part, dry, perLiter: numberIn(part.amount, dry ? "kg" : "L") / liters };
  });
  const poured = shares.filter(({ dry }) => !dry);
  const allPoured = poured.reduce((sum, { perLiter }) => sum + perLiter, 0);
  for (const { part, dry, perLiter } of shares) {
    if (!exceeds(perLiter, dry ? mostDry : 1)) continue;
    tooStrong(part, dry, load, what);
  }
  if (exceeds(allPoured, 1)) {
    const most = poured.reduce((a, b) => (b.perLiter > a.perLiter ? b : a));
    fail(
      "infeasible",
      most.part.path,
      most.part.amount,
      `less product than ${lower(what)} holds: the liquids together are ${Number((100 * allPoured).toPrecision(3))} % of it`,
    );
  }
  return shares.flatMap(({ part, dry, perLiter }): readonly Finding[] => {
    if (!exceeds(perLiter, dry ? muchDry : muchLiquid)) return [];
    const { id, name, path, amount, perVolume, rateUnit } = part;
    const metric = isMetric(rateUnit, load);
    const slip = perVolume
      ? `Is its rate per 100 ${metric ? "L, and not per L" : "gal, and not per gal"}?`
      : `Is its rate per ${metric ? "hectare, and not per 100 m2" : "acre, and not per 1000 ft2"}, and is the volume of spray per area right?`;
    const strength = Number(
      numberIn({ value: perLiter, unit: "kg/L" }, metric ? "g/L" : "lb/gal").toPrecision(3),
    );
    return [
      {
        code: dry ? "load/much-dry-product" : "load/more-product-than-water",
        severity: "warning",
        path,
        params: {
          product: id,
          amount: amount.value,
          unit: amount.unit,
          load: load.value,
          loadUnit: load.unit,
        },
        text: `${what} takes ${amountText(amount)} of ${name} in ${amountText(load)} of spray: ${dry ? `${strength} ${metric ? "g per L" : "lb per gallon"}, more than most dry products dissolve or stay suspended at` : "more product than water"}. ${slip}`,
        source: "common practice, no source",
      },
    ];
  });
};
