import { fail, frozen, type Quantity, quantity } from "../../quantity/index.js";

/** The codes of the droplet classes, from the finest to the coarsest. */
export type DropletClass = "XF" | "VF" | "F" | "M" | "C" | "VC" | "XC" | "UC";

/** One class of droplet size. */
export interface DropletClassInfo {
  readonly code: DropletClass;
  readonly name: string;
  /** In the color scheme of the classes, which has nothing to do with the color of the tip. */
  readonly color: string;
  /** Where the color comes from: read in a source, or remembered. The names of all eight were read. */
  readonly reached: "read" | "from memory";
}

/**
 * The droplet classes of ASABE S572.1 and of the editions after it, from the finest to the coarsest. The standard is
 * comparative: reference nozzles, measured on the same instrument, bound the classes, so it has no limits
 * in micrometers, and none are given here. Which class a tip makes at a pressure is in its maker's chart.
 *
 * The boundaries moved between editions, and the colors are those of catalogs by S572.1: a chart says which edition
 * it goes by, and classes of two editions are not compared. Go by the name, and not by the color.
 *
 * Source: colors from very fine to extremely coarse: Grainews, "Nozzle colour and flow rate confusion", on the
 * colors that tip catalogs use; that S572.1 (2009) added extremely fine and ultra coarse: Australian Pesticides and
 * Veterinary Medicines Authority, on the standards for the classification of nozzles; their two colors from memory.
 */
export const dropletClasses: readonly DropletClassInfo[] = /* @__PURE__ */ frozen([
  { code: "XF", name: "extremely fine", color: "purple", reached: "from memory" },
  { code: "VF", name: "very fine", color: "red", reached: "read" },
  { code: "F", name: "fine", color: "orange", reached: "read" },
  { code: "M", name: "medium", color: "yellow", reached: "read" },
  { code: "C", name: "coarse", color: "blue", reached: "read" },
  { code: "VC", name: "very coarse", color: "green", reached: "read" },
  { code: "XC", name: "extremely coarse", color: "white", reached: "read" },
  { code: "UC", name: "ultra coarse", color: "black", reached: "from memory" },
]);

/** The place of a class from the finest, 0, on; throws for a code that is none. */
export const dropletRank = (code: unknown, path: string): number => {
  const rank = dropletClasses.findIndex((one) => one.code === code);
  return rank < 0
    ? fail("type", path, code, `a droplet class: ${dropletClasses.map((one) => one.code).join(", ")}`)
    : rank;
};

/** Takes the code of a class, or throws. */
export const expectDropletClass = (code: unknown, path: string): DropletClass =>
  (dropletClasses[dropletRank(code, path)] as DropletClassInfo).code;

/** Shares of the spray below 150 micrometers, by class, as the source prints them. */
const below150: readonly (readonly [DropletClass, number])[] = [
  ["M", 20],
  ["C", 10],
  ["VC", 5],
];

/**
 * The most of a spray that is in droplets below 150 micrometers, which drift most: up to 20 % for medium,
 * under 10 % for coarse, under 5 % for very coarse. A class coarser about halves it. For the other classes
 * the source has no figure, and the answer is `undefined`.
 *
 * @throws RatewrightError `type` for a code that is no class
 * Source: GRDC (Australia), Spray application manual, module 4.2, 2025.
 *
 * @example
 * ```ts
 * import { driftableFines } from "ratewright";
 * driftableFines("C")?.in("%"); // => 10
 * driftableFines("F"); // => undefined
 * ```
 */
export const driftableFines = (code: DropletClass): Quantity<"1", "none"> | undefined => {
  dropletRank(code, "code");
  const found = below150.find(([one]) => one === code);
  return found && quantity(found[1], "%");
};
