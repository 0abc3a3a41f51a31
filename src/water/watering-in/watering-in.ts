import { addHours, compareInstants, type Instant, instant } from "../../calendar/index.js";
import { roundedApart } from "../../numeric/house.js";
import { exceeds } from "../../numeric/index.js";
import { checks, type Finding, fail, outOfRange } from "../../quantity/index.js";
import { minutesFor } from "../depth/run-time.js";
import {
  depthOrNone,
  type Length,
  made,
  optional,
  type Rate,
  type Read,
  rate,
  readRecord,
  type Time,
  word,
} from "../read.js";
import { readRule, type WateringInRule } from "./watering-in-rule.js";

/** Water that came, or is forecast: a shower at its end, a watering when it stopped. */
export interface WaterEvent {
  readonly at: Instant;
  readonly depth: Length;
  readonly by: "rain" | "irrigation";
}

/** How an application stands to what its label states of water. */
export interface WateringIn {
  readonly type: "watering-in";
  readonly version: 1;
  /** `"nothing asked"` where the rule has no `least`; else whether it was there in time, may still come, or did not. */
  readonly state: "nothing asked" | "reached" | "to come" | "missed";
  /** Until when the leaf has to stay dry. */
  readonly dryUntil: Instant | null;
  /** Until when the water has to be there. */
  readonly by: Instant | null;
  /** When `least` was there. */
  readonly reachedAt: Instant | null;
  /** Water in the time that counts: from the end or `dryUntil` on, to `by`. */
  readonly received: Length;
  /** Water while the leaf had to stay dry. */
  readonly early: Length;
  /** What is still missing to `least`; 0 where nothing is, or nothing is asked. */
  readonly remaining: Length;
  /** What came above `most`, water that came too soon counted; 0 where nothing did, or none is stated. */
  readonly over: Length;
  /** How long the zone runs for what is missing; `null` without a rate. */
  readonly runTime: Time | null;
  /** Up to when water was counted. */
  readonly checkedUntil: Instant;
  /** What these figures say nothing of. */
  readonly notChecked: readonly string[];
  readonly findings: readonly Finding[];
}

const moment: Read<Instant> = (input, path) =>
  input === undefined
    ? fail("missing", path, input, "a moment with its offset")
    : instant(input as Instant, path);

const most = 10_000;

const events: Read<readonly WaterEvent[]> = (input, path) => {
  if (!Array.isArray(input))
    return fail("type", path, input, "a list of water that came; an empty one where none did");
  if (input.length > most) outOfRange(path, input, { max: most, count: "events" });
  const problems = checks();
  const found: WaterEvent[] = [];
  Array.from(input as readonly unknown[]).forEach((item, i) => {
    const one = problems.run(() =>
      readRecord(
        item,
        { at: moment, depth: depthOrNone, by: word(["rain", "irrigation"]) },
        "a record with at, depth and by",
        `${path}[${i}]`,
      ),
    );
    if (one !== undefined) found.push(one);
  });
  problems.done();
  return found.sort((a, b) => compareInstants(a.at, b.at));
};

const notChecked: readonly string[] = [
  "how wet the soil was before",
  "how fast the water came, and whether it ran off",
  "everything else on the label",
];

/**
 * Whether the water after an application was what its label states: enough, too much, too soon, in time; and how long to run
 * for what is missing.
 *
 * - `rule` as {@link wateringInRule} reads it, from the label
 * - `end` of the application; `water` rain and irrigation since then, or forecast, each with its moment; before `end` it does
 *   not count
 * - `until` the moment up to which the list of water is whole: what comes later is not known
 * - `rate` precipitation rate of the zone, for the run time of what is missing
 *
 * Depths are in the unit of `least`, else of `most`, else mm. It says nothing of an application as such: the label does.
 *
 * @throws RatewrightError `conflict` where `until` lies before `end`; `date`, `missing`, `range`, `unit/mismatch`, `type`, all
 * that are found; what {@link wateringInRule} throws
 *
 * Source: the rule is the caller's; addition.
 *
 * @example
 * ```ts
 * import { quantity, wateringIn, wateringInRule } from "ratewright";
 * const inch = (value: number) => quantity(value, "in");
 * const rule = wateringInRule({ least: inch(0.5), within: quantity(24, "h"), source: "label" });
 * const state = wateringIn({
 *   rule, end: "2026-06-03T09:00-05:00", until: "2026-06-03T20:00-05:00", rate: quantity(0.6, "in/h"),
 *   water: [{ at: "2026-06-03T15:30-05:00", depth: inch(0.2), by: "rain" }],
 * });
 * state.state; // => "to come"
 * state.by; // => "2026-06-04T09:00-05:00"
 * state.runTime?.in("min"); // => 30
 * ```
 */
export const wateringIn = (input: {
  readonly rule: WateringInRule;
  readonly end: Instant;
  readonly water: readonly WaterEvent[];
  readonly until: Instant;
  readonly rate?: Rate;
}): WateringIn => {
  const q = readRecord(
    input,
    { rule: readRule, end: moment, water: events, until: moment, rate: optional(rate) },
    "a record with rule, end, water and until",
  );
  if (compareInstants(q.until, q.end) < 0) fail("conflict", "until", q.until, `not before the end, ${q.end}`);
  const { rule } = q;
  const dryUntil = rule.notBefore === undefined ? null : addHours(q.end, rule.notBefore.in("h"));
  const by = rule.within === undefined ? null : addHours(q.end, rule.within.in("h"));
  const counted = q.water.filter(
    ({ at }) => compareInstants(at, q.end) >= 0 && compareInstants(at, q.until) <= 0,
  );
  const isEarly = ({ at }: WaterEvent): boolean => dryUntil !== null && compareInstants(at, dryUntil) < 0;
  const early = counted.filter(isEarly);
  const due = counted.filter(
    (event) => !isEarly(event) && (by === null || compareInstants(event.at, by) <= 0),
  );
  const unit = (rule.least ?? rule.most)?.unit ?? "mm";
  const as = (value: number): Length => made(value, unit, "length");
  const total = (list: readonly WaterEvent[]): number =>
    list.reduce((sum, { depth }) => sum + depth.in(unit as "in"), 0);
  const received = total(due);
  const least = rule.least?.in(unit as "in") ?? 0;
  const missing = exceeds(least, received) ? least - received : 0;
  const limit = rule.most?.in(unit as "in");
  // Water that came too soon is in the ground as well: it counts against the most, though not toward the least.
  const came = received + total(early);
  const over = limit !== undefined && exceeds(came, limit) ? came - limit : 0;
  const said = (value: number, stated = 0): string => `${roundedApart(value, stated, 3)(value)} ${unit}`;
  const closed = by !== null && compareInstants(q.until, by) >= 0;
  const state =
    rule.least === undefined ? "nothing asked" : missing === 0 ? "reached" : closed ? "missed" : "to come";
  return {
    type: "watering-in",
    version: 1,
    state,
    dryUntil,
    by,
    reachedAt: rule.least === undefined ? null : whenReached(due, least, unit),
    received: as(received),
    early: as(total(early)),
    remaining: as(missing),
    over: as(over),
    runTime: q.rate === undefined ? null : made(minutesFor(as(missing), q.rate, 1), "min", "time"),
    checkedUntil: q.until,
    notChecked: [...notChecked],
    findings: [
      ...(total(early) > 0 ? [tooSoon(rule, said(total(early)), dryUntil as Instant)] : []),
      ...(over > 0 ? [tooMuch(rule, said(came, limit))] : []),
      ...(state === "missed" ? [tooLittle(rule, said(received, least), by as Instant)] : []),
    ],
  };
};

/** The moment at which the water that counts came up to a depth. */
const whenReached = (due: readonly WaterEvent[], least: number, unit: string): Instant | null => {
  let sum = 0;
  for (const { at, depth } of due) {
    sum += depth.in(unit as "in");
    if (!exceeds(least, sum)) return at;
  }
  return null;
};

/** A figure of the rule, without the digits of a conversion. */
const ofRule = (depth: Length | undefined): string =>
  depth === undefined ? "" : `${Number(depth.value.toPrecision(7))} ${depth.unit}`;

const finding = (code: string, params: Finding["params"], text: string, source: string): Finding => ({
  code: `water/${code}`,
  severity: "warning",
  path: "water",
  params,
  text,
  source,
});

const tooSoon = (rule: WateringInRule, came: string, dryUntil: Instant): Finding =>
  finding(
    "water-too-soon",
    { came, dryUntil },
    `${came} of water came before ${dryUntil}, while the leaf had to stay dry. Read the label for what to do.`,
    rule.source,
  );

const tooMuch = (rule: WateringInRule, came: string): Finding =>
  finding(
    "too-much-water",
    { came, most: String(rule.most) },
    `${came} of water came, and ${rule.source} states ${ofRule(rule.most)} at most: product may have moved below the roots, or off the site.`,
    rule.source,
  );

const tooLittle = (rule: WateringInRule, came: string, by: Instant): Finding =>
  finding(
    "not-watered-in",
    { came, least: String(rule.least), by },
    `${came} of water came by ${by}, and ${rule.source} states ${ofRule(rule.least)} at least.`,
    rule.source,
  );
