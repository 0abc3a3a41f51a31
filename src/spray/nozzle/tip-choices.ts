import {
  allOf,
  expectFields,
  likeQuantity,
  numberIn,
  type Quantity,
  quantity,
  quantityOf,
} from "../../quantity/index.js";
import { type Length, type Pressure, positive, type Share, type Speed } from "../inputs.js";
import { applicationVolume, nozzleFlow } from "../volume/application-volume.js";
import { densityConversionFactor, waterEquivalent } from "../volume/density.js";
import { type DropletClass, dropletRank } from "./droplet-classes.js";
import { ratedFlow, type SizeRating } from "./nozzle-sizes.js";
import { inRange, type PressureRange } from "./pressure.js";
import {
  type CandidateTip,
  candidates,
  type DropletRange,
  dropletsOf,
  idOf,
  type SpeedRange,
  speedsOf,
} from "./tip-candidates.js";

/** What a tip does at one speed. */
export interface TipStep {
  readonly at: "slowest" | "usual" | "fastest";
  readonly speed: Speed;
  /** At which it holds the wanted volume: what a rate controller sets. */
  readonly pressure: Pressure;
  readonly withinRating: boolean;
  /** By the chart of the tip; left out where it has none for this pressure. */
  readonly droplets?: DropletClass;
  readonly dropletsFit?: boolean;
  /** What is put down where the pressure stays as it is at the usual speed: without a controller. */
  readonly volumeAtUsualPressure: Quantity<"volume/area", "spray">;
}

/** A tip that can do the job at the usual speed. */
export interface TipChoice {
  /** 1 for the first choice. */
  readonly rank: number;
  readonly id: string;
  readonly code: string;
  readonly color: string;
  /** At the usual speed. */
  readonly pressure: Pressure;
  /** Between which the tip holds the volume within its rated pressure. */
  readonly holds: { readonly slowest: Speed; readonly fastest: Speed };
  /** How much of the wanted range of speeds that is. */
  readonly ofSpeedRange: Share;
  readonly steps: readonly TipStep[];
}

/** Tips for a job, ranked, and why the others are none. */
export interface TipChoices {
  readonly type: "tip-choices";
  readonly version: 1;
  /** Flow of water that a tip has to give at the usual speed. */
  readonly waterFlow: Quantity<"volume/time", "water">;
  readonly choices: readonly TipChoice[];
  readonly rejected: readonly { readonly id: string; readonly code: string; readonly reason: string }[];
  readonly checked: readonly string[];
  readonly notChecked: readonly string[];
}

interface Job {
  readonly volume: Quantity<"volume/area", "spray">;
  readonly speeds: SpeedRange;
  readonly spacing: Length;
  readonly waterFlow: Quantity<"volume/time", "water">;
  readonly droplets: DropletRange | undefined;
  readonly rating: SizeRating;
}

/**
 * Which tips put on a wanted volume over a range of speeds, at which pressure, ranked, and what each does
 * across the range.
 *
 * The flow that is needed, `q = V v w` (as water, by the density), sets the pressure at each tip,
 * `P = Pr (q / qr)^2`, with `qr` the flow of its size at the pressure `Pr` of the rating. A tip is a choice
 * where that pressure lies within its rating at the usual speed and, where droplet classes are asked for
 * and its chart knows them, where the class fits.
 *
 * Choices are ranked (a rule of this library, common practice, no source): the larger part of the speed
 * range held within the rating first; then droplets that are known to fit at more of the three speeds; then
 * the pressure at the usual speed nearest the middle of the rating, by ratio.
 *
 * The size alone says nothing of droplets: where no chart has the class at the pressure of the usual speed, it is
 * not checked, and `notChecked` names those tips. Nothing is rated outside its range.
 *
 * @param input.tips - the tips to choose from; or `pressures`, the rated range of a series that comes in
 * every ISO 10625 size
 * @param input.droplets - the finest and coarsest class that will do
 * @param input.density - of the solution; as water where left out
 * @param input.rating - of the sizes, `"3 bar"` where left out
 * @param input.applicationVolume - `V`, wanted on the ground
 * @throws RatewrightError with every problem: `missing`, `range`, `conflict`, `type`, `unit/mismatch`
 * Source: Cornell Cooperative Extension, Grape guidelines 7.6, 2024 (flow from volume, speed and spacing,
 * then the tip); sizes of ISO 10625.
 *
 * @example
 * ```ts
 * import { quantity, tipChoices } from "ratewright";
 * const found = tipChoices({
 *   applicationVolume: quantity(400, "L/ha", "spray"),
 *   speeds: {
 *     slowest: quantity(4, "km/h"),
 *     usual: quantity(5, "km/h"),
 *     fastest: quantity(6, "km/h"),
 *   },
 *   spacing: quantity(50, "cm"),
 *   pressures: { lowest: quantity(1.5, "bar"), highest: quantity(6, "bar") },
 * });
 * found.choices.map((tip) => tip.code); // => ["04", "05", "03"]
 * Number(found.choices[0]?.pressure.in("bar").toFixed(2)); // => 3.26
 * ```
 */
export const tipChoices = (input: {
  readonly applicationVolume: Quantity<"volume/area", "spray">;
  readonly speeds: SpeedRange;
  readonly spacing: Length;
  readonly tips?: readonly CandidateTip[];
  readonly pressures?: PressureRange;
  readonly droplets?: DropletRange;
  readonly density?: Quantity<"mass/volume", "none">;
  readonly rating?: SizeRating;
}): TipChoices => {
  const { job, tips } = readJob(input);
  const { droplets } = job;
  const found = tips.map((tip) => {
    const choice = choiceOf(tip, job);
    return { choice, tip, reason: reasonAgainst(choice, tip, job) };
  });
  const choices = ranked(found.filter(({ reason }) => reason === undefined));
  // Of the rejected the pressure is out already; only of the choices does the class matter.
  const blind = droplets
    ? choices.filter(({ steps }) => usualStep(steps).droplets === undefined).map(({ id }) => id)
    : [];
  return {
    type: "tip-choices",
    version: 1,
    waterFlow: job.waterFlow,
    choices: choices.map((choice, i) => ({ rank: i + 1, ...choice })),
    rejected: found.flatMap(({ choice, reason }) =>
      reason === undefined ? [] : [{ id: choice.id, code: choice.code, reason }],
    ),
    checked: [
      "the pressure of each tip",
      ...(droplets && blind.length < choices.length
        ? ["the droplet class at the usual speed of the tips whose chart has it"]
        : []),
    ],
    notChecked: [
      ...(blind.length > 0
        ? [`the droplet class at the usual speed of ${blind.join(", ")}: no chart has it at that pressure`]
        : []),
      ...(droplets ? [] : ["droplet classes: none were asked for"]),
      "fan angle, boom height and what the label requires",
    ],
  };
};

const fields = [
  "applicationVolume",
  "speeds",
  "spacing",
  "tips",
  "pressures",
  "droplets",
  "density",
  "rating",
] as const;

/** What is asked of the tips, and which there are. */
const readJob = (input: {
  readonly tips?: readonly CandidateTip[];
  readonly pressures?: PressureRange;
  readonly droplets?: DropletRange;
  readonly density?: Quantity<"mass/volume", "none">;
  readonly rating?: SizeRating;
}): { readonly job: Job; readonly tips: readonly CandidateTip[] } => {
  const given = expectFields(input, fields);
  const { rating = "3 bar", density } = input;
  const { volume, speeds, spacing, tips, droplets } = allOf({
    volume: () => positive(given.applicationVolume, "applicationVolume", "volume/area", "spray"),
    speeds: () => speedsOf(given.speeds),
    spacing: () => positive(given.spacing, "spacing", "length"),
    tips: () => candidates(input.tips, input.pressures),
    droplets: () => dropletsOf(input.droplets),
    density: () => (density === undefined ? 1 : densityConversionFactor(density)),
    rating: () => ratedFlow("01", rating),
  });
  const flow = nozzleFlow({ applicationVolume: volume, speed: speeds.usual, width: spacing });
  const waterFlow =
    density === undefined
      ? quantityOf<"volume/time", "water">(flow.value, flow.unit, "water", "flow")
      : waterEquivalent(flow, density);
  return { job: { volume, speeds, spacing, waterFlow, droplets, rating }, tips };
};

const usualStep = (steps: readonly TipStep[]): TipStep => steps[1] as TipStep;

/** The choices, the best first: see {@link tipChoices}. */
const ranked = (
  found: readonly { readonly choice: Omit<TipChoice, "rank">; readonly tip: CandidateTip }[],
): readonly Omit<TipChoice, "rank">[] => {
  const offMiddle = ({ choice, tip }: (typeof found)[number]): number => {
    const middle = Math.sqrt(tip.lowest.in("kPa") * tip.highest.in("kPa"));
    return Math.abs(Math.log(choice.pressure.in("kPa") / middle));
  };
  const fits = ({ choice }: (typeof found)[number]): number =>
    choice.steps.filter((step) => step.dropletsFit).length;
  return [...found]
    .sort(
      (a, b) =>
        b.choice.ofSpeedRange.in("%") - a.choice.ofSpeedRange.in("%") ||
        fits(b) - fits(a) ||
        offMiddle(a) - offMiddle(b),
    )
    .map(({ choice }) => choice);
};

const choiceOf = (tip: CandidateTip, job: Job): Omit<TipChoice, "rank"> => {
  const size = ratedFlow(tip.code, job.rating);
  const { unit } = tip.lowest;
  const perUsual = (numberIn(job.waterFlow, size.flow.unit) / size.flow.value) ** 2;
  const usual = numberIn(size.pressure, unit) * perUsual;
  const pressureAt = (speed: Speed): Pressure =>
    likeQuantity(tip.lowest, usual * (numberIn(speed, job.speeds.usual.unit) / job.speeds.usual.value) ** 2);
  const speedAt = (pressure: Pressure): Speed =>
    job.speeds.usual.times(Math.sqrt(numberIn(pressure, unit) / usual));
  const holds = { slowest: speedAt(tip.lowest), fastest: speedAt(tip.highest) };
  const steps = (["slowest", "usual", "fastest"] as const).map((at): TipStep => {
    const speed = job.speeds[at];
    const pressure = pressureAt(speed);
    const droplets = dropletsAt(tip, pressure);
    const flow = nozzleFlow({ applicationVolume: job.volume, speed: job.speeds.usual, width: job.spacing });
    return {
      at,
      speed,
      pressure,
      withinRating: inRange(tip, pressure.in("kPa")),
      ...(droplets === undefined ? {} : { droplets }),
      ...(droplets === undefined || job.droplets === undefined
        ? {}
        : { dropletsFit: fitting(droplets, job.droplets) }),
      volumeAtUsualPressure: applicationVolume({ flow, speed, width: job.spacing }),
    };
  });
  return {
    id: idOf(tip),
    code: tip.code,
    color: size.color,
    pressure: pressureAt(job.speeds.usual),
    holds,
    ofSpeedRange: quantity(100 * overlap(holds, job.speeds), "%"),
    steps,
  };
};

/** The share of the wanted speeds at which the tip holds the volume. */
const overlap = (holds: TipChoice["holds"], { slowest, fastest }: SpeedRange): number => {
  const [from, to] = [slowest.in("km/h"), fastest.in("km/h")];
  const [low, high] = [holds.slowest.in("km/h"), holds.fastest.in("km/h")];
  // One single speed is the usual one: a tip that does not hold it is rejected for its pressure.
  if (to - from <= 1e-9 * to) return 1;
  const held = (Math.min(high, to) - Math.max(low, from)) / (to - from);
  return held > 1 - 1e-9 ? 1 : Math.max(0, held);
};

const dropletsAt = (tip: CandidateTip, pressure: Pressure): DropletClass | undefined => {
  if (!inRange(tip, pressure.in("kPa"))) return undefined;
  const at = pressure.in("kPa") * (1 + 1e-9);
  const makes = tip.droplets?.filter(({ from }) => from.in("kPa") <= at);
  return makes?.[makes.length - 1]?.makes;
};

const fitting = (one: DropletClass, { finest, coarsest }: DropletRange): boolean => {
  const rank = dropletRank(one, "droplets");
  return rank >= dropletRank(finest, "droplets") && rank <= dropletRank(coarsest, "droplets");
};

const reasonAgainst = (choice: Omit<TipChoice, "rank">, tip: CandidateTip, job: Job): string | undefined => {
  const usual = usualStep(choice.steps);
  const at = `${Number(usual.pressure.value.toPrecision(3))} ${usual.pressure.unit}`;
  if (!usual.withinRating) {
    return usual.pressure.in("kPa") > tip.highest.in("kPa")
      ? `too small: it would need ${at}, and is rated to ${tip.highest}`
      : `too large: it would need ${at}, and is rated from ${tip.lowest}`;
  }
  return usual.dropletsFit === false
    ? `at ${at} it makes ${usual.droplets}, outside ${job.droplets?.finest} to ${job.droplets?.coarsest}`
    : undefined;
};
