import { accurateSum } from "../../numeric/index.js";
import { described } from "../../quantity/house.js";
import {
  allOf,
  expectFields,
  expectList,
  expectText,
  fail,
  outOfRange,
  type Quantity,
  quantity,
  shown,
} from "../../quantity/index.js";
import { given, percentAt, type Share } from "../read.js";

/** One kind of seed in a mixture. */
export interface MixtureRow {
  readonly name: string;
  /** Share of the weight of the seed kinds together. */
  readonly byWeight: Share;
  /** Share of the number of seeds. */
  readonly byCount: Share;
  readonly seedsPerMass: Quantity<"count/mass", "none">;
}

/** A mixture by weight and by number of seeds. */
export interface SeedMixture {
  readonly type: "seed-mixture";
  readonly version: 1;
  readonly components: readonly MixtureRow[];
  /** Seeds per mass of the kinds mixed, in the unit of the first. */
  readonly seedsPerMass: Quantity<"count/mass", "none">;
}

interface Part {
  readonly name: string;
  readonly share: number;
  readonly perMass: Quantity<"count/mass", "none">;
}

const partsOf = (input: unknown, share: "byWeight" | "byCount"): readonly Part[] => {
  const record = expectFields(input, ["components"]);
  const list = expectList(record.components, "components", "component", 100);
  const readers = list.map((item, i) => {
    const at = `components[${i}]`;
    return [at, () => partAt(item, at, share)] as const;
  });
  const read = allOf(Object.fromEntries(readers));
  const parts = readers.map(([at]) => read[at] as Part);
  const names = parts.map(({ name }) => name);
  names.forEach((name, i) => {
    if (names.indexOf(name) !== i) fail("duplicate", `components[${i}].name`, name, "each kind once");
  });
  return parts;
};

const partAt = (item: unknown, at: string, share: "byWeight" | "byCount"): Part => {
  const record = expectFields(item, ["name", share, "seedsPerMass"], at);
  return allOf({
    name: () => expectText(record.name, `${at}.name`, "the name of a kind"),
    share: () => percentAt(record[share], `${at}.${share}`, { above: 0, max: 100 }),
    perMass: () => given(record.seedsPerMass, `${at}.seedsPerMass`, "count/mass", "none"),
  });
};

const total = (values: readonly number[]): number => accurateSum(values);

const mixtureFrom = (parts: readonly Part[], masses: readonly number[]): SeedMixture => {
  const unit = (parts[0] as Part).perMass.unit;
  const perMass = parts.map((part) => part.perMass.in(unit as "count/lb"));
  const counts = masses.map((mass, i) => mass * (perMass[i] as number));
  const [mass, count] = [total(masses), total(counts)];
  return {
    type: "seed-mixture",
    version: 1,
    components: parts.map((part, i) => ({
      name: part.name,
      byWeight: quantity((100 * (masses[i] as number)) / mass, "%"),
      byCount: quantity((100 * (counts[i] as number)) / count, "%"),
      seedsPerMass: part.perMass,
    })),
    seedsPerMass: quantity(count / mass, unit as "count/lb"),
  };
};

/**
 * A mixture given by weight, with what that is by number of seeds: `share_i = w_i c_i / sum(w c)`.
 * A mixture of 70 to 30 by weight can be 28 to 72 by number.
 *
 * The shares of weight are those of a label. They may come to less than 100 %, the rest being inert matter,
 * other crop and weeds; the shares that come back are of the kinds together.
 *
 * @param input.components - up to 100 kinds, each with `name`, `byWeight` above 0 %, and `seedsPerMass`
 * @throws RatewrightError `missing`, `range` where the weights come to more than 100 %, `duplicate`,
 * `unit/mismatch`, `type`; all that are found
 * Source: arithmetic. Cornell University, "Seeding rates", calls 70 to 30 by weight of perennial ryegrass
 * and Kentucky bluegrass 50 to 50 by number; by its own seed counts it is 28 to 72.
 *
 * @example
 * ```ts
 * import { quantity, seedMixture } from "ratewright";
 * const mixture = seedMixture({ components: [
 *   { name: "perennial ryegrass", byWeight: quantity(70, "%"), seedsPerMass: quantity(250_000, "count/lb") },
 *   { name: "Kentucky bluegrass", byWeight: quantity(30, "%"), seedsPerMass: quantity(1_500_000, "count/lb") },
 * ] });
 * mixture.components.map(({ byCount }) => byCount.in("%")); // => [28, 72]
 * ```
 */
export const seedMixture = (input: {
  readonly components: readonly {
    readonly name: string;
    readonly byWeight: Share;
    readonly seedsPerMass: Quantity<"count/mass", "none">;
  }[];
}): SeedMixture => {
  const parts = partsOf(input, "byWeight");
  const shares = parts.map(({ share }) => share);
  const sum = total(shares);
  if (sum > 100 * (1 + 1e-9))
    outOfRange("components", described(`${shown(sum)} % in all`), { max: 100, unit: "%" }, "{} in all");
  return mixtureFrom(parts, shares);
};

/**
 * A mixture given by number of seeds, with what that is by weight: `share_i = (n_i / c_i) / sum(n / c)`.
 * The way back from {@link seedMixture}.
 *
 * The shares have to come to 100 %, within half a percent for shares that were rounded; they count in
 * proportion.
 *
 * @param input.components - up to 100 kinds, each with `name`, `byCount` above 0 %, and `seedsPerMass`
 * @throws RatewrightError `missing`, `range` where the shares are not 100 % in all, `duplicate`,
 * `unit/mismatch`, `type`; all that are found
 * Source: arithmetic.
 *
 * @example
 * ```ts
 * import { quantity, seedMixtureByCount } from "ratewright";
 * const mixture = seedMixtureByCount({ components: [
 *   { name: "perennial ryegrass", byCount: quantity(50, "%"), seedsPerMass: quantity(250_000, "count/lb") },
 *   { name: "Kentucky bluegrass", byCount: quantity(50, "%"), seedsPerMass: quantity(1_500_000, "count/lb") },
 * ] });
 * mixture.components.map(({ byWeight }) => Number(byWeight.in("%").toFixed(1))); // => [85.7, 14.3]
 * ```
 */
export const seedMixtureByCount = (input: {
  readonly components: readonly {
    readonly name: string;
    readonly byCount: Share;
    readonly seedsPerMass: Quantity<"count/mass", "none">;
  }[];
}): SeedMixture => {
  const parts = partsOf(input, "byCount");
  const sum = total(parts.map(({ share }) => share));
  if (Math.abs(sum - 100) > 0.5)
    outOfRange(
      "components",
      described(`${shown(sum)} % in all`),
      { min: 100, max: 100, unit: "%" },
      "{} in all",
    );
  const unit = (parts[0] as Part).perMass.unit as "count/lb";
  return mixtureFrom(
    parts,
    parts.map(({ share, perMass }) => share / perMass.in(unit)),
  );
};
