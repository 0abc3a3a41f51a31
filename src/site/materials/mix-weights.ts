import { described } from "../../quantity/house.js";
import {
  checks,
  expectFields,
  expectList,
  expectQuantity,
  expectText,
  fail,
  inUnit,
  outOfRange,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { recordWith } from "../records.js";
import { type Volume, volumeOf } from "../volumes.js";
import { type BulkDensity, densityOf, type MoistureBasis, wetOverDry } from "./bulk-density.js";

/** A part of a mix, by its share of the volume. */
export interface MixPart {
  readonly name: string;
  /** Share by volume of the loose parts; all of them make 100 %. */
  readonly share: Quantity<"1", "none">;
  /** As it is delivered, moist as it is. */
  readonly bulkDensity: BulkDensity;
  readonly moisture?: Quantity<"1", "none">;
  /** Needed beside a moisture. */
  readonly basis?: MoistureBasis;
}

/** A part of a mix, measured out. */
export interface MixPartWeight {
  readonly name: string;
  readonly volume: Volume;
  /** As delivered. */
  readonly weight: Quantity<"mass", "none">;
  /** Without its water, where a moisture was given. */
  readonly dryWeight?: Quantity<"mass", "none">;
  /** Share of the weight as delivered. */
  readonly share: Quantity<"1", "none">;
  /** Share of the dry weight, where every part has a moisture. */
  readonly dryShare?: Quantity<"1", "none">;
}

/** A root-zone mix by volume, as weights. */
export interface MixWeights {
  readonly type: "mix-weights";
  readonly version: 1;
  /** The mix as it comes out of the mixer. */
  readonly volume: Volume;
  /** The loose parts together: more than the mix, where it shrinks. */
  readonly loose: Volume;
  readonly weight: Quantity<"mass", "none">;
  readonly dryWeight?: Quantity<"mass", "none">;
  readonly parts: readonly MixPartWeight[];
}

const mostParts = 50;

/**
 * The weights of a mix that is told by volume: sand, peat, compost and soil of a root zone.
 *
 * `loose = volume / (1 - shrinkage)`, `volume[i] = loose * share[i]`, `weight[i] = volume[i] * bulkDensity[i]`,
 * `dry[i] = weight[i] / (1 + w[i])`. Peat and fines fill the pores of the sand, so a mix comes out smaller than its
 * parts: `shrinkage` is that share of the loose volume, measured on a trial batch; 0 where it is left out.
 *
 * The same mix by volume has another share by weight: 80:20 of sand and moist peat by volume is near 95:5. A
 * specification says which it means.
 *
 * Shares above 0 that make 100 % to 0.1 %. In US tons, or t where the volume is metric.
 *
 * @throws RatewrightError `conflict` for shares that do not make 100 %; `duplicate` for a name twice; `missing`, `type`,
 * `unit/mismatch`, `not-finite`, `range`; everything that is not right is reported
 *
 * Source: volumes and weights by definition; no published worked example was found.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { mixWeights } from "ratewright/site";
 * const mix = mixWeights({
 *   volume: quantity(100, "yd3"),
 *   parts: [
 *     { name: "sand", share: quantity(80, "%"), bulkDensity: quantity(2700, "lb/yd3") },
 *     { name: "peat", share: quantity(20, "%"), bulkDensity: quantity(500, "lb/yd3") },
 *   ],
 * });
 * mix.parts.map(({ weight }) => weight.in("US ton")); // => [108, 5]
 * Number(mix.parts[1]?.share.in("%").toFixed(1)); // => 4.4
 * ```
 */
export const mixWeights = (input: {
  readonly volume: Volume;
  readonly parts: readonly MixPart[];
  readonly shrinkage?: Quantity<"1", "none">;
}): MixWeights => {
  const problems = checks();
  const record = recordWith(input, ["volume", "parts", "shrinkage"], problems, "input");
  const volume = problems.run(() => volumeOf(record.volume, "volume"));
  const parts = problems.run(() => partsOf(record.parts));
  const shrinkage =
    record.shrinkage === undefined ? 0 : problems.run(() => shareOf(record.shrinkage, "shrinkage", 0, 0.9));
  problems.done();
  const mix = volume as Volume;
  const read = parts as readonly ReadPart[];
  const metric = /^(m3|L|mL)$/.test(mix.unit);
  const [each, mass] = metric ? (["m3", "t"] as const) : (["yd3", "US ton"] as const);
  const loose = mix.in(each) / (1 - (shrinkage as number));
  const whole = read.reduce((sum, { share }) => sum + share, 0);
  const weights = read.map(({ share, density }) =>
    inUnit(density.times(quantity((loose * share) / whole, each)), mass),
  );
  const total = weights.reduce((sum, weight) => sum + weight.value, 0);
  const dry = read.map(({ wet }, i) =>
    wet === undefined ? undefined : (weights[i] as Quantity<"mass", "none">).value / wet,
  );
  const allDry = dry.every((weight) => weight !== undefined);
  const dryTotal = dry.reduce<number>((sum, weight) => sum + (weight ?? 0), 0);
  return {
    type: "mix-weights",
    version: 1,
    volume: mix,
    loose: quantity(loose, each),
    weight: quantity(total, mass),
    ...(allDry ? { dryWeight: quantity(dryTotal, mass) } : {}),
    parts: read.map(({ name, share }, i) => {
      const weight = weights[i] as Quantity<"mass", "none">;
      const dryWeight = dry[i];
      return {
        name,
        volume: quantity((loose * share) / whole, each),
        weight,
        ...(dryWeight === undefined ? {} : { dryWeight: quantity(dryWeight, mass) }),
        share: quantity((100 * weight.value) / total, "%"),
        ...(allDry && dryWeight !== undefined
          ? { dryShare: quantity((100 * dryWeight) / dryTotal, "%") }
          : {}),
      };
    }),
  };
};

interface ReadPart {
  readonly name: string;
  readonly share: number;
  readonly density: BulkDensity;
  /** Moist over dry weight; nothing where no moisture was given. */
  readonly wet: number | undefined;
}

const partsOf = (input: unknown): readonly ReadPart[] => {
  const list = expectList(input, "parts", "part");
  if (list.length > mostParts) outOfRange("parts", list, { max: mostParts, count: "parts" });
  const problems = checks();
  const names = new Map<string, number>();
  const parts = list.map((item, i) => problems.run(() => partOf(item, `parts[${i}]`, names, i)));
  problems.done();
  const read = parts as readonly ReadPart[];
  const whole = read.reduce((sum, { share }) => sum + share, 0);
  return Math.abs(whole - 1) <= 0.001
    ? read
    : fail(
        "conflict",
        "parts",
        described(`shares of ${Math.round(whole * 1e4) / 100} % together`),
        "shares that make 100 %",
      );
};

const partOf = (item: unknown, at: string, names: Map<string, number>, i: number): ReadPart => {
  const record = expectFields(item, ["name", "share", "bulkDensity", "moisture", "basis"], at);
  const problems = checks();
  const name = problems.run(() => expectText(record.name, `${at}.name`, "the name of the part"));
  if (name !== undefined) {
    const before = names.get(name);
    if (before !== undefined) {
      problems.run(() => fail("duplicate", `${at}.name`, name, `a name that parts[${before}] does not have`));
    }
    names.set(name, i);
  }
  const share = problems.run(() => shareOf(record.share, `${at}.share`, Number.MIN_VALUE, 1));
  const density = problems.run(() => densityOf(record.bulkDensity, `${at}.bulkDensity`));
  const wet = problems.run(() => wetOverDry(record, at));
  problems.done();
  return {
    name: name as string,
    share: share as number,
    density: density as BulkDensity,
    wet: record.moisture === undefined ? undefined : wet,
  };
};

const shareOf = (input: unknown, path: string, least: number, most: number): number => {
  if (input === undefined)
    return fail("missing", path, input, 'a share by volume, such as quantity(80, "%")');
  if (typeof input === "number") return fail("type", path, input, 'a share, such as quantity(80, "%")');
  const share = expectQuantity(input, { dimension: "1", of: "none" }, path).in("1");
  return share >= least && share <= most
    ? share
    : outOfRange(
        path,
        input,
        least === 0 ? { min: 0, max: 100 * most, unit: "%" } : { above: 0, max: 100 * most, unit: "%" },
      );
};
