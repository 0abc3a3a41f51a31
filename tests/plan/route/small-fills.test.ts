// Fillings after which a sprayer holds less than it can agitate.
import { expect, test } from "vitest";
import { type RouteJob, routeOrder } from "../../../src/index.js";

const gal = (value: number) => ({ value, unit: "gal" });
const job = (least: number): RouteJob => ({
  type: "route-job",
  version: 1,
  title: "Tuesday round",
  date: "2026-06-09",
  products: [{ id: "wetter", form: "liquid", formulation: "surfactant" }],
  mix: [{ product: "wetter", rate: { value: 3, unit: "fl oz/1000 ft2", of: "product" } }],
  sprayer: {
    tank: gal(50),
    applicationVolume: { value: 1.5, unit: "gal/1000 ft2", of: "spray" },
    residualVolume: gal(2),
    minimumLoad: gal(least),
  },
  stops: [{ id: "hall", area: { value: 10_000, unit: "ft2" } }],
});

test("15 gal for 10,000 ft2 and 2 gal that stay are 17: less than 18, and not less than 17", () => {
  const found = (least: number) =>
    routeOrder(job(least)).findings.filter(({ code }) => code === "load/below-minimum");
  expect(found(17)).toEqual([]);
  expect(found(18)).toEqual([
    {
      code: "load/below-minimum",
      severity: "warning",
      path: "sprayer.minimumLoad",
      params: { load: 1, stop: "hall", volume: 17, minimum: 18, unit: "gal" },
      text: "Fill 1 (hall) leaves less in the tank than the sprayer can agitate.",
      source: "the minimum load that the route states",
    },
  ]);
});

test("what a jug is too coarse for is told of the fill, as the sheet numbers it", () => {
  // 32 + 78 + 21 = 131 gal and 3 that stay: 100, 33 and 1; 11 fl oz/acre at 1 gal per 1000 ft2 are 0.2525 fl oz in the last
  const area = (value: number) => ({ value, unit: "ft2" });
  const { findings, loads } = routeOrder({
    ...job(1),
    mix: [{ product: "wetter", rate: { value: 11, unit: "fl oz/acre", of: "product" } }],
    sprayer: {
      tank: gal(100),
      applicationVolume: { value: 1, unit: "gal/1000 ft2", of: "spray" },
      residualVolume: gal(2),
      plumbingVolume: gal(1),
      increments: { liquid: { unit: "fl oz", step: 1 } },
    },
    stops: [
      { id: "hall", area: area(32_000) },
      { id: "school", area: area(78_000) },
      { id: "library", area: area(21_000) },
    ],
  });
  expect(loads.fills.map(({ added }) => added.value)).toEqual([100, 33, 1]);
  const coarse = findings.filter(({ code }) => code === "load/step-too-coarse");
  expect(coarse.map(({ text }) => text)).toEqual([
    expect.stringMatching(/^Fill 3 gets no wetter: a measuring increment of 1 fl oz/),
  ]);
});
