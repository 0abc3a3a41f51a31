import {
  calendarAgainstDegreeDays,
  degreeDaySchedule,
  meetsReboundCondition,
  regulatorInterval,
  regulatorIntervals,
  regulatorIntervalsFor,
  replacementDose,
} from "../../../src/interval/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { describeRefused, type Refused } from "../../refused.js";
import { model, observed, sum } from "./warm-days.js";

// What is refused of growth regulators by degree-days.

const schedule = (change: object) => () =>
  degreeDaySchedule({
    model: model(),
    from: "2026-05-01",
    interval: sum(100),
    observed: observed(),
    ...change,
  } as never);
const calendar = (change: object) => () =>
  calendarAgainstDegreeDays({
    model: model(),
    starts: ["2026-05-01"],
    intervalDays: 5,
    interval: sum(100),
    observed: observed(),
    ...change,
  } as never);
const row = (id: string) =>
  regulatorIntervals.find((one) => one.id === id) as (typeof regulatorIntervals)[number];
const bent = () => row("trinexapac-ethyl, bentgrass green, 2009");
const auburn = () => row("trinexapac-ethyl, ultradwarf bermudagrass green, Auburn");
const fairway = () => row("prohexadione-calcium, fairway");
const countable =
  (record: unknown, supplied: object = {}) =>
  () =>
    regulatorInterval(record as never, { sensor: "air", ...supplied } as never);
const dose = (change: object) => () =>
  replacementDose({
    full: quantity(7, "fl oz/acre", "product"),
    elapsed: sum(100),
    halfLife: sum(100),
    ...change,
  } as never);
const rebound = (change: object) => () =>
  meetsReboundCondition({ sinceApplication: 351, tenDayMean: 22, ...change } as never);

const rows: readonly Refused[] = [
  [schedule({ model: 7 }), "type", "model", "a degree-day model"],
  [schedule({ from: "May" }), "date", "from", "written YYYY-MM-DD"],
  [schedule({ interval: quantity(100, "lb") }), "unit/mismatch", "interval", "a sum of degree-days"],
  [schedule({ interval: { ...sum(0).toJSON() } }), "range", "interval", "more than zero"],
  [schedule({ count: 0 }), "range", "count", "1 or more"],
  [schedule({ count: 101 }), "range", "count", "100 or less"],
  [schedule({ count: 1.5 }), "range", "count", "whole"],
  [
    schedule({ observed: undefined }),
    "missing",
    "observed",
    "observed or forecast temperatures, or daily normals",
  ],
  [schedule({ observed: 7 }), "type", "observed", "daily temperatures"],
  [schedule({ forecast: 7 }), "type", "forecast", "daily temperatures"],
  [
    schedule({ observed: { ...observed(), sensor: "soil at 4 in" } }),
    "conflict",
    "observed.sensor",
    "the sensor of the model, which is air",
  ],
  [schedule({ normals: 7 }), "type", "normals", "daily normals, as dailyNormals gives"],
  [schedule({ gaps: "skip" }), "type", "gaps", '"next source"'],
  [
    schedule({ observed: { ...observed(), min: [15, null, 15, 15, 15, 15, 15, 15, 15, 15] } }),
    "missing",
    "observed.2026-05-02",
    'both, or gaps: "next source"',
  ],
  [schedule({ until: 1 }), "type", "input.until", "count"],
  [calendar({ model: 7 }), "type", "model", "a degree-day model"],
  [calendar({ starts: 7 }), "type", "starts", "a list of dates"],
  [calendar({ starts: Array(10_001).fill("2026-05-01") }), "range", "starts", "10000 dates or fewer"],
  [calendar({ starts: ["May"] }), "date", "starts[0]", "written YYYY-MM-DD"],
  [calendar({ intervalDays: 0 }), "range", "intervalDays", "1 or more"],
  [calendar({ intervalDays: 401 }), "range", "intervalDays", "400 or less"],
  [calendar({ intervalDays: 1.5 }), "range", "intervalDays", "days"],
  [calendar({ interval: quantity(1, "lb") }), "unit/mismatch", "interval", "a sum of degree-days"],
  [calendar({ observed: undefined }), "missing", "observed", "or daily normals"],
  [
    calendar({ observed: { ...observed(), max: [25, 25, null, 25, 25, 25, 25, 25, 25, 25] } }),
    "missing",
    "observed.2026-05-03",
    'gaps: "next source"',
  ],
  [() => regulatorIntervalsFor(7 as never), "type", "active", "the common name of an active ingredient"],
  [
    () => regulatorIntervalsFor("paclobutrazol", 7 as never),
    "type",
    "turf",
    "a word of the description of the turf",
  ],
  [countable(7), "type", "record", "a row of regulatorIntervals"],
  [countable({ ...bent(), days: 1 }), "type", "record.days", "interval"],
  [countable({ ...bent(), source: 7 }), "type", "record.source", "record"],
  [countable({ ...bent(), source: { title: 7, publisher: "p" } }), "type", "record.source.title", "a title"],
  [
    countable({ ...bent(), source: { title: "t", publisher: 7 } }),
    "type",
    "record.source.publisher",
    "a publisher",
  ],
  [
    countable(fairway(), { method: "simple average", base: { value: 0, unit: "°C" } }),
    "missing",
    "record.interval",
    "an interval; the source gives none",
  ],
  [countable(auburn()), "missing", "supplied.method", "the method, which the source does not state"],
  [
    countable(auburn(), { method: "simple average" }),
    "missing",
    "supplied.base",
    "the base, which the source does not state",
  ],
  [countable(bent(), { method: "single sine" }), "conflict", "supplied.method", "nothing: the source states"],
  [
    countable(bent(), { base: { value: 10, unit: "°C" } }),
    "conflict",
    "supplied.base",
    "nothing: the source states",
  ],
  [countable(bent(), { upper: 1 }), "type", "supplied.upper", "base"],
  [dose({ full: quantity(7, "lb", "product") }), "unit/mismatch", "full", "a weight over an area"],
  [dose({ full: quantity(0, "fl oz/acre", "product") }), "range", "full", "more than zero"],
  [dose({ elapsed: quantity(1, "d") }), "unit/mismatch", "elapsed", "a sum of degree-days"],
  [dose({ halfLife: { ...sum(0).toJSON() } }), "range", "halfLife", "more than zero"],
  [
    dose({ halfLife: quantity(100, "°C d", "degree-days:other" as never) }),
    "substance/mismatch",
    "halfLife",
    "degree-days",
  ],
  [rebound({ sinceApplication: -1 }), "range", "sinceApplication", "0 or more"],
  [rebound({ tenDayMean: "x" }), "not-finite", "tenDayMean", "a finite number"],
  [rebound({ rule: 7 }), "type", "rule", "record"],
  [rebound({ rule: { interval: -1, perDay: 21 } }), "range", "rule.interval", "0 or more"],
  [rebound({ rule: { interval: 350, perDay: -1 } }), "range", "rule.perDay", "0 or more"],
  [rebound({ rule: { interval: 350, perDay: 21, days: 10 } }), "type", "rule.days", "perDay"],
];

describeRefused("what is refused of growth regulators", rows);
