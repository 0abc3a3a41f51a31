// What a piece of work costs as it grows, from the last measurement: docs/performance.md.
import { readFileSync } from "node:fs";
import { dot, line, text } from "@observablehq/plot";
import type { Results } from "../../tests/bench/compare/rows.js";
import { doubling, growthName } from "../../tests/bench/page.js";
import { type Figure, first, ink, soft } from "./frame.js";

const results = JSON.parse(
  readFileSync(new URL("../../tests/bench/results.json", import.meta.url), "utf8"),
) as Results;

const spoken = (value: number): string => value.toLocaleString("en-US", { maximumSignificantDigits: 2 });

const figureOf = ({ name, of, points }: Results["growth"][number]): Figure => {
  const start = points[0] as (typeof points)[number];
  const end = points[points.length - 1] as (typeof points)[number];
  // In step with the work, through the last point.
  const inStep = [start, end].map(({ size }) => ({ size, ms: (end.ms * size) / end.size }));
  return {
    name: growthName(of),
    title: `What ${name} costs, by ${of}`,
    description: `A line on two logarithmic axes: ${points
      .map(({ size, ms }) => `${spoken(ms)} ms for ${size.toLocaleString("en-US")}`)
      .join(
        ", ",
      )} ${of}. A dashed line shows what would be in step with the work; at the far end twice the work takes ${spoken(doubling(points))} times as long.`,
    options: {
      width: 460,
      height: 260,
      marginRight: 60,
      x: {
        type: "log",
        label: `${of} →`,
        ticks: points.map(({ size }) => size),
        tickFormat: (size: number) => size.toLocaleString("en-US"),
      },
      y: { type: "log", label: "↑ ms", grid: true, tickFormat: (ms: number) => String(ms), ticks: 4 },
      marks: [
        line(inStep, { x: "size", y: "ms", stroke: soft, strokeDasharray: "5 4" }),
        line(points, { x: "size", y: "ms", stroke: first, strokeWidth: 2.5 }),
        dot(points, { x: "size", y: "ms", fill: first, r: 3.5 }),
        text([end], { x: "size", y: "ms", text: ({ ms }) => `${spoken(ms)} ms`, dx: 30, fill: ink }),
      ],
    },
  };
};

/** A figure for each kind of work that was measured in several sizes. */
export const costFigures = (): readonly Figure[] => results.growth.map(figureOf);
