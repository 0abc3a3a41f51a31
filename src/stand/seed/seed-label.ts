import { accurateSum, roundTo } from "../../numeric/index.js";
import { described } from "../../quantity/house.js";
import {
  allOf,
  expectFields,
  expectList,
  expectText,
  type Finding,
  outOfRange,
  quantity,
} from "../../quantity/index.js";
import { percentAt, type Share } from "../read.js";
import { livePercent, type PureLiveShare, type SeedLot } from "./pure-live-seed.js";

/** One kind on a seed label. */
export interface SeedLabelRow {
  readonly name: string;
  readonly purity: Share;
  /** Its pure live seed, as a share of all that is in the bag. */
  readonly pureLiveSeed: PureLiveShare;
}

/** A seed label, worked out. */
export interface SeedLabel {
  readonly type: "seed-label";
  readonly version: 1;
  readonly components: readonly SeedLabelRow[];
  /** Pure live seed of all kinds together. */
  readonly pureLiveSeed: PureLiveShare;
  /** What all lines of the label come to; `null` where a line was not given. */
  readonly sum: Share | null;
  readonly findings: readonly Finding[];
}

/**
 * The label of a mixture or blend: pure live seed of each kind and of the whole bag, and whether the lines
 * come to 100 %. Purity is printed as a share of the whole bag, so the pure live seeds of the kinds add up.
 *
 * @param input.components - up to 100 kinds with `name` and the tag of each, as `pureLiveSeed` takes it
 * @param input.otherCrop - other crop seed, percent by weight
 * @param input.inert - inert matter, percent by weight; coating is part of it
 * @param input.weeds - weed seed, percent by weight
 * @returns with a finding `seed/label-sum` where all lines are given and miss 100 % by more than 0.5 %
 * @throws RatewrightError `missing`, `range` where the purities come to more than 100 %, `conflict`, `type`,
 *   `unit/mismatch`
 * Source: University of Minnesota Extension, "Purchasing seed", for the lines of a label; arithmetic.
 *
 * @example
 * ```ts
 * import { quantity, seedLabel } from "ratewright";
 * const label = seedLabel({
 *   components: [
 *     { name: "creeping red fescue", purity: quantity(60, "%"), germination: quantity(85, "%") },
 *     { name: "Kentucky bluegrass", purity: quantity(35, "%"), germination: quantity(80, "%") },
 *   ],
 *   otherCrop: quantity(1, "%"), inert: quantity(3.9, "%"), weeds: quantity(0.1, "%"),
 * });
 * label.pureLiveSeed.in("% w/w"); // => 79
 * label.findings; // => []
 * ```
 */
export const seedLabel = (input: {
  readonly components: readonly ({ readonly name: string } & SeedLot)[];
  readonly otherCrop?: Share;
  readonly inert?: Share;
  readonly weeds?: Share;
}): SeedLabel => {
  const record = expectFields(input, ["components", "otherCrop", "inert", "weeds"]);
  const { rows, rest } = allOf({
    rows: () => rowsOf(record.components),
    rest: () =>
      allOf({
        otherCrop: () => (record.otherCrop === undefined ? null : percentAt(record.otherCrop, "otherCrop")),
        inert: () => (record.inert === undefined ? null : percentAt(record.inert, "inert")),
        weeds: () => (record.weeds === undefined ? null : percentAt(record.weeds, "weeds")),
      }),
  });
  const purities = rows.map(({ purity }) => purity);
  const pure = accurateSum(purities);
  if (pure > 100 * (1 + 1e-9)) {
    outOfRange(
      "components",
      described(`purities of ${roundTo(pure, 0.01)} % in all`),
      { max: 100, unit: "%" },
      "{} in all",
    );
  }
  const others = [rest.otherCrop, rest.inert, rest.weeds];
  const stated = others.filter((line) => line !== null);
  const sum = stated.length === others.length ? accurateSum([...purities, ...stated]) : null;
  return {
    type: "seed-label",
    version: 1,
    components: rows.map(({ name, purity, live }) => ({
      name,
      purity: quantity(purity, "%"),
      pureLiveSeed: quantity(live, "% w/w", "pure live seed/seed"),
    })),
    pureLiveSeed: quantity(accurateSum(rows.map(({ live }) => live)), "% w/w", "pure live seed/seed"),
    sum: sum === null ? null : quantity(sum, "%"),
    findings: sum === null || Math.abs(sum - 100) <= 0.5 ? [] : [sumFinding(sum)],
  };
};

const sumFinding = (sum: number): Finding => ({
  code: "seed/label-sum",
  severity: "caution",
  path: "components",
  params: { sum: roundTo(sum, 0.01) },
  text: `The lines of the label come to ${roundTo(sum, 0.01)} %, not 100 %. Read it again.`,
});

interface Row {
  readonly name: string;
  readonly purity: number;
  readonly live: number;
}

const rowsOf = (input: unknown): readonly Row[] => {
  const list = expectList(input, "components", "component", 100);
  const readers = list.map((item, i) => [`${i}`, () => rowAt(item, `components[${i}]`)] as const);
  const read = allOf(Object.fromEntries(readers));
  return readers.map(([at]) => read[at] as Row);
};

const rowAt = (item: unknown, at: string): Row => {
  const { name, ...lot } = expectFields(item, ["name", "purity", "germination", "hard", "viable"], at);
  const row = allOf({
    name: () => expectText(name, `${at}.name`, "the name of a kind"),
    live: () => livePercent(lot, at),
  });
  return { ...row, purity: percentAt(lot.purity, `${at}.purity`) };
};
