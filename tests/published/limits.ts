import { checkLimits, runoffPoints } from "../../src/limits/index.js";
import type { PublishedCheck } from "./check.js";

const stewardship = "Pesticide Environmental Stewardship";

/** Feet that a buffer of 50 ft still asks for with two measures in use: the nearest whole foot that keeps it. */
const kept = (): number => {
  const measures = ["over-the-top hooded sprayer", "drift-reducing adjuvant, medium droplets"];
  const short = (feet: number): boolean =>
    checkLimits({
      proposal: {
        date: "2026-06-08",
        supplies: [{ value: 1, unit: "lb/acre", of: "ai:dithiopyr" }],
        facts: { edges: [{ from: "habitat", away: { value: feet, unit: "ft" }, measures }] },
      },
      limits: [
        {
          kind: "buffer",
          of: "any",
          from: "habitat",
          atLeast: { value: 50, unit: "ft" },
          reductions: measures.map((measure, i) => ({ measure, percent: i === 0 ? 50 : 30 })),
          together: "sum",
          source: stewardship,
        },
      ],
    }).tests[0]?.violated !== false;
  return Array.from({ length: 51 }, (_, i) => i).find((feet) => !short(feet)) ?? Number.NaN;
};

const menuOf = (measure: string): number => runoffPoints({ menu: "US EPA", measures: [{ measure }] }).points;

/** Published checks of distances and of points against runoff. */
export const limitChecks: readonly PublishedCheck[] = [
  {
    entry: "limits-001",
    formulas: ["checkLimits"],
    source: {
      title: "Drift and the ESA",
      publisher: stewardship,
      where: "two mitigations of 50 % and 30 % on a buffer of 50 ft",
      url: "https://pesticidestewardship.org/?p=7393",
    },
    reached: "read",
    given: "a buffer of 50 ft, a hooded sprayer of 50 % and an adjuvant of 30 %, added up",
    answers: [{ of: "ft that are left", printed: 10, to: 1 }],
    compute: () => [kept()],
  },
  {
    entry: "limits-002",
    formulas: ["runoffPoints"],
    source: {
      title: "Runoff and the ESA",
      publisher: stewardship,
      where: "points are cumulative: records of the measures, and practices of 2 and of 3 points",
      url: "https://pesticidestewardship.org/?p=7400",
    },
    reached: "read",
    given: "measures of 1, 2 and 3 points",
    answers: [{ of: "points", printed: 6, to: 1 }],
    compute: () => [
      runoffPoints({
        measures: [
          { measure: "record of the measures", points: 1 },
          { measure: "one practice", points: 2 },
          { measure: "another practice", points: 3 },
        ],
      }).points,
    ],
  },
  {
    entry: "limits-003",
    formulas: ["runoffPoints"],
    source: {
      title: "Practical guide to meet runoff mitigation point requirements under EPA's strategy",
      publisher: "Illinois Soybean Association",
      where: "counties by reduced runoff vulnerability",
      url: "https://fieldadvisor.org/practical-guide-to-meet-runoff-mitigation-point-requirements-under-epas-strategy",
    },
    reached: "read",
    kind: "transcription",
    given: "counties of high, medium and low runoff vulnerability",
    answers: [
      { of: "points, high", printed: 0, to: 1 },
      { of: "points, medium", printed: 2, to: 1 },
      { of: "points, low", printed: 3, to: 1 },
    ],
    compute: () => ["high", "medium", "low"].map((word) => menuOf(`county of ${word} runoff vulnerability`)),
  },
  {
    entry: "limits-004",
    formulas: ["runoffPoints"],
    source: {
      title: "2025 cotton weed control update",
      publisher: "University of Georgia Extension",
      year: 2025,
      where: "slide 39, other options",
      url: "http://www.gaweed.com/slides/2025%20Cotton%20Weed%20Control%20Update/slide39.html",
    },
    reached: "read",
    kind: "transcription",
    given: "an expert, a conservation program, measures of several categories",
    answers: [
      { of: "points, expert", printed: 1, to: 1 },
      { of: "points, program", printed: 2, to: 1 },
      { of: "points, categories", printed: 1, to: 1 },
    ],
    compute: () =>
      [
        "advice of a runoff and erosion specialist",
        "conservation program",
        "measures of more than one category",
      ].map(menuOf),
  },
];
