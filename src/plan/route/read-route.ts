import type { CivilDate } from "../../calendar/index.js";
import { civilDateAt } from "../../ledger/house.js";
import { type ReadLimit, readFacts, readLimits } from "../../limits/house.js";
import type { ApplicationFacts } from "../../limits/index.js";
import { described } from "../../quantity/house.js";
import {
  type Checks,
  checks,
  expectFields,
  expectOneOf,
  expectQuantity,
  expectRecord,
  expectText,
  fail,
  type Quantity,
  quantityOf,
  RatewrightError,
  unitSystem,
  unreadable,
} from "../../quantity/index.js";
import { siteArea } from "../../site/index.js";
import type { JobApplicator, SheetUnits } from "../job/job.js";
import {
  type ReadSprayer,
  type ReadSpreader,
  readSprayer,
  readSpreader,
  shortText,
} from "../job/read-machines.js";
import { readProducts } from "../job/read-products.js";
import type { ReadSite } from "../job/read-site.js";
import { readTreatments } from "../job/read-treatments.js";
import type { ReadTreatment } from "../job/treatments.js";
import type { RefillRule } from "./fill-plan.js";
import { type ReadStop, readStops } from "./read-stops.js";
import type { RouteJob } from "./route-job.js";

/** A route, read and checked. */
export interface ReadRoute {
  readonly title: string;
  readonly date: CivilDate;
  readonly treatment: ReadTreatment;
  readonly sprayer?: ReadSprayer;
  readonly spreader: ReadSpreader;
  readonly hopper?: Quantity<"mass", "none">;
  readonly startWith?: Quantity<string, string>;
  readonly refill: RefillRule;
  readonly stops: readonly ReadStop[];
  readonly limits: readonly ReadLimit[];
  readonly facts: ApplicationFacts;
  readonly units: SheetUnits;
  readonly applicator: JobApplicator;
}

const fields = [
  "type",
  "version",
  "title",
  "date",
  "products",
  "mix",
  "spread",
  "sprayer",
  "spreader",
  "startWith",
  "refill",
  "stops",
  "limits",
  "facts",
  "units",
  "applicator",
] as const satisfies readonly (keyof RouteJob)[];

type Given = { readonly [K in (typeof fields)[number]]?: unknown };

/** A place in the treatment that the readers of a job know, as a place in the route. */
export const routePath = (path: string, method: "spray" | "spread"): string => {
  const inside = path.replace(/^treatments\[0\]\.?/, "");
  if (inside === path) return path;
  return method === "spray" ? inside || "mix" : inside === "" ? "spread" : `spread.${inside}`;
};

/** Runs a formula of a job, and tells its problems by the places of the route. */
export const onRoute = <T>(method: "spray" | "spread", run: () => T): T => {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof RatewrightError)) throw error;
    throw new RatewrightError(error.problems.map((p) => ({ ...p, path: routePath(p.path, method) })));
  }
};

const methodOf = (given: Given): "spray" | "spread" => {
  if ((given.mix === undefined) === (given.spread === undefined))
    return given.mix === undefined
      ? fail("missing", "mix", given.mix, "a mix for the tank, or spread for the hopper")
      : fail("conflict", "spread", described("mix and spread"), "only one of them: a route uses one machine");
  return given.mix === undefined ? "spread" : "spray";
};

/** The stops as one site, whose parts they are. */
const siteOf = (stops: readonly ReadStop[]): ReadSite | undefined => {
  if (stops.length === 0) return undefined;
  const named = new Map(stops.map(({ id, area }) => [id, area]));
  const parts = [...named].map(([name, area]) => ({ shape: "measured" as const, name, area }));
  return { name: `${stops.length} stops`, area: siteArea({ parts }), parts: named, shapes: new Map() };
};

const treatmentOf = (
  given: Given,
  method: "spray" | "spread",
  stops: readonly ReadStop[],
  problems: Checks,
): ReadTreatment | undefined => {
  const products = readProducts(given.products, problems);
  const stated: readonly unknown[] = Array.isArray(given.products) ? given.products : [];
  const ids = new Set(stated.map((product) => (product as { id?: unknown } | null)?.id));
  const spread = (): Readonly<Record<string, unknown>> =>
    expectFields(
      given.spread,
      ["product", "target", "rate", "passes", "setting"],
      "spread",
      "a product with its rate or a target",
    );
  const stuff = method === "spray" ? { mix: given.mix } : problems.run(spread);
  if (stuff === undefined) return undefined;
  const list = [{ id: "route", method, ...stuff }];
  const [treatment] =
    problems.run(() =>
      onRoute(method, () => {
        const inner = checks();
        const read = readTreatments(list, siteOf(stops), { sound: products, ids }, inner);
        inner.done();
        return read;
      }),
    ) ?? [];
  return treatment;
};

/** The spreader, without its hopper, which only a route has. */
const spreaderOf = (input: unknown): ReadSpreader => {
  const { hopper: _, ...rest } = expectRecord(input, "spreader", "a spreader with its hopper");
  return readSpreader(rest);
};

const hopperOf = (input: unknown): Quantity<"mass", "none"> => {
  const { hopper } = expectRecord(input, "spreader", "a spreader with its hopper");
  if (hopper === undefined) fail("missing", "spreader.hopper", hopper, "what the hopper holds");
  return expectQuantity(hopper, { dimension: "mass", of: "none", bound: "positive" }, "spreader.hopper");
};

/** The sprayer; a route has its own way to fill. */
const sprayerOf = (input: unknown): ReadSprayer => {
  if (input === undefined) fail("missing", "sprayer", input, "a sprayer, because a mix is sprayed");
  const { loadSplit } = expectRecord(input, "sprayer", "a sprayer");
  if (loadSplit !== undefined)
    fail(
      "conflict",
      "sprayer.loadSplit",
      loadSplit,
      "no loadSplit: each fill is a full tank, or what the rest of the route takes",
    );
  return readSprayer(input);
};

const startOf = (input: unknown, method: "spray" | "spread"): Quantity<string, string> => {
  const dimension = method === "spray" ? "volume" : "mass";
  const { value, unit, of } = expectFields(
    input,
    ["value", "unit", "of", "dimension"],
    "startWith",
    "an amount",
  );
  if (of !== undefined && of !== "none" && of !== (method === "spray" ? "spray" : "product"))
    fail("substance/mismatch", "startWith.of", of, method === "spray" ? "spray" : "product");
  const read = expectQuantity({ value, unit }, { dimension, of: "none", bound: "non-negative" }, "startWith");
  return quantityOf(read.value, read.unit, method === "spray" ? "spray" : "none", "startWith");
};

const applicatorOf = (input: unknown): JobApplicator => {
  const given = expectFields(input, ["name", "certificate"], "applicator", "the name, and the certificate");
  const { name, certificate } = given;
  return {
    ...(name !== undefined && { name: shortText(name, "applicator.name") }),
    ...(certificate !== undefined && { certificate: shortText(certificate, "applicator.certificate") }),
  };
};

const unitsOf = (stops: readonly ReadStop[]): SheetUnits =>
  stops.some(({ area }) => unitSystem(area.unit) === "metric") ? "metric" : "US customary";

/** Reads a route, whatever it is, and throws all that is wrong with it. */
export const readRoute = (input: unknown): ReadRoute => {
  const problems = checks();
  const top = expectRecord(input, "route", "a route");
  for (const problem of unreadable(top, "")) problems.add({ ...problem, path: problem.path || "route" });
  problems.done();
  const given: Given = top;
  // a job or an order in the place of a route is one mistake
  if (typeof given.type === "string" && given.type !== "route-job" && given.stops === undefined)
    fail("type", "type", given.type, '"route-job": a route, with its stops');
  problems.run(() => expectFields(top, fields, "", "a route"));
  const word = (name: "type" | "version", wanted: unknown, told: string): void => {
    if (given[name] !== wanted) problems.run(() => fail("type", name, given[name], told));
  };
  word("type", "route-job", '"route-job"');
  word("version", 1, "1");
  const title = problems.run(() => {
    expectText(given.title, "title", "a title");
    return shortText(given.title, "title");
  });
  const date = problems.run(() => civilDateAt(given.date, "date"));
  const stops = readStops(given.stops, problems);
  const method = problems.run(() => methodOf(given));
  const treatment = method && treatmentOf(given, method, stops, problems);
  const sprayer = method === "spray" ? problems.run(() => sprayerOf(given.sprayer)) : undefined;
  const spreader = given.spreader === undefined ? {} : (problems.run(() => spreaderOf(given.spreader)) ?? {});
  const hopper = method === "spread" ? problems.run(() => hopperOf(given.spreader)) : undefined;
  const startWith =
    given.startWith === undefined || method === undefined
      ? undefined
      : problems.run(() => startOf(given.startWith, method));
  const refill =
    given.refill === undefined
      ? "before a stop"
      : problems.run(() => expectOneOf(given.refill, ["before a stop", "when empty"], "refill"));
  const limits = readLimits(given.limits, problems);
  const facts = readFacts(given.facts, "facts", problems);
  const units =
    given.units === undefined
      ? unitsOf(stops)
      : problems.run(() => expectOneOf(given.units, ["US customary", "metric", "both"], "units"));
  const applicator =
    given.applicator === undefined ? {} : (problems.run(() => applicatorOf(given.applicator)) ?? {});
  problems.done();
  return {
    title: title as string,
    date: date as CivilDate,
    treatment: treatment as ReadTreatment,
    ...(sprayer && { sprayer }),
    spreader,
    ...(hopper && { hopper }),
    ...(startWith && { startWith }),
    refill: refill as RefillRule,
    stops,
    limits,
    facts,
    units: units as SheetUnits,
    applicator,
  };
};
