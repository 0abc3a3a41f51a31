import { roundedApart } from "../../numeric/house.js";
import { exceeds, wholeUnitsWithin } from "../../numeric/index.js";
import { type Finding, numberIn } from "../../quantity/index.js";
import { percentOf } from "../label/analysis.js";
import type { Injector } from "./injector.js";
import type { StockAmount, StockSalt } from "./stock-salt.js";

/** Whether more is to be dissolved than the stated solubility, and whether calcium meets sulfate or phosphate. */
export const stockFindings = (
  salts: readonly StockSalt[],
  amounts: readonly StockAmount[],
  injector: Injector,
): { readonly findings: Finding[]; readonly checked: string[]; readonly notChecked: string[] } => {
  const idsOf = (some: readonly StockSalt[]): string => some.map(({ product }) => product.id).join(", ");
  const stated = salts.filter(({ solubility }) => solubility !== undefined);
  const unstated = salts.filter(({ solubility }) => solubility === undefined);
  return {
    findings: [
      ...solubilityFindings(salts, amounts, injector),
      ...weightFindings(amounts, injector),
      ...solids(salts, amounts),
    ],
    checked: [
      ...(stated.length > 0 ? [`stated solubility of ${idsOf(stated)}, each by itself`] : []),
      "weight of the salts beside that of water",
      "calcium beside phosphate or sulfate, where the labels state them",
    ],
    notChecked: [
      ...(unstated.length > 0 ? [`solubility of ${idsOf(unstated)}: none was stated`] : []),
      ...(stated.length > 0
        ? [
            "the room that salts take up: a solubility per volume of water is reached at less per volume of stock",
          ]
        : []),
      "solubility of salts together, water temperature, hardness and pH",
    ],
  };
};

/**
 * The way to a stock of less strength, `most` where it is `held` now. The tank has no part in it: what is in a gallon goes
 * with the dilution alone, and half of the dilution makes half of it.
 */
const weaker = ({ reading, dilution }: Injector, held: number, most: number): string => {
  const parts = wholeUnitsWithin(dilution * most, held) - (reading === "1+N" ? 1 : 0);
  const least = reading === "1+N" ? 1 : 2;
  const setting =
    parts < least
      ? ""
      : `set the injector to ${reading.replace("N", String(parts))} or a smaller number, or `;
  return `A larger tank does not change that: ${setting}ask for less in the final solution.`;
};

/** More of a salt than is stated to dissolve. */
const solubilityFindings = (
  salts: readonly StockSalt[],
  amounts: readonly StockAmount[],
  injector: Injector,
): Finding[] =>
  salts.flatMap(({ product, solubility, solubilitySource }, j): Finding[] => {
    const amount = (amounts[j] as StockAmount).perVolume;
    if (solubility === undefined || !exceeds(amount.value, numberIn(solubility, amount.unit))) return [];
    const unit = /(?:L|m3)$/.test(amount.unit) ? "g/L" : "lb/gal";
    const [held, most] = [amount.in(unit), solubility.in(unit)];
    const told = roundedApart(held, most, 3);
    return [
      {
        code: "stock/solubility",
        severity: "warning",
        path: `salts[${j}].solubility`,
        params: { product: product.id, amount: held, limit: most, unit },
        text: `${told(held)} ${unit} of ${product.id} in the stock is over the stated ${told(most)} ${unit} that dissolve. ${weaker(injector, held, most)}`,
        ...(solubilitySource === undefined ? {} : { source: solubilitySource }),
      },
    ];
  });

/** All salts together, beside water. */
const weightFindings = (amounts: readonly StockAmount[], injector: Injector): Finding[] => {
  const total = amounts.reduce((sum, { perVolume }) => sum + perVolume.in("kg/L"), 0);
  return exceeds(total, 1)
    ? [
        {
          code: "stock/heavier-than-water",
          severity: "warning",
          path: "injector",
          params: { amount: total, limit: 1 },
          text: `${roundedApart(total, 1, 3)(total)} kg of salts in each liter of stock is more than its weight in water: hardly any salt dissolves that much. ${weaker(injector, total, 1)}`,
          source: "common practice, no source",
        },
      ]
    : [];
};

/** Calcium beside phosphate or sulfate: the two fall out as a solid. */
const solids = (salts: readonly StockSalt[], amounts: readonly StockAmount[]): Finding[] => {
  const holding = (...nutrients: readonly ("Ca" | "P" | "S")[]): string[] =>
    salts
      .filter(
        ({ product }, j) =>
          (amounts[j]?.amount.value ?? 0) > 0 &&
          nutrients.some((nutrient) => percentOf(product.analysis, nutrient) > 0),
      )
      .map(({ product }) => product.id);
  const [calcium, others] = [holding("Ca"), holding("P", "S")];
  return calcium.length > 0 && others.length > 0
    ? [
        {
          code: "stock/precipitate",
          severity: "warning",
          path: "salts",
          params: { calcium, with: others },
          text: `Calcium (${calcium.join(", ")}) with phosphate or sulfate (${others.join(", ")}) in one concentrated stock precipitates: use two tanks.`,
          source: "common practice, no source",
        },
      ]
    : [];
};
