import { numberIn } from "../../quantity/index.js";
import type { PartMeasures } from "../job/read-site.js";
import type { SheetBlock } from "./sheet-types.js";
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

/** Where to find the parts on the ground that are treated: no line where the job states no lengths. */
export const sizeBlocks = (
  measures: readonly PartMeasures[] | undefined,
  parts: readonly string[],
  first: FirstUnits,
): readonly SheetBlock[] => {
  const shown = (measures ?? []).filter(({ part }) => parts.length === 0 || parts.includes(part));
  const list = shown.map((one) => `${one.part} ${sizeText(one, first)}`);
  return list.length === 0 ? [] : [{ kind: "text", text: `Size: ${list.join("; ")}.` }];
};
