// One slow application, two of them, or monthly quick ones: the case one-slow-or-monthly-quick.
import { areaY, lineY, ruleY } from "@observablehq/plot";
import { polymerCoatedOnSurface, programComparison, quantity, quickRelease } from "../../src/index.js";
import { type Figure, first, ink } from "./frame.js";

const n = (pounds: number) => quantity(pounds, "lb/1000 ft2", "N");
const coated = (date: "2026-05-04" | "2026-07-13", total: number) => ({
  date,
  portions: [
    { name: "quick", nitrogen: n(0.3 * total), model: quickRelease },
    { name: "coated", nitrogen: n(0.7 * total), model: polymerCoatedOnSurface },
  ],
});
const quick = (["2026-05-04", "2026-06-01", "2026-06-29", "2026-07-27"] as const).map((date) => ({
  date,
  portions: [{ name: "urea", nitrogen: n(0.5), model: quickRelease }],
}));

/** The nitrogen that is out by the end of each week, by the program. */
export const releaseCurves = (): Figure => {
  const { programs } = programComparison({
    from: "2026-05-04",
    weeks: 16,
    placement: "surface or thatch",
    temperature: { mean: quantity(72, "°F") },
    programs: [
      { name: "slow, once", applications: [coated("2026-05-04", 2)] },
      { name: "slow, twice", applications: [coated("2026-05-04", 1), coated("2026-07-13", 1)] },
      { name: "quick, monthly", applications: quick },
    ],
  });
  const rows = programs.flatMap(({ name, weeks }) =>
    weeks.map(({ week, outByThen: { low, mid, high } }) => ({
      name,
      week,
      low: low.in("lb/1000 ft2"),
      mid: mid.in("lb/1000 ft2"),
      high: high.in("lb/1000 ft2"),
    })),
  );
  return {
    name: "release-curves",
    title: "Nitrogen that is out by the end of each week, of three programs",
    description:
      "Three panels over 16 weeks, up to 2 lb N per 1,000 ft². Slow, once: a line from 1 lb in the first week to 2 lb, in a wide band: at the high end of the published range 2 lb are out at once, at the low end 0.6 lb in the first week and 1.2 lb after sixteen. Slow, twice: two smaller bands. Quick, monthly: a stair of four steps without a band.",
    options: {
      fx: { label: null, domain: programs.map(({ name }) => name), padding: 0.12 },
      x: { label: "week →", ticks: [4, 8, 12, 16] },
      y: { label: "↑ lb N/1,000 ft², out by then", grid: true, domain: [0, 2.1] },
      marginTop: 44,
      marks: [
        areaY(rows, { fx: "name", x: "week", y1: "low", y2: "high", fill: first, fillOpacity: 0.22 }),
        lineY(rows, { fx: "name", x: "week", y: "mid", stroke: first, strokeWidth: 2.5 }),
        ruleY([0], { stroke: ink }),
      ],
    },
  };
};
