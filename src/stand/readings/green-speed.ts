import { fixedApart } from "../../numeric/house.js";
import { mean } from "../../numeric/index.js";
import {
  allOf,
  type Citation,
  expectFields,
  expectList,
  type Finding,
  frozen,
  quantity,
} from "../../quantity/index.js";
import { isMetric, type Length, lengthAt } from "../read.js";

/** How fast a green is, with its slope taken out. */
export interface GreenSpeed {
  readonly type: "green-speed";
  readonly version: 1;
  /** Mean roll uphill. */
  readonly up: Length;
  /** Mean roll downhill. */
  readonly down: Length;
  /** The roll on level ground: `2 up down / (up + down)`. */
  readonly level: Length;
  /** The plain mean of both ways, which on a slope is too long. */
  readonly mean: Length;
  readonly findings: readonly Finding[];
}

const manual: Citation = /* @__PURE__ */ frozen({
  title: "Course rating manual",
  publisher: "USGA",
  where: "Green speed corrected for green slope",
  url: "https://issuu.com/golf-iceland/docs/course-rating-manual/37",
});
const instructions: Citation = /* @__PURE__ */ frozen({
  title: "How to measure green speed, step 3",
  publisher: "USGA instructions, in a copy",
  url: "https://scangolf.no/forum/thread/8990",
});

const rollsOf = (input: unknown, path: string): readonly Length[] => {
  const list = expectList(input, path, "roll", 100);
  const read = allOf(
    Object.fromEntries(list.map((roll, i) => [`${i}`, () => lengthAt(roll, `${path}[${i}]`)])),
  );
  return list.map((_, i) => read[`${i}`] as Length);
};

/**
 * Green speed with its slope taken out: `S = 2 u d / (u + d)`, with `u` and `d` the mean roll of a ball
 * uphill and downhill along the same line off the ramp.
 *
 * It is exact where friction is the same all along and the ground is an even slope: then `u = S / (1 + k)`
 * and `d = S / (1 - k)`.
 *
 * @param input.up - rolls straight uphill, three by the usual method
 * @param input.down - rolls straight downhill along the same line
 * @returns in ft, or in m for metric rolls; findings where the rolls of one way lie more than 8 in apart
 * (`green-speed/rolls-apart`), and where `d` is twice or three times `u` (`green-speed/sloped`)
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`, `type`; all that are found
 * Source: USGA, "Course rating manual", green speed corrected for green slope.
 *
 * @example
 * ```ts
 * import { greenSpeed, quantity } from "ratewright";
 * const ft = (value: number) => quantity(value, "ft");
 * const { level, mean } = greenSpeed({ up: [ft(8), ft(8), ft(8)], down: [ft(12), ft(12), ft(12)] });
 * level.in("ft"); // => 9.6
 * mean.in("ft"); // => 10
 * ```
 */
export const greenSpeed = (input: {
  readonly up: readonly Length[];
  readonly down: readonly Length[];
}): GreenSpeed => {
  const record = expectFields(input, ["up", "down"]);
  const { up, down } = allOf({
    up: () => rollsOf(record.up, "up"),
    down: () => rollsOf(record.down, "down"),
  });
  const unit = isMetric((up[0] as Length).unit) ? "m" : "ft";
  const feet = (rolls: readonly Length[]): readonly number[] => rolls.map((roll) => roll.in(unit));
  const [u, d] = [mean(feet(up)), mean(feet(down))];
  return {
    type: "green-speed",
    version: 1,
    up: quantity(u, unit),
    down: quantity(d, unit),
    level: quantity((2 * u * d) / (u + d), unit),
    mean: quantity((u + d) / 2, unit),
    findings: [...apart(up, "up"), ...apart(down, "down"), ...sloped(u, d)],
  };
};

const mostApart = 8;

const apart = (rolls: readonly Length[], path: string): Finding[] => {
  const metric = isMetric((rolls[0] as Length).unit);
  const inches = rolls.map((roll) => roll.in("in"));
  const spread = Math.max(...inches) - Math.min(...inches);
  if (spread <= mostApart * (1 + 1e-9)) return [];
  const [told, most, unit] = metric ? [spread * 2.54, mostApart * 2.54, "cm"] : [spread, mostApart, "in"];
  const shown = fixedApart(told, most, 1);
  return [
    {
      code: "green-speed/rolls-apart",
      severity: "caution",
      path,
      params: { way: path, inches: Number(spread.toFixed(1)), most: mostApart },
      text: `The rolls ${path}hill are ${shown(told)} ${unit} apart, more than ${metric ? shown(most) : most}: roll them again.`,
      source: instructions,
    },
  ];
};

const sloped = (u: number, d: number): Finding[] => {
  if (d < u * (1 - 1e-9)) {
    return [
      {
        code: "green-speed/uphill-longer",
        severity: "caution",
        path: "up",
        params: { ratio: Number((u / d).toFixed(2)) },
        text: "The rolls uphill are longer than those downhill: check which is which, and the wind.",
        source: "common practice, no source",
      },
    ];
  }
  if (d < 2 * u) return [];
  const steep = d > 3 * u;
  return [
    {
      code: "green-speed/sloped",
      severity: "note",
      path: "down",
      params: { ratio: Number((d / u).toFixed(2)), slope: steep ? "steep" : "moderate" },
      text: `Downhill is ${(d / u).toFixed(1)} times uphill: the green is ${steep ? "steeply" : "moderately"} sloped.`,
      source: manual,
    },
  ];
};
