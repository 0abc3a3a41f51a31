import { exceeds } from "../../numeric/index.js";
import {
  allOf,
  expectFields,
  expectOneOf,
  fail,
  type NeutralSubstance,
  numberIn,
  outOfRange,
  type Quantity,
} from "../../quantity/index.js";
import type { FinishedSpray } from "../../spray/index.js";
import { applicationVolumeOf, sprayOf } from "../inputs.js";
import { areaOf } from "../rate/amount-for.js";
import { type LoadSplit, loadSplits } from "./load-volumes.js";

const fields = [
  "area",
  "applicationVolume",
  "capacity",
  "density",
  "loadSplit",
  "loadSize",
  "leastLoad",
  "residualVolume",
  "plumbingVolume",
] as const;

type Spray = Quantity<"volume", "spray">;

/** What `tankLoads` is asked for, read. */
export interface LoadInput {
  readonly area: Quantity<"area", NeutralSubstance>;
  readonly spray: FinishedSpray<"volume/area">;
  readonly capacity: Spray;
  readonly loadSplit: LoadSplit;
  readonly leastLoad: Spray | undefined;
  readonly residualVolume: Spray | undefined;
  readonly plumbingVolume: Spray | undefined;
  readonly loadSize: Spray | undefined;
}

/** Takes what `tankLoads` is asked for, or throws with every problem of it. */
export const expectLoadInput = (input: unknown): LoadInput => {
  const given = expectFields(input, fields);
  const volume = (path: "leastLoad" | "residualVolume" | "plumbingVolume"): Spray | undefined =>
    given[path] === undefined ? undefined : sprayOf(given[path], path, "non-negative");
  return allOf({
    area: () => areaOf(given.area, "positive"),
    spray: () => applicationVolumeOf(given.applicationVolume, given.density),
    capacity: () => sprayOf(given.capacity, "capacity"),
    loadSplit: () =>
      given.loadSplit === undefined
        ? "full then partial"
        : expectOneOf(given.loadSplit, loadSplits, "loadSplit"),
    leastLoad: () => volume("leastLoad"),
    residualVolume: () => volume("residualVolume"),
    plumbingVolume: () => volume("plumbingVolume"),
    loadSize: () => loadSizeOf(given.loadSize, given.loadSplit),
  });
};

const loadSizeOf = (input: unknown, loadSplit: unknown): Spray | undefined => {
  if (loadSplit !== "fixed size") {
    if (input === undefined) return undefined;
    return fail("conflict", "loadSize", input, 'no size of the loads, or the loadSplit "fixed size"');
  }
  if (input === undefined)
    fail("missing", "loadSize", input, 'a volume of spray, because the loadSplit is "fixed size"');
  return sprayOf(input, "loadSize");
};

/** What the tank keeps, and what tank and hoses keep together, in the unit of the tank. */
export const heldBack = ({
  capacity,
  residualVolume,
  plumbingVolume,
}: LoadInput): { readonly dead: number; readonly held: number } => {
  const read = (volume: Spray | undefined): number =>
    volume === undefined ? 0 : numberIn(volume, capacity.unit);
  const dead = read(residualVolume);
  const held = dead + read(plumbingVolume);
  if (held >= capacity.value) {
    const [path, volume] =
      dead >= capacity.value
        ? (["residualVolume", residualVolume] as const)
        : (["plumbingVolume", plumbingVolume] as const);
    outOfRange(
      path,
      volume,
      { below: path === "residualVolume" ? capacity.value : capacity.value - dead, unit: capacity.unit },
      "{}: more leaves no room in the tank",
    );
  }
  return { dead, held };
};

/** The size of the loads in the unit of the tank, where a tank with its residual volume takes it; of a full tank by itself. */
export const loadSizeIn = ({ loadSize, capacity }: LoadInput, dead: number): number => {
  if (loadSize === undefined) return capacity.value;
  const size = numberIn(loadSize, capacity.unit);
  if (exceeds(size, capacity.value - dead)) {
    outOfRange(
      "loadSize",
      loadSize,
      { max: capacity.value - dead, unit: capacity.unit },
      "{}: the tank holds no more",
    );
  }
  return size;
};
