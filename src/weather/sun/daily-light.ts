import { exceeds } from "../../numeric/index.js";
import { described } from "../../quantity/house.js";
import {
  allOf,
  expectFields,
  expectList,
  expectNumber,
  expectQuantity,
  fail,
  outOfRange,
  type Quantity,
} from "../../quantity/index.js";

/** Light for growth over one day. */
export interface DailyLight {
  readonly type: "daily-light";
  readonly version: 1;
  /** Moles of photons of 400 to 700 nm on a square meter in the day. */
  readonly molPerSquareMeter: number;
  /** Readings without a figure: each counts as dark, so that the sum may be too low. */
  readonly missing: number;
}

const seconds = 3600;

/**
 * The daily light integral: the photosynthetic light that falls on a square meter in a day.
 *
 * `DLI = sum of PPFD x time`; with hourly readings in µmol/(m2 s) it is `0.0036 x their sum`, in mol/m2 a day.
 *
 * Measure where the grass grows: in the shade of the stand or the trees. Readings of an open roof say nothing of it.
 *
 * @param input.ppfdMicromol - readings in µmol/(m2 s) at even steps over one day; `null` where there is none
 * @param input.everyMinutes - the step; 60 where it is left out
 * @throws RatewrightError `range` for readings that make more or less than one day, or a reading below 0 or above 4,000
 * µmol/(m2 s) (full sun is some 2,000, common practice, no source); `missing`, `not-finite`, `type`
 * Source: definition; a maker of light meters prints 1 µmol/(m2 s) through 24 h as 0.0864 mol/m2.
 *
 * @example
 * ```ts
 * import { dailyLightIntegral } from "ratewright";
 * const hours = [0, 0, 0, 0, 0, 0, 40, 180, 400, 700, 950, 1100, 1150, 1100, 900, 650, 400, 180, 50, 0, 0, 0, 0, 0];
 * dailyLightIntegral({ ppfdMicromol: hours }).molPerSquareMeter; // => 28.08
 * ```
 */
export const dailyLightIntegral = (input: {
  readonly ppfdMicromol: readonly (number | null)[];
  readonly everyMinutes?: number;
}): DailyLight => {
  const fields = expectFields(input, ["ppfdMicromol", "everyMinutes"]);
  const { readings, step } = allOf({
    readings: () => expectList(fields.ppfdMicromol, "ppfdMicromol", "reading"),
    step: () =>
      fields.everyMinutes === undefined
        ? 60
        : expectNumber(fields.everyMinutes, "everyMinutes", { min: 1, max: 120 }),
  });
  if (exceeds(Math.abs(readings.length * step - 1440), 1e-6)) {
    const got = `${readings.length} readings of ${step} minutes`;
    outOfRange(
      "ppfdMicromol",
      got,
      { min: Math.round(1440 / step), max: Math.round(1440 / step), count: "readings" },
      "one whole day: {}",
    );
  }
  let [sum, missing] = [0, 0];
  readings.forEach((reading, i) => {
    if (reading === null) missing += 1;
    else sum += expectNumber(reading, `ppfdMicromol[${i}]`, { min: 0, max: 4000 });
  });
  if (missing === readings.length)
    fail("missing", "ppfdMicromol", described("no reading"), "at least one reading");
  return {
    type: "daily-light",
    version: 1,
    molPerSquareMeter: (sum * step * (seconds / 60)) / 1e6,
    missing,
  };
};

/**
 * The daily light integral from the radiation of the sun in a day, as a weather station reports it.
 *
 * `DLI = Rs p f`, `Rs` in MJ/m2, `p` the share of the energy that lies between 400 and 700 nm, `f` micromoles of photons in
 * a joule of it
 *
 * @param input.radiation - of the day, in MJ/m2
 * @param input.parShare - 50 % where it is left out; it changes with haze and clouds
 * @param input.micromolPerJoule - 4.6 where it is left out; 4.57 and 4.55 (220 kJ/mol) are used as well
 * @throws RatewrightError `range`, `missing`, `unit/mismatch`, `type`
 * Source: R package bigleaf, `Rg.to.PPFD` (0.5 and 4.6, together 2.3); 220 kJ/mol: Gutschick 2016, as the R package
 * leafoptimizer repeats it.
 *
 * @example
 * ```ts
 * import { lightFromRadiation, quantity } from "ratewright";
 * lightFromRadiation({ radiation: quantity(20, "MJ/m2") }).molPerSquareMeter; // => 46
 * ```
 */
export const lightFromRadiation = (input: {
  readonly radiation: Quantity<"radiant exposure", "none">;
  readonly parShare?: Quantity<"1", "none">;
  readonly micromolPerJoule?: number;
}): DailyLight => {
  const fields = expectFields(input, ["radiation", "parShare", "micromolPerJoule"]);
  const { energy, share, photons } = allOf({
    energy: () => energyOf(fields.radiation),
    share: () => shareOfLight(fields.parShare),
    photons: () =>
      fields.micromolPerJoule === undefined
        ? 4.6
        : expectNumber(fields.micromolPerJoule, "micromolPerJoule", { min: 3, max: 6 }),
  });
  return { type: "daily-light", version: 1, molPerSquareMeter: (energy * share * photons) / 100, missing: 0 };
};

const energyOf = (input: unknown): number => {
  if (input === undefined) return fail("missing", "radiation", input, "the radiation of the day, in MJ/m2");
  if (Object(input).unit === "W/m2")
    fail("unit/mismatch", "radiation", input, 'the sum of the day: mean.times(quantity(1, "d")) gives it');
  const exposure = { dimension: "radiant exposure", of: "none", bound: "non-negative" } as const;
  const radiation = expectQuantity(input, exposure, "radiation");
  const energy = radiation.in("MJ/m2");
  return exceeds(energy, 50)
    ? outOfRange("radiation", radiation, { max: 50, unit: "MJ/m2" }, "{} in a day")
    : energy;
};

const shareOfLight = (input: unknown): number => {
  if (input === undefined) return 50;
  const share = expectQuantity(input, { dimension: "1", of: "none", bound: "positive" }, "parShare");
  return exceeds(share.in("%"), 100) ? outOfRange("parShare", share, { max: 100, unit: "%" }) : share.in("%");
};
