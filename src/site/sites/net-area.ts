import { described } from "../../quantity/house.js";
import {
  checks,
  expectFields,
  expectList,
  expectQuantity,
  fail,
  outOfRange,
  Quantity,
  quantity,
} from "../../quantity/index.js";
import { type Area, areaOf, type GroundArea } from "../areas.js";
import { nameOf } from "./area-of-shape.js";

/** An area with the name that people on the site give it. */
export interface NamedArea {
  readonly name?: string;
  readonly area: Area;
  /** The area as a map shows it, where a slope was given. */
  readonly plan?: Quantity<"area", "plan">;
}

/** An area as {@link netArea} takes it: also one that is tagged as treated or as gross. */
export interface AreaPart {
  readonly name?: string;
  readonly area: GroundArea | Quantity<"area", "gross">;
  readonly plan?: Quantity<"area", "plan">;
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
 * themselves are kept. The parts must not overlap and the cut-outs must lie inside them: sums cannot tell. Where
 * corners are known, a polygon with `holes` can ({@link polygonArea}).
 * Cut-outs as large as the parts (to one part in 10^9) leave 0.
 *
 * Two parts cannot have one name, for a job and a ledger find a part by it; cut-outs can, and names may be left out.
 *
 * An area may be tagged `treated` or `gross`; the tag is dropped. A plan area is refused: {@link surfaceArea}
 * brings it to the ground.
 *
 * @throws RatewrightError `range` where the cut-outs are larger than the parts, and for an area not above zero;
 * `duplicate` for a second part of one name; `missing`, `type`, `unit/mismatch`, `substance/mismatch`,
 * `not-finite`; every area that is not right is reported
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
  readonly parts: readonly AreaPart[];
  readonly cutOuts?: readonly AreaPart[];
}): SiteArea => areasOfSite(site, namedArea);

/** What a part is found by: in a job, in a ledger, under a limit. */
const nameOfItsOwn = "a name that no other part has, or no name";

/** More shapes than these are no site. */
const mostShapes = 10_000;

/** The parts and the cut-outs of a record, each read by `read`, and their sums. */
export const areasOfSite = (site: unknown, read: (item: unknown, path: string) => NamedArea): SiteArea => {
  const problems = checks();
  // a site that was computed here is one too: its sums are worked out again
  const computed = Object(site).type === "site-area" ? ["type", "version", "gross", "cutOut", "net"] : [];
  const known = ["parts", "cutOuts", ...computed];
  const record: { readonly parts?: unknown; readonly cutOuts?: unknown } =
    site !== null && typeof site === "object" && !Array.isArray(site)
      ? site
      : expectFields(site, known, "site", "a record with parts");
  problems.run(() => expectFields(record, known, ""));
  const list = (input: unknown, path: string): readonly NamedArea[] => {
    const all = checks();
    if (Array.isArray(input) && input.length > mostShapes)
      return outOfRange(path, described(`${input.length} shapes`), { max: mostShapes, count: "shapes" });
    const areas = expectList(input, path, "shape").map((item, i) =>
      all.run(() => read(item, `${path}[${i}]`)),
    );
    if (path === "parts") {
      const seen = new Set<string>();
      areas.forEach((part, i) => {
        if (part?.name === undefined) return;
        const { name } = part;
        if (seen.has(name)) all.run(() => fail("duplicate", `parts[${i}].name`, name, nameOfItsOwn));
        seen.add(name);
      });
    }
    all.done();
    return areas as readonly NamedArea[];
  };
  const parts = problems.run(() => list(record.parts, "parts"));
  const cutOuts = problems.run(() => {
    const given = record.cutOuts;
    return given === undefined || (Array.isArray(given) && given.length === 0) ? [] : list(given, "cutOuts");
  });
  problems.done();
  return siteAreaOf(parts as readonly NamedArea[], cutOuts as readonly NamedArea[]);
};

/** The record from areas that were checked; at least one part. */
const siteAreaOf = (parts: readonly NamedArea[], cutOuts: readonly NamedArea[]): SiteArea => {
  // the unit is one of area: the areas were checked
  const unit = (parts[0] as NamedArea).area.unit as "m2";
  const total = (areas: readonly NamedArea[]): number =>
    areas.reduce((sum, { area }) => sum + area.in(unit), 0);
  const gross = total(parts);
  const cutOut = total(cutOuts);
  const remains = gross - cutOut;
  const nothing = Math.abs(remains) <= 1e-9 * gross;
  if (remains < 0 && !nothing) {
    outOfRange(
      "cutOuts",
      described(`${cutOut} ${unit}`),
      { max: gross, unit },
      "{}, which is what the parts are",
    );
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

const namedArea = (input: unknown, at: string): NamedArea => {
  const problems = checks();
  const expected = "a record with area, and a name where it has one";
  const record: { readonly area?: unknown; readonly plan?: unknown } & Readonly<Record<string, unknown>> =
    typeof input === "object" && input !== null && !Array.isArray(input) && !("unit" in input)
      ? { ...input }
      : fail("type", at, input, expected);
  problems.run(() => expectFields(record, ["name", "area", "plan"], at));
  const named = problems.run(() => nameOf(record, at));
  const area = problems.run(() => areaOf(record.area, `${at}.area`, ["treated", "gross"]));
  const plan =
    record.plan === undefined
      ? undefined
      : problems.run(() =>
          expectQuantity(record.plan, { dimension: "area", of: "plan", bound: "positive" }, `${at}.plan`),
        );
  problems.done();
  return {
    ...named,
    area: area as Area,
    ...(plan === undefined ? {} : { plan: new Quantity(plan.value, plan.unit, "plan", "area") }),
  };
};
