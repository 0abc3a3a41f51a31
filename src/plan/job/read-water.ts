import { type Instant, instant } from "../../calendar/index.js";
import { described } from "../../quantity/house.js";
import {
  allOf,
  type Checks,
  checks,
  expectFields,
  expectOneOf,
  expectQuantity,
  fail,
  outOfRange,
  type Quantity,
} from "../../quantity/index.js";
import type { WaterEvent } from "../../water/index.js";
import type { JobWater, JobWaterEvent } from "./job.js";
import { expectParts, type ReadSite } from "./read-site.js";

/** One watering or one rain, read and checked. */
export interface ReadWaterEvent extends WaterEvent {
  readonly known: JobWaterEvent["known"];
  readonly parts?: readonly string[];
}

/** Rain and irrigation after the work, read and checked. */
export interface ReadWater {
  readonly events: readonly ReadWaterEvent[];
  readonly until: Instant;
  /** The parts of the site; "" for one without a name, which only water on the whole site reaches. */
  readonly ground: readonly string[];
}

const waterFields = ["events", "until"] as const satisfies readonly (keyof JobWater)[];
const eventFields = [
  "at",
  "depth",
  "by",
  "known",
  "parts",
] as const satisfies readonly (keyof JobWaterEvent)[];

/** More than this is no list of a visit. */
const mostEvents = 1000;

/** A moment with its offset. */
export const momentAt = (input: unknown, path: string): Instant =>
  typeof input === "string"
    ? instant(input, path)
    : fail("type", path, input, 'a date and time, such as "2026-06-08T15:30-05:00"');

/** What the irrigation puts down. */
export const irrigationRateAt = (input: unknown, path: string): Quantity<"length/time", "none"> =>
  expectQuantity(input, { dimension: "length/time", of: "none", bound: "positive" }, path);

const readEvent = (input: unknown, path: string, site: ReadSite | undefined): ReadWaterEvent => {
  const given = expectFields(input, eventFields, path, "an irrigation or a rain");
  const { parts, ...event } = allOf({
    at: () => momentAt(given.at, `${path}.at`),
    depth: () =>
      expectQuantity(
        given.depth,
        { dimension: "length", of: "none", bound: "non-negative" },
        `${path}.depth`,
      ),
    by: () => expectOneOf(given.by, ["rain", "irrigation"], `${path}.by`),
    known: () => expectOneOf(given.known, ["planned", "forecast", "observed"], `${path}.known`),
    parts: () => (given.parts === undefined ? undefined : expectParts(given.parts, site, `${path}.parts`)),
  });
  if (event.by === "rain" && event.known === "planned")
    fail("conflict", `${path}.known`, event.known, '"forecast" or "observed": rain is not planned');
  if (event.by === "irrigation" && event.known === "forecast")
    fail("conflict", `${path}.known`, event.known, '"planned" or "observed": only rain is forecast');
  return { ...event, ...(parts && { parts }) };
};

/** Reads rain and irrigation after the work; what is wrong goes to `problems`. */
export const readWater = (
  input: unknown,
  site: ReadSite | undefined,
  problems: Checks,
): ReadWater | undefined => {
  if (input === undefined) return undefined;
  const water = problems.run(() => {
    const given = expectFields(input, waterFields, "water", "rain and irrigation after the work");
    return allOf({
      events: () => {
        const list = given.events;
        if (!Array.isArray(list))
          return fail("type", "water.events", list, "a list of rain and irrigation, empty if there is none");
        if (list.length > mostEvents)
          return outOfRange("water.events", described(`${list.length} events`), {
            max: mostEvents,
            count: "events",
          });
        const each = checks();
        const events = list.flatMap(
          (item, i) => each.run(() => readEvent(item, `water.events[${i}]`, site)) ?? [],
        );
        each.done();
        return events;
      },
      until: () => momentAt(given.until, "water.until"),
      ground: () => (site?.area.parts ?? []).map(({ name = "" }) => name),
    });
  });
  return site === undefined ? undefined : water;
};
