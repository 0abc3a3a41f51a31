import { checks, expectRecord, fail } from "../quantity/index.js";
import { areaOfShape } from "./area-of-shape.js";

import { type NamedArea, type SiteArea, siteAreaOf } from "./net-area.js";
import type { SiteShape } from "./site-shape.js";

/** A site as plain JSON: what it is made of, and what is cut out of it. */
export interface SiteDescription {
  readonly parts: readonly SiteShape[];
  readonly cutOuts?: readonly SiteShape[];
}

/**
 * The area of a site that is described as plain JSON: the parts, less what is cut out of them.
 *
 * `net = sum of parts - sum of cutOuts`, in the unit of the first part; each area by {@link areaOfShape}. Names
 * are kept. The parts must not overlap and the cut-outs must lie inside them: sums cannot tell.
 *
 * @throws RatewrightError with every problem of the whole site, each with its place such as `parts[1].width`;
 * `range` at `cutOuts` where they are larger than the parts
 *
 * @example
 * ```ts
 * import { siteArea } from "ratewright/site";
 * const lawn = siteArea({
 *   parts: [
 *     { name: "bowling lawn", shape: "rectangle", length: { value: 120, unit: "ft" }, width: { value: 120, unit: "ft" } },
 *     { name: "bank", shape: "measured", area: { value: 2400, unit: "ft2" } },
 *   ],
 *   cutOuts: [
 *     { name: "pavilion", shape: "rectangle", length: { value: 30, unit: "ft" }, width: { value: 20, unit: "ft" } },
 *   ],
 * });
 * lawn.gross.in("ft2"); // => 16800
 * lawn.net.in("ft2"); // => 16200
 * ```
 */
export const siteArea = (site: SiteDescription): SiteArea => {
  const record = expectRecord(site, "site", "a record with parts");
  const door = checks();
  const parts = door.run(() => areasOf(record.parts, "parts"));
  const cutOuts = door.run(() => areasOf(record.cutOuts === undefined ? [] : record.cutOuts, "cutOuts"));
  if (parts?.length === 0) door.run(() => fail("missing", "parts", "an empty list", "at least one shape"));
  door.done();
  return siteAreaOf(parts as readonly NamedArea[], cutOuts as readonly NamedArea[]);
};

const areasOf = (input: unknown, path: string): readonly NamedArea[] => {
  if (input === undefined) return fail("missing", path, input, "a list of shapes");
  if (!Array.isArray(input)) return fail("type", path, input, "a list of shapes");
  const door = checks();
  const areas: NamedArea[] = [];
  for (let i = 0; i < input.length; i++) {
    const at = `${path}[${i}]`;
    const record = door.run(() => expectRecord(input[i], at, "a record that names its shape"));
    if (record === undefined) continue;
    const shape = record as unknown as SiteShape;
    const area = door.run(() => areaOfShape(shape), at);
    if (area !== undefined) areas.push(shape.name === undefined ? { area } : { name: shape.name, area });
  }
  door.done();
  return areas;
};
