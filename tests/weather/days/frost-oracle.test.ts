import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dailySeries, frostChance, frostDates, type MonthDay } from "../../../src/index.js";
import { runs } from "../../properties.js";

// A second reading of what the climate center states, worked on sets of days and not on series: a chance of 90 % on
// 1 March is that nine years of ten have as cold a day later.
const day = (i: number): string => new Date(Date.UTC(2000, 6, 24 + i)).toISOString().slice(0, 10);
const winterOf = (date: string): number =>
  Number(date.slice(0, 4)) - (date.slice(5) < "07-24" ? 1 : 0) - 2000;
/** Days after 24 July, the same for every year but for 29 February. */
const order = (monthDay: string): number => {
  const at = Date.UTC(
    monthDay < "07-24" ? 2002 : 2001,
    Number(monthDay.slice(0, 2)) - 1,
    Number(monthDay.slice(3)),
  );
  return (at - Date.UTC(2001, 6, 24)) / 86_400_000;
};

const winters = 12;
const spring = fc.integer({ min: 200, max: 330 });
const fall = fc.integer({ min: 40, max: 150 });
const record = fc.array(fc.tuple(fc.option(fall), fc.option(spring)), {
  minLength: winters,
  maxLength: winters,
});

describe("frost dates, by counting winters", () => {
  it("gives the share of winters with a frost after or before any day", () => {
    fc.assert(
      fc.property(
        record,
        fc.integer({ min: 1, max: 12 }),
        fc.integer({ min: 1, max: 28 }),
        (frosts, month, d) => {
          const cold = new Set<string>();
          frosts.forEach(([first, last], w) => {
            const start = Math.round((Date.UTC(2000 + w, 6, 24) - Date.UTC(2000, 6, 24)) / 86_400_000);
            for (const offset of [first, last]) if (offset !== null) cold.add(day(start + offset));
          });
          const length = Math.round((Date.UTC(2000 + winters, 6, 24) - Date.UTC(2000, 6, 24)) / 86_400_000);
          const minima = dailySeries({
            start: "2000-07-24",
            unit: "°F",
            what: "lowest air temperature",
            source: "invented",
            values: Array.from({ length }, (_, i) => (cold.has(day(i)) ? 31 : 50)),
          });
          const dates = frostDates({ minima });
          const date = `${String(month).padStart(2, "0")}-${String(d).padStart(2, "0")}` as MonthDay;
          const share = (side: "after" | "before"): number => {
            let count = 0;
            for (let w = 0; w < winters; w++) {
              const mine = [...cold].filter((one) => winterOf(one) === w).map((one) => order(one.slice(5)));
              const last = Math.max(...mine);
              const first = Math.min(...mine);
              if (mine.length > 0 && (side === "after" ? last > order(date) : first < order(date))) count++;
            }
            return (100 * count) / winters;
          };
          expect(frostChance({ dates, date, side: "after" }).in("%")).toBeCloseTo(share("after"), 9);
          expect(frostChance({ dates, date, side: "before" }).in("%")).toBeCloseTo(share("before"), 9);
          for (const { percent, date: by } of dates.last.odds)
            if (by !== null) {
              const later = [...cold].filter((one) => order(one.slice(5)) > order(by));
              const share2 = new Set(
                later.map(winterOf).filter((w) => {
                  const mine = [...cold]
                    .filter((one) => winterOf(one) === w)
                    .map((one) => order(one.slice(5)));
                  return Math.max(...mine) > order(by);
                }),
              ).size;
              expect((100 * share2) / winters).toBeLessThanOrEqual(percent + 1e-9);
            }
        },
      ),
      runs(60),
    );
  });
});
