import { exceeds } from "../../numeric/index.js";
import { allOf, checks, expectFields, expectText, fail } from "../../quantity/index.js";
import { eachOf, type Pressure, positive, type Speed } from "../inputs.js";
import { type DropletClass, dropletRank, expectDropletClass } from "./droplet-classes.js";
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
export interface DropletRange {
  readonly finest: DropletClass;
  readonly coarsest: DropletClass;
}

/** The name of a tip: its own, or that of its size. */
export const idOf = (tip: CandidateTip): string => tip.id ?? tip.code;

/** Takes three speeds that rise, or throws with every problem. */
export const speedsOf = (input: unknown): SpeedRange => {
  if (input === undefined || input === null)
    fail("missing", "speeds", input, "slowest, usual and fastest speed");
  const given = expectFields(input, ["slowest", "usual", "fastest"], "speeds");
  const speeds = allOf({
    slowest: () => positive(given.slowest, "speeds.slowest", "length/time"),
    usual: () => positive(given.usual, "speeds.usual", "length/time"),
    fastest: () => positive(given.fastest, "speeds.fastest", "length/time"),
  });
  const { slowest, usual, fastest } = speeds;
  const problems = checks();
  if (exceeds(slowest.in("km/h"), usual.in("km/h")))
    problems.run(() => fail("conflict", "speeds.slowest", slowest, `no more than the usual ${usual}`));
  if (exceeds(usual.in("km/h"), fastest.in("km/h")))
    problems.run(() => fail("conflict", "speeds.fastest", fastest, `no less than the usual ${usual}`));
  problems.done();
  return speeds;
};

/** Takes the classes that are asked for, or throws with every problem. */
export const dropletsOf = (input: DropletRange | undefined): DropletRange | undefined => {
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
  if (tips === undefined) return fail("missing", "tips", tips, "tips, or the pressures of a series");
  const seen = new Set<string>();
  return eachOf(tips, "tips", "tip", (tip, at) => {
    const read = candidateOf(tip, at);
    if (seen.has(idOf(read))) fail("duplicate", "tips", idOf(read), "a different id for each tip");
    seen.add(idOf(read));
    return read;
  });
};

const candidateOf = (input: unknown, path: string): CandidateTip => {
  const tip = expectFields(input, ["id", "code", "droplets", "lowest", "highest"], path, "a tip");
  const { id, code, lowest, highest, droplets } = allOf({
    id: () =>
      tip.id === undefined ? undefined : expectText(tip.id, `${path}.id`, "a text that names the tip"),
    code: () => sizeOf(tip.code, `${path}.code`),
    ...rangeReaders(tip, `${path}.`),
    droplets: () => (tip.droplets === undefined ? undefined : chartOf(tip.droplets, `${path}.droplets`)),
  });
  expectRising({ lowest, highest }, `${path}.`);
  return {
    ...(id === undefined ? {} : { id }),
    code,
    lowest,
    highest,
    ...(droplets === undefined ? {} : { droplets }),
  };
};

const sizeOf = (code: unknown, path: string): string =>
  nozzleSizes.find((one) => one.code === code)?.code ??
  fail("type", path, code, "a size of ISO 10625, such as 04");

const chartOf = (chart: unknown, path: string): NonNullable<CandidateTip["droplets"]> => {
  let before = 0;
  return eachOf(chart, path, "pressure with its class", (line, at) => {
    const { from, makes } = expectFields(line, ["from", "makes"], at, "a pressure and a class");
    const read = allOf({
      from: () => positive(from, `${at}.from`, "pressure"),
      makes: () => expectDropletClass(makes, `${at}.makes`),
    });
    const pressure = read.from.in("kPa");
    if (pressure <= before) fail("conflict", `${at}.from`, read.from, "pressures in rising order");
    before = pressure;
    return read;
  });
};
