import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { type DeicingTable, deicingRate, deicingTables } from "../../../src/spread/index.js";
import { complaints } from "../../errors.js";

// Rates of salt step by step, as the sheet prints them, and who stands behind each remark.

const at = (f: number, unit: "°F" | "°C" = "°F") => deicingRate({ pavement: quantity(f, unit) });
const own = (steps: DeicingTable["steps"]): DeicingTable => ({
  ...(deicingTables[0] as DeicingTable),
  id: "own",
  steps,
});

describe("the sheet of Illinois", () => {
  test.each<readonly [number, number | null]>([
    [40, 3],
    [30, 3],
    [29.9, 5],
    [25, 5],
    [24.9, 6],
    [20, 6],
    [19.9, 7],
    [15, 7],
    [14.9, 8],
    [5, 8],
    [4.9, null],
    [-60, null],
  ])("at %f °F", (f, pounds) => {
    const { rate, table } = at(f);
    expect(rate === null ? null : rate.in("lb/1000 ft2")).toBe(pounds);
    expect(table).toBe("walks and lots, Illinois");
  });

  test("a bound that is told in Celsius is met in spite of rounding", () => {
    // -35/9 °C are 25 °F, and -20/3 °C are 20 °F, both but for the last digit.
    expect(at(-35 / 9, "°C").rate?.in("lb/1000 ft2")).toBe(5);
    expect(at(-20 / 3, "°C").rate?.in("lb/1000 ft2")).toBe(6);
  });

  test("is cited with what was read of it", () => {
    expect(deicingTables[0]).toMatchObject({
      material: "dry sodium chloride",
      read: "2026-11",
      note: "The page prints above 30, 25 to 30 and so on: a shared bound takes the warmer step here. Prewetting saves up to a third.",
      source: {
        title: "Parking lot and sidewalk deicing: application rates by pavement temperature",
        publisher: "DuPage River Salt Creek Workgroup",
        where: "read as an excerpt, not the whole page; title paraphrased",
      },
    });
  });
});

describe("remarks", () => {
  const codes = (f: number, table?: DeicingTable) =>
    deicingRate({ pavement: quantity(f, "°F"), ...(table && { table }) }).findings.map(({ code }) => code);
  const chloride = "deicing/chloride";

  test("too cold begins below 15 °F, and where the table has no rate", () => {
    const four = own([{ fromF: null, lbPer1000Ft2: 4 }]);
    expect(codes(15, four)).toEqual([chloride]);
    expect(codes(14.9, four)).toEqual([chloride, "deicing/too-cold"]);
    expect(codes(20, own([{ fromF: null, lbPer1000Ft2: null }]))).toEqual([chloride, "deicing/too-cold"]);
  });

  test("sources differ above 4 lb, not at it", () => {
    expect(codes(20, own([{ fromF: null, lbPer1000Ft2: 4 }]))).toEqual([chloride]);
    expect(codes(20, own([{ fromF: null, lbPer1000Ft2: 4.1 }]))).toEqual([
      chloride,
      "deicing/sources-differ",
    ]);
  });

  test("each reads as it should, with its source", () => {
    expect(at(10).findings).toEqual([
      {
        code: chloride,
        severity: "caution",
        params: {},
        text: expect.stringMatching(/^Salt runs off into soil and water and stays\. Plow or shovel first/),
        source: {
          title: "Keeping surfaces clear for winter parking lot and sidewalk maintenance",
          publisher: "Minnesota Stormwater Manual",
          where: "winter maintenance basics",
          url: "https://stormwater.pca.state.mn.us/index.php/Keeping_surfaces_clear_for_winter_parking_lot_and_sidewalk_maintenance",
        },
      },
      {
        code: "deicing/too-cold",
        severity: "warning",
        params: { belowF: 15 },
        text: "Dry salt melts too slowly below 15 °F of pavement. Use a wetted or another deicer, or sand for traction.",
        source: {
          title: "Winter maintenance: frequently asked questions",
          publisher: "Wisconsin Department of Transportation",
          where: "salt and pavement temperature",
          url: "https://wisconsindot.gov/Pages/doing-bus/local-gov/hwy-mnt/winter-maintenance/faq.aspx",
        },
      },
      {
        code: "deicing/sources-differ",
        severity: "note",
        params: { lbPer1000Ft2: 4 },
        text: "Watershed districts in Minnesota advise less than 4 lb/1000 ft2 on walks at any temperature.",
        source: {
          title: "Smart salting",
          publisher: "Elm Creek Watershed Management Commission, Minnesota",
          where: "tips: less than 4 pounds for 1,000 square feet",
          url: "https://www.elmcreekwatershed.org/smart-salting.html",
        },
      },
    ]);
  });
});

describe("a table of one's own", () => {
  test("takes the limits of what it may print, and nothing beyond", () => {
    const given = (steps: DeicingTable["steps"]) =>
      complaints(() => deicingRate({ pavement: quantity(20, "°F"), table: own(steps) }));
    expect(
      given([
        { fromF: 40, lbPer1000Ft2: 0 },
        { fromF: -60, lbPer1000Ft2: 100 },
      ]),
    ).toEqual([]);
    expect(
      given([
        { fromF: 41, lbPer1000Ft2: 1 },
        { fromF: -61, lbPer1000Ft2: 101 },
      ]),
    ).toEqual([
      "range table.steps[0].fromF",
      "range table.steps[1].fromF",
      "range table.steps[1].lbPer1000Ft2",
    ]);
    expect(given([{ fromF: -60, lbPer1000Ft2: -1 }])).toEqual(["range table.steps[0].lbPer1000Ft2"]);
    expect(
      given([
        { fromF: 20, lbPer1000Ft2: 1 },
        { fromF: 20, lbPer1000Ft2: 2 },
      ]),
    ).toEqual(["conflict table.steps[1].fromF"]);
    expect(
      given([
        { fromF: null, lbPer1000Ft2: 1 },
        { fromF: 10, lbPer1000Ft2: 2 },
      ]),
    ).toEqual(["conflict table.steps[1].fromF"]);
    expect(given([{ fromF: 30, lbPer1000Ft2: 1 }])).toEqual(["range pavement"]);
  });

  test("prewetted salt is two thirds of the dry rate", () => {
    const wet = deicingRate({ pavement: quantity(20, "°F"), prewet: "a third less" });
    expect(wet.rate?.in("lb/1000 ft2")).toBe(4);
  });
});
