// The water in the root zone over six weeks, with and without watering. The weather is invented.
import { axisY, dot, lineY, rectY, ruleY, text } from "@observablehq/plot";
import { addDays, dailySeries, quantity, soilWaterBalance } from "../../src/index.js";
import { type Figure, first, ink, second, soft, third } from "./frame.js";

const days = 42;
const start = "2026-06-01";
const mmPerInch = quantity(1, "in").in("mm");
const inches = (what: string, values: readonly number[]) =>
  dailySeries({ start, unit: "in", what, source: "invented", values: [...values] });

/** Rain in inches, by the day from June 1. */
const showers: Readonly<Record<number, number>> = { 4: 0.35, 5: 0.1, 17: 0.6, 18: 0.9, 30: 0.2 };
const rain = Array.from({ length: days }, (_, day) => showers[day] ?? 0);
const use = Array.from({ length: days }, (_, day) =>
  showers[day] === undefined ? 0.17 + 0.03 * Math.sin(day / 4) : 0.08,
);

const balance = (plan?: { at: ReturnType<typeof percent> }) =>
  soilWaterBalance({
    available: quantity(1.6, "in"),
    depletion: percent(50),
    before: quantity(0.2, "in"),
    use: inches("turf water use", use),
    rain: inches("rain", rain),
    ...(plan === undefined ? {} : { plan }),
  });
const percent = (value: number) => quantity(value, "%");

const date = (day: number) => new Date(addDays(start, day));
const left = (depleted: readonly number[]) =>
  depleted.map((mm, day) => ({ date: date(day), water: 1.6 - mm / mmPerInch }));

/** Inches on the left, millimeters on the right. */
const axes = () => [
  axisY({ anchor: "left" }),
  axisY({
    anchor: "right",
    label: "mm ↑",
    ticks: [0, 10, 20, 30, 40].map((mm) => mm / mmPerInch),
    tickFormat: (inch: number) => (inch * mmPerInch).toFixed(0),
    color: soft,
  }),
];

const note = (words: string, day: number, water: number, fill: string) =>
  text([{ date: date(day), water }], { x: "date", y: "water", text: () => words, fill, textAnchor: "start" });

/** Water left in the root zone, day by day. */
export const soilWater = (): Figure => {
  const watered = balance({ at: percent(50) });
  const dry = balance();
  const waterings = watered.irrigation.flatMap((mm, day) => (mm > 0 ? [{ date: date(day) }] : []));
  const fell = rain.flatMap((depth, day) =>
    depth > 0 ? [{ from: date(day), to: date(day + 1), depth }] : [],
  );
  return {
    name: "soil-water",
    title: "Water in the root zone over six weeks, watered at half depletion and not watered",
    description: `Two lines from June 1 to July 12, in inches of water left of 1.6. The watered one falls below 0.8, half of it, and is filled up ${waterings.length} times. The one without watering dries down to 0.1 by June 17, is filled to 1.4 by rain of 1.5 inches on June 18 and 19, and dries down again, ever more slowly, to almost nothing. Bars show the rain.`,
    options: {
      height: 380,
      marginRight: 66,
      x: { type: "utc", label: null, ticks: 6 },
      y: { label: "↑ in of water left", grid: true, domain: [0, 1.75] },
      marks: [
        ...axes(),
        ruleY([0.8], { stroke: soft, strokeDasharray: "2 3" }),
        rectY(fell, { x1: "from", x2: "to", y: "depth", fill: third, fillOpacity: 0.55 }),
        lineY(left(dry.depleted), {
          x: "date",
          y: "water",
          stroke: second,
          strokeWidth: 2,
          strokeDasharray: "7 4",
        }),
        lineY(left(watered.depleted), { x: "date", y: "water", stroke: first, strokeWidth: 2.5 }),
        dot(waterings, { x: "date", y: 1.68, symbol: "triangle", fill: first, r: 5, rotate: 180 }),
        note("not watered", 20, 0.3, second),
        note("rain", 4, 0.42, third),
        ruleY([0], { stroke: ink }),
      ],
    },
  };
};
