import type { Finding } from "../../quantity/index.js";
import type { Analysis } from "./nutrient.js";

/** What a bag of a hundred parts can hold: figures whose sum is larger were no shares of one. */
const wholeBag = 100;

/** A grade of several figures, all of them under 1 %, may have been meant as shares of one. */
export const smallFigures = ({ percent }: Analysis, path: string): readonly Finding[] | undefined => {
  const stated = Object.entries(percent).filter(([, value]) => value > 0);
  if (stated.length < 2 || stated.some(([, value]) => value >= 1)) return undefined;
  const asShares = stated.map(([of, value]) => [of, Number((100 * value).toPrecision(12))] as const);
  if (asShares.reduce((total, [, value]) => total + value, 0) > wholeBag) return undefined;
  const listed = (list: readonly (readonly [string, number])[]): string =>
    list.map(([of, value]) => `${value} % ${of}`).join(", ");
  return [
    {
      code: "analysis/under-one-percent",
      severity: "caution",
      path: `${path}.analysis`,
      params: { stated: stated.map(([of]) => of), percents: stated.map(([, value]) => String(value)) },
      text: `The analysis is read as ${listed(stated)}. If these are fractions of one, the label says ${listed(asShares)}, and 100 times too much product would go down. Check the label.`,
      source: "common practice, no source",
    },
  ];
};
