import { exceeds } from "../../numeric/index.js";
import { formFactor } from "../../nutrient/index.js";
import { dimensionDue } from "../../quantity/house.js";
import {
  type Checks,
  checks,
  expectList,
  expectNumber,
  fail,
  isSubstance,
  type Quantity,
  quantityOf,
  shown,
} from "../../quantity/index.js";
import { readAreaAmount } from "../rates/limited-name.js";
import { inUnit, type NutrientRates, nitrogenParts } from "../rates/nutrient-rates.js";
import { expectStated } from "../stated.js";

type Any = Quantity<string, string>;

const pairs: readonly (readonly [string, string])[] = [
  ["P", "P2O5"],
  ["K", "K2O"],
  ["Ca", "CaO"],
  ["Mg", "MgO"],
  ["S", "SO4"],
  ["S", "SO3"],
  ["SO3", "SO4"],
  ["Si", "SiO2"],
  ["NO3-N", "NO3"],
];

/** Figures are stated to two or three digits: within 3 % two forms say the same. */
const roundedAlike = (a: number, b: number): boolean => Math.abs(a - b) <= 0.03 * Math.max(a, b);

/**
 * Reads what an application supplies per area, each substance once and without contradiction: an element
 * beside its oxide says the same or is a mistake, and slow- and quick-release nitrogen are at most the total.
 */
export const readSupplies = (input: readonly unknown[], path: string, problems: Checks): readonly Any[] => {
  const by = new Map<string, Any>();
  input.forEach((item, i) => {
    const q = problems.run(() => readAreaAmount(item, `${path}[${i}]`));
    if (q === undefined) return;
    if (by.has(q.of)) {
      const expected = "each substance once";
      problems.add({ code: "duplicate", path: `${path}[${i}].of`, got: shown(q.of), expected });
    }
    by.set(q.of, q);
  });
  const conflict = (got: string, expected: string): void =>
    problems.add({ code: "conflict", path, got, expected });
  if (by.size === 1) return [...by.values()];
  for (const [element, oxide] of pairs) {
    const [e, o] = [by.get(element), by.get(oxide)];
    if (e === undefined || o === undefined) continue;
    const factor = formFactor(element, oxide) as number;
    if (!roundedAlike(inUnit(e, o.unit) * factor, o.value)) {
      conflict(
        `${shown(e)} and ${shown(o)}`,
        `one of them, or ${factor.toFixed(3)} times as much ${oxide} as ${element}`,
      );
    }
  }
  const total = by.get("N");
  if (total !== undefined && by.size > 1) {
    const { quick, slow } = nitrogenParts(Object.fromEntries(by) as NutrientRates, total.unit);
    // Both stated are figures rounded on their own; one alone is simply too much.
    const slack = quick > 0 && slow > 0 ? 1.03 : 1;
    if (exceeds(quick + slow, total.value * slack)) {
      conflict(
        `${shown(total)} with more quick- and slow-release N`,
        "quick- and slow-release nitrogen within the total",
      );
    }
  }
  return [...by.values()];
};

/** What a product holds beside nutrients, by weight or by weight per volume. */
export const readContent = (input: unknown, path: string): Any => {
  const { of, unit, value } = expectStated(input, path, "a content");
  if (!isSubstance(of) || !/^(ai|ae|other)(:[^/]+)?\/product$/.test(of))
    fail("substance/mismatch", `${path}.of`, of, "what a product holds, such as ai:prodiamine/product", {
      ...(/^(ai|ae|other):[^/]+$/.test(String(of)) && { suggestion: `${of}/product` }),
    });
  expectNumber(value, `${path}.value`, { min: 0 });
  if (typeof unit !== "string") fail("type", `${path}.unit`, unit, "a unit");
  const q = quantityOf(value as number, unit as string, of as string, path);
  return q.dimension === "mass/mass" || q.dimension === "mass/volume"
    ? q
    : dimensionDue("unit/mismatch", path, q, ["mass/mass", "mass/volume"]);
};

/** Reads what a product holds, each substance once: the same content by weight and per volume would count twice. */
export const readContents = (input: unknown, path: string): readonly Any[] => {
  const problems = checks();
  const list = expectList(input, path, "content").map((item, i) =>
    problems.run(() => readContent(item, `${path}[${i}]`)),
  );
  list.forEach((content, i) => {
    if (content !== undefined && list.findIndex((other) => other?.of === content.of) !== i) {
      const expected = "each substance once, by weight or per volume";
      problems.add({ code: "duplicate", path: `${path}[${i}].of`, got: shown(content.of), expected });
    }
  });
  problems.done();
  return list as readonly Any[];
};
