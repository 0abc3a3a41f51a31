// A fault of the site or of a product does not hide what is wrong with the treatments, the log and the water: all of it is
// told at once, and what can only be told with the site or the product in hand is not guessed at.
import { expect, test } from "vitest";
import { tryWorkOrder } from "../../../src/plan/index.js";

const rate = { value: 3.75, unit: "lb/1000 ft2", of: "product" } as const;
const job = {
  type: "job",
  version: 1,
  title: "Feed",
  date: "2026-06-04",
  site: { name: "Park", parts: [{ name: "lawn", shape: "measured", area: { value: 20_000, unit: "ft2" } }] },
  products: [{ id: "feed-a", form: "dry", analysis: "24-0-11" }],
  treatments: [{ id: "feed", method: "spread", product: "feed-a", parts: ["lawn"], rate }],
  log: [{ date: "2026-04-15", product: "feed-a", rate, parts: ["lawn"] }],
} as const;
const placesOf = (changed: object): readonly string[] =>
  tryWorkOrder({ ...job, ...changed }).problems.map(({ code, path }) => `${code} ${path}`);
const badSite = { ...job.site, parts: [{ ...job.site.parts[0], area: { value: 20_000, unit: "lb" } }] };
const badProduct = { ...job.products[0], analysis: "24-0" };

test("a fault of the site hides none of the treatments, the water and the log", () => {
  expect(placesOf({})).toEqual([]);
  expect(
    placesOf({
      site: badSite,
      treatments: [
        { ...job.treatments[0], rate: { ...rate, unit: "lb" }, passes: 9, parts: ["lawn", "lawn"] },
      ],
      water: { events: [{ at: "tomorrow" }], until: "2026-06-05T06:00-05:00" },
      log: [{ ...job.log[0], date: "June", rate: { ...rate, value: -1 } }],
    }),
  ).toEqual([
    "unit/mismatch site.parts[0].area",
    "duplicate treatments[0].parts[1]",
    "unit/mismatch treatments[0].rate",
    "range treatments[0].passes",
    "date water.events[0].at",
    "missing water.events[0].depth",
    "missing water.events[0].by",
    "missing water.events[0].known",
    "date log[0].date",
    "range log[0].rate.value",
  ]);
});

test("beside a site at fault no name of a part is unknown, and a sound job has no other problem", () => {
  expect(placesOf({ site: badSite })).toEqual(["unit/mismatch site.parts[0].area"]);
  expect(placesOf({ site: badSite, treatments: [{ ...job.treatments[0], parts: ["lane"] }] })).toEqual([
    "unit/mismatch site.parts[0].area",
  ]);
  expect(placesOf({ site: badSite, treatments: [{ ...job.treatments[0], parts: [5] }] })).toEqual([
    "unit/mismatch site.parts[0].area",
    "type treatments[0].parts[0]",
  ]);
});

test("a fault of a product hides none of its rates", () => {
  const told = placesOf({ products: [badProduct], log: [{ ...job.log[0], rate: { ...rate, unit: "lb" } }] });
  expect(told.map((one) => one.replace(/^\S+ /, ""))).toEqual(["products[0].analysis", "log[0].rate"]);
});

test("no passes are not one pass", () => {
  expect(placesOf({ treatments: [{ ...job.treatments[0], passes: null }] })).toEqual([
    "not-finite treatments[0].passes",
  ]);
});

test("a product without a name to go by, or a form, is told with all that is wrong with its words; both ends of a range", () => {
  const told = placesOf({
    products: [
      { ...job.products[0], labelRate: { min: { ...rate, value: -1 }, max: { ...rate, unit: "lb" } } },
      { id: "a/b", form: "wet", name: 5, lowRate: "yes" },
    ],
  });
  expect(told).toEqual([
    "range products[0].labelRate.min.value",
    "unit/mismatch products[0].labelRate.max",
    "type products[1].id",
    "type products[1].form",
    "type products[1].name",
    "type products[1].lowRate",
  ]);
});
