// What overlaps, and how even it is at which swath: the case swath-from-a-row-of-pans.
import { barY, dot, lineY, ruleX, ruleY, text } from "@observablehq/plot";
import { overlapDeposits, overlappedRate, quantity, spreadPattern, swathSearch } from "../../src/index.js";
import { type Figure, first, ink, second, soft } from "./frame.js";

/** What the pans of the case held. */
export const pans: readonly number[] = [0, 1, 3, 6, 10, 13, 15, 16, 14, 11, 8, 5, 2, 1, 0];

const pattern = () =>
  spreadPattern({
    catches: [...pans],
    unit: "g",
    passes: 10,
    pans: { spacing: quantity(2, "ft"), left: 7 },
    panArea: quantity(1, "ft2"),
  });

const driving = "back and forth";

const searched = () =>
  swathSearch(pattern(), { driving, positions: "pans", divisor: "n", limit: quantity(15, "%") });

/** The rate across the ground at a swath, pan by pan, from 20 ft left of a pass to 20 ft right of it. */
const acrossAt = (feet: number): { swath: string; x: number; rate: number; mean: number }[] => {
  const swath = quantity(feet, "ft");
  const { offsets, deposits, mean } = overlapDeposits(pattern(), { swath, driving, positions: "pans" });
  const meanRate = overlappedRate(pattern(), { swath }).in("lb/1000 ft2");
  const perGram = meanRate / mean;
  const start = offsets[0] ?? 0;
  return Array.from({ length: 21 }, (_, i) => {
    const x = -20 + 2 * i;
    const at = (((Math.round((x - start) / 2) % deposits.length) + deposits.length) %
      deposits.length) as number;
    return { swath: `${feet} ft`, x, rate: (deposits[at] ?? 0) * perGram, mean: meanRate };
  });
};

/** What the ground gets across passes at two swaths. */
export const patternOverlap = (): Figure => {
  const swaths = [14, 18];
  const rows = swaths.flatMap(acrossAt);
  const means = swaths.map((feet) => ({ swath: `${feet} ft`, mean: acrossAt(feet)[0]?.mean ?? 0 }));
  const passes = swaths.flatMap((feet) => [-feet, 0, feet].map((x) => ({ swath: `${feet} ft`, x })));
  return {
    name: "pattern-overlap",
    title: "What the ground gets across neighboring passes, at swaths of 14 and 18 ft",
    description:
      "Two panels of bars, a bar every 2 ft across the ground. At 14 ft from pass to pass the bars keep close to the mean of 3.3 lb of product per 1,000 ft². At 18 ft they swing from 1.6 lb between two passes to 3.5 lb on the line of travel, around a mean of 2.6 lb.",
    options: {
      height: 420,
      marginRight: 70,
      fy: { label: "swath", padding: 0.15 },
      x: {
        label: "ft from the line of travel →",
        type: "band",
        tickFormat: (x: number) => (x % 4 === 0 ? String(x) : ""),
      },
      y: { label: "↑ lb product/1,000 ft²", grid: true, domain: [0, 4.2] },
      marks: [
        barY(rows, { fy: "swath", x: "x", y: "rate", fill: first, fillOpacity: 0.55 }),
        ruleY(means, { fy: "swath", y: "mean", stroke: ink, strokeWidth: 1.5, strokeDasharray: "6 4" }),
        dot(
          passes.filter(({ x }) => Math.abs(x) <= 20),
          { fy: "swath", x: "x", y: 0, symbol: "triangle", fill: second, dy: -5, r: 5 },
        ),
        ruleY([0], { stroke: ink }),
      ],
    },
  };
};

/** The coefficient of variation against the swath. */
export const cvAgainstSwath = (): Figure => {
  const rows = searched().rows.map(({ swath, cv }) => ({ swath: swath.in("ft"), cv: cv.in("%") }));
  const low = rows.filter(({ swath }) => [10, 12, 14].includes(swath));
  const steep = rows.filter(({ swath }) => [16, 18, 20].includes(swath));
  const written = ({ cv }: { cv: number }): string => cv.toFixed(1);
  return {
    name: "cv-against-swath",
    title: "Coefficient of variation against the swath, driven back and forth",
    description: `A line with a point every 2 ft of swath. It stays under the limit of 15 % up to 16 ft, where it is 14.7 %, and climbs steeply after that: 24.6 % at 18 ft, 35.6 % at 20 ft.`,
    options: {
      marginRight: 60,
      x: { label: "ft from pass to pass →", domain: [4, 28], ticks: 12 },
      y: { label: "↑ CV, %", grid: true, domain: [0, 80] },
      marks: [
        ruleY([15], { stroke: second, strokeWidth: 1.5, strokeDasharray: "6 4" }),
        text([{ swath: 6, cv: 15 }], { x: "swath", y: "cv", text: () => "limit 15 %", dy: -9, fill: second }),
        ruleX([16], { stroke: soft, strokeDasharray: "2 3" }),
        lineY(rows, { x: "swath", y: "cv", stroke: first, strokeWidth: 2.5, clip: true }),
        dot(rows, { x: "swath", y: "cv", fill: first, r: 3.5, clip: true }),
        text(low, { x: "swath", y: "cv", text: written, dy: -12, fill: ink }),
        text(steep, { x: "swath", y: "cv", text: written, dx: -8, dy: -5, textAnchor: "end", fill: ink }),
        ruleY([0], { stroke: ink }),
      ],
    },
  };
};
