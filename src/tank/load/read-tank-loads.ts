import {
  allOf,
  expectFields,
  expectFlag,
  expectNumber,
  expectOneOf,
  expectQuantity,
  fail,
  type NeutralSubstance,
  type Quantity,
} from "../../quantity/index.js";
import { eachOf, sprayOf } from "../inputs.js";
import { areaOf } from "../rate/amount-for.js";
import { loadSplits, mostLoads } from "./load-volumes.js";
import type { TankLoad, TankLoads } from "./tank-loads.js";

const fields = [
  "type",
  "version",
  "count",
  "loadSplit",
  "volume",
  "area",
  "mixedFor",
  "applicationVolume",
  "capacity",
  "areaPerTank",
  "smallestMix",
  "leftOver",
  "loads",
  "findings",
  "estimates",
] as const;

/** What amounts are measured out by. */
export type LoadPlan = Pick<
  TankLoads,
  "count" | "loadSplit" | "volume" | "mixedFor" | "capacity" | "areaPerTank" | "loads"
>;

type Area = Quantity<"area", NeutralSubstance>;

/**
 * Takes what `tankLoads` returned, or what JSON left of it, as far as amounts are measured out by it; read again, for
 * what comes from a store may have been changed.
 */
export const readTankLoads = (input: unknown, path: string): LoadPlan => {
  const plan = expectFields(input, fields, path, "what tankLoads returns");
  if (plan.type !== "tank-loads") fail("type", path, plan.type, '"tank-loads", of what tankLoads returns');
  const area = (name: "mixedFor" | "areaPerTank"): Area =>
    areaOf(plan[name], "non-negative", `${path}.${name}`);
  const read = allOf({
    loadSplit: () => expectOneOf(plan.loadSplit, loadSplits, `${path}.loadSplit`),
    volume: () => sprayOf(plan.volume, `${path}.volume`),
    mixedFor: () => area("mixedFor"),
    capacity: () => sprayOf(plan.capacity, `${path}.capacity`),
    areaPerTank: () => area("areaPerTank"),
    loads: () => eachOf(plan.loads, `${path}.loads`, "load", loadOf, mostLoads),
  });
  return { ...read, count: read.loads.length };
};

const loadOf = (input: unknown, at: string): TankLoad => {
  const load = expectFields(input, ["number", "volume", "area", "mixedFor", "full"], at, "a load");
  return allOf({
    number: () => expectNumber(load.number, `${at}.number`, { min: 1 }),
    volume: () =>
      expectQuantity(load.volume, { dimension: "volume", of: "spray", bound: "positive" }, `${at}.volume`),
    area: () => areaOf(load.area, "non-negative", `${at}.area`),
    mixedFor: () => areaOf(load.mixedFor, "non-negative", `${at}.mixedFor`),
    full: () => expectFlag(load.full, `${at}.full`),
  });
};
