import { fixedApart } from "../../numeric/house.js";
import { exceeds } from "../../numeric/index.js";
import { expectRecord, type Finding, fail, outOfRange } from "../../quantity/index.js";
import {
  depthOrNone,
  type Length,
  made,
  optional,
  type Rate,
  rate,
  readRecord,
  type Time,
  time,
  timeOrNone,
} from "../read.js";
import { runsOff } from "./run-time.js";

/** A run cut into cycles with time to soak in between. */
export interface CycleAndSoak {
  readonly type: "cycle-and-soak";
  readonly version: 1;
  readonly cycles: number;
  /** Each cycle, all of one length. */
  readonly cycle: Time;
  /** From the end of one cycle to the start of the next; 0 where there is one cycle. */
  readonly soak: Time;
  /** From the first start to the last stop. */
  readonly elapsed: Time;
  readonly findings: readonly Finding[];
}

/** Most cycles that are handed out: a run of more is no plan. */
const most = 24;

const cycleReaders = {
  runTime: time,
  rate,
  intake: rate,
  timeToRunoff: optional(time),
  storage: optional(depthOrNone),
  soak: optional(timeOrNone),
};

/**
 * Cuts a run into cycles that the ground takes in, with time to soak between: what keeps a slope or a clay from shedding
 * the water.
 *
 * - Where the precipitation rate `P` is not above the intake `f` there is one cycle.
 * - Else a cycle lasts no longer than the time to runoff: as measured (`timeToRunoff`), or `t = s / (P - f)` from the
 *   depth `s` that stands in the grass (`storage`, see {@link soilIntake})
 * - `n = ceil(T / t)` cycles of `T / n`; the soak is given, or `(P - f) T / (n f)`: what is left standing soaks in
 *
 * All times in minutes.
 *
 * @param input.runTime - `T`, in all
 * @throws RatewrightError `missing` where the rate is above the intake and neither `timeToRunoff` nor `storage` is given;
 * `conflict` for both; `infeasible` where more than 24 cycles are needed; `range`, `unit/mismatch`, `type`
 *
 * Source: the storage form: test procedure of the irrigation trade for controllers, as public programs carry it; cycles
 * and starts 30 to 60 min apart: Texas A&M AgriLife Extension.
 *
 * @example
 * ```ts
 * import { cycleAndSoak, quantity } from "ratewright";
 * const plan = cycleAndSoak({
 *   runTime: quantity(30, "min"), rate: quantity(1.5, "in/h"), intake: quantity(0.3, "in/h"), storage: quantity(0.2, "in"),
 * });
 * plan.cycles; // => 3
 * plan.cycle.in("min"); // => 10
 * plan.soak.in("min"); // => 40
 * ```
 */
export const cycleAndSoak = (input: {
  readonly runTime: Time;
  readonly rate: Rate;
  readonly intake: Rate;
  readonly timeToRunoff?: Time;
  readonly storage?: Length;
  readonly soak?: Time;
}): CycleAndSoak => {
  const { timeToRunoff, storage } = expectRecord(input, "input", "a record with runTime, rate and intake");
  const q = readRecord(
    input,
    {
      ...cycleReaders,
      storage: (value, path) => {
        if (timeToRunoff !== undefined && storage !== undefined)
          fail("conflict", path, value, "either timeToRunoff or storage, not both");
        return cycleReaders.storage(value, path);
      },
    },
    "a record with runTime, rate and intake",
  );
  const whole = q.runTime.in("min");
  if (!runsOff(q.rate, q.intake)) return plan(1, whole, 0, []);
  const [p, f] = [q.rate.in("mm/h"), q.intake.in("mm/h")];
  const longest = q.timeToRunoff?.in("min") ?? storedMinutes(q.storage, p, f);
  const cycles = Math.max(1, Math.ceil((whole / longest) * (1 - 1e-12)));
  if (!(cycles <= most)) {
    fail(
      "infeasible",
      "runTime",
      q.runTime,
      `a run of at most ${most} cycles: put down less water a day, or use nozzles with a lower rate`,
    );
  }
  const cycle = whole / cycles;
  const needed = cycles === 1 ? 0 : ((p - f) * cycle) / f;
  const soak = cycles === 1 ? 0 : (q.soak?.in("min") ?? needed);
  return plan(cycles, whole, soak, exceeds(needed, soak) ? [shortSoak(soak, needed)] : []);
};

const storedMinutes = (storage: Length | undefined, p: number, f: number): number => {
  if (storage === undefined) {
    return fail(
      "missing",
      "timeToRunoff",
      storage,
      "the time to runoff as measured, or storage (soilIntake has both for a soil and slope): the rate is above the intake",
    );
  }
  const minutes = (60 * storage.in("mm")) / (p - f);
  return minutes > 0
    ? minutes
    : outOfRange("storage", storage, { above: 0 }, "{}: the rate is above the intake");
};

const plan = (cycles: number, whole: number, soak: number, findings: readonly Finding[]): CycleAndSoak => ({
  type: "cycle-and-soak",
  version: 1,
  cycles,
  cycle: made(whole / cycles, "min", "time"),
  soak: made(soak, "min", "time"),
  elapsed: made(whole + (cycles - 1) * soak, "min", "time"),
  findings,
});

const shortSoak = (soak: number, needed: number): Finding => ({
  code: "water/short-soak",
  severity: "caution",
  path: "soak",
  params: { minutes: soak, needed },
  text: `The soak of ${fixedApart(soak, needed, 0)(soak)} min is shorter than the ${fixedApart(soak, needed, 0)(needed)} min that the standing water takes to soak in.`,
  source: "from the rate and the intake given",
});
