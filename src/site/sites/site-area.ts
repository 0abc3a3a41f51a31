import { checks, expectRecord } from "../../quantity/index.js";
import { readShape } from "./area-of-shape.js";
import { areasOfSite, type SiteArea } from "./net-area.js";
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
 * are kept, and may be left out; two parts cannot have one name, two cut-outs can. The parts must not overlap and
 * the cut-outs must lie inside them: sums cannot tell. A polygon with `holes` of its own can.
 *
 * A part may have a `slope`, with `measured` to say where its measures were taken: the sums are of the ground,
 * and the part keeps its plan area beside it.
 *
 * @throws RatewrightError with every problem of the whole site, each with its place such as `parts[1].width`; `range`
 *   at `cutOuts` where they are larger than the parts; `duplicate` for a second part of one name; `text`
 *
 * Source: as {@link netArea}.
 *
 * @example
 * ```ts
 * import { siteArea } from "ratewright/site";
 * const lawn = siteArea({
 *   parts: [
 *     { name: "bowling green", shape: "square", side: { value: 120, unit: "ft" } },
 *     { name: "bank", shape: "measured", area: { value: 2400, unit: "ft2" }, slope: "4:1", measured: "plan" },
 *   ],
 *   cutOuts: [
 *     { name: "pavilion", shape: "rectangle", length: { value: 30, unit: "ft" }, width: { value: 20, unit: "ft" } },
 *   ],
 * });
 * Math.round(lawn.gross.in("ft2")); // => 16874
 * Math.round(lawn.net.in("ft2")); // => 16274
 * ```
 */
export const siteArea = (site: SiteDescription): SiteArea =>
  areasOfSite(site, (item, at) => {
    const problems = checks();
    const record = expectRecord(item, at, "a record that names its shape");
    const shape = problems.run(() => readShape(record), at);
    problems.done();
    return shape as NonNullable<typeof shape>;
  });
