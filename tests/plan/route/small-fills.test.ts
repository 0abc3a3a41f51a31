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
