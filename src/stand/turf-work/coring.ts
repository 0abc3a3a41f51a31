import { accurateSum, wholeUnitsFor } from "../../numeric/index.js";
import {
  allOf,
  expectFields,
  expectList,
  expectOneOf,
  fail,
  outOfRange,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import {
  type Area,
  areaAt,
  given,
  isMetric,
  type Length,
  lengthAt,
  optional,
  percentAt,
  type Share,
  wholeAt,
} from "../read.js";

type PerArea = Quantity<"count/area", "none">;
type VolumePerArea = Quantity<"volume/area", "none">;

/** Holes, by their distances along and across, or by their number per area. */
export type HolePattern =
  | { readonly spacing: { readonly along: Length; readonly across: Length } }
  | { readonly holesPerArea: PerArea };

/** One pass of a corer. */
export type CoringPass = HolePattern & {
  /** Diameter of the tine. */
  readonly diameter: Length;
  /** Which diameter it is: inside, the core that is taken out, or outside, the hole that is made. */
  readonly measured: "inside" | "outside";
  readonly depth?: Length;
};

/** What one pass does. */
export interface CoringImpact {
  readonly type: "coring-impact";
  readonly version: 1;
  readonly measured: "inside" | "outside";
  /** Share of the surface under the diameter that was given. */
  readonly share: Share;
  readonly holesPerArea: PerArea;
  /** Holes on the area; `null` where no area was given. */
  readonly holes: number | null;
  /** Volume of the holes by that diameter, per area; `null` where no depth was given. */
  readonly volumePerArea: VolumePerArea | null;
  /** The same on the area: cores by the inside diameter, sand to fill by the outside one. */
  readonly volume: Quantity<"volume", "none"> | null;
}

const fields = ["spacing", "holesPerArea", "diameter", "measured", "depth"] as const;

interface ReadPass {
  readonly measured: "inside" | "outside";
  readonly holesPerArea: PerArea;
  readonly share: number;
  readonly depth: number | undefined;
  readonly metric: boolean;
}

const readPass = (input: { readonly [K in (typeof fields)[number]]?: unknown }, at = ""): ReadPass => {
  const { holesPerArea, diameter, measured, depth } = allOf({
    holesPerArea: () => holesAt(input.spacing, input.holesPerArea, at),
    diameter: () => lengthAt(input.diameter, `${at}diameter`),
    measured: () => expectOneOf(input.measured, ["inside", "outside"], `${at}measured`),
    depth: () => optional(input.depth, (value) => lengthAt(value, `${at}depth`)),
  });
  const inches = diameter.in("in");
  const share = (Math.PI / 4) * inches * inches * holesPerArea.in("count/in2");
  if (share > 1) {
    outOfRange(
      `${at}diameter`,
      input.diameter,
      { below: 100, unit: "%" },
      "holes that leave ground between them: {} in a pass",
    );
  }
  return { measured, holesPerArea, share, depth: depth?.in("mm"), metric: isMetric(diameter.unit) };
};

const holesAt = (spacing: unknown, holesPerArea: unknown, at: string): PerArea => {
  if ((spacing === undefined) === (holesPerArea === undefined)) {
    return fail(
      spacing === undefined ? "missing" : "conflict",
      `${at}spacing`,
      spacing,
      "spacing along and across, or holesPerArea",
    );
  }
  if (spacing === undefined) {
    return given(holesPerArea, `${at}holesPerArea`, "count/area", "none");
  }
  const record = expectFields(spacing, ["along", "across"], `${at}spacing`);
  const { along, across } = allOf({
    along: () => lengthAt(record.along, `${at}spacing.along`),
    across: () => lengthAt(record.across, `${at}spacing.across`),
  });
  return isMetric(along.unit)
    ? quantity(1e6 / (along.in("mm") * across.in("mm")), "count/m2")
    : quantity(144 / (along.in("in") * across.in("in")), "count/ft2");
};

/**
 * What one pass of coring does: share of the surface, holes, and the volume of the holes.
 *
 * `share = n pi d^2 / 4`, `n = 1 / (a b)` holes per area, `volume = share * depth`
 *
 * - `d` diameter of the tine; `a` and `b` spacing along and across the pass
 *
 * Outside and inside diameter differ by more than they look: a tine of 5/8 in that is 0.470 in inside, at
 * 1 1/2 in, makes holes on 13.6 % of the surface and takes cores from 7.7 %. So `measured` is asked for. The
 * outside diameter gives the sand that fills the holes, the inside one the cores that come out; what the
 * tine presses aside is the difference.
 *
 * @param input.area - the ground; holes and volume on it
 * @throws RatewrightError `missing`, `conflict`, `range` also for holes that take all of the surface,
 * `unit/mismatch`, `type`; all that are found
 * Source: superintendents' worked examples (see the published checks); plane geometry.
 *
 * @example
 * ```ts
 * import { coringImpact, quantity } from "ratewright";
 * const pass = coringImpact({
 *   diameter: quantity(0.5, "in"), measured: "outside", depth: quantity(3, "in"),
 *   spacing: { along: quantity(2, "in"), across: quantity(2, "in") }, area: quantity(5000, "ft2"),
 * });
 * Number(pass.share.in("%").toFixed(2)); // => 4.91
 * pass.holesPerArea.in("count/ft2"); // => 36
 * pass.holes; // => 180000
 * Number(pass.volume?.in("ft3").toFixed(1)); // => 61.4
 * ```
 */
export const coringImpact = (input: CoringPass & { readonly area?: Area }): CoringImpact => {
  const record = expectFields(input, [...fields, "area"]);
  const { pass, area } = allOf({
    pass: () => readPass(record),
    area: () => optional(record.area, (value) => areaAt(value, "area")),
  });
  const metric = area === undefined ? pass.metric : isMetric(area.unit);
  const holesPerArea = metric
    ? quantity(pass.holesPerArea.in("count/m2"), "count/m2")
    : quantity(pass.holesPerArea.in("count/ft2"), "count/ft2");
  const liters = pass.depth === undefined ? null : pass.share * pass.depth;
  const layer = liters === null ? null : quantity(liters, "L/m2");
  return {
    type: "coring-impact",
    version: 1,
    measured: pass.measured,
    share: quantity(100 * pass.share, "%"),
    holesPerArea,
    holes: area === undefined ? null : Math.round(area.times(holesPerArea).in("count")),
    volumePerArea:
      layer === null ? null : metric ? layer : quantity(layer.in("ft3/1000 ft2"), "ft3/1000 ft2"),
    volume:
      layer === null || area === undefined
        ? null
        : metric
          ? quantity(area.times(layer).in("m3"), "m3")
          : quantity(area.times(layer).in("ft3"), "ft3"),
  };
};

/** A year of coring against a target. */
export interface CoringProgram {
  readonly type: "coring-program";
  readonly version: 1;
  /** Share of each line of the program: one pass, times its passes. */
  readonly shares: readonly Share[];
  /** The shares added up, as the trade counts them. */
  readonly sum: Share;
  /** Surface that was hit at least once where passes fall at random: `1 - product (1 - share)`. */
  readonly distinct: Share;
  readonly target: Share;
  /** What the sum lacks; 0 % where it is there. */
  readonly lacking: Share;
}

/**
 * The share of the surface that a year of coring comes to, against a target. Shares add up, as the trade
 * counts them; `distinct` is the surface that is hit at least once where the passes fall at random, which
 * is less.
 *
 * The target is the caller's. 15 to 20 % a year is quoted from the USGA Green Section for putting greens;
 * later trials question that any fixed share is needed.
 *
 * @param input.passes - up to 100 lines: a pass as {@link coringImpact} takes it, and `times`, 1 where left out
 * @param input.target - above 0 %; it may be more than 100 % over several passes
 * @throws RatewrightError `missing`, `conflict`, `range`, `unit/mismatch`, `type`; all that are found; also
 * `conflict` where inside and outside diameters are mixed: they do not add up
 * Source: superintendents' worked examples (see the published checks).
 *
 * @example
 * ```ts
 * import { coringProgram, quantity } from "ratewright";
 * const hole = { diameter: quantity(0.5, "in"), measured: "outside" } as const;
 * const year = coringProgram({
 *   passes: [
 *     { ...hole, spacing: { along: quantity(1.5, "in"), across: quantity(1.33, "in") } },
 *     { ...hole, spacing: { along: quantity(2, "in"), across: quantity(1.33, "in") } },
 *   ],
 *   target: quantity(20, "%"),
 * });
 * Number(year.sum.in("%").toFixed(1)); // => 17.2
 * Number(year.lacking.in("%").toFixed(1)); // => 2.8
 * ```
 */
export const coringProgram = (input: {
  readonly passes: readonly (CoringPass & { readonly times?: number })[];
  readonly target: Share;
}): CoringProgram => {
  const record = expectFields(input, ["passes", "target"]);
  const { passes, target } = allOf({
    passes: () => linesOf(record.passes),
    target: () => percentAt(record.target, "target", { above: 0, max: 100, share: 1 }),
  });
  const shares = passes.map(({ pass, times }) => pass.share * times * 100);
  const sum = accurateSum(shares);
  const bare = passes.reduce((left, { pass, times }) => left * (1 - pass.share) ** times, 1);
  return {
    type: "coring-program",
    version: 1,
    shares: shares.map((share) => quantity(share, "%")),
    sum: quantity(sum, "%"),
    distinct: quantity(100 * (1 - bare), "%"),
    target: quantity(target, "%"),
    lacking: quantity(Math.max(0, target - sum), "%"),
  };
};

interface Line {
  readonly pass: ReadPass;
  readonly times: number;
}

const linesOf = (input: unknown): readonly Line[] => {
  const list = expectList(input, "passes", "pass", 100);
  const read = allOf(Object.fromEntries(list.map((item, i) => [`${i}`, () => lineAt(item, `passes[${i}]`)])));
  const lines = list.map((_, i) => read[`${i}`] as Line);
  const first = lines[0] as Line;
  lines.forEach(({ pass }, i) => {
    if (pass.measured !== first.pass.measured) {
      fail(
        "conflict",
        `passes[${i}].measured`,
        pass.measured,
        `${first.pass.measured}, as in the first pass`,
      );
    }
  });
  return lines;
};

const lineAt = (item: unknown, at: string): Line => {
  const record = expectFields(item, [...fields, "times"], at);
  return allOf({
    pass: () => readPass(record, `${at}.`),
    times: () => (record.times === undefined ? 1 : wholeAt(record.times, `${at}.times`)),
  });
};

/**
 * How many passes reach a share of the surface: `target / share`, rounded up. Shares add up, as the trade
 * counts them.
 *
 * @param input.target - above 0 %
 * @param input.share - of one pass, as {@link coringImpact} or {@link verticuttingImpact} gives it
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`, `type`; all that are found
 * Source: Iowa State University tables in "Cultivation goals", 2004: 50 % by 1/2 in tines on 3 in centers.
 *
 * @example
 * ```ts
 * import { passesForShare, quantity } from "ratewright";
 * passesForShare({ target: quantity(20, "%"), share: quantity(4.9, "%") }); // => 5
 * ```
 */
export const passesForShare = (input: { readonly target: Share; readonly share: Share }): number => {
  const record = expectFields(input, ["target", "share"]);
  const { target, share } = allOf({
    target: () => percentAt(record.target, "target", { above: 0, max: 100, share: 1 }),
    share: () => percentAt(record.share, "share", { above: 0, max: 100 }),
  });
  return wholeUnitsFor(target, share);
};
