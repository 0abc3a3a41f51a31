import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { laborHours, loadedWage, money, overtimeShare, quantity, visitPrice } from "../../../src/index.js";
import { runs } from "../../properties.js";

// A second reading: the pay slip of one person for one week, hour by hour, and the sums of a bid by hand.
describe("second readings of labor", () => {
  it("the overtime share is what a pay slip has more than plain pay", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 80 }), fc.integer({ min: 30, max: 48 }), (hours, regular) => {
        const wage = 18;
        let slip = 0;
        for (let hour = 1; hour <= hours; hour++) slip += hour <= regular ? wage : 1.5 * wage;
        const share = overtimeShare({ hours: quantity(hours, "h"), regular: quantity(regular, "h") });
        expect(hours * wage * (1 + share.in("1"))).toBeCloseTo(slip, 8);
      }),
      runs(100),
    );
  });

  it("wage, burden, machines, overhead and margin add up to the price, in odd units too", () => {
    const share = fc.integer({ min: 2, max: 60 });
    fc.assert(
      fc.property(share, share, share, fc.integer({ min: 1, max: 60 }), (overtime, risk, burden, margin) => {
        const loaded = loadedWage({
          wage: money(16, "USD").per(quantity(60, "min")),
          overtime: quantity(overtime, "%"),
          risk: quantity(risk / 100, "1"),
          burden: quantity(burden, "%"),
        });
        const cost = 16 * (1 + overtime / 100 + risk / 100) * (1 + burden / 100);
        expect(loaded.cost.value).toBeCloseTo(cost, 9);
        const price = visitPrice({
          manHours: quantity(90, "min"),
          wage: loaded.cost,
          machines: [
            { name: "truck", hours: quantity(0.75, "h"), rate: money(15, "USD").per(quantity(1, "h")) },
          ],
          products: [{ name: "feed", cost: money(31, "USD") }],
          overhead: money(12, "USD").per(quantity(1, "h")),
          aim: { margin: quantity(margin, "%") },
          area: quantity(2, "acre"),
        });
        const breakEven = 1.5 * cost + 0.75 * 15 + 31 + 1.5 * 12;
        expect(price.breakEven.value).toBeCloseTo(breakEven, 8);
        expect(price.price.value - price.breakEven.value).toBeCloseTo((price.price.value * margin) / 100, 8);
        expect(price.perArea?.in("money:USD/acre" as never)).toBeCloseTo(price.price.value / 2, 8);
      }),
      runs(100),
    );
  });

  it("man-hours are area over width and speed, by walking it", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: 20, max: 120 }),
        fc.integer({ min: 40, max: 100 }),
        (acres, inches, efficient) => {
          const { manHours } = laborHours({
            tasks: [
              {
                name: "mow",
                area: quantity(acres, "acre"),
                swath: quantity(inches, "in"),
                speed: quantity(4, "mi/h"),
                efficiency: quantity(efficient, "%"),
                times: 3,
                people: 2,
              },
            ],
          });
          const feet = (acres * 43_560) / (inches / 12);
          expect(manHours.in("h")).toBeCloseTo((feet / (4 * 5280) / (efficient / 100)) * 3 * 2, 8);
        },
      ),
      runs(100),
    );
  });
});
