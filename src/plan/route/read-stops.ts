import { type Ledger, ledger } from "../../ledger/index.js";
import { type ReadLimit, readFacts, readLimits } from "../../limits/house.js";
import type { ApplicationFacts } from "../../limits/index.js";
import {
  type Checks,
  expectFields,
  expectFlag,
  expectList,
  expectQuantity,
  expectText,
  fail,
  type Quantity,
  shown,
} from "../../quantity/index.js";
import { type SiteDescription, siteArea } from "../../site/index.js";
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

const areaOf = ({ area, site }: Given, at: string, door: Checks): Quantity<"area", "none"> | undefined => {
  if (area !== undefined && site !== undefined)
    return door.run(() => fail("conflict", at, "area and site", "one of them"));
  if (site === undefined)
    return door.run(() =>
      area === undefined
        ? fail("missing", `${at}.area`, area, "the area that is treated, or a site with its shapes")
        : expectQuantity(area, { dimension: "area", of: "none", bound: "positive" }, `${at}.area`),
    );
  return door.run(() => {
    const { net } = siteArea(site as SiteDescription);
    return net.value > 0 ? net : fail("range", "", net, "more than zero");
  }, `${at}.site`);
};

const ledgerOf = (input: unknown, at: string, door: Checks): Ledger => {
  const none: Ledger = { type: "ledger", version: 1, entries: [] };
  if (input === undefined) return none;
  const read = door.run(() => {
    const given = expectFields(input, ["type", "version", "entries"], at, "a ledger");
    if (given.type !== "ledger") fail("type", `${at}.type`, given.type, '"ledger"');
    if (given.version !== 1) fail("type", `${at}.version`, given.version, "1");
    return given.entries;
  });
  return read === undefined ? none : (door.run(() => ledger(read as Ledger["entries"]), at) ?? none);
};

const readStop = (input: unknown, at: string, door: Checks): ReadStop | undefined => {
  const given: Given | undefined = door.run(() => expectFields(input, fields, at, "a stop"));
  if (given === undefined) return undefined;
  const text = (name: "name" | "address" | "turf"): string | undefined =>
    given[name] === undefined ? undefined : door.run(() => shortText(given[name], `${at}.${name}`));
  const id = door.run(() => {
    expectText(given.id, `${at}.id`, "a short name that no other stop has");
    return shortText(given.id, `${at}.id`);
  });
  const area = areaOf(given, at, door);
  const canFill =
    given.canFill === undefined || (door.run(() => expectFlag(given.canFill, `${at}.canFill`)) ?? true);
  const log = ledgerOf(given.ledger, `${at}.ledger`, door);
  const limits = readLimits(given.limits, door, `${at}.limits`);
  const facts = readFacts(given.facts, `${at}.facts`, door);
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

/** Reads the stops of a route; problems go to `door`. */
export const readStops = (input: unknown, door: Checks): readonly ReadStop[] => {
  const list = door.run(() => expectList(input, "stops", "stop")) ?? [];
  if (list.length > mostStops) {
    door.add({ code: "range", path: "stops", got: shown(list), expected: `${mostStops} stops or fewer` });
    return [];
  }
  const seen = new Set<unknown>();
  return list.flatMap((item, i) => {
    const stop = readStop(item, `stops[${i}]`, door);
    const named = (item as { id?: unknown } | null)?.id;
    const id = typeof named === "string" ? named.trim() : named;
    if (id !== undefined && seen.has(id)) {
      const expected = "a name that no other stop has";
      door.add({ code: "duplicate", path: `stops[${i}].id`, got: shown(id), expected });
    }
    seen.add(id);
    return stop === undefined ? [] : [stop];
  });
};
