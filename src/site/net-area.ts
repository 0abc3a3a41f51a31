import { checks, expectRecord, fail, quantity } from "../quantity/index.js";
import { type Area, areaOf } from "./lengths.js";

/** An area with the name that people on the site give it. */
export interface NamedArea {
  readonly name?: string;
  readonly area: Area;
}

/** The areas of a site: the whole, what is cut out of it, and what remains to be treated. */
export interface SiteArea {
  readonly type: "site-area";
  readonly version: 1;
  /** The sum of the parts. */
  readonly gross: Area;
  /** The sum of what is cut out; 0 where nothing is. */
  readonly cutOut: Area;
  /** What remains: `gross - cutOut`. */
  readonly net: Area;
  /** The parts as they were given, for a list on paper. */
  readonly parts: readonly NamedArea[];
  readonly cutOuts: readonly NamedArea[];
}

/**
 * The area of a site from its parts, less what is cut out of it: house, drive, beds, bunkers.
 *
 * `net = sum of parts - sum of cutOuts`, in the unit of the first part. Areas above zero; names and the areas
 * themselves are kept. The parts must not overlap and the cut-outs must lie inside them: sums cannot tell.
 * Cut-outs as large as the parts (to one part in 10^9) leave 0.
 *
 * @throws RatewrightError `range` where the cut-outs are larger than the parts, and for an area not above zero;
 * `missing`, `type`, `unit/mismatch`, `substance/mismatch`, `not-finite`; every area that is not right is reported
 *
 * Source: Purdue University turf tips, "How big is your lawn?", 2014; University of Maryland Extension, "Calculation
 * example": both subtract what is no turf.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { netArea } from "ratewright/site";
 * const site = netArea({
 *   parts: [{ name: "practice pitch", area: quantity(12400, "ft2") }],
 *   cutOuts: [{ name: "long-jump pit", area: quantity(300, "ft2") }],
 * });
 * site.net.in("ft2"); // => 12100
 * ```
 */
export const netArea = (site: {
  readonly parts: readonly NamedArea[];
  readonly cutOuts?: readonly NamedArea[];
}): SiteArea => {
  const record = expectRecord(site, "site", "a record with parts");
  const door = checks();
  const parts = door.run(() => namedAreas(record.parts, "parts"));
  const cutOuts = door.run(() => namedAreas(record.cutOuts === undefined ? [] : record.cutOuts, "cutOuts"));
  if (parts?.length === 0) door.run(() => fail("missing", "parts", "an empty list", "at least one part"));
  door.done();
  return siteAreaOf(parts as readonly NamedArea[], cutOuts as readonly NamedArea[]);
};

/** The record from areas that were checked; at least one part. */
export const siteAreaOf = (parts: readonly NamedArea[], cutOuts: readonly NamedArea[]): SiteArea => {
  // the unit is one of area: the areas were checked
  const unit = (parts[0] as NamedArea).area.unit as "m2";
  const total = (areas: readonly NamedArea[]): number =>
    areas.reduce((sum, { area }) => sum + area.in(unit), 0);
  const gross = total(parts);
  const cutOut = total(cutOuts);
  const remains = gross - cutOut;
  const nothing = Math.abs(remains) <= 1e-9 * gross;
  if (remains < 0 && !nothing) {
    fail("range", "cutOuts", `${cutOut} ${unit}`, `no more than the parts, ${gross} ${unit}`);
  }
  return {
    type: "site-area",
    version: 1,
    gross: quantity(gross, unit),
    cutOut: quantity(cutOut, unit),
    net: quantity(nothing ? 0 : remains, unit),
    parts,
    cutOuts,
  };
};

const namedAreas = (input: unknown, path: string): readonly NamedArea[] => {
  if (input === undefined) return fail("missing", path, input, "a list of areas");
  if (!Array.isArray(input)) return fail("type", path, input, "a list of areas");
  const door = checks();
  const areas: NamedArea[] = [];
  for (let i = 0; i < input.length; i++) {
    const at = `${path}[${i}]`;
    const record = door.run(() =>
      expectRecord(input[i], at, "a record with area, and a name where it has one"),
    );
    if (record === undefined) continue;
    const named = door.run(() => nameOf(record, at));
    const area = door.run(() => areaOf(record.area, `${at}.area`));
    if (area !== undefined && named !== undefined) areas.push({ ...named, area });
  }
  door.done();
  return areas;
};

/** The name of a part, where it has one. */
export const nameOf = (record: Readonly<Record<string, unknown>>, at: string): { readonly name?: string } => {
  const { name } = record;
  if (name === undefined) return {};
  return typeof name === "string"
    ? { name }
    : fail("type", at === "" ? "name" : `${at}.name`, name, "a text");
};
