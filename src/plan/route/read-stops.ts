import type { Ledger } from "../../ledger/index.js";
import { type ReadLimit, readFacts, readLimits } from "../../limits/house.js";
import type { ApplicationFacts } from "../../limits/index.js";
import { described } from "../../quantity/house.js";
import {
  type Checks,
  expectFields,
  expectFlag,
  expectList,
  expectName,
  expectQuantity,
  fail,
  outOfRange,
  type Quantity,
  rangeProblem,
  shown,
} from "../../quantity/index.js";
import { type SiteDescription, siteArea } from "../../site/index.js";
import { ledgerOf } from "../job/read-log.js";
import { shortText } from "../job/read-machines.js";
import type { RouteStop } from "./route-job.js";

/** A stop, read and checked. */
export interface ReadStop {
  readonly id: string;
  readonly path: string;
  readonly name: string;
  readonly address?: string;
  readonly turf?: string;
  readonly area: Quantity<"area", "none">;
  readonly canFill: boolean;
  readonly ledger: Ledger;
  readonly limits: readonly ReadLimit[];
  readonly facts: ApplicationFacts;
}

const fields = [
  "id",
  "name",
  "address",
  "turf",
  "area",
  "site",
  "canFill",
  "ledger",
  "limits",
  "facts",
] as const satisfies readonly (keyof RouteStop)[];

type Given = { readonly [K in (typeof fields)[number]]?: unknown };

const areaOf = (
  { area, site }: Given,
  at: string,
  problems: Checks,
): Quantity<"area", "none"> | undefined => {
  if (area !== undefined && site !== undefined)
    return problems.run(() => fail("conflict", at, described("area and site"), "one of them"));
  if (site === undefined)
    return problems.run(() =>
      area === undefined
        ? fail("missing", `${at}.area`, area, "the area that is treated, or a site with its shapes")
        : expectQuantity(area, { dimension: "area", of: "none", bound: "positive" }, `${at}.area`),
    );
  return problems.run(() => {
    const { net } = siteArea(site as SiteDescription);
    return net.value > 0 ? net : outOfRange("", net, { above: 0 });
  }, `${at}.site`);
};

const readStop = (input: unknown, at: string, problems: Checks): ReadStop | undefined => {
  const given: Given | undefined = problems.run(() => expectFields(input, fields, at, "a stop"));
  if (given === undefined) return undefined;
  const text = (name: "name" | "address" | "turf"): string | undefined =>
    given[name] === undefined ? undefined : problems.run(() => shortText(given[name], `${at}.${name}`));
  const id = problems.run(() => {
    expectName(given.id, `${at}.id`, "a short name that no other stop has");
    return shortText(given.id, `${at}.id`);
  });
  const area = areaOf(given, at, problems);
  const canFill =
    given.canFill === undefined || (problems.run(() => expectFlag(given.canFill, `${at}.canFill`)) ?? true);
  const log = ledgerOf(given.ledger, `${at}.ledger`, problems);
  const limits = readLimits(given.limits, problems, `${at}.limits`);
  const facts = readFacts(given.facts, `${at}.facts`, problems);
  const [name, address, turf] = [text("name"), text("address"), text("turf")];
  if (id === undefined || area === undefined) return undefined;
  return {
    id,
    path: at,
    name: name ?? id,
    ...(address !== undefined && { address }),
    ...(turf !== undefined && { turf }),
    area,
    canFill,
    ledger: log,
    limits,
    facts,
  };
};

/** A day has no more stops. */
const mostStops = 1000;

/** Reads the stops of a route; what is wrong goes to `problems`. */
export const readStops = (input: unknown, problems: Checks): readonly ReadStop[] => {
  const list = problems.run(() => expectList(input, "stops", "stop")) ?? [];
  if (list.length > mostStops) {
    problems.add(rangeProblem("stops", shown(list), { max: mostStops, count: "stops" }));
    return [];
  }
  const seen = new Set<unknown>();
  return list.flatMap((item, i) => {
    const stop = readStop(item, `stops[${i}]`, problems);
    const id = (item as { id?: unknown } | null)?.id;
    if (id !== undefined && seen.has(id)) {
      const expected = "a name that no other stop has";
      problems.add({ code: "duplicate", path: `stops[${i}].id`, got: shown(id), expected });
    }
    seen.add(id);
    return stop === undefined ? [] : [stop];
  });
};
