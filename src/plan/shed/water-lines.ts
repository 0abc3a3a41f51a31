import { addHours, dateOfInstant, dateRange, type Instant, monthOf, weekday } from "../../calendar/index.js";
import type { Quantity } from "../../quantity/index.js";
import { momentText } from "../sheet/day-text.js";
import { penned, type SheetBlock } from "../sheet/sheet-types.js";
import type { FirstUnits } from "../sheet/sheet-units.js";
import { depthText, timeText } from "../sheet/water-text.js";
import type { Watering } from "../watering/watering.js";
import { partWords } from "../watering/watering-grounds.js";

/** Whole minutes, up: a minute too long wets no deeper than a gauge shows. */
const minutes = (time: Quantity<"time", "none">): string => `${Math.ceil(time.in("min") - 1e-9)} min`;

const span = (least: Watering["least"], most: Watering["most"], first: FirstUnits): string => {
  if (least === null) return "";
  const low = depthText(least, first);
  if (most === null) return `${low} or more of water`;
  const high = depthText(most, first);
  const [, figure = low, unit] = /^(\S+) (.*)$/.exec(low) ?? [];
  return `${high.endsWith(` ${unit}`) ? figure : low} to ${high} of water`;
};

const dryLine = ({ notBefore, dryUntil }: Watering, first: FirstUnits): readonly string[] =>
  notBefore === null
    ? []
    : [
        `NO WATER for ${timeText(notBefore)} from the end (until ${dryUntil === null ? penned : momentText(dryUntil, first === "metric")}): irrigation off.`,
      ];

/** What is watered on which part, where they do not all lack the same. */
const partLine = (byPart: NonNullable<Watering["byPart"]>, first: FirstUnits): string => {
  const short = byPart.filter(({ remaining }) => remaining.value > 0);
  const enough = byPart.filter(({ remaining }) => remaining.value === 0).flatMap(({ parts }) => parts);
  const water = short.map(
    ({ parts, remaining, runTime }) =>
      `${depthText(remaining, first)} on ${partWords(parts)}${runTime === null ? "" : ` (run the irrigation ${minutes(runTime)})`}`,
  );
  const last = enough.length === 0 ? "" : ` What is planned is enough for ${partWords(enough)}.`;
  return `. On top of what is planned, water ${water.join("; ")}.${last}`;
};

const wetLine = (water: Watering, first: FirstUnits): readonly string[] => {
  const { least, within, most, by, remaining, byPart, forecast, runTime } = water;
  if (least === null) return [];
  const when =
    within === null
      ? ""
      : ` within ${timeText(within)} of the end (by ${by === null ? penned : momentText(by, first === "metric")})`;
  const run = runTime === null ? "" : `: run the irrigation ${minutes(runTime)}`;
  const planned =
    byPart !== undefined
      ? partLine(byPart, first)
      : remaining === null || remaining.compare(least) >= 0
        ? `${run}.`
        : remaining.value === 0
          ? ": what is planned is enough. Check that it ran."
          : `. On top of what is planned, water ${depthText(remaining, first)}${run}.`;
  const rain =
    forecast === null || forecast.value === 0
      ? ""
      : ` Rain forecast ${depthText(forecast, first)}: water that much less once it is in the gauge.`;
  return [`WATER IN with ${span(least, most, first)}${when}${planned}${rain}`];
};

/** What is stated at most, where nothing is asked for at least. */
const mostLine = ({ least, most, rules }: Watering, first: FirstUnits): readonly string[] => {
  if (least !== null || most === null) return [];
  const within = rules.find(({ rule }) => rule.most?.compare(most) === 0)?.rule.within;
  const when = within === undefined ? "" : ` within ${timeText(within)} of the end`;
  return [`NO MORE THAN ${depthText(most, first)} of rain and irrigation${when}.`];
};

/** The months in which clocks change, north and south. */
const clockMonths: readonly number[] = [3, 4, 9, 10, 11];

/**
 * Whether the clocks may have changed in the time up to a moment: in the United States (15 U.S.C. 260a: a Sunday in March and
 * one in November) and in the European Union (Directive 2000/84/EC: the last Sundays in March and October) they do so early
 * on a Sunday. In the south they do so in April, September and October, in Australia, New Zealand and Chile (the time zone
 * database, edition 2025c).
 */
const mayChange = (moment: Instant | null, time: Quantity<"time", "none"> | null): boolean => {
  if (moment === null || time === null) return false;
  const from = dateOfInstant(addHours(moment, -time.in("h")));
  const days = dateRange(from, dateOfInstant(moment)).slice(1);
  return days.some((day) => weekday(day) === 7 && clockMonths.includes(monthOf(day)));
};

/** An offset from UTC does not know when the clocks change: the hours are right, the clock may not be. */
const clockLine = ({ dryUntil, notBefore, by, within, least }: Watering): readonly string[] =>
  mayChange(dryUntil, notBefore) || (least !== null && mayChange(by, within))
    ? ["Clocks changed on Sunday? Count the hours: these times are by the old clock."]
    : [];

/** What is done with water after a treatment, by the labels that the job gives; nothing where it gives none. */
export const waterBlocks = (water: Watering, first: FirstUnits): readonly SheetBlock[] => {
  const items = water.conflict
    ? ["WATER: the labels of these products conflict (see the top). Ask before you water."]
    : [...dryLine(water, first), ...wetLine(water, first), ...mostLine(water, first), ...clockLine(water)];
  return items.length === 0 ? [] : [{ kind: "list", mark: "[ ]", items }];
};
