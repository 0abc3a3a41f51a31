import { exceeds } from "../../numeric/index.js";
import { described } from "../../quantity/house.js";
import {
  allOf,
  checks,
  expectAmount,
  expectFields,
  expectList,
  expectQuantity,
  type Finding,
  fail,
  numberIn,
  Quantity,
  quantity,
} from "../../quantity/index.js";
import { conductivityAt } from "./conductivity-at.js";
import {
  type ReadWaterAnalysis,
  readWaterAnalysis,
  type WaterAnalysis,
  type WaterIonName,
  waterIonNames,
} from "./water-analysis.js";

/** Two or more waters in one. It goes into every function that takes an analysis. */
export interface BlendedWater {
  readonly type: "water-blend";
  readonly version: 1;
  readonly water: WaterAnalysis;
  readonly findings: readonly Finding[];
}

interface ReadPart {
  readonly share: number;
  readonly water: ReadWaterAnalysis;
}

/** Shares may miss 100 % by this much: what rounding to a tenth leaves. */
const slack = 0.2;

/**
 * The analysis of waters mixed by volume: every ion `c = sum(s_i c_i)`, and so the conductivity.
 *
 * - `s_i` share of each water by volume; they add up to 100 %
 * - an ion is in the blend only where all of its waters were tested for it, and a finding names the others
 *
 * Salts mix in proportion; conductivity does so nearly. The pH of a blend is not between that of its parts: it is left
 * out.
 *
 * @throws RatewrightError `conflict` where the shares do not add up, `missing`, `range`, `type`, `unit/mismatch`,
 *   `substance/mismatch`
 *
 * Source: "Practices of Irrigation and On-farm Water Management", equation 8.16, after Ayers and Westcot 1985.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { blendWaters } from "ratewright/soil";
 * const blend = blendWaters([
 *   { share: quantity(70, "%"), water: { Na: quantity(10, "mg/L", "Na") } },
 *   { share: quantity(30, "%"), water: { Na: quantity(50, "mg/L", "Na") } },
 * ]);
 * blend.water.Na?.value; // => 22
 * ```
 */
export const blendWaters = (
  parts: readonly { readonly share: Quantity<"1", "none">; readonly water: WaterAnalysis }[],
): BlendedWater => {
  const problems = checks();
  const read = expectList(parts, "parts", "water").flatMap((part, i) => {
    const found = problems.run(() => readPart(part), `parts[${i}]`);
    return found === undefined ? [] : [found];
  });
  problems.done();
  const total = read.reduce((sum, { share }) => sum + share, 0);
  if (exceeds(Math.abs(total - 100), slack)) {
    fail(
      "conflict",
      "parts",
      described(`${Number(total.toPrecision(6))} % in all`),
      "shares that add up to 100 %",
    );
  }
  const mixed = (of: (water: ReadWaterAnalysis) => number | undefined): number | undefined => {
    const values = read.map(({ share, water }) => {
      const value = of(water);
      return value === undefined ? undefined : share * value;
    });
    return values.includes(undefined) ? undefined : (values as number[]).reduce((a, b) => a + b, 0) / total;
  };
  const ions = waterIonNames.flatMap((ion) => {
    const value = mixed(({ weights }) => weights.get(ion));
    return value === undefined ? [] : [[ion, new Quantity(value, "mg/L", ion, "mass/volume")] as const];
  });
  const conductivity = mixed((water) => water.conductivity);
  return {
    type: "water-blend",
    version: 1,
    water: {
      type: "water-analysis",
      version: 1,
      ...Object.fromEntries(ions),
      ...(conductivity === undefined ? {} : { conductivity: quantity(conductivity, "dS/m") }),
    },
    findings: leftOut(read, new Set(ions.map(([ion]) => ion))),
  };
};

const readPart = (input: unknown): ReadPart => {
  const record = expectFields(input, ["share", "water"], "");
  const wanted = { dimension: "1", of: "none", bound: "non-negative" } as const;
  return allOf({
    share: () => expectQuantity(record.share, wanted, "share").in("%"),
    water: () => readWaterAnalysis(record.water, "water"),
  });
};

const leftOut = (read: readonly ReadPart[], blended: ReadonlySet<WaterIonName>): Finding[] => {
  const lost = waterIonNames.filter(
    (ion) => !blended.has(ion) && read.some(({ water }) => water.weights.has(ion)),
  );
  return lost.length === 0
    ? []
    : [
        {
          code: "water/not-tested-in-all",
          severity: "caution",
          path: "parts",
          params: { ions: lost },
          text: `Not every water was tested for ${lost.join(", ")}: the blend leaves ${lost.length === 1 ? "it" : "them"} out.`,
        },
      ];
};

/**
 * The share of the first of two waters that brings their blend to a target: `s = (c2 - c) / (c2 - c1)`.
 *
 * @param input.first - conductivity, or an ion in mg/L or meq/L; `second` and `target` of the same kind
 * @throws RatewrightError `infeasible` where the target lies outside the two, or they are equal; `range`, `missing`,
 *   `unit/mismatch`, `substance/mismatch`, `type`
 *
 * Source: "Practices of Irrigation and On-farm Water Management", example 8.3: 2 and 15 dS/m make 8 at 53:47 (it rounds
 * 53.8 down).
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { blendShare } from "ratewright/soil";
 * const share = blendShare({
 *   first: quantity(2, "dS/m"), second: quantity(15, "dS/m"), target: quantity(8, "dS/m"),
 * });
 * Number(share.in("%").toFixed(1)); // => 53.8
 * ```
 */
export const blendShare = <
  D extends "conductivity" | "mass/volume" | "charge/volume",
  S extends string,
>(input: {
  readonly first: Quantity<D, S>;
  readonly second: Quantity<NoInfer<D>, NoInfer<S>>;
  readonly target: Quantity<NoInfer<D>, NoInfer<S>>;
}): Quantity<"1", "none"> => {
  const record = expectFields(input, ["first", "second", "target"], "input");
  const dimensions = ["conductivity", "mass/volume", "charge/volume"] as const;
  const first = expectAmount(record.first, { dimensions, bound: "non-negative" }, "first");
  const wanted = { dimension: first.dimension, of: first.of, bound: "non-negative" } as const;
  const read = allOf({
    first: () => salinityAt(first, "first"),
    second: () => numberIn(salinityAt(expectQuantity(record.second, wanted, "second"), "second"), first.unit),
    target: () => numberIn(expectQuantity(record.target, wanted, "target"), first.unit),
  });
  const share = (read.second - read.target) / (read.second - first.value);
  return Number.isFinite(share) && share >= -1e-12 && share <= 1 + 1e-12
    ? quantity(100 * Math.min(1, Math.max(0, share)), "%")
    : fail(
        "infeasible",
        "target",
        record.target,
        `a target from ${Math.min(first.value, read.second)} to ${Math.max(first.value, read.second)} ${first.unit}, between two waters that differ`,
      );
};

/** A conductivity is one of water; an ion is taken as it is. */
const salinityAt = <Q extends { readonly dimension: string }>(q: Q, path: string): Q => {
  if (q.dimension === "conductivity") conductivityAt(q, path);
  return q;
};
