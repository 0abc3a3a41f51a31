import { expectWithin } from "../../numeric/house.js";
import { exceeds, roundTo } from "../../numeric/index.js";
import { described } from "../../quantity/house.js";
import { expectQuantity, expectRecord, fail, outOfRange } from "../../quantity/index.js";
import {
  type Irradiance,
  number,
  optional,
  type Read,
  readRecord,
  type Time,
  timeOrNone,
  word,
} from "../read.js";

/** Takes a radiation, zero or more. */
export const irradiance: Read<Irradiance> = (input, path) =>
  input === undefined || input === null
    ? fail("missing", path, input, 'a radiation, such as quantity(22.07, "MJ/m2/d") or quantity(255, "W/m2")')
    : withinSun(
        expectQuantity(input, { dimension: "irradiance", of: "none", bound: "non-negative" }, path),
        path,
      );

/** The sun outside the air: 0.0820 MJ/m2/min (FAO 56, Gsc). No hour and no day on the ground has more. */
const withinSun = (sun: Irradiance, path: string): Irradiance =>
  expectWithin(
    sun,
    sun.in("MJ/m2/d"),
    path,
    { max: 118.08, unit: "MJ/m2/d" },
    "a radiation of {}, that of the sun outside the air; 1 MJ/m2/d is 11.57 W/m2",
  );

/** Angstrom's coefficients where none were found for the place. */
const angstrom = { a: 0.25, b: 0.5 } as const;

/** What is known of the sunshine: measured radiation; hours of bright sun; or only how far the temperatures lie apart. */
export type Sunlight =
  | { readonly solar: Irradiance }
  | { readonly sunshine: Time; readonly a?: number; readonly b?: number }
  | { readonly temperatures: "interior" | "coastal" };

/** The adjustment of the relation with the temperature range (50). */
export const byRange: Readonly<Record<"interior" | "coastal", number>> = { interior: 0.16, coastal: 0.19 };

/** Takes one of Angstrom's coefficients. */
export const coefficientA: Read<number | undefined> = optional(number({ min: 0, below: 1 }));
export const coefficientB: Read<number | undefined> = optional(number({ above: 0, max: 1 }));

const sunlightReaders = {
  solar: optional(irradiance),
  sunshine: optional(timeOrNone),
  a: coefficientA,
  b: coefficientB,
  temperatures: optional(word(["interior", "coastal"])),
};

/** A statement of the sunshine, read. */
export interface SunlightRead {
  readonly solar: Irradiance | undefined;
  readonly sunshine: Time | undefined;
  readonly a: number | undefined;
  readonly b: number | undefined;
  readonly temperatures: "interior" | "coastal" | undefined;
}

/** Takes one statement of the sunshine. */
export const readSunlight: Read<SunlightRead> = (input, path) => {
  const what = "one of solar; sunshine; temperatures";
  if (input === undefined) return fail("missing", path, input, what);
  const record = expectRecord(input, path, what);
  const light = readRecord(record, sunlightReaders, what, path);
  const given = ["solar", "sunshine", "temperatures"].filter((name) => record[name] !== undefined);
  if (given.length !== 1)
    fail(given.length === 0 ? "missing" : "conflict", path, described(given.join(", ") || "nothing"), what);
  if (light.sunshine === undefined && (light.a ?? light.b) !== undefined)
    fail("conflict", path, described("a or b"), "Angstrom's coefficients with sunshine only");
  return light;
};

/** Solar radiation, MJ/m2/d, from a statement that was read. */
export const solarOf = (
  light: SunlightRead,
  day: { readonly ra: number; readonly daylight: number; readonly range: number },
): number => {
  if (light.solar !== undefined) {
    const rs = light.solar.in("MJ/m2/d");
    return exceeds(rs, day.ra)
      ? outOfRange(
          "sunlight.solar",
          light.solar,
          { max: roundTo(day.ra, 0.01), unit: "MJ/m2/d" },
          "{}, what there is at the top of the atmosphere",
        )
      : rs;
  }
  if (light.sunshine !== undefined) {
    const n = light.sunshine.in("h");
    // A sunshine recorder that counts to the tenth of an hour may read so much more than the formula of daylight.
    if (n > day.daylight + 0.5)
      outOfRange(
        "sunlight.sunshine",
        light.sunshine,
        { max: roundTo(day.daylight, 0.1), unit: "h" },
        "{}, the daylight",
      );
    return ((light.a ?? angstrom.a) + ((light.b ?? angstrom.b) * n) / day.daylight) * day.ra;
  }
  return byRange[light.temperatures as keyof typeof byRange] * Math.sqrt(day.range) * day.ra;
};
