import { fail, type Quantity, quantity } from "../../quantity/index.js";
import type { Pressure } from "../inputs.js";
import { nozzleSizes } from "./nozzle-sizes.js";

/** A tip by what is stamped on it. */
export interface StampedTip {
  readonly type: "stamped-tip";
  readonly version: 1;
  /** The fan angle, where it is stamped. */
  readonly angle?: Quantity<"angle", "none">;
  /** The size: `"04"`, `"0067"`. It goes into `ratedFlow` and `tipChoices` where the color code has it. */
  readonly code: string;
  /** Of water at 40 psi, as the size says. */
  readonly flow: Quantity<"volume/time", "water">;
  readonly pressure: Pressure;
  /** By the color code of ISO 10625; left out for a size that it does not have. */
  readonly color?: string;
}

/** Fan angles that are stamped. */
const angles: readonly number[] = [110, 120, 140, 150, 15, 25, 40, 50, 65, 73, 80, 95];

/** `"04"` is 0.4 gal/min, `"015"` 0.15, `"0067"` 0.067: the point stands behind the first digit. */
const gallonsPerMinute = (code: string): number => Number(`${code.charAt(0)}.${code.slice(1)}`);

const isSize = (code: string): boolean => /^(0\d{1,3}|[1-9]\d)$/.test(code) && Number(code) > 0;

/** An angle, empty where none is stamped, and a size. */
type Stamp = readonly [angle: string, code: string];

const isTip = ([angle, code]: Stamp): boolean => angles.some((one) => String(one) === angle) && isSize(code);

/** Every way to read digits that nothing separates: `15015` is 15 and 015, or 150 and 15. */
const readingsOf = (digits: string): readonly Stamp[] =>
  isSize(digits)
    ? [["", digits]]
    : [2, 3].map((length): Stamp => [digits.slice(0, length), digits.slice(length)]).filter(isTip);

/**
 * What is stamped on a tip, read: the fan angle, where it is there, and the size, which is the flow of water in gal/min
 * at 40 psi with the point behind its first digit. `11004` is a fan of 110 degrees and 0.4 gal/min, `8004` one of 80,
 * `0067` a size of 0.067 gal/min, `035` one of 0.35. Letters of the maker and the color word are left out by the caller.
 *
 * @param stamp - digits as stamped, with or without a dash or blank between angle and size
 * @throws RatewrightError `type` for anything else, with the choices where digits can be read in two ways: `15015` is
 *   `15-015` or `150-15`
 * Source: University of Arizona, Nozzles and Droplets: What Do the Colors Mean? (2012): sizes in tenths of a gal/min at
 * 40 psi; teaching slides on nozzles and pumps (8002 is a fan of 80 degrees at 40 psi).
 *
 * @example
 * ```ts
 * import { readTip } from "ratewright";
 * const tip = readTip("11004");
 * tip.angle?.in("deg"); // => 110
 * tip.code; // => "04"
 * tip.flow.in("gal/min"); // => 0.4
 * tip.color; // => "red"
 * readTip("0067").flow.in("gal/min"); // => 0.067
 * ```
 */
export const readTip = (stamp: string): StampedTip => {
  const parts = typeof stamp === "string" && stamp.length <= 20 ? stamp.trim().split(/[\s-]+/) : [];
  const [first = "", second] = parts;
  const readings =
    parts.length > 2
      ? []
      : second === undefined
        ? readingsOf(first)
        : [[first, second] as const].filter(isTip);
  const [reading, other] = readings;
  if (reading === undefined || other !== undefined) {
    return fail(
      "type",
      "stamp",
      stamp,
      other === undefined
        ? 'what is stamped on a tip: angle and size as in "11004", or the size as in "04", "035" or "0067", without the letters of the maker'
        : "a dash between the angle and the size",
      other === undefined ? {} : { choices: readings.map((each) => each.join("-")) },
    );
  }
  const [angle, code] = reading;
  const color = nozzleSizes.find((size) => size.code === code)?.color;
  return {
    type: "stamped-tip",
    version: 1,
    ...(angle === "" ? {} : { angle: quantity(Number(angle), "deg") }),
    code,
    flow: quantity(gallonsPerMinute(code), "gal/min", "water"),
    pressure: quantity(40, "psi"),
    ...(color === undefined ? {} : { color }),
  };
};
