import {
  currencyAside,
  dimensionNames,
  factorOf,
  product,
  quotient,
  table,
  type UnitParts,
  unitParts,
} from "./units.js";

/** How two units multiply or divide: the unit and dimension of the result and an exact factor. */
export interface Plan {
  readonly unit: string;
  readonly dimension: string;
  readonly top: number;
  readonly bottom: number;
}

/**
 * The algebra behind the table of products (`productTable`, which a test compares for every pair):
 * names of dimensions as powers of a few independent ones. A volume is independent of a length, so that
 * gallons per acre do not turn into a depth; three lengths make a volume, but not the other way round.
 */
const compound: Readonly<Record<string, string>> = {
  area: "length,length",
  "degree-days": "temperature difference,time",
  "radiant exposure": "irradiance,time",
};

/** `mass/area` times (sign 1) or divided by (sign -1) something, as a text of powers: `length-2mass1`. */
const powersOf = (a: string, b: string, sign: number): string => {
  const powers: Record<string, number> = {};
  [a, b].forEach((dimension, second) => {
    dimension.split("/").forEach((part, below) => {
      for (const name of (compound[part] ?? part).split(","))
        powers[name] = (powers[name] ?? 0) + (second ? sign : 1) * (below ? -1 : 1);
    });
  });
  return Object.keys(powers)
    .sort()
    .map((name) => (name !== "1" && powers[name] ? name + powers[name] : ""))
    .join("");
};

/** The dimension that has these powers. Fractions have none, as `"1"` has, and are dealt with before. */
const dimensionOf = (powers: string): string | undefined =>
  powers === "length3"
    ? "volume"
    : ["money", ...dimensionNames()].find((name) => powersOf(name, "1", 1) === powers);

const flowOfDepth = "length3time-1";

/** `mass` for `mass/mass`; `undefined` where the dimension is no fraction. */
const fractionOf = (dimension: string): string | undefined => /^(.+)\/\1$/.exec(dimension)?.[1];

/** Like by like: the fraction of what stands on top. */
const likeOf = (dimension: string): string => {
  const top = /^(mass|volume|length$)/.exec(dimension)?.[0];
  return top ? `${top}/${top}` : "1";
};

const resultDimension = (a: string, b: string, sign: 1 | -1, same: boolean): string | undefined => {
  if (b === "1") return a;
  if (sign === -1 && a === b) return same ? "1" : likeOf(a);
  if (sign === 1 && a === "1") return b;
  const [f, g] = [fractionOf(a), fractionOf(b)];
  if (g) return a.split("/").includes(g) ? a : undefined;
  if (f) return sign === 1 && b.split("/").includes(f) ? b : undefined;
  // Two currencies leave two tags, and no dimension has two.
  const powers = powersOf(a, b, sign);
  // Depth by time over an area makes a flow; a flow is not read backwards into a depth.
  if (powers === flowOfDepth) return sign === 1 ? "volume/time" : undefined;
  return currencyAside(powers, dimensionOf);
};

/** The unit of a result: made of the operands' own units as far as they go, else the first of the table. */
const resultUnit = (dimension: string, a: UnitParts, b: UnitParts): string => {
  const names = [...a.names, ...b.names];
  const powers = names.map((name) => name.replace(/\d?$/, dimension === "volume" ? "3" : "2"));
  const pool = [`${a.unit}/${b.unit}`, a.unit, b.unit, ...names, ...powers];
  const find = (part: string): string | undefined =>
    pool.find((unit) => unitParts(unit)?.dimension === part) ?? Object.keys(table[part] ?? {})[0];
  return find(dimension) ?? dimension.split("/").map(find).join("/");
};

/**
 * How `a` times `b` (sign 1) or `a` divided by `b` (sign -1) goes; `undefined` where there is no such thing. `same`:
 * whether both are of the same stuff, so that like by like is a pure number and not a share.
 */
export const planFor = (a: UnitParts, b: UnitParts, sign: 1 | -1, same: boolean): Plan | undefined => {
  const key = sign === 1 ? b.unit : same ? `//${b.unit}` : `/${b.unit}`;
  const seen = a.plans.get(key);
  if (seen) return seen as Plan;
  const dimension = resultDimension(a.dimension, b.dimension, sign, same);
  if (!dimension) return undefined;
  const unit = resultUnit(dimension, a, b);
  const size = (sign === -1 ? quotient : product)(a.size, b.size);
  const plan = { unit, dimension, ...factorOf(size, (unitParts(unit) as UnitParts).size) };
  a.plans.set(key, plan);
  return plan;
};
