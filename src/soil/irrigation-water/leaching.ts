import { described } from "../../quantity/house.js";
import {
  allOf,
  type Citation,
  expectFields,
  expectOneOf,
  expectQuantity,
  type Finding,
  fail,
  frozen,
  likeQuantity,
  outOfRange,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { short } from "../report/expect-ph.js";
import { conductivityAt } from "./conductivity-at.js";

/** How a leaching requirement is found. */
export type LeachingMethod = "average root zone" | "drainage water";

/** How it is found, with the conductivity that method wants: `ECe` of the soil, or `ECd` of what drains below the roots. */
export type LeachingLevel =
  | { readonly method: "average root zone"; readonly soil: Quantity<"conductivity", "none"> }
  | { readonly method: "drainage water"; readonly drainage: Quantity<"conductivity", "none"> };

/** The share of the water applied that has to pass below the roots. */
export interface LeachingRequirement {
  readonly type: "leaching-requirement";
  readonly version: 1;
  readonly method: LeachingMethod;
  readonly share: Quantity<"1", "none">;
  readonly source: Citation;
  readonly findings: readonly Finding[];
}

const reclamation: Citation = /* @__PURE__ */ frozen({
  title: "Leaching requirement, quoting the US Bureau of Reclamation 1993",
  publisher: "environmental engineering vocabulary",
});
const waterQuality: Citation = /* @__PURE__ */ frozen({
  title: "Water quality for agriculture (FAO Irrigation and Drainage Paper 29)",
  publisher: "FAO",
  year: 1985,
  where: "section 2.4.2, equation 9, as public programs that cite it have it",
});
const methods = ["average root zone", "drainage water"] as const;

/** The level under the name that its method has: each of the two conductivities is refused in the place of the other. */
const levelOf = (record: { readonly [K in "method" | "soil" | "drainage"]?: unknown }): number => {
  const drains = record.method === "drainage water";
  const [name, other] = drains ? (["drainage", "soil"] as const) : (["soil", "drainage"] as const);
  if (record[other] !== undefined) {
    const expected = drains
      ? "drainage, the conductivity of the water below the roots"
      : "soil, the conductivity of the saturation extract";
    fail("conflict", other, record[other], `${expected}, for this method`, { suggestion: name });
  }
  return conductivityAt(record[name], name, "positive");
};
/** Beyond this share the figure asks for more drainage than turf has (common practice, no source). */
const largeShare = 50;

/**
 * The share of the water that has to leach past the roots, so that salt does not build up beyond a level.
 *
 * - `"average root zone"`: `LR = ECw / (5 ECe - ECw)`, `ECw` of the water, `ECe` of the saturation extract that the grass
 *   stands. From `ECw = 2.5 ECe` on it asks for all of the water or more, and from `5 ECe` it has no value: both are
 *   refused
 * - `"drainage water"`: `LR = ECw / ECd`, the older form, `ECd` of the water below the roots; refused from `ECw = ECd` on
 *
 * @param input.water - `ECw`; `soil` is `ECe` for the average root zone, `drainage` is `ECd` for the drainage water
 * @throws RatewrightError `infeasible` where the water is too salty for the level, `range`, `missing`, `type`,
 *   `unit/mismatch`
 *
 * Source: FAO Irrigation and Drainage Paper 29, revision 1, 1985, equation 9, as public programs that cite it have it, for
 * the first; US Bureau of Reclamation 1993, as quoted in a vocabulary of environmental engineering, for the second.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { leachingRequirement } from "ratewright/soil";
 * const found = leachingRequirement({
 *   method: "average root zone", water: quantity(1.2, "dS/m"), soil: quantity(2.5, "dS/m"),
 * });
 * Number(found.share.in("%").toFixed(1)); // => 10.6
 * ```
 */
export const leachingRequirement = (
  input: LeachingLevel & { readonly water: Quantity<"conductivity", "none"> },
): LeachingRequirement => {
  const record = expectFields(input, ["method", "water", "soil", "drainage"], "input");
  const { method, water, level } = allOf({
    method: () => expectOneOf(record.method, methods, "method"),
    water: () => conductivityAt(record.water, "water"),
    level: () => levelOf(record),
  });
  const average = method === "average root zone";
  const most = average ? 2.5 * level : level;
  if (water >= most) {
    const expected = `less than ${short(most)} dS/m: at or above it no amount of leaching keeps the ${average ? "soil" : "drainage"} at this level; blend the water, or choose a grass that tolerates more salt`;
    fail("infeasible", "water", described(`${water} dS/m`), expected);
  }
  const share = (100 * water) / (average ? 5 * level - water : level);
  return {
    type: "leaching-requirement",
    version: 1,
    method,
    share: quantity(share, "%"),
    source: average ? waterQuality : reclamation,
    findings:
      share > largeShare
        ? [
            {
              code: "water/leaching-large",
              severity: "warning",
              path: "water",
              params: { share: short(share) },
              text: `${short(share)} % of the water would have to leach: near its limit the equation is of little use.`,
              source: "common practice, no source",
            },
          ]
        : [],
  };
};

/**
 * The water to apply so that a share of it leaches and the rest covers what the grass uses: `I = ET / (1 - LR)`.
 *
 * @param input.use - what the grass uses, as a depth
 * @param input.share - the leaching requirement, a share below all of it
 * @throws RatewrightError `range`, `missing`, `type`, `unit/mismatch`
 *
 * Source: "Irrigation water quality", slides, Asian Turfgrass Center 2017: 4 mm of use and a requirement of 0.05 take
 * 4.2 mm.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { irrigationWithLeaching } from "ratewright/soil";
 * const depth = irrigationWithLeaching({ use: quantity(4, "mm"), share: quantity(5, "%") });
 * Number(depth.in("mm").toFixed(1)); // => 4.2
 * ```
 */
export const irrigationWithLeaching = (input: {
  readonly use: Quantity<"length", "none">;
  readonly share: Quantity<"1", "none">;
}): Quantity<"length", "none"> => {
  const record = expectFields(input, ["use", "share"], "input");
  const read = allOf({
    use: () => expectQuantity(record.use, { dimension: "length", of: "none", bound: "non-negative" }, "use"),
    share: () => {
      const wanted = { dimension: "1", of: "none", bound: "non-negative" } as const;
      const share = expectQuantity(record.share, wanted, "share");
      return share.in("%") < 100
        ? share.in("%")
        : outOfRange("share", share, { below: 100, unit: "%" }, "{} of the water");
    },
  });
  return likeQuantity(read.use, (read.use.value * 100) / (100 - read.share));
};
