// How the ground is covered by plugs at 10 in: the case growing-in-a-meadow.
import { areaY, dot, lineY, ruleX, ruleY, text } from "@observablehq/plot";
import { coverOverTime, quantity } from "../../src/index.js";
import { type Figure, first, ink, second, soft } from "./frame.js";

const inches = (value: number) => quantity(value, "in");
const perWeek = (value: number) => quantity(value, "in/week");

const grownIn = () =>
  coverOverTime({
    start: { plug: { side: inches(2) }, pattern: "square", spacing: inches(10) },
    from: "2026-05-18",
    to: "2026-09-15",
    spread: {
      low: perWeek(0.35),
      mid: perWeek(0.5),
      high: perWeek(0.65),
      source: "the park's own trial strip, 2025",
    },
    growth: { potential: quantity(80, "%"), source: "a usual summer, assumed" },
    rooting: quantity(14, "d"),
  });

/** The day on which 90 % is reached, with what is written beside it. */
const markOf = (date: string | null | undefined, rate: string) =>
  date == null
    ? []
    : [{ date: new Date(date), text: `${date.slice(5).replace("-", "/").replace(/\b0/g, "")}, ${rate}` }];

/** Cover over time between the low and the high rate of spread. */
export const groundCover = (): Figure => {
  const { days, reached } = grownIn();
  const rows = days.map(({ date, low, mid, high }) => ({
    date: new Date(date),
    low: low.in("%"),
    mid: mid.in("%"),
    high: high.in("%"),
  }));
  const ninety = reached.find(({ cover }) => cover.in("%") === 90);
  const early = markOf(ninety?.earliest, "high rate");
  const middle = markOf(ninety?.mid, "middle rate");
  const opening = [{ date: new Date("2026-09-15"), text: "opening" }];
  const beside = { x: "date", text: "text" } as const;
  return {
    name: "ground-cover",
    title: "Ground cover of 2 in plugs at 10 in, planted on May 18",
    description:
      "A line from 4 % in May, level for two weeks of rooting, then climbing to 90 % on August 18 by the middle rate of spread. The band around it reaches 90 % on July 31 by the high rate; by the low rate it does not by the opening on September 15.",
    options: {
      marginRight: 40,
      x: { type: "utc", label: null, ticks: 5 },
      y: { label: "↑ cover, %", grid: true, domain: [0, 105] },
      marks: [
        ruleY([90], { stroke: second, strokeDasharray: "6 4" }),
        ruleX(opening, { x: "date", stroke: soft, strokeDasharray: "2 3" }),
        text(opening, { ...beside, y: 12, dx: -8, textAnchor: "end", fill: soft }),
        areaY(rows, { x: "date", y1: "low", y2: "high", fill: first, fillOpacity: 0.22 }),
        lineY(rows, { x: "date", y: "mid", stroke: first, strokeWidth: 2.5 }),
        dot([...early, ...middle], { x: "date", y: 90, fill: second, r: 5 }),
        text(early, { ...beside, y: 90, dx: -9, dy: -9, textAnchor: "end", fill: ink }),
        text(middle, { ...beside, y: 90, dx: 9, dy: 14, textAnchor: "start", fill: ink }),
        ruleY([0], { stroke: ink }),
      ],
    },
  };
};
