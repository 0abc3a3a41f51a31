import { numberIn } from "../../quantity/index.js";
import type { PartMeasures } from "../job/read-site.js";
import { type FirstUnits, measureText, plainNumber, unitFor, unitWords } from "./sheet-units.js";

/** Names of lengths as people say them. */
const spoken: Readonly<Record<string, string>> = { a: "side a", b: "side b", c: "side c" };

/** The size of a part: `330 x 180 ft`, or each length with its name. */
const sizeText = ({ shape, lengths }: PartMeasures, first: FirstUnits): string => {
  const { length, width, side } = lengths;
  const [long, wide] = shape === "square" ? [side, side] : shape === "rectangle" ? [length, width] : [];
  if (long !== undefined && wide !== undefined) {
    const unit = unitFor(long, first);
    const figures = [long, wide].map((q) => plainNumber(numberIn(q, unit), 1));
    return `${figures.join(" x ")} ${unitWords(unit)}`;
  }
  const list = Object.entries(lengths).map(([name, q]) => `${spoken[name] ?? name} ${measureText(q, first)}`);
  return `${shape}, ${list.join(", ")}`;
};

/** Where to find the parts on the ground, for those that are treated: none where the job states no lengths. */
export const sizesText = (
  measures: readonly PartMeasures[],
  parts: readonly string[],
  first: FirstUnits,
): string | undefined => {
  const shown = measures.filter(({ part }) => parts.length === 0 || parts.includes(part));
  return shown.length === 0
    ? undefined
    : `Size: ${shown.map((one) => `${one.part} ${sizeText(one, first)}`).join("; ")}.`;
};
