import { numberIn } from "../../quantity/index.js";
import type { PartMeasures } from "../job/read-site.js";
import { type FirstUnits, plainNumber } from "./sheet-units.js";

/** Names of lengths as people say them. */
const spoken: Readonly<Record<string, string>> = { a: "side a", b: "side b", c: "side c" };

/** The size of a part in feet or meters, as its area is in square feet or square meters: `330 x 180 ft`. */
const sizeText = ({ shape, lengths }: PartMeasures, first: FirstUnits): string => {
  const unit = first === "US" ? "ft" : "m";
  const told = (q: PartMeasures["lengths"][string]): string => plainNumber(numberIn(q, unit), 1);
  const { length, width, side } = lengths;
  const [long, wide] = shape === "square" ? [side, side] : shape === "rectangle" ? [length, width] : [];
  if (long !== undefined && wide !== undefined) return `${told(long)} x ${told(wide)} ${unit}`;
  const list = Object.entries(lengths).map(([name, q]) => `${spoken[name] ?? name} ${told(q)} ${unit}`);
  return `${shape}, ${list.join(", ")}`;
};

/** How large a part is by the tape, where the job states it. */
export const sizeOf = (
  measures: readonly PartMeasures[] | undefined,
  part: string,
  first: FirstUnits,
): string | undefined => {
  const found = (measures ?? []).find((one) => one.part === part);
  return found && sizeText(found, first);
};

/** Where to find the parts on the ground that are treated: each with its size, where the job states its lengths. */
export const sizesOf = (
  measures: readonly PartMeasures[] | undefined,
  parts: readonly string[],
  first: FirstUnits,
): readonly string[] =>
  (measures ?? [])
    .filter(({ part }) => parts.length === 0 || parts.includes(part))
    .map((one) => `${one.part} ${sizeText(one, first)}`);
