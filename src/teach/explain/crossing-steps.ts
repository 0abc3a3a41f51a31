import { hasOwn } from "../../quantity/house.js";
import { inUnit, type Quantity, quantityOf, unitTable } from "../../quantity/index.js";
import type { DerivationStep, DerivedQuantity } from "../derivation/derivation.js";
import { amountPerText, amountText, numberText } from "./amount-text.js";

const isWhole = (unit: string): boolean =>
  Object.values(unitTable).some((sizes: object) => hasOwn(sizes, unit));

/** The units that a quotient is made of, top first: `lb/1000 ft2/week` is lb, 1000 ft2 and week. */
const partsOf = (unit: string): readonly string[] => (isWhole(unit) ? [unit] : unit.split("/"));

/** How many `to` one `from` is. */
const ratio = (from: string, to: string): number => quantityOf(1, from, "none", "unit").in(to as never);

const dimensionOf = (unit: string): string => quantityOf(1, unit, "none", "unit").dimension;

/** A factor as it is written: times where it makes more of the number, divided by where it makes fewer. */
const factorText = (factor: number): string =>
  factor >= 1 ? `× ${numberText(factor)}` : `÷ ${numberText(1 / factor)}`;

const step = (text: string, from: DerivedQuantity, to: DerivedQuantity, per?: string): DerivationStep => ({
  kind: "crossing",
  text: `${text} = ${amountPerText(to, per)}`,
  quantities: [from, to],
});

/** `(68 °F − 32) ÷ 1.8 = 20 °C`. */
const temperatureText = (q: DerivedQuantity, to: string): string | undefined => {
  const was = q.value < 0 ? `(${amountText(q)})` : amountText(q);
  const lines: Readonly<Record<string, string>> = {
    "°F °C": `(${amountText(q)} − 32) ÷ 1.8`,
    "°C °F": `${was} × 1.8 + 32`,
    "°C K": `${was} + 273.15`,
    "K °C": `${was} − 273.15`,
  };
  return lines[`${q.unit} ${to}`];
};

const temperatureSteps = (q: DerivedQuantity, to: string): DerivationStep[] => {
  const text = temperatureText(q, to);
  if (text !== undefined) return [step(text, q, inUnit(q, to))];
  const between = inUnit(q, "°C");
  return [...temperatureSteps(q, "°C"), ...temperatureSteps(between, to)];
};

/** The units on the way from one unit to another: one part after the other. */
const way = (from: string, to: string): readonly string[] => {
  const [here, there] = [partsOf(from), partsOf(to)];
  const alike =
    here.length === there.length &&
    here.every((part, n) => dimensionOf(part) === dimensionOf(there[n] ?? ""));
  if (!alike) return [to];
  return here.map((_, n) => [...there.slice(0, n + 1), ...here.slice(n + 1)].join("/"));
};

/**
 * The lines that take a quantity to another unit, one unit at a time: `0.9 lb N/1,000 ft² × 43.56 = 39.204 lb N/acre`.
 * None where it is in that unit already. What the number is for each of, where there is such a thing, stays.
 */
export const crossingSteps = (q: Quantity<string, string>, to: string, per?: string): DerivationStep[] => {
  if (q.unit === to) return [];
  if (q.dimension === "temperature") return temperatureSteps(q, to);
  const steps: DerivationStep[] = [];
  let now = q;
  for (const unit of way(q.unit, to)) {
    if (unit === now.unit) continue;
    const next = inUnit(now, unit);
    steps.push(step(`${amountPerText(now, per)} ${factorText(ratio(now.unit, unit))}`, now, next, per));
    now = next;
  }
  return steps;
};
