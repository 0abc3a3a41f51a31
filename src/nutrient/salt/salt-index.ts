import { exceeds } from "../../numeric/index.js";
import { described } from "../../quantity/house.js";
import {
  allOf,
  expectFields,
  expectNumber,
  expectOneOf,
  type FactSource,
  fail,
  outOfRange,
} from "../../quantity/index.js";
import { expectShortText, expectSource } from "../label/expect-source.js";
import { eachOf, listOf } from "../label/under-path.js";

/**
 * The three scales on which salt indexes are printed. The same salt reads 74, 1.6 or 27 (urea), so the
 * scale is part of the type.
 *
 * - `"by weight"`: equal weights of material, sodium nitrate = 100
 * - `"per unit"`: the former divided by the percent of nutrient: per unit of 20 lb in a short ton, 1 %
 * - `"per unit, sodium nitrate 100"`: the former scaled so that sodium nitrate is 100 again
 */
export type SaltScale = "by weight" | "per unit" | "per unit, sodium nitrate 100";

/** Which nutrients count as units: potassium nitrate reads 5.3 by N, 1.6 by K2O and 1.2 by N+K2O. */
export type UnitBasis = "N" | "P2O5" | "K2O" | "N+P2O5" | "N+K2O" | "P2O5+K2O" | "N+P2O5+K2O";

/** A salt index with its scale. Plain JSON. */
export interface SaltIndex<S extends SaltScale> {
  readonly type: "salt-index";
  readonly version: 1;
  readonly scale: S;
  readonly value: number;
  /** `null` by weight, where no nutrient is counted. */
  readonly basis: S extends "by weight" ? null : UnitBasis;
  readonly source: FactSource;
  /** Why the printed figure is doubted, where it is. */
  readonly doubtful?: string;
}

const scales = ["by weight", "per unit", "per unit, sodium nitrate 100"] as const;
const bases = ["N", "P2O5", "K2O", "N+P2O5", "N+K2O", "P2O5+K2O", "N+P2O5+K2O"] as const;

/** Percent of nitrogen in sodium nitrate, by which the third scale is made. */
const sodiumNitratePercent = 16.5;

/**
 * A salt index with its scale and its source; per unit also with the nutrients that count as units.
 *
 * @param input - `value`, zero or more; `scale`; `source`; and per unit `basis`
 * @throws RatewrightError `range`, `type`, `missing`, `conflict` (a basis by weight)
 *
 * Source: scale by weight, Rader, White and Whittaker 1943, as repeated by Mortvedt 2001 (from memory).
 *
 * @example
 * ```ts
 * import { saltIndex } from "ratewright";
 * saltIndex({ value: 74.4, scale: "by weight", source: "label" }).basis; // => null
 * saltIndex({ value: 1.6, scale: "per unit", basis: "N", source: "label" }).scale; // => "per unit"
 * ```
 */
export function saltIndex(input: {
  readonly value: number;
  readonly scale: "by weight";
  readonly source: FactSource;
}): SaltIndex<"by weight">;
export function saltIndex<const S extends Exclude<SaltScale, "by weight">>(input: {
  readonly value: number;
  readonly scale: S;
  readonly basis: UnitBasis;
  readonly source: FactSource;
}): SaltIndex<S>;
export function saltIndex(input: {
  readonly value: number;
  readonly scale: SaltScale;
  readonly basis?: UnitBasis;
  readonly source: FactSource;
}): unknown {
  expectFields(input, ["value", "scale", "basis", "source"], "input");
  const { scale, basis, source } = input;
  return checkedSaltIndex(
    { type: "salt-index", version: 1, scale, value: input.value, basis: basis ?? null, source },
    scale,
    "",
  );
}

/** Takes a salt index that may come from JSON, on the scale that is wanted, or throws with its path. */
export const checkedSaltIndex = <S extends SaltScale>(
  input: unknown,
  scale: S,
  path: string,
): SaltIndex<S> => {
  const at = (name: string): string => (path === "" ? name : `${path}.${name}`);
  if (Object(input).type !== "salt-index")
    return fail("type", path === "" ? "input" : path, input, "a salt index, with its scale");
  const given = expectFields(
    input,
    ["type", "version", "scale", "value", "basis", "source", "doubtful"],
    path,
  );
  const read = allOf({
    scale: () => {
      const found = expectOneOf(given.scale, scales, at("scale"));
      return found === scale
        ? scale
        : fail("conflict", at("scale"), found, `a salt index on the scale "${scale}"`);
    },
    value: () => expectNumber(given.value, at("value"), { min: 0, max: 1000 }),
    // An index on another scale has the basis of that scale: one problem, not two.
    basis: () => (given.scale === scale ? readBasis(given.basis, scale, at("basis")) : null),
    source: () => expectSource(given.source, at("source")),
    doubtful: () =>
      given.doubtful === undefined
        ? {}
        : { doubtful: expectShortText(given.doubtful, at("doubtful"), "a text") },
  });
  const { value, source } = read;
  const basis = read.basis as SaltIndex<S>["basis"];
  return { type: "salt-index", version: 1, scale, value, basis, source, ...read.doubtful };
};

const readBasis = (basis: unknown, scale: SaltScale, path: string): UnitBasis | null => {
  if (scale === "by weight") {
    return basis === null ? basis : fail("conflict", path, basis, "no basis by weight");
  }
  return basis === null || basis === undefined
    ? fail("missing", path, basis, "the nutrients that count as units, such as N or N+K2O")
    : expectOneOf(basis, bases, path);
};

/**
 * The partial salt index: the salt index per unit of nutrient, by which sources are compared at equal
 * nutrient.
 *
 * Equation: `p = s / u`
 *
 * - `s` salt index by weight, sodium nitrate = 100
 * - `u` percent of the nutrients that are counted, in the material; a unit is 1 %, 20 lb in a short ton
 *
 * @param byWeight - the salt index by weight
 * @param units - `percent`, more than 0 and at most 100, and `basis`, the nutrients that it adds up
 * @throws RatewrightError `conflict` for another scale; `range`, `type`, `missing`
 *
 * Source: by-weight figures and the quotient of the table, "Salinity index of common fertilizers"
 * (citing Mortvedt 2001): urea 74.4, with 46 % N 1.617 per unit.
 *
 * @example
 * ```ts
 * import { partialSaltIndex, saltIndex } from "ratewright";
 * const urea = saltIndex({ value: 74.4, scale: "by weight", source: "table" });
 * Number(partialSaltIndex(urea, { percent: 46, basis: "N" }).value.toFixed(3)); // => 1.617
 * ```
 */
export const partialSaltIndex = (
  byWeight: SaltIndex<"by weight">,
  units: { readonly percent: number; readonly basis: UnitBasis },
): SaltIndex<"per unit"> => {
  const { index, percent, basis } = allOf({
    index: () => checkedSaltIndex(byWeight, "by weight", "byWeight"),
    units: () => expectFields(units, ["percent", "basis"], "units"),
    percent: () => expectNumber(Object(units).percent, "units.percent", { above: 0, max: 100 }),
    basis: () => expectOneOf(Object(units).basis, bases, "units.basis"),
  });
  return made(index, "per unit", index.value / percent, basis, "units.percent");
};

/**
 * A partial salt index on the scale on which sodium nitrate is 100 again.
 *
 * Equation: `x = 16.5 p`, since sodium nitrate, 16.5 % N, has 100 / 16.5 per unit.
 *
 * @throws RatewrightError `conflict` for another scale; `range`, `type`
 *
 * Source: New Mexico State University, Eddy County Extension, "Fertilizer part 2", 2017, whose table is
 * on this scale (ammonium sulfate 53.7).
 *
 * @example
 * ```ts
 * import { saltIndex, scaledSaltIndex } from "ratewright";
 * const sulfate = saltIndex({ value: 3.252, scale: "per unit", basis: "N", source: "table" });
 * Number(scaledSaltIndex(sulfate).value.toFixed(1)); // => 53.7
 * ```
 */
export const scaledSaltIndex = (
  partial: SaltIndex<"per unit">,
): SaltIndex<"per unit, sodium nitrate 100"> => {
  const index = checkedSaltIndex(partial, "per unit", "partial");
  return made(
    index,
    "per unit, sodium nitrate 100",
    index.value * sodiumNitratePercent,
    index.basis,
    "partial.value",
  );
};

/** The index on another scale; one that grows out of all bounds is laid to the argument that makes it so. */
const made = <S extends Exclude<SaltScale, "by weight">>(
  from: SaltIndex<SaltScale>,
  scale: S,
  value: number,
  basis: UnitBasis,
  cause: string,
): SaltIndex<S> => {
  if (value > 1000)
    outOfRange(cause, described(`a salt index of ${value} ${scale}`), { max: 1000 }, "an index of {}");
  const { source, doubtful } = from;
  const index = { type: "salt-index", version: 1, scale, value, basis, source } as const;
  return (doubtful === undefined ? index : { ...index, doubtful }) as SaltIndex<S>;
};

/**
 * -1, 0 or 1 as the first salt index is lower than, equal to (at a relative 1e-9) or higher than the second. Only indexes on
 * one scale and one basis compare: the compiler refuses two scales, the run refuses both.
 *
 * @throws RatewrightError `conflict` for two scales or two bases; `type`, `range`
 *
 * Source: the ranking by one scale, Oregon State University, table 26-2.
 *
 * @example
 * ```ts
 * import { compareSaltIndexes, saltIndex } from "ratewright";
 * const a = saltIndex({ value: 1.7, scale: "per unit", basis: "N", source: "table 26-2" });
 * const b = saltIndex({ value: 3.3, scale: "per unit", basis: "N", source: "table 26-2" });
 * compareSaltIndexes(a, b); // => -1
 * compareSaltIndexes(a, saltIndex({ value: 5.3, scale: "per unit", basis: "K2O", source: "?" })); // => throws conflict
 * ```
 */
export const compareSaltIndexes = <S extends SaltScale>(
  a: SaltIndex<S>,
  b: SaltIndex<NoInfer<S>>,
): -1 | 0 | 1 => {
  const one = checkedSaltIndex(a, expectOneOf(a?.scale, scales, "a.scale") as S, "a");
  const other = checkedSaltIndex(b, one.scale, "b");
  if (one.basis !== other.basis) {
    fail("conflict", "b.basis", other.basis, `the basis of the first, which is ${String(one.basis)}`);
  }
  return exceeds(one.value, other.value) ? 1 : exceeds(other.value, one.value) ? -1 : 0;
};

/** A material of a blend: how many units of its nutrient it brings, and its index per unit. */
export interface SaltPart {
  /** Percent of the blend that is this nutrient from this material: one unit is 20 lb in a short ton. */
  readonly units: number;
  readonly partial: SaltIndex<"per unit">;
}

/**
 * The salt index of a blend by weight: the units of each material times its index per unit, added up.
 *
 * Equation: `s = sum(u_i p_i)`
 *
 * - `u_i` units: percent of the blend that is nutrient from material `i`, counted on the basis of its index
 * - `p_i` partial salt index of material `i`
 *
 * Range: units that add up to at most 100. Fluids and dry blends alike; water and filler count zero.
 *
 * @throws RatewrightError `conflict` for another scale; `range`, `missing`, `type`
 *
 * Source: "Salt index of common starter fertilizers", fluid fertilizer dealer article, 2012, table 1:
 * 7-21-7 from 10-34-0, UAN 28 and potassium chloride has 27.8 (factors per unit from memory).
 *
 * @example
 * ```ts
 * import { blendSaltIndex, saltIndex } from "ratewright";
 * const poly = saltIndex({ value: 0.455, scale: "per unit", basis: "N+P2O5", source: "from memory" });
 * Number(blendSaltIndex([{ units: 44, partial: poly }]).value.toFixed(2)); // => 20.02
 * ```
 */
export const blendSaltIndex = (parts: readonly SaltPart[]): SaltIndex<"by weight"> => {
  const list = listOf(parts, "parts", "part", mostParts);
  const read = eachOf(list, "parts", (item) => {
    const part = expectFields(item, ["units", "partial"], "", "{ units, partial }");
    return allOf({
      units: () => expectNumber(part.units, "units", { min: 0, max: 100 }),
      partial: () => checkedSaltIndex(part.partial, "per unit", "partial"),
    });
  });
  const units = read.reduce((sum, part) => sum + part.units, 0);
  const value = read.reduce((sum, part) => sum + part.units * part.partial.value, 0);
  if (units > 100 * (1 + 1e-9)) {
    outOfRange("parts", described(`${units} units in all`), { max: 100, count: "units in all" });
  }
  if (value > 1000)
    outOfRange("parts", described(`a salt index of ${value}`), { max: 1000 }, "an index of {}");
  const doubts = read.flatMap(({ partial }) => partial.doubtful ?? []);
  const index = saltIndex({ value, scale: "by weight", source: "added up from the parts" });
  return doubts.length === 0 ? index : { ...index, doubtful: doubts.join("; ").slice(0, longestDoubt) };
};

/** Far more than a blend has, and the longest text of doubts. */
const [mostParts, longestDoubt] = [200, 2000] as const;
