import { exceeds } from "../../numeric/index.js";
import { described, unitInWords, withoutUndefined } from "../../quantity/house.js";
import {
  allOf,
  checks,
  expectFields,
  expectNumber,
  expectOneOf,
  expectQuantity,
  expectText,
  fail,
  isUnit,
  outOfRange,
  type Quantity,
  quantityOf,
} from "../../quantity/index.js";
import { expectWaterTest, type MeasuringIncrement, mixingOrders, type WaterTest } from "../../tank/index.js";
import type { JobSprayer, JobSpreader } from "./job.js";

/** The sprayer of a job, read and checked. */
export interface ReadSprayer {
  readonly tank: Quantity<"volume", "spray">;
  readonly applicationVolume: Quantity<"volume/area", "spray">;
  readonly minimumLoad?: Quantity<"volume", "spray">;
  readonly loadSplit: "full then partial" | "even";
  readonly increments?: { readonly dry?: MeasuringIncrement; readonly liquid?: MeasuringIncrement };
  readonly mixingOrder: NonNullable<JobSprayer["mixingOrder"]>;
  readonly residualVolume?: Quantity<"volume", "spray">;
  readonly plumbingVolume?: Quantity<"volume", "spray">;
  readonly water?: WaterTest;
  readonly timeToEmpty?: Quantity<"time", "none">;
  readonly nozzle?: string;
  readonly pressure?: Quantity<"pressure", "none">;
  readonly speed?: Quantity<"length/time", "none">;
}

/** The spreader of a job, read and checked. */
export interface ReadSpreader {
  readonly name?: string;
  readonly swath?: Quantity<"length", "none">;
  readonly speed?: Quantity<"length/time", "none">;
}

const sprayerFields = [
  "tank",
  "applicationVolume",
  "minimumLoad",
  "loadSplit",
  "increments",
  "mixingOrder",
  "residualVolume",
  "plumbingVolume",
  "water",
  "timeToEmpty",
  "nozzle",
  "pressure",
  "speed",
] as const satisfies readonly (keyof JobSprayer)[];

const spreaderFields = ["name", "swath", "speed"] as const satisfies readonly (keyof JobSpreader)[];

/** The most that a name, a number of a certificate or a note may hold. */
const longestText = 200;

/** A text that fits on a sheet. */
export const shortText = (input: unknown, path: string): string => {
  const text = expectText(input, path, "text");
  return text.length > longestText ? outOfRange(path, text, { max: longestText, count: "characters" }) : text;
};

/** A volume that is stated without a substance, or as spray. */
const sprayVolume = (
  input: unknown,
  path: string,
  bound: "positive" | "non-negative",
): Quantity<"volume", "spray"> => {
  const { value, unit, of } = expectFields(input, ["value", "unit", "of", "dimension"], path, "a volume");
  if (of !== undefined && of !== "none" && of !== "spray")
    fail("substance/mismatch", `${path}.of`, of, "a volume of spray");
  return expectQuantity({ value, unit, of: "spray" }, { dimension: "volume", of: "spray", bound }, path);
};

/** What the scale and the jug can read: a unit and a step, for each. */
const readIncrements = (input: unknown, path: string): NonNullable<ReadSprayer["increments"]> => {
  const record = expectFields(input, ["dry", "liquid"], path, "what scale and jug can read");
  const step = (form: "dry" | "liquid"): MeasuringIncrement | undefined => {
    if (record[form] === undefined) return undefined;
    const at = `${path}.${form}`;
    const fields = expectFields(record[form], ["unit", "step"], at, "a unit and a step");
    const wanted = form === "dry" ? "mass" : "volume";
    return allOf({
      unit: () => {
        const unit = expectText(fields.unit, `${at}.unit`, "a unit");
        quantityOf(1, unit, "none", `${at}.unit`);
        return isUnit(unit, wanted) ? unit : fail("unit/mismatch", `${at}.unit`, unit, unitInWords(wanted));
      },
      step: () => expectNumber(fields.step, `${at}.step`, { above: 0 }),
    });
  };
  const { dry, liquid } = allOf({ dry: () => step("dry"), liquid: () => step("liquid") });
  return { ...(dry && { dry }), ...(liquid && { liquid }) };
};

const optional = <T>(
  input: unknown,
  path: string,
  read: (input: unknown, path: string) => T,
): T | undefined => (input === undefined ? undefined : read(input, path));

const positive = (input: unknown, path: string): Quantity<"volume", "spray"> =>
  sprayVolume(input, path, "positive");
const heldVolume = (input: unknown, path: string): Quantity<"volume", "spray"> =>
  sprayVolume(input, path, "non-negative");
const speedAt = (input: unknown, path: string): Quantity<"length/time", "none"> =>
  expectQuantity(input, { dimension: "length/time", of: "none", bound: "positive" }, path);
const pressureAt = (input: unknown, path: string): Quantity<"pressure", "none"> =>
  expectQuantity(input, { dimension: "pressure", of: "none", bound: "positive" }, path);
const timeAt = (input: unknown, path: string): Quantity<"time", "none"> =>
  expectQuantity(input, { dimension: "time", of: "none", bound: "non-negative" }, path);

/** The volume of spray per area; of a calibration it is told where that stands. */
const applicationVolumeAt = (input: unknown, path: string): Quantity<"volume/area", "spray"> => {
  const way = "a volume of spray over an area: of a calibration, asFinishedSpray(calibration).value";
  const { rate, of } = (typeof input === "object" ? (input ?? {}) : {}) as { rate?: unknown; of?: unknown };
  if (rate !== undefined) fail("type", path, described("the record of a calibration"), way);
  if (of === "water") fail("substance/mismatch", `${path}.of`, of, way);
  return expectQuantity(input, { dimension: "volume/area", of: "spray", bound: "positive" }, path);
};

/** Reads the sprayer of a job, or throws all that is wrong with it. */
export const readSprayer = (input: unknown): ReadSprayer => {
  const given = expectFields(input, sprayerFields, "sprayer", "a sprayer");
  const at =
    <T>(name: (typeof sprayerFields)[number], read: (input: unknown, path: string) => T) =>
    (): T | undefined =>
      optional(given[name], `sprayer.${name}`, read);
  const orders = ["consensus", ...mixingOrders.map(({ id }) => id)] as const;
  const read = allOf({
    tank: () => positive(given.tank, "sprayer.tank"),
    applicationVolume: () => applicationVolumeAt(given.applicationVolume, "sprayer.applicationVolume"),
    minimumLoad: at("minimumLoad", positive),
    loadSplit: at("loadSplit", (loadSplit, path) =>
      expectOneOf(loadSplit, ["full then partial", "even"], path),
    ),
    increments: at("increments", readIncrements),
    mixingOrder: at("mixingOrder", (id, path) => expectOneOf(id, orders, path)),
    residualVolume: at("residualVolume", heldVolume),
    plumbingVolume: at("plumbingVolume", heldVolume),
    water: at("water", (water, path) => {
      expectWaterTest(water, path);
      return water as WaterTest;
    }),
    timeToEmpty: at("timeToEmpty", timeAt),
    nozzle: at("nozzle", shortText),
    pressure: at("pressure", pressureAt),
    speed: at("speed", speedAt),
    room: () => expectRoom(given),
  });
  return withoutUndefined({
    tank: read.tank,
    applicationVolume: read.applicationVolume,
    minimumLoad: read.minimumLoad,
    increments: read.increments,
    residualVolume: read.residualVolume,
    plumbingVolume: read.plumbingVolume,
    water: read.water,
    timeToEmpty: read.timeToEmpty,
    nozzle: read.nozzle,
    pressure: read.pressure,
    speed: read.speed,
    loadSplit: read.loadSplit ?? "full then partial",
    mixingOrder: read.mixingOrder ?? "consensus",
  });
};

/** What the tank must hold beside what it cannot spray out; what cannot be read is told of by its own reader. */
const expectRoom = (given: Readonly<Partial<Record<keyof JobSprayer, unknown>>>): void => {
  const problems = checks();
  const liters = (name: "tank" | "minimumLoad" | "residualVolume" | "plumbingVolume"): number | undefined =>
    given[name] === undefined ? undefined : problems.run(() => heldVolume(given[name], name).in("L"));
  const tank = liters("tank");
  if (tank === undefined || tank === 0) return;
  const least = liters("minimumLoad") ?? 0;
  const residual = liters("residualVolume") ?? 0;
  const held = residual + (liters("plumbingVolume") ?? 0);
  allOf({
    least: () =>
      exceeds(least, tank) &&
      fail("conflict", "sprayer.minimumLoad", given.minimumLoad, "no more than the tank holds"),
    held: () => {
      const name = residual >= tank ? "residualVolume" : "plumbingVolume";
      return held >= tank && fail("conflict", `sprayer.${name}`, given[name], "less than the tank holds");
    },
  });
};

/** Reads the spreader of a job, or throws all that is wrong with it. */
export const readSpreader = (input: unknown): ReadSpreader => {
  const given = expectFields(input, spreaderFields, "spreader", "a spreader with its swath and speed");
  return withoutUndefined(
    allOf({
      name: () => optional(given.name, "spreader.name", shortText),
      swath: () =>
        optional(given.swath, "spreader.swath", (swath, path) =>
          expectQuantity(swath, { dimension: "length", of: "none", bound: "positive" }, path),
        ),
      speed: () => optional(given.speed, "spreader.speed", speedAt),
    }),
  );
};
