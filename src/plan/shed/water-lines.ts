import type { Quantity } from "../../quantity/index.js";
import { momentText } from "../sheet/day-text.js";
import { penned, type SheetBlock } from "../sheet/sheet-types.js";
import type { FirstUnits } from "../sheet/sheet-units.js";
import { depthText, timeText } from "../sheet/water-text.js";
import type { Watering } from "../visit/watering.js";

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

const wetLine = (water: Watering, first: FirstUnits): readonly string[] => {
  const { least, within, most, by, remaining, forecast, runTime } = water;
  if (least === null) return [];
  const when =
    within === null
      ? ""
      : ` within ${timeText(within)} of the end (by ${by === null ? penned : momentText(by, first === "metric")})`;
  const run = runTime === null ? "" : `: run the irrigation ${minutes(runTime)}`;
  const planned =
    remaining === null || remaining.compare(least) >= 0
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

/** What is done with water after a treatment, by the labels that the job gives; nothing where it gives none. */
export const waterBlocks = (water: Watering, first: FirstUnits): readonly SheetBlock[] => {
  const items = water.conflict
    ? ["WATER: the labels of these products conflict (see the top). Ask before you water."]
    : [...dryLine(water, first), ...wetLine(water, first), ...mostLine(water, first)];
  return items.length === 0 ? [] : [{ kind: "list", mark: "[ ]", items }];
};
