// The strips that a treatment leaves untreated, on the copy for the shed.
import { expect, test } from "vitest";
import { withBuffers } from "../../../src/plan/shed/buffer-lines.js";
import type { SheetSection } from "../../../src/plan/sheet/sheet-types.js";
import type { BufferOrder } from "../../../src/plan/visit/buffers.js";
import { quantity } from "../../../src/quantity/index.js";

const text = (words: string) => ({ kind: "text", text: words }) as const;
const section: SheetSection = {
  id: "spread",
  title: "JOB 1",
  treatment: "feed",
  blocks: [text("first"), text("second")],
};
const strip = (treatment: string, part: string, feet: number): BufferOrder =>
  ({
    treatment,
    part,
    area: null,
    strips: [{ from: "water", strip: quantity(feet, "ft"), distance: quantity(15, "ft") }],
  }) as unknown as BufferOrder; // no other field is read

test("stand behind the first block, those of this treatment only, and none where no strip is left", () => {
  expect(withBuffers(section, [], "US")).toEqual(section);
  expect(withBuffers(section, [strip("other", "pitch", 10), strip("feed", "lawn", 0)], "US")).toEqual(
    section,
  );
  const { blocks } = withBuffers(section, [strip("other", "pitch", 10), strip("feed", "lawn", 10)], "US");
  expect(blocks).toEqual([
    text("first"),
    {
      kind: "list",
      mark: "!",
      items: [
        "Leave untreated on lawn: a strip of 10 ft along water (15 ft from it). The area of the strip is not known: measure it.",
      ],
    },
    text("second"),
  ]);
});
