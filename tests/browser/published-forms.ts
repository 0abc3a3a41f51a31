// Published figures that a form of the site has to give: what is typed into it, and where the figure stands in the evidence.
import type { Answer } from "../published/check.js";
import { allChecks } from "../published/index.js";

interface Typed {
  readonly entry: string;
  /** Which figure of the entry. */
  readonly of: string;
  readonly formula: string;
  /** Figure and unit, by the name of the box. */
  readonly inputs: Readonly<Record<string, readonly [value: string, unit: string]>>;
  readonly result: string;
}

const typed: readonly Typed[] = [
  {
    entry: "fert-001",
    of: "lb product/1000 ft2",
    formula: "product-rate",
    inputs: { target: ["1", "lb/1000 ft2"], percent: ["28", "% w/w"] },
    result: "lb/1000 ft2",
  },
  {
    entry: "fert-003",
    of: "lb/1000 ft2 of 16-4-8",
    formula: "product-rate",
    inputs: { target: ["1", "lb/1000 ft2"], percent: ["16", "% w/w"] },
    result: "lb/1000 ft2",
  },
  {
    entry: "spray-003",
    of: "gal/acre on 1 in",
    formula: "application-volume",
    inputs: { flow: ["1", "gal/min"], speed: ["1", "mi/h"], width: ["1", "in"] },
    result: "gal/acre",
  },
  {
    entry: "spray-003",
    of: "gal/acre on 1 ft",
    formula: "application-volume",
    inputs: { flow: ["1", "gal/min"], speed: ["1", "mi/h"], width: ["1", "ft"] },
    result: "gal/acre",
  },
  {
    entry: "spray-004",
    of: "gal/acre",
    formula: "application-volume",
    inputs: { flow: ["1.58", "gal/min"], speed: ["88", "ft/min"], width: ["12", "ft"] },
    result: "gal/acre",
  },
  {
    entry: "spray-012",
    of: "ft at 30 in",
    formula: "catch-course",
    inputs: { width: ["30", "in"] },
    result: "ft",
  },
  {
    entry: "spray-012",
    of: "ft at 20 in",
    formula: "catch-course",
    inputs: { width: ["20", "in"] },
    result: "ft",
  },
  {
    entry: "spray-035",
    of: "gal/min",
    formula: "flow-at-pressure",
    inputs: { flow: ["0.52", "gal/min"], rated: ["30", "psi"], pressure: ["60", "psi"] },
    result: "gal/min",
  },
  {
    entry: "soil-097",
    of: "gal/acre",
    formula: "calibration-by-refill",
    inputs: { refill: ["12", "gal"], area: ["6,600", "ft2"] },
    result: "gal/acre",
  },
  {
    entry: "spray-111",
    of: "L/ha",
    formula: "calibration-by-refill",
    inputs: { refill: ["2", "L"], area: ["100", "m2"] },
    result: "L/ha",
  },
  {
    entry: "site-021",
    of: "ft2 at 44 ft",
    formula: "circle-area",
    inputs: { radius: ["44", "ft"] },
    result: "ft2",
  },
  {
    entry: "site-066",
    of: "gal",
    formula: "water-volume",
    inputs: { depth: ["1", "in"], area: ["1", "ft2"] },
    result: "gal",
  },
  {
    entry: "site-057",
    of: "in/h",
    formula: "precipitation-rate",
    inputs: { flow: ["10", "gal/min"], area: ["1000", "ft2"] },
    result: "in/h",
  },
  {
    entry: "site-033",
    of: "yd3",
    formula: "cover-volume",
    inputs: { area: ["1", "ft2"], depth: ["1", "in"] },
    result: "yd3",
  },
  {
    entry: "site-049",
    of: "lb",
    formula: "seed-order",
    inputs: { area: ["8800", "ft2"], rate: ["1/2", "lb/1000 ft2"] },
    result: "lb",
  },
];

/** A published figure, with what is typed to get it. */
export interface PublishedForm extends Typed {
  readonly answer: Answer;
}

/** The figures, as the evidence has them. */
export const publishedForms: readonly PublishedForm[] = typed.map((one) => {
  const found = Object.values(allChecks)
    .flat()
    .filter(({ entry, reached }) => entry === one.entry && reached === "read")
    .flatMap(({ answers }) => answers)
    .find(({ of, wrong }) => of === one.of && wrong === undefined);
  if (found === undefined) throw new Error(`${one.entry} has no figure "${one.of}"`);
  return { ...one, answer: found };
});
