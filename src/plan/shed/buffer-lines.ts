import type { SheetBlock, SheetSection } from "../sheet/sheet-types.js";
import { areaText, type FirstUnits, measureText, unitFor } from "../sheet/sheet-units.js";
import type { BufferOrder } from "../visit/buffers.js";

/** `Along water on north pitch leave a strip of 10 ft untreated: ...`; no line where no strip is to be left. */
const lineOf = ({ part, strips, area }: BufferOrder, first: FirstUnits): readonly string[] => {
  const wide = strips.filter(({ strip }) => strip.value > 0);
  if (wide.length === 0) return [];
  const each = wide.map(
    ({ from, strip, distance }) =>
      `a strip of ${measureText(strip, first)} along ${from} (${measureText(distance, first)} from it)`,
  );
  const left =
    area === null
      ? "The area of the strip is not known: measure it."
      : `${areaText(area.left, unitFor(area.left, first))} of ${areaText(area.part, unitFor(area.part, first))} is outside the stated distance${area.by === "length" ? ", by length times width" : ""}.`;
  return [`Leave untreated on ${part}: ${[...new Set(each)].join("; ")}. ${left}`];
};

/** The section of a treatment with the strips that it leaves untreated, before anything is weighed out. */
export const withBuffers = (
  section: SheetSection,
  buffers: readonly BufferOrder[],
  first: FirstUnits,
): SheetSection => {
  const lines = buffers
    .filter(({ treatment }) => treatment === section.treatment)
    .flatMap((buffer) => lineOf(buffer, first));
  const block: SheetBlock = { kind: "list", mark: "!", items: lines };
  return lines.length === 0
    ? section
    : { ...section, blocks: [...section.blocks.slice(0, 1), block, ...section.blocks.slice(1)] };
};
