import { converted } from "../../src/quantity/value/converted.js";
import type { ConstantCheck } from "./check.js";
import { printedFactors, temperaturePoints } from "./unit-sizes.js";

/** How many significant digits a printed number has. */
export const digitsOf = (printed: string): number =>
  printed.replace(/E.*/, "").replace(".", "").replace(/^0+/, "").length;

/** The sizes of the units, as checks of the table. */
export const unitChecks: readonly ConstantCheck[] = [
  ...printedFactors.map(({ unit, reference, printed, exact, source, reached }) => ({
    room: "quantity",
    what: `1 ${unit} in ${reference}`,
    printed: Number(printed),
    here: () =>
      exact
        ? converted(1, unit, reference)
        : Number(converted(1, unit, reference).toPrecision(digitsOf(printed))),
    source,
    reached,
  })),
  ...temperaturePoints.map(({ a, from, b, to }) => ({
    room: "quantity",
    what: `${a} ${from} in ${to}`,
    printed: b,
    here: () => (Math.abs(converted(a, from, to) - b) < 1e-9 ? b : converted(a, from, to)),
    source: "NIST Special Publication 811 (2008), B.9; SI brochure",
    reached: "from memory" as const,
  })),
];
