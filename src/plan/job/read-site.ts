import { wholeSite } from "../../ledger/house.js";
import {
  type Checks,
  checks,
  expectFields,
  expectQuantity,
  expectText,
  fail,
  numberIn,
  outOfRange,
  type Quantity,
  quantityFrom,
  sum,
} from "../../quantity/index.js";
import { areaOf } from "../../site/house.js";
import { type SiteArea, type SiteDescription, type SiteShape, siteArea } from "../../site/index.js";

/** The lengths of a part by which a crew knows it: a rectangle has length and width. */
export interface PartMeasures {
  readonly part: string;
  readonly shape: string;
  readonly lengths: Readonly<Record<string, Quantity<"length", "none">>>;
}

/** The site of a job, measured: its total, and the area of each part that has a name. */
export interface ReadSite {
  readonly name: string;
  readonly area: SiteArea;
  /** The lengths that each named part was measured by, as the job states them. */
  readonly measures?: readonly PartMeasures[];
  /** How each named part is described; under the name of the whole site where it is one shape, and nothing is cut out. */
  readonly shapes: ReadonlyMap<string, SiteShape>;
  /** By name, before cut-outs. */
  readonly parts: ReadonlyMap<string, Quantity<"area", "none">>;
}

/** Reads the site of a job; what is wrong goes to `problems`. */
export const readSite = (input: unknown, problems: Checks): ReadSite | undefined => {
  const record = problems.run(() =>
    expectFields(input, ["name", "parts", "cutOuts"], "site", "a site with a name and parts"),
  );
  if (record === undefined) return undefined;
  const name = problems.run(() => expectText(record.name, "site.name", "the name of the site"));
  const { parts, cutOuts } = record as SiteDescription;
  const area = problems.run(() => siteArea({ parts, ...(cutOuts === undefined ? {} : { cutOuts }) }), "site");
  if (name === undefined || area === undefined) return undefined;
  const named = new Map<string, Quantity<"area", "none">>();
  for (const part of area.parts) if (part.name !== undefined) named.set(part.name, part.area);
  const shapes = new Map(
    parts.flatMap((part) => (part.name === undefined ? [] : [[part.name, part] as const])),
  );
  const [only] = parts;
  if (only !== undefined && parts.length === 1 && area.cutOuts.length === 0) shapes.set(wholeSite, only);
  return { name, area, parts: named, shapes, measures: parts.flatMap(measuresOf) };
};

/** The lengths that a part states, as far as they stand on it by name. */
const measuresOf = (part: SiteDescription["parts"][number]): readonly PartMeasures[] => {
  if (part.name === undefined) return [];
  const lengths = Object.entries(part).flatMap(([name, value]) => {
    if (typeof value !== "object" || value === null || !("unit" in value)) return [];
    const q = quantityFrom(value);
    return q.dimension === "length"
      ? [[name, expectQuantity(q, { dimension: "length", of: "none" }, name)] as const]
      : [];
  });
  return lengths.length === 0
    ? []
    : [{ part: part.name, shape: part.shape, lengths: Object.fromEntries(lengths) }];
};

/**
 * Takes a list of names of parts, or throws with the names that there are. Of a site that is itself at fault no name is
 * known; what else is wrong with the list is told all the same.
 */
export const expectParts = (input: unknown, site: ReadSite | undefined, path: string): readonly string[] => {
  if (!Array.isArray(input) || input.length === 0)
    return fail("type", path, input, "a list of names of parts");
  const problems = checks();
  input.forEach((name, i) => {
    problems.run(() => {
      if (site === undefined && typeof name !== "string")
        fail("type", `${path}[${i}]`, name, "the name of a part of the site");
      if (site !== undefined && !site.parts.has(name)) {
        const choices = [...site.parts.keys()];
        fail("missing", `${path}[${i}]`, name, "the name of a part of the site", { choices });
      }
      if (input.indexOf(name) !== i) fail("duplicate", `${path}[${i}]`, name, "each part once");
    });
  });
  problems.done();
  return input as readonly string[];
};

/** A part of the site and its area. */
export interface TreatedPart {
  readonly part: string;
  readonly area: Quantity<"area", "none">;
}

/** The parts that a treatment covers whole; none where it states an area of its own, or where cut-outs lie on them. */
export const treatedParts = (
  stated: { readonly area?: unknown; readonly parts?: readonly string[] | undefined },
  site: ReadSite,
): readonly TreatedPart[] => {
  if (stated.area !== undefined) return [];
  const named = stated.parts ?? [...site.parts.keys()];
  const whole =
    stated.parts !== undefined || (site.area.cutOuts.length === 0 && named.length === site.area.parts.length);
  return whole
    ? named.flatMap((part) => {
        const area = site.parts.get(part);
        return area === undefined ? [] : [{ part, area }];
      })
    : [];
};

/** The area of a treatment: what it states, the sum of its parts, or the whole site. */
export const treatedArea = (
  stated: { readonly area?: unknown; readonly parts?: readonly string[] | undefined },
  site: ReadSite | undefined,
  path: string,
): Quantity<"area", "none"> | undefined => {
  if (site === undefined)
    return stated.area === undefined ? undefined : areaOf(stated.area, path, ["treated"]);
  const whole =
    stated.parts === undefined
      ? site.area.net
      : sum(stated.parts.map((name) => site.parts.get(name) as Quantity<"area", "none">));
  if (stated.area === undefined) return whole;
  const area = areaOf(stated.area, path, ["treated"]);
  return area.compare(whole) > 0 && area.in("m2") > whole.in("m2") * (1 + 1e-9)
    ? outOfRange(
        path,
        area,
        { max: numberIn(whole, area.unit), unit: area.unit },
        "{}: the parts are no larger",
      )
    : area;
};
