import { Quantity } from "../../quantity/index.js";
import { addRates, completeRates, type NutrientRates } from "./nutrient-rates.js";

/** The sum of rates that state the same substances in the same units. */
interface AlikeSum {
  readonly of: readonly string[];
  readonly units: readonly string[];
  readonly sums: Float64Array;
}

/** A sum of rates to which more are added one by one. */
export interface RateSums {
  readonly add: (rates: NutrientRates) => void;
  /** What {@link completeRates} and {@link addRates} make of all of them. */
  readonly total: () => NutrientRates;
}

const isAlike = ({ of, units }: AlikeSum, rates: NutrientRates): boolean => {
  let i = 0;
  for (const name in rates) {
    if (of[i] !== name || units[i] !== rates[name]?.unit) return false;
    i++;
  }
  return i === of.length;
};

/**
 * Adds up rates without keeping them: those that state the same substances in the same units are summed as plain
 * numbers, and only the few sums are completed and told apart by form. Completion is linear but where both quick
 * and slow nitrogen are stated beside the total, and there it took place row by row.
 */
export const rateSums = (): RateSums => {
  const groups: AlikeSum[] = [];
  let last: AlikeSum | undefined;
  const groupOf = (rates: NutrientRates): AlikeSum => {
    if (last !== undefined && isAlike(last, rates)) return last;
    const known = groups.find((group) => isAlike(group, rates));
    if (known !== undefined) return known;
    const of = Object.keys(rates);
    const units = of.map((name) => (rates[name] as Quantity<"mass/area", string>).unit);
    const made = { of, units, sums: new Float64Array(of.length) };
    groups.push(made);
    return made;
  };
  return {
    add: (rates) => {
      last = groupOf(rates);
      const { sums } = last;
      let i = 0;
      for (const name in rates) {
        sums[i] = (sums[i] as number) + (rates[name] as Quantity<"mass/area", string>).value;
        i++;
      }
    },
    total: () =>
      addRates(
        groups.map(
          ({ of, units, sums }) =>
            completeRates(
              Object.fromEntries(
                of.map((name, i) => [
                  name,
                  new Quantity(sums[i] as number, units[i] as string, name, "mass/area"),
                ]),
              ),
            ).rates,
        ),
      ),
  };
};
