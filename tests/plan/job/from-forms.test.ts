// What a browser sends in place of a job: numbers between quotes, a calibration whole, a job that is still text.
import { describe, expect, test } from "vitest";
import { calibrationByCatch, tryRouteOrder, tryWorkOrder } from "../../../src/index.js";
import { quantity } from "../../../src/quantity/index.js";

const spray = (applicationVolume: unknown, product: object = {}) => ({
  type: "job",
  version: 1,
  title: "Regulate the lawn",
  date: "2026-06-08",
  site: { name: "Park", parts: [{ name: "lawn", shape: "measured", area: { value: 12400, unit: "ft2" } }] },
  products: [{ id: "reg", form: "liquid", analysis: "0-0-0", formulation: "EC", ...product }],
  sprayer: { tank: { value: 50, unit: "gal" }, applicationVolume },
  treatments: [
    {
      id: "regulate",
      method: "spray",
      mix: [{ product: "reg", rate: { value: 0.125, unit: "fl oz/1000 ft2", of: "product" } }],
    },
  ],
});
const volume = { value: 40, unit: "gal/acre", of: "spray" };
const told = (job: unknown) =>
  tryWorkOrder(job).problems.map(({ path, code, got, expected, suggestion }) => [
    path,
    code,
    got,
    expected,
    suggestion,
  ]);

const measured = calibrationByCatch({
  catches: [39, 41].map((value) => quantity(value, "fl oz", "water")),
  course: quantity(204.1875, "ft"),
  width: quantity(20, "in"),
});
const way = "a volume of spray over an area: of a calibration, asFinishedSpray(calibration).value";

describe("a job from a form", () => {
  test("reads as it stands", () => expect(told(spray(volume))).toEqual([]));

  test.each([
    ["as it is", measured],
    ["out of a store", JSON.parse(JSON.stringify(measured))],
  ])("a calibration %s is told where its volume of spray stands", (_, calibration) => {
    const place = "sprayer.applicationVolume";
    expect(told(spray(calibration))).toEqual([
      [place, "type", "the record of a calibration", way, undefined],
    ]);
    expect(told(spray(calibration.rate))).toEqual([
      [`${place}.of`, "substance/mismatch", '"water"', way, undefined],
    ]);
  });

  test("the same on a route", () => {
    const { problems } = tryRouteOrder({
      type: "route-job",
      version: 1,
      title: "Round",
      date: "2026-06-08",
      products: spray(volume).products,
      mix: spray(volume).treatments[0]?.mix,
      sprayer: spray(measured).sprayer,
      stops: [{ id: "park", area: { value: 12000, unit: "ft2" } }],
    });
    expect(problems.map(({ path, expected }) => [path, expected])).toEqual([
      ["sprayer.applicationVolume", way],
    ]);
  });

  test("a number between quotes is told alike in a package and elsewhere", () => {
    const { sprayer, ...rest } = spray(volume, { package: { value: "1", unit: "gal" } });
    expect(told({ ...rest, sprayer: { ...sprayer, tank: { value: "50", unit: "gal" } } })).toEqual([
      ["products[0].package.value", "not-finite", '"1"', "a finite number", "1"],
      ["sprayer.tank.value", "type", '"50"', "a number", "50"],
    ]);
  });

  test("a job that is still text", () => {
    const [problem] = tryWorkOrder(JSON.stringify(spray(volume))).problems;
    expect([problem?.path, problem?.code, problem?.expected]).toEqual([
      "job",
      "type",
      "a job as a record, which JSON.parse makes of a text",
    ]);
  });

  test("a kind of product in any letters", () => {
    expect(told(spray(volume, { formulation: " Surfactant " }))).toEqual([]);
    expect(told(spray(volume, { formulation: "Wettable Powder" }))[0]?.[4]).toBe("WP");
  });
});
