import { roundedApart } from "../../numeric/house.js";
import { exceeds } from "../../numeric/index.js";
import {
  allOf,
  expectFields,
  type Finding,
  fail,
  numberIn,
  plainCopy,
  type Quantity,
  quantity,
  toldAt,
} from "../../quantity/index.js";
import {
  type Carrier,
  carried,
  eachOf,
  type Length,
  positive,
  type Share,
  type Speed,
  share,
} from "../inputs.js";
import { nozzleFlow } from "../volume/application-volume.js";
import { readTip } from "./tip-stamp.js";

/** The shares of the time between which a pulsed nozzle is run. */
export interface DutyRange {
  readonly least: Share;
  readonly most: Share;
}

/** A pulsed nozzle at a job. */
export interface PulseWidth {
  readonly type: "pulse-width";
  readonly version: 1;
  /** The share of the time that the nozzle is open. */
  readonly duty: Share;
  /** The speeds at which the volume is held between the duty limits. */
  readonly speeds: { readonly slowest: Speed; readonly fastest: Speed };
  readonly withinDuty: boolean;
  readonly findings: readonly Finding[];
}

/**
 * The duty cycle of a nozzle under pulse-width modulation, `duty = V v w / q`: the share of the time that it is open, so
 * that the pressure stays as it is and the flow follows the speed. The speeds at the duty limits are `v limit / duty`.
 *
 * It holds where the flow goes with the time open, which is nearly so for pulses of 10 to 20 a second.
 *
 * @param input - `full`, the flow of the nozzle held open, at the pressure of the job; `applicationVolume`, `speed` and
 *   `width` as in {@link applicationVolume}, of the same carrier; `duty`, the limits, 20 and 100 % where left out
 * @throws RatewrightError with every problem: `missing`, `range`, `conflict` (limits the wrong way round),
 *   `unit/mismatch`, `substance/mismatch`, `type`
 * Source: University of Georgia Cooperative Extension, Circular 1305 (typical range 20 to 100 %; at 20 % a fifth of the
 * flow); the range of 60 to 80 % at usual speed: Ontario sprayers101, How to size a nozzle for PWM.
 *
 * @example
 * ```ts
 * import { pulseWidth, quantity } from "ratewright";
 * const job = pulseWidth({
 *   full: quantity(0.4, "gal/min", "spray"),
 *   applicationVolume: quantity(15, "gal/acre", "spray"),
 *   speed: quantity(5, "mi/h"),
 *   width: quantity(20, "in"),
 * });
 * Number(job.duty.in("%").toFixed(1)); // => 63.1
 * Number(job.speeds.fastest.in("mi/h").toFixed(2)); // => 7.92
 * ```
 */
export const pulseWidth = <S extends Carrier>(input: {
  readonly full: Quantity<"volume/time", S>;
  readonly applicationVolume: Quantity<"volume/area", NoInfer<S>>;
  readonly speed: Speed;
  readonly width: Length;
  readonly duty?: DutyRange;
}): PulseWidth => {
  const given = plainCopy(input);
  expectFields(given, ["full", "applicationVolume", "speed", "width", "duty"]);
  const { full, flow, speed, limits } = allOf({
    full: () => carried(given.full, "full", "volume/time"),
    flow: () =>
      nozzleFlow({
        applicationVolume: given.applicationVolume as Quantity<"volume/area", S>,
        speed: given.speed,
        width: given.width,
      }),
    speed: () => (given.speed === undefined ? undefined : positive(given.speed, "speed", "length/time")),
    limits: () => dutyOf(given.duty),
  });
  if (flow.of !== full.of)
    fail(
      "substance/mismatch",
      "applicationVolume",
      given.applicationVolume,
      `a volume per area of ${full.of}, as the flow`,
    );
  const duty = (100 * numberIn(flow, full.unit)) / full.value;
  const usual = speed as Speed;
  return {
    type: "pulse-width",
    version: 1,
    duty: quantity(duty, "%"),
    speeds: { slowest: usual.times(limits.least / duty), fastest: usual.times(limits.most / duty) },
    withinDuty: !exceeds(limits.least, duty) && !exceeds(duty, limits.most),
    findings: dutyFindings(duty, limits),
  };
};

interface Limits {
  readonly least: number;
  readonly most: number;
}

const dutyOf = (input: unknown): Limits => {
  if (input === undefined) return { least: 20, most: 100 };
  const range = expectFields(input, ["least", "most"], "duty", "the least and the most duty");
  const { least, most } = allOf({
    least: () => share(range.least, "duty.least", 1).in("%"),
    most: () => share(range.most, "duty.most", 1).in("%"),
  });
  return least <= most ? { least, most } : fail("conflict", "duty.most", range.most, `${least} % or more`);
};

const dutyFindings = (duty: number, { least, most }: Limits): readonly Finding[] => {
  const beyond = exceeds(duty, most) ? most : exceeds(least, duty) ? least : exceeds(duty, 80) ? 80 : 60;
  const percent = roundedApart(duty, beyond, 3)(duty);
  if (exceeds(duty, most) || exceeds(least, duty)) {
    return [
      {
        code: exceeds(duty, most) ? "pulse/nozzle-too-small" : "pulse/nozzle-too-large",
        severity: "warning",
        params: { duty, least, most },
        text: `The nozzle would be open ${percent} % of the time, ${exceeds(duty, most) ? "more than" : "less than"} the ${exceeds(duty, most) ? most : least} % that the system takes: choose a ${exceeds(duty, most) ? "larger" : "smaller"} nozzle or another speed.`,
      },
    ];
  }
  if (!exceeds(60, duty) && !exceeds(duty, 80)) return [];
  return [
    {
      code: "pulse/outside-usual-duty",
      severity: "note",
      params: { duty },
      text: `The nozzle is open ${percent} % of the time. A published guide wants 60 to 80 % at the usual speed, to leave room for turns and slower ground.`,
      source: {
        title: "How to Size a Nozzle for Pulse Width Modulation (PWM)",
        publisher: "Ontario Ministry of Agriculture (sprayers101)",
        url: "http://sprayers101.com/pwm-nozzle-sizing/",
      },
    },
  ];
};

/** A tip size for pulse-width modulation. */
export interface PulseTip extends Omit<PulseWidth, "type" | "version"> {
  readonly code: string;
}

/**
 * Which tip sizes hold a volume per area under pulse-width modulation, from the one whose duty at the usual speed is
 * nearest to 70 %, the middle of the published 60 to 80 %, on. The flow of each size at the pressure of the job is by the
 * square-root rule from its rating at 40 psi.
 *
 * @param input - `sizes` as stamped (`readTip` reads them); `pressure` of the job; `applicationVolume` of water or of a
 *   spray as heavy as water; `speed`, `width`, `duty` as in {@link pulseWidth}
 * @returns the sizes within the duty limits; none where no size holds the volume
 * @throws RatewrightError with every problem, as {@link pulseWidth}
 * Source: as {@link pulseWidth}; the ranking: a rule of this library.
 *
 * @example
 * ```ts
 * import { pulseTips, quantity } from "ratewright";
 * const found = pulseTips({
 *   sizes: ["11003", "11004", "11005", "11008"],
 *   pressure: quantity(40, "psi"),
 *   applicationVolume: quantity(15, "gal/acre", "spray"),
 *   speed: quantity(5, "mi/h"),
 *   width: quantity(20, "in"),
 * });
 * found.map(({ code }) => code); // => ["04", "03", "05", "08"]
 * ```
 */
export const pulseTips = (input: {
  readonly sizes: readonly string[];
  readonly pressure: Quantity<"pressure", "none">;
  readonly applicationVolume: Quantity<"volume/area", "spray">;
  readonly speed: Speed;
  readonly width: Length;
  readonly duty?: DutyRange;
}): readonly PulseTip[] => {
  const given = expectFields(input, ["sizes", "pressure", "applicationVolume", "speed", "width", "duty"]);
  const { applicationVolume, speed, width, duty } = input;
  const pulsed = (gallons: number): Omit<PulseTip, "code"> => {
    const full = quantity(gallons, "gal/min", "spray");
    const { type, version, ...tip } = pulseWidth({
      full,
      applicationVolume,
      speed,
      width,
      ...(duty !== undefined && { duty }),
    });
    return tip;
  };
  const { sizes, pressure } = allOf({
    sizes: () =>
      eachOf(given.sizes, "sizes", "size", (size, at) => toldAt(at, "stamp", () => readTip(size as string))),
    pressure: () => positive(given.pressure, "pressure", "pressure"),
    // For any tip, to tell the problems of the rest with those of the sizes.
    rest: () => pulsed(1),
  });
  const found = sizes.map(
    ({ code, flow, pressure: rated }): PulseTip => ({
      code,
      ...pulsed(flow.in("gal/min") * Math.sqrt(pressure.in("psi") / rated.in("psi"))),
    }),
  );
  const off = ({ duty: open }: PulseTip): number => Math.abs(open.in("%") - 70);
  return found.filter(({ withinDuty }) => withinDuty).sort((a, b) => off(a) - off(b));
};
