import { accurateSum, expectReadings } from "../../numeric/index.js";
import { described } from "../../quantity/house.js";
import { fail, outOfRange, type Quantity } from "../../quantity/index.js";

/** What cans caught: depths, or volumes where all cans have one opening. */
export type Catches =
  | readonly Quantity<"length", "none">[]
  | readonly Quantity<"volume", "water">[]
  | readonly Quantity<"length/time", "none">[];

/** Catches as numbers in the unit of the first, lowest first, with their mean. */
export interface SortedCatches {
  readonly sorted: readonly number[];
  readonly mean: number;
  readonly unit: string;
}

/** Most cans that are read: a large test has a few hundred. */
const most = 100_000;

/** Takes the catches of a test: at least `least`, none below zero, not all empty. */
export const readCatches =
  (least: number) =>
  (input: unknown, path: string): SortedCatches => {
    if (input === undefined)
      return fail("missing", path, input, "what each can caught, as depths or volumes");
    if (Array.isArray(input) && input.length > most) outOfRange(path, input, { max: most, count: "cans" });
    const list = expectReadings(input as readonly Quantity<string, string>[], path, least);
    const first = list[0] as Quantity<string, string>;
    const kind = `${first.dimension} of ${first.of}`;
    if (!["length of none", "volume of water", "length/time of none"].includes(kind)) {
      fail("unit/mismatch", `${path}[0]`, first, "a depth, a volume of water or a depth per time");
    }
    list.forEach((q, i) => {
      if (q.value < 0) outOfRange(`${path}[${i}]`, q, { min: 0 }, "{}: an empty can counts as 0");
    });
    const sorted = Float64Array.from(list, (q) => q.value).sort();
    const mean = accurateSum(sorted) / sorted.length;
    if (!(mean > 0))
      outOfRange(path, described("cans that are all empty"), { min: 1 }, "cans with water in them, {}");
    return { sorted: Array.from(sorted), mean, unit: first.unit };
  };

/** What is done where the cans do not divide into quarters or halves. */
export type Remainder = "nearest" | "up" | "down" | "refuse";

/** The mean of the lowest part of the catches by the mean of all, in percent. */
export const lowShare = (catches: SortedCatches, parts: 2 | 4, remainder: Remainder): number => {
  const { sorted, mean } = catches;
  const count = lowest(sorted.length, parts, remainder);
  return ((accurateSum(sorted.slice(0, count)) / count) * 100) / mean;
};

const lowest = (cans: number, parts: 2 | 4, remainder: Remainder): number => {
  if (cans % parts === 0) return cans / parts;
  if (remainder === "refuse") {
    return outOfRange(
      "catches",
      cans,
      { step: parts, count: "cans" },
      '{}, or another remainder than "refuse"',
    );
  }
  const share = cans / parts;
  const count =
    remainder === "up"
      ? Math.ceil(share)
      : remainder === "down"
        ? Math.floor(share)
        : Math.floor(share + 0.5);
  return Math.max(1, count);
};
