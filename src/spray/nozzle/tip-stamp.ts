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

/** Fan angles that are stamped, the longest text first. */
const angles: readonly number[] = [110, 120, 140, 150, 15, 25, 40, 50, 65, 73, 80, 95];

/** `"04"` is 0.4 gal/min, `"015"` 0.15, `"0067"` 0.067: the point stands behind the first digit. */
const gallonsPerMinute = (code: string): number => Number(`${code.charAt(0)}.${code.slice(1)}`);

const isSize = (code: string): boolean => /^(0\d{1,3}|[1-9]\d)$/.test(code) && Number(code) > 0;

/**
 * What is stamped on a tip, read: the fan angle, where it is there, and the size, which is the flow of water in gal/min
 * at 40 psi with the point behind its first digit. `11004` is a fan of 110 degrees and 0.4 gal/min, `8004` one of 80,
 * `0067` a size of 0.067 gal/min, `035` one of 0.35. Letters of the maker and the color word are left out by the caller.
 *
 * @param stamp - digits as stamped, with or without a dash or blank between angle and size
 * @throws RatewrightError `type` for anything else
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
  const text = typeof stamp === "string" && stamp.length <= 20 ? stamp.replace(/[\s-]/g, "") : "";
  const angle = isSize(text)
    ? undefined
    : angles.find(
        (degrees) => text.startsWith(String(degrees)) && isSize(text.slice(String(degrees).length)),
      );
  const code = angle === undefined ? text : text.slice(String(angle).length);
  if (!isSize(code)) {
    return fail(
      "type",
      "stamp",
      stamp,
      'what is stamped on a tip: angle and size as in "11004", or the size as in "04", "035" or "0067"',
    );
  }
  const color = nozzleSizes.find((size) => size.code === code)?.color;
  return {
    type: "stamped-tip",
    version: 1,
    ...(angle === undefined ? {} : { angle: quantity(angle, "deg") }),
    code,
    flow: quantity(gallonsPerMinute(code), "gal/min", "water"),
    pressure: quantity(40, "psi"),
    ...(color === undefined ? {} : { color }),
  };
};
