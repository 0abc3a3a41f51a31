// When a growth regulator is due again by degree-days, in spring and in July: the case when-to-repeat-a-regulator.
import { areaY, dot, lineY, link, ruleY, text } from "@observablehq/plot";
import {
  accumulatedDegreeDays,
  addDays,
  type CivilDate,
  dailyNormals,
  dailyTemperatures,
  daysBetween,
  degreeDaySchedule,
  regulatorInterval,
  regulatorIntervalsFor,
} from "../../src/index.js";
import { type Figure, first, ink, second } from "./frame.js";

const mean = Array.from({ length: 366 }, (_, day) => 11 - 11 * Math.cos(((day - 15) * 2 * Math.PI) / 366));
const spread = 1.5;
const source = "an invented station";
const normals = () =>
  dailyNormals({
    unit: "°C",
    sensor: "air",
    source,
    min: mean.map((t) => t - 5),
    max: mean.map((t) => t + 5),
    spread: mean.map(() => spread),
  });

const published = () => {
  const [row] = regulatorIntervalsFor("trinexapac-ethyl", "bentgrass");
  if (row === undefined) throw new Error("the interval of the case is not in the table");
  return regulatorInterval(row, { sensor: "air" });
};

/** The normals of 2026, so many degrees warmer all year; the table of normals has a February 29. */
const year = (warmer: number) => {
  const days = mean.filter((_, day) => day !== 59);
  return dailyTemperatures({
    start: "2026-01-01",
    unit: "°C",
    sensor: "air",
    source,
    min: days.map((t) => t - 5 + warmer),
    max: days.map((t) => t + 5 + warmer),
  });
};

const { model, to: interval } = published();

/** Day by day after an application: the sum, and the sums of a cool and of a warm year. */
const sumsAfter = (from: CivilDate, to: CivilDate, offset: number, panel: string) => {
  const sums = [-spread, 0, spread].map((warmer) =>
    accumulatedDegreeDays({ series: year(warmer), model, from: addDays(from, 1), to }).daily.map(
      ({ total }) => total.in("°C d"),
    ),
  );
  const [cool = [], middle = [], warm = []] = sums;
  const row = (day: number, at: number) => ({
    panel,
    from,
    day: day + offset,
    cool: cool[at] ?? 0,
    sum: middle[at] ?? 0,
    warm: warm[at] ?? 0,
  });
  return [row(0, -1), ...middle.map((_, at) => row(at + 1, at))];
};

const panelOf = (from: CivilDate, panel: string) => {
  const { visits } = degreeDaySchedule({ normals: normals(), model, from, interval, count: 3 });
  const known = visits.map(({ from: start, date, early, late }) => {
    if (date === null || early === null || late === null)
      throw new Error("the year ends before the interval");
    return { start, date, early, late };
  });
  return {
    sums: known.flatMap(({ start, date }) => sumsAfter(start, date, daysBetween(from, start), panel)),
    dates: known.map(({ date, early, late }) => ({
      panel,
      date: daysBetween(from, date),
      early: daysBetween(from, early),
      late: daysBetween(from, late),
      named: date.slice(5).replace("-", "/").replace(/\b0/g, ""),
    })),
  };
};

/** The sums of degree-days and the next dates, in spring and in July. */
export const degreeDays = (): Figure => {
  const panels = [panelOf("2026-04-20", "from April 20"), panelOf("2026-07-06", "from July 6")];
  const sums = panels.flatMap((panel) => panel.sums);
  const dates = panels.flatMap((panel) => panel.dates);
  const at = interval.in("°C d");
  return {
    name: "degree-days",
    title: "Degree-days since the last application, and the next dates, in spring and in July",
    description:
      "Two panels. A line climbs from zero to 200 degree-days Celsius and starts again, three times. From April 20 it takes 16 days, then 13 and 12. From July 6 it takes ten days each time. Around the line a band for a year that is 1.5 °C cooler or warmer; a bar at 200 shows the earliest and the latest date.",
    options: {
      height: 420,
      marginTop: 34,
      fy: { label: null, padding: 0.22, domain: ["from April 20", "from July 6"] },
      facet: { marginRight: 100 },
      x: { label: "days after the first application →" },
      y: { label: "↑ °C d above 0 °C", grid: true, domain: [0, 250] },
      marks: [
        ruleY([at], { stroke: second, strokeDasharray: "6 4" }),
        areaY(sums, {
          fy: "panel",
          x: "day",
          y1: "cool",
          y2: "warm",
          z: "from",
          fill: first,
          fillOpacity: 0.22,
        }),
        lineY(sums, { fy: "panel", x: "day", y: "sum", z: "from", stroke: first, strokeWidth: 2.5 }),
        link(dates, { fy: "panel", x1: "early", x2: "late", y1: at, y2: at, stroke: second, strokeWidth: 5 }),
        dot(dates, { fy: "panel", x: "date", y: at, fill: second, r: 5 }),
        text(dates, { fy: "panel", x: "date", y: 242, text: "named", fill: ink }),
        ruleY([0], { stroke: ink }),
      ],
    },
  };
};
