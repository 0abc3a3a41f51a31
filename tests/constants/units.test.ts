import { describe, expect, test } from "vitest";
import { quantityOf, unitTable } from "../../src/quantity/index.js";
import { converted } from "../../src/quantity/value/converted.js";
import { printedFactors, soleUnits, temperaturePoints } from "./unit-sizes.js";
import { digitsOf } from "./units.js";

describe("the sizes of the units, against a second transcription", () => {
  test.each(printedFactors)("1 $unit = $printed $reference", ({ unit, reference, printed, exact }) => {
    const here = quantityOf(1, unit, "none", "q");
    const factor = converted(here.value, here.unit, reference);
    // exact figures agree to the last bit; rounded ones when rounded to the digits printed
    if (exact) expect(factor).toBe(Number(printed));
    else expect(factor.toPrecision(digitsOf(printed))).toBe(Number(printed).toPrecision(digitsOf(printed)));
  });

  test.each(temperaturePoints)("$a $from = $b $to", ({ a, from, b, to }) => {
    expect(converted(a, from, to)).toBeCloseTo(b, 10);
    expect(converted(b, to, from)).toBeCloseTo(a, 10);
  });

  test("one part in ten thousand would be seen", () => {
    for (const { unit, printed, exact } of printedFactors) {
      if (exact || unit === "s") continue;
      const wrong = Number(printed) * 1.0001;
      expect(wrong.toPrecision(digitsOf(printed))).not.toBe(Number(printed).toPrecision(digitsOf(printed)));
    }
  });

  test("every base unit stands in the transcription", () => {
    const told = new Set<string>([
      ...printedFactors.map(({ unit }) => unit),
      ...temperaturePoints.flatMap(({ from, to }) => [from, to]),
      ...soleUnits,
    ]);
    const all = Object.values(unitTable).flatMap((units) => Object.keys(units));
    expect(all.filter((unit) => !told.has(unit))).toEqual([]);
    for (const unit of soleUnits) {
      const dimension = Object.values(unitTable).find((units) => Object.hasOwn(units, unit)) as object;
      expect(Object.keys(dimension)).toEqual([unit]);
    }
  });
});
