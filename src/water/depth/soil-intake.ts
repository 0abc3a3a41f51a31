import { exceeds } from "../../numeric/index.js";
import { type FactSource, frozen, outOfRange, quantity } from "../../quantity/index.js";
import {
  type Length,
  made,
  type PerTime,
  perTime,
  type Rate,
  rate,
  readRecord,
  type Slope,
  slope,
  type Time,
  word,
} from "../read.js";

/** Soils by texture, as the table of intake has them. */
export type IntakeSoil = keyof typeof intakeInPerHour;

const intakeInPerHour = {
  clay: 0.1,
  "silty clay": 0.15,
  "clay loam": 0.2,
  loam: 0.35,
  "sandy loam": 0.4,
  "loamy sand": 0.5,
  sand: 0.6,
} as const;

/** Water that may stand on the ground before it runs, inches: on 0 to 3, 4 to 6, 7 to 12 and over 12 % of slope. */
const storageIn: Readonly<Record<IntakeSoil, readonly [number, number, number, number]>> =
  /* @__PURE__ */ frozen({
    clay: [0.2, 0.15, 0.1, 0.1],
    "silty clay": [0.23, 0.19, 0.16, 0.13],
    "clay loam": [0.26, 0.22, 0.18, 0.15],
    loam: [0.3, 0.25, 0.21, 0.17],
    "sandy loam": [0.33, 0.29, 0.24, 0.2],
    "loamy sand": [0.36, 0.3, 0.26, 0.22],
    sand: [0.4, 0.35, 0.3, 0.25],
  });

const soils = Object.keys(intakeInPerHour) as readonly IntakeSoil[];

/** What a soil takes in, and what may stand on it at a slope. */
export interface SoilIntake {
  readonly type: "soil-intake";
  readonly version: 1;
  readonly soil: IntakeSoil;
  /** The upper end of the slope class, percent; `null` for the steepest. */
  readonly slopeUpTo: number | null;
  /** The basic intake rate, that of a wet soil. */
  readonly intake: Rate;
  /** The depth that stands in the grass before it runs. */
  readonly storage: Length;
  readonly source: FactSource;
}

/**
 * The basic intake rate of a soil, and the depth that stands in the grass on a slope before it runs off: a start where
 * nothing was measured. Compaction, thatch and dry spots change both; watch the first run.
 *
 * - `soil` by texture; `slope` as a grade, `quantity(5, "% grade")`, zero or more. Between two classes the steeper counts
 *
 * @throws RatewrightError `type`, `range`, `missing`, `unit/mismatch`
 *
 * Source: the table of the irrigation trade's test procedure for controllers, as two public programs carry it: intake and
 * level ground in both, the slopes in one, typed twice. The procedure itself was not read; one cell (clay, 7 to 12 %) is
 * 0.12 in from memory and 0.10 in the program and here.
 *
 * @example
 * ```ts
 * import { quantity, soilIntake } from "ratewright";
 * const lawn = soilIntake({ soil: "clay loam", slope: quantity(5, "% grade") });
 * lawn.intake.in("in/h"); // => 0.2
 * lawn.storage.in("in"); // => 0.22
 * ```
 */
export const soilIntake = (input: { readonly soil: IntakeSoil; readonly slope: Slope }): SoilIntake => {
  const q = readRecord(input, { soil: word(soils), slope }, "a record with soil and slope");
  const grade = q.slope.in("% grade");
  const ends = [3, 6, 12] as const;
  const found = ends.findIndex((end) => !exceeds(grade, end));
  const place = found < 0 ? 3 : found;
  return {
    type: "soil-intake",
    version: 1,
    soil: q.soil,
    slopeUpTo: ends[place] ?? null,
    intake: quantity(intakeInPerHour[q.soil], "in/h"),
    storage: quantity(storageIn[q.soil][place] as number, "in"),
    source: "test procedure of the irrigation trade for controllers, as public programs carry it",
  };
};

/**
 * How long a zone runs before water stands and runs off, by Horton's curve of infiltration:
 * `t = (f0 - P + fc ln((f0 - fc) / (P - fc))) / (P b)`.
 *
 * - `P` the precipitation rate; it must lie above `fc` (below, nothing ever runs off) and below `f0`
 * - `f0` intake of the dry soil at the start, `fc` basic intake of the wet soil, `b` how fast the one falls to the other,
 *   per time
 *
 * The water that the soil has taken is counted, not the time that has passed: the soil wets as fast as the rain brings it.
 * Nothing stands in the grass yet; {@link soilIntake} has a depth for that. The source fits it to bare soil and asks to
 * shorten the run on turf.
 *
 * @param input.initial - `f0`
 * @param input.decay - `b`
 * @throws RatewrightError `range` where `P` is not between `fc` and `f0`; `missing`, `unit/mismatch`, `type`
 *
 * Source: J. Hung, "How long can you irrigate without runoff?", Grounds Maintenance (the equation as printed there).
 *
 * @example
 * ```ts
 * import { quantity, timeToRunoff } from "ratewright";
 * const soil = { initial: quantity(3, "in/h"), basic: quantity(0.3, "in/h"), decay: quantity(4, "1/h") };
 * Number(timeToRunoff({ ...soil, rate: quantity(1, "in/h") }).in("min").toFixed(1)); // => 36.1
 * timeToRunoff({ ...soil, rate: quantity(0.25, "in/h") }); // => throws range
 * ```
 */
export const timeToRunoff = (input: {
  readonly rate: Rate;
  readonly initial: Rate;
  readonly basic: Rate;
  readonly decay: PerTime;
}): Time => {
  const q = readRecord(
    input,
    { rate, initial: rate, basic: rate, decay: perTime },
    "a record with rate, initial, basic, decay",
  );
  const [p, f0, fc, b] = [q.rate.in("mm/h"), q.initial.in("mm/h"), q.basic.in("mm/h"), q.decay.in("1/h")];
  if (f0 <= fc)
    outOfRange(
      "initial",
      q.initial,
      { above: fc, unit: "mm/h" },
      "{}: an intake at the start above the basic one",
    );
  if (p <= fc)
    outOfRange(
      "rate",
      q.rate,
      { above: fc, unit: "mm/h" },
      "{}, the basic intake: below it no water runs off, however long it runs",
    );
  if (p >= f0)
    outOfRange(
      "rate",
      q.rate,
      { below: f0, unit: "mm/h" },
      "{}, the intake at the start: above it water runs off at once",
    );
  return made((60 * (f0 - p + fc * Math.log((f0 - fc) / (p - fc)))) / (p * b), "min", "time");
};
