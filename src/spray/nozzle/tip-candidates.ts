import { allOf, checks, expectFields, expectRecord, fail } from "../../quantity/index.js";
import { type Pressure, positive, type Speed } from "../inputs.js";
import { type DropletClass, dropletRank } from "./droplet-classes.js";
import { nozzleSizes } from "./nozzle-sizes.js";
import { expectRising, type PressureRange, rangeReaders } from "./pressure.js";

/** A tip that may be bought: its size, its rated pressures and, from its maker's chart, its droplets. */
export interface CandidateTip extends PressureRange {
  /** Tells tips of one size apart; the code of the size where left out. */
  readonly id?: string;
  /** ISO 10625 size, such as "04". */
  readonly code: string;
  /** The droplet class from each pressure on, in rising order. */
  readonly droplets?: readonly { readonly from: Pressure; readonly makes: DropletClass }[];
}

/** The slowest, usual and fastest speed of a job. */
export interface SpeedRange {
  readonly slowest: Speed;
  readonly usual: Speed;
  readonly fastest: Speed;
}

/** The finest and the coarsest class that will do. */
export interface Droplets {
  readonly finest: DropletClass;
  readonly coarsest: DropletClass;
}

/** The name of a tip: its own, or that of its size. */
export const idOf = (tip: CandidateTip): string => tip.id ?? tip.code;

/** Takes three speeds that rise, or throws with every problem. */
export const speedsOf = (input: SpeedRange): SpeedRange => {
  if (typeof input !== "object" || input === null)
    fail("missing", "speeds", input, "slowest, usual and fastest speed");
  const speeds = allOf({
    slowest: () => positive(input.slowest, "speeds.slowest", "length/time"),
    usual: () => positive(input.usual, "speeds.usual", "length/time"),
    fastest: () => positive(input.fastest, "speeds.fastest", "length/time"),
  });
  const { slowest, usual, fastest } = speeds;
  const door = checks();
  if (slowest.in("km/h") > usual.in("km/h"))
    door.run(() => fail("conflict", "speeds.slowest", slowest, `no more than the usual ${usual}`));
  if (usual.in("km/h") > fastest.in("km/h"))
    door.run(() => fail("conflict", "speeds.fastest", fastest, `no less than the usual ${usual}`));
  door.done();
  return speeds;
};

/** Takes the classes that are asked for, or throws with every problem. */
export const dropletsOf = (input: Droplets | undefined): Droplets | undefined => {
  if (input === undefined) return undefined;
  expectFields(input, ["finest", "coarsest"], "droplets");
  const ranks = allOf({
    finest: () => dropletRank(input.finest, "droplets.finest"),
    coarsest: () => dropletRank(input.coarsest, "droplets.coarsest"),
  });
  if (ranks.finest > ranks.coarsest)
    fail("conflict", "droplets.coarsest", input.coarsest, `no finer than ${input.finest}`);
  return input;
};

/** The tips that are given, or one of every size with the pressures of a series; throws with every problem. */
export const candidates = (
  tips: readonly CandidateTip[] | undefined,
  pressures: PressureRange | undefined,
): readonly CandidateTip[] => {
  if (pressures !== undefined && tips !== undefined) {
    fail("conflict", "tips", tips, "tips, or the pressures of a series, but not both");
  }
  if (pressures !== undefined) {
    expectFields(pressures, ["lowest", "highest"], "pressures");
    const range = allOf(rangeReaders(pressures, "pressures."));
    expectRising(range, "pressures.");
    return nozzleSizes.map(({ code }) => ({ code, ...range }));
  }
  const list: readonly unknown[] =
    tips ?? fail("missing", "tips", tips, "tips, or the pressures of a series");
  if (!Array.isArray(list)) fail("type", "tips", list, "a list of tips");
  if (list.length === 0) fail("missing", "tips", "an empty list", "at least one tip");
  const door = checks();
  // Not map, which skips the holes of a list.
  const read = Array.from(list, (tip, i) => door.run(() => candidateOf(tip as CandidateTip, `tips[${i}]`)));
  door.done();
  const ids = (read as readonly CandidateTip[]).map(idOf);
  const twice = ids.find((id, i) => ids.indexOf(id) < i);
  if (twice !== undefined) fail("duplicate", "tips", twice, "an id of its own for every tip");
  return read as readonly CandidateTip[];
};

const candidateOf = (tip: CandidateTip, path: string): CandidateTip => {
  expectFields(tip, ["id", "code", "droplets", "lowest", "highest"], path, "a tip");
  const { lowest, highest, droplets } = allOf({
    id: () =>
      tip.id === undefined || isText(tip.id) ? tip.id : fail("type", `${path}.id`, tip.id, "a text"),
    code: () => sizeOf(tip.code, `${path}.code`),
    ...rangeReaders(tip, `${path}.`),
    droplets: () => chartOf(tip.droplets, `${path}.droplets`),
  });
  expectRising({ lowest, highest }, `${path}.`);
  return {
    ...(tip.id === undefined ? {} : { id: tip.id }),
    code: tip.code,
    lowest,
    highest,
    ...(droplets === undefined ? {} : { droplets }),
  };
};

const isText = (input: unknown): boolean => typeof input === "string" && input !== "";

const sizeOf = (code: unknown, path: string): string =>
  nozzleSizes.find((one) => one.code === code)?.code ??
  fail(code === undefined ? "missing" : "type", path, code, "a size of ISO 10625, such as 04");

const chartOf = (chart: CandidateTip["droplets"], path: string): CandidateTip["droplets"] => {
  if (chart === undefined) return undefined;
  if (!Array.isArray(chart)) fail("type", path, chart, "a list of pressures and classes");
  if (chart.length === 0) fail("missing", path, "an empty list", "at least one pressure with its class");
  const door = checks();
  let before = 0;
  // Not map, which skips the holes of a list.
  const lines = Array.from(chart as readonly unknown[], (line, i) =>
    door.run(() => {
      const { from, makes } = expectRecord(line, `${path}[${i}]`, "a pressure and a class");
      const read = allOf({
        from: () => positive(from, `${path}[${i}].from`, "pressure"),
        makes: () => dropletRank(makes, `${path}[${i}].makes`),
      });
      const at = read.from.in("kPa");
      if (at <= before) fail("conflict", `${path}[${i}].from`, read.from, "pressures in rising order");
      before = at;
      return { from: read.from, makes: makes as DropletClass };
    }),
  );
  door.done();
  return lines as NonNullable<CandidateTip["droplets"]>;
};
