// What is wrong is told once, at the place where it was written.
import { expect, test } from "vitest";
import { ledgerTotals } from "../../../src/ledger/index.js";
import { routeLoads, schedule, tryWorkOrder } from "../../../src/plan/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { complaints, problemsOf } from "../../errors.js";
import { smallJob } from "../helpers.js";

const puts = { supplies: [{ value: 0.6, unit: "lb/1000 ft2", of: "N" }] };
const season = { from: "2026-04-01", to: "2026-06-30" };
const degreeDays = (unit: string) => ({
  method: "simple average",
  base: { value: 0, unit: "°C" },
  interval: { value: 200, unit },
  source: "label (invented)",
});

test("a fact of the season that is misspelt is told of the season, not of each treatment", () => {
  const treatments = [
    { id: "a", puts },
    { id: "b", puts },
  ];
  expect(
    complaints(() => schedule({ season, treatments, facts: { gass: "bermudagrass" } } as never)),
  ).toEqual(["type facts.gass"]);
});

test("the unit of a growing-degree-day interval is told with its whole place", () => {
  const treatments = [{ id: "a", degreeDays: degreeDays("°C ds") }];
  expect(complaints(() => schedule({ season, treatments } as never))).toEqual([
    "unit/unknown treatments[0].degreeDays.interval.unit",
  ]);
  const [feed] = smallJob().treatments;
  const job = { ...smallJob(), treatments: [{ ...feed, degreeDays: degreeDays("°C ds") }] };
  expect(tryWorkOrder(job).problems).toMatchObject([
    { code: "unit/unknown", path: "treatments[0].degreeDays.interval.unit", suggestion: "°C d" },
  ]);
});

test("a day of a stored ledger that is written in another way is told as it should be", () => {
  const entries = [{ id: "a", date: "2026/04/20", supplies: puts.supplies }];
  expect(
    problemsOf(() =>
      ledgerTotals({
        ledger: { type: "ledger", version: 1, entries } as never,
        from: "2026-01-01",
        to: "2026-12-31",
      }),
    ),
  ).toMatchObject([{ code: "date", path: "ledger.entries[0].date", suggestion: "2026-04-20" }]);
});

test("a tank that is told to do for the most fills does", () => {
  // 43,560,000,000.00087 ft2 at 1 gal per 1,000 ft2, in 10,000 fills: 4,356 gal and a noise of it
  const loads = (gallons: number) =>
    routeLoads({
      stops: [{ id: "a", area: quantity(43_560_000_000.000_87, "ft2") }],
      rate: quantity(1, "gal/1000 ft2", "spray"),
      capacity: quantity(gallons, "gal", "spray"),
    });
  const [told] = problemsOf(() => loads(1));
  expect(told?.expected).toBe("4356 gal or more, enough for the route in 10000 fills");
  expect(loads(4356).fills.length).toBeLessThanOrEqual(10_001);
});
