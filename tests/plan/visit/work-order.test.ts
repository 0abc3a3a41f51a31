import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { dailyTemperatures } from "../../../src/calendar/index.js";
import {
  type Job,
  type JobSpray,
  type JobSpread,
  type WorkOrder,
  workOrder,
  workOrderText,
} from "../../../src/plan/index.js";
import { quantity, quantityReviver } from "../../../src/quantity/index.js";
import { complaints } from "../../errors.js";
import { runs } from "../../properties.js";
import { asJson, parkJob, smallJob, soundOrder } from "../helpers.js";

const figure = (q: unknown): number => (q as { value: number }).value;
const spreadOf = (value: number, more: Partial<JobSpread> = {}): JobSpread => ({
  id: "feed",
  method: "spread",
  product: "feed-a",
  target: { value, unit: "lb/1000 ft2", of: "N" },
  ...more,
});

describe("the park visit, by hand", () => {
  const parkOrder = (): WorkOrder => workOrder(parkJob());

  test("areas: 330 x 180 ft, (300 + 270) / 2 x 165 ft, 40 x 40 yd", () => {
    expect(parkOrder().site.area.net.in("ft2")).toBeCloseTo(59_400 + 47_025 + 14_400, 6);
  });

  test("spread: 0.8 lb N at 24 % is 3.333 lb; on 106 425 ft2 354.75 lb, 8 bags, 45.25 lb over", () => {
    const [spread] = parkOrder().spreads;
    expect(spread?.rate.in("lb/1000 ft2")).toBeCloseTo(80 / 24, 12);
    expect(spread?.ratePerPass.in("lb/1000 ft2")).toBeCloseTo(40 / 24, 12);
    expect(spread?.amount.in("lb")).toBeCloseTo(354.75, 9);
    expect(spread?.packages?.count).toBe(8);
    expect(spread?.packages?.leftOver.in("lb")).toBeCloseTo(45.25, 9);
  });

  test("spray: 14.4 gal in loads of 10 and 4.4; 1.8 fl oz, 3.168 lb and 4.608 fl oz", () => {
    const [spray] = parkOrder().sprays;
    expect(spray?.volume.in("gal")).toBeCloseTo(14.4, 9);
    expect(spray?.tank.loads.map(({ volume }) => Number(volume.in("gal").toFixed(9)))).toEqual([10, 4.4]);
    const amounts = spray?.products.map(({ amount }) => figure(amount));
    expect(amounts?.[0]).toBeCloseTo(1.8, 9);
    expect(amounts?.[1]).toBeCloseTo(3.168, 9);
    // 0.25 % of 14.4 gal is 0.036 gal.
    expect(amounts?.[2]).toBeCloseTo(0.036, 9);
  });

  test("nutrients: 3.1 lb before is 0.744 lb N; with 0.8 lb it is 1.544 of 3", () => {
    const pitch = parkOrder().nutrients.find(({ part }) => part === "north pitch");
    expect(pitch?.yearSoFar.N?.value).toBeCloseTo(0.744, 12);
    const year = pitch?.limits[2];
    expect(
      [year?.before.value, year?.adds.value, year?.after.value].map((v) => Number(v?.toFixed(9))),
    ).toEqual([0.744, 0.8, 1.544]);
    expect(year?.remainingUnderStatedLimits.value).toBeCloseTo(1.456, 12);
    const lawn = parkOrder().nutrients.find(({ part }) => part === "bowling green");
    // 0.22 lb of 46 % is 0.1012 lb N; phosphorus stands in both forms.
    expect(lawn?.visitTotal.N?.value).toBeCloseTo(0.1012, 12);
    expect(lawn?.yearSoFar.P?.value).toBeCloseTo(0.0436, 4);
    expect(lawn?.yearAfter["N:quick"]?.value).toBeCloseTo(0.4012, 12);
  });

  test("dates: 42 and 70 days after 8 June, 7 and 28 days", () => {
    const dates = parkOrder().repeats.map(({ calendar }) => [
      calendar?.earliestByStatedRules,
      calendar?.reapplyBy,
    ]);
    expect(dates).toEqual([
      ["2015-07-20", "2015-08-17"],
      ["2015-06-15", "2015-07-06"],
    ]);
  });

  test("heat: 200 degree-days at 15 a day run out in 14 days", () => {
    const temperatures = dailyTemperatures({
      start: "2015-05-20",
      unit: "°C",
      sensor: "air",
      source: "flat",
      min: Array<number>(60).fill(10),
      max: Array<number>(60).fill(20),
    });
    const heat = workOrder({ ...parkJob(), temperatures }).repeats[1]?.degreeDaysAfter;
    expect(heat?.runsOut).toBe("2015-06-22");
    expect(heat?.total.value).toBeCloseTo(210, 9);
  });
});

describe("limits in a job", () => {
  test("a limit set, an ai limit, blackout dates and a setback, with facts", () => {
    const job: Job = {
      ...smallJob(),
      products: [
        {
          id: "feed-a",
          form: "dry",
          analysis: "24-0-11",
          contents: [{ value: 0.38, unit: "% w/w", of: "ai:prodiamine/product" }],
        },
      ],
      facts: { toWater: { value: 10, unit: "ft" }, applicator: "professional" },
      limits: [
        {
          amount: { value: 0.65, unit: "lb/acre", of: "ai:prodiamine" },
          per: "calendar year",
          source: "label",
        },
        { kind: "blackout dates", of: ["N"], blackout: { from: "05-01", to: "05-31" }, source: "county" },
        { kind: "setback", of: "any", atLeast: { value: 15, unit: "ft" }, source: "county" },
        { kind: "slow share", atLeastPercentOfN: 20, source: "state" },
      ],
    };
    const order = soundOrder(job);
    const [account] = order.nutrients;
    // 3.75 lb/1000 ft2 at 0.38 % is 0.01425 lb/1000 ft2, times 43.56 is 0.6207 lb/acre.
    expect(account?.limits[0]?.adds.value).toBeCloseTo(0.62073, 5);
    expect(account?.tests.map(({ limit, violated }) => [limit.kind, violated])).toEqual([
      ["blackout dates", true],
      ["setback", true],
      ["slow share", true],
    ]);
    expect(order.findings.filter(({ severity }) => severity === "warning").map(({ code }) => code)).toEqual([
      "limit/blackout-dates",
      "limit/setback",
      "limit/slow-share",
    ]);
    expect(workOrderText(order, { copy: "office", width: 200 })).toMatch(
      /none from 05-01 to 05-31: the day 2026-05-04, NOT WITHIN THE LIMIT/,
    );
  });

  test("soluble nitrogen that is stated without a total counts in the total", () => {
    const job = smallJob({
      log: [{ date: "2026-04-01", nutrients: [{ value: 2.5, unit: "lb/1000 ft2", of: "N:quick" }] }],
      limits: [{ amount: { value: 3, unit: "lb/1000 ft2", of: "N" }, per: "calendar year", source: "plan" }],
    });
    const order = soundOrder(job);
    expect(order.nutrients[0]?.limits[0]?.before.value).toBe(2.5);
    expect(order.findings.map(({ code }) => code)).toContain("nitrogen/no-total-stated");
  });

  test("a product of the log that states nothing is told, not counted as none", () => {
    const job = smallJob({
      products: [
        { id: "feed-a", form: "dry", analysis: "24-0-11" },
        { id: "mystery", form: "dry" },
      ],
      log: [
        { date: "2026-04-01", product: "mystery", rate: { value: 3, unit: "lb/1000 ft2", of: "product" } },
      ],
      limits: [{ amount: { value: 3, unit: "lb/1000 ft2", of: "N" }, per: "calendar year", source: "plan" }],
    });
    expect(soundOrder(job).notChecked.join()).toMatch(
      /the N applied on \d{4}-\d\d-\d\d \(log\[0\]\): not stated/,
    );
  });
});

describe("slips that types cannot see", () => {
  const labelled = (
    min: number,
    max: number,
    unit: string,
    value: number,
    valueUnit: string,
  ): readonly unknown[] => {
    const of = "product";
    const liquid = unit.startsWith("fl oz");
    const spray: JobSpray = {
      id: "s",
      method: "spray",
      mix: [{ product: "a", rate: { value, unit: valueUnit, of } }],
    };
    const job = smallJob({
      products: [
        {
          id: "a",
          form: liquid ? "liquid" : "dry",
          formulation: liquid ? "EC" : "WDG",
          labelRate: { min: { value: min, unit, of }, max: { value: max, unit, of } },
        },
      ],
      sprayer: {
        tank: { value: 50, unit: "gal" },
        applicationVolume: { value: 1, unit: "gal/1000 ft2", of: "spray" },
      },
      treatments: [spray],
    });
    return soundOrder(job)
      .findings.filter(({ code }) => code.startsWith("rate/"))
      .map(({ code, params }) => [code, params.slip]);
  };

  test("acre for 1000 ft2, both ways", () => {
    expect(labelled(3, 4, "lb/1000 ft2", 3.5, "lb/acre")).toEqual([
      ["rate/below-label", "acre-for-1000-ft2"],
    ]);
    expect(labelled(3, 4, "lb/acre", 3.5, "lb/1000 ft2")).toEqual([
      ["rate/above-label", "acre-for-1000-ft2"],
    ]);
  });

  test("fluid ounces for gallons", () => {
    expect(labelled(6, 8, "fl oz/acre", 7, "gal/acre")).toEqual([
      ["rate/above-label", "fluid-ounce-for-gallon"],
    ]);
  });

  test("within the label there is none, and a rate that no slip explains has none", () => {
    expect(labelled(6, 8, "fl oz/acre", 8, "fl oz/acre")).toEqual([]);
    expect(labelled(6, 8, "fl oz/acre", 9, "fl oz/acre")).toEqual([["rate/above-label", undefined]]);
  });

  const feedSlip = (rate: number, analysis = "24-0-11"): readonly unknown[] => {
    const of = "product";
    const job = smallJob({
      products: [
        {
          id: "feed-a",
          form: "dry",
          analysis,
          labelRate: {
            min: { value: 3.5, unit: "lb/1000 ft2", of },
            max: { value: 4, unit: "lb/1000 ft2", of },
          },
        },
      ],
      treatments: [
        { id: "f", method: "spread", product: "feed-a", rate: { value: rate, unit: "lb/1000 ft2", of } },
      ],
    });
    return soundOrder(job)
      .findings.filter(({ code }) => code.startsWith("rate/"))
      .map(({ params }) => params.slip);
  };

  test("the nutrient for the product: one over the analysis", () => {
    expect(feedSlip(0.9)).toEqual(["product-for-nutrient"]);
    expect(feedSlip(3.75 / 0.24)).toEqual(["product-for-nutrient"]);
  });

  test("phosphorus for phosphate: 2.29 times", () => {
    expect(feedSlip(3.75 * 2.2913, "10-20-10")).toEqual(["phosphorus-for-phosphate"]);
    // Without phosphorus it cannot be mixed up, and a weight is in no gallons.
    expect(feedSlip(3.75 * 2.2913)).toEqual([undefined]);
    expect(labelled(0.03, 0.04, "lb/1000 ft2", 0.035 * 128, "lb/1000 ft2")).toEqual([
      ["rate/above-label", undefined],
    ]);
  });

  test("nitrogen far above common advice names the slip, just above it does not", () => {
    const slip = (value: number) =>
      soundOrder(smallJob({ treatments: [spreadOf(value)] }))
        .findings.filter(({ code }) => code === "nitrogen/above-common-advice")
        .map(({ severity, params }) => [severity, params.slip]);
    expect(slip(1)).toEqual([]);
    expect(slip(1.1).map(([severity]) => severity)).toEqual(["caution"]);
    expect(slip(0.9 * 43.56)).toEqual([["warning", "acre-for-1000-ft2"]]);
  });
});

describe("properties", () => {
  test("JSON: a job that went through JSON gives the same order, and the order is plain data", () => {
    const job = parkJob();
    expect(asJson(JSON.parse(JSON.stringify(job)) as Job)).toEqual(asJson(job));
    const withQuantities = smallJob({
      treatments: [spreadOf(0, { target: quantity(0.9, "lb/1000 ft2", "N") })],
    });
    expect(asJson(withQuantities)).toEqual(asJson(smallJob()));
  });

  test("does not change the job", () => {
    const job = parkJob();
    const before = JSON.stringify(job);
    workOrder(job);
    expect(JSON.stringify(job)).toBe(before);
  });

  test("nutrients scale with the rate, and slow and soluble add up to the total", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 3, noNaN: true }),
        fc.double({ min: 0.1, max: 10, noNaN: true }),
        (target, factor) => {
          const total = (value: number) =>
            soundOrder(smallJob({ treatments: [spreadOf(value)] })).nutrients[0]?.visitTotal;
          const [one, more] = [total(target), total(target * factor)];
          for (const of of ["N", "N:quick", "K2O", "K"]) {
            expect(figure(more?.[of]) / figure(one?.[of])).toBeCloseTo(factor, 9);
          }
          expect(figure(one?.["N:quick"]) + figure(one?.["N:slow"])).toBeCloseTo(figure(one?.N), 12);
        },
      ),
      runs(50),
    );
  });

  test("loads add up to the whole, whatever tank and area", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 3, max: 200, noNaN: true }),
        fc.double({ min: 200, max: 12_400, noNaN: true }),
        fc.boolean(),
        (tank, area, even) => {
          const job = smallJob({
            products: [{ id: "a", form: "liquid", formulation: "EC" }],
            sprayer: {
              tank: { value: tank, unit: "gal" },
              applicationVolume: { value: 1, unit: "gal/1000 ft2", of: "spray" },
              loadSplit: even ? "even" : "full then partial",
            },
            treatments: [
              {
                id: "s",
                method: "spray",
                area: { value: area, unit: "ft2" },
                mix: [{ product: "a", rate: { value: 3, unit: "fl oz/1000 ft2", of: "product" } }],
              },
            ],
          });
          const [spray] = soundOrder(job).sprays;
          const [product] = spray?.products ?? [];
          const sum = product?.loads.reduce((total, { amount }) => total + figure(amount), 0) ?? 0;
          expect(sum).toBeCloseTo(figure(product?.amount), 9);
          const volume = spray?.tank.loads.reduce((total, load) => total + load.volume.in("gal"), 0) ?? 0;
          expect(volume).toBeCloseTo(area / 1000, 6);
        },
      ),
      runs(60),
    );
  });

  test("a higher limit is never violated where a lower one is not", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 4, noNaN: true }),
        fc.double({ min: 0.1, max: 4, noNaN: true }),
        (a, b) => {
          const violated = (limit: number) =>
            soundOrder(
              smallJob({
                limits: [
                  {
                    amount: { value: limit, unit: "lb/1000 ft2", of: "N" },
                    per: "application",
                    source: "plan",
                  },
                ],
              }),
            ).nutrients[0]?.limits[0]?.violated;
          if (violated(Math.max(a, b))) expect(violated(Math.min(a, b))).toBe(true);
        },
      ),
      runs(40),
    );
  });

  test("metric and US jobs agree", () => {
    const metric = soundOrder(
      smallJob({
        site: {
          name: "Pitch",
          parts: [{ shape: "measured", area: { value: 12_400 * 0.09290304, unit: "m2" } }],
        },
        treatments: [spreadOf(0, { target: { value: 0.9 * 48.8242763638305, unit: "kg/ha", of: "N" } })],
      }),
    );
    expect(metric.spreads[0]?.amount.in("lb")).toBeCloseTo(46.5, 8);
  });
});

describe("workOrderText", () => {
  test("is the same of an order that was stored, or that came through structuredClone", () => {
    const order = workOrder(parkJob());
    const text = workOrderText(order);
    expect(workOrderText(JSON.parse(JSON.stringify(order)))).toBe(text);
    expect(workOrderText(structuredClone(order))).toBe(text);
    expect(workOrderText(JSON.parse(JSON.stringify(order), quantityReviver))).toBe(text);
  });

  test("says what is wrong with what is no work order", () => {
    const { sprays, site, ...rest } = workOrder(parkJob());
    const problems = (input: unknown): readonly string[] => complaints(() => workOrderText(input as never));
    expect(problems(parkJob())).toEqual(["type order.type"]);
    expect(problems(rest)).toEqual(["missing order.site", "missing order.sprays"]);
    expect(problems({ ...rest, sprays, site, version: 2 })).toEqual(["range order.version"]);
    const json = JSON.stringify({ ...rest, sprays, site }).replaceAll('"gal"', '"gallonz"');
    expect(problems(JSON.parse(json))[0]).toMatch(/^unit\/unknown .*unit$/);
  });

  test("keeps within its width, at any width", () => {
    const order = workOrder(parkJob());
    for (const width of [60, 78, 100]) {
      const long = workOrderText(order, { width })
        .split("\n")
        .filter((line) => line.length > width);
      expect(long).toEqual([]);
    }
  });
});

test("the sheet keeps the digits of small figures, and the passes add up to the rate", () => {
  const target = { value: 0.0044, unit: "kg/m2", of: "N" };
  const order = soundOrder(
    smallJob({ treatments: [{ id: "feed", method: "spread", product: "feed-a", target, passes: 3 }] }),
  );
  expect(workOrderText(order, { copy: "office" })).toMatch(/^ {2}N +0 +0\.0044 +0\.0044$/m);
  // 0.0044 kg of N at 24 % is 0.018333 kg of product, a third of it 0.0061111; 12 400 ft2 are 1151.998 m2.
  const [spread] = order.spreads;
  expect(spread?.ratePerPass.in("kg/m2")).toBeCloseTo(0.0061111, 7);
  expect(spread?.amount.in("kg")).toBeCloseTo(21.12, 3);
});

test.each([
  // 5 gal and 0.3 gal of 5.3; 7 gal and 0.6 gal of 7.6: the rest of a subtraction is a shade under the decimal.
  [5300, 5, 0.3, []],
  [7600, 7, 0.6, []],
  [7600, 7, 0.61, ["load/below-minimum"]],
])("%s ft2 from a tank of %s gal, least load %s gal: equal is enough", (ft2, tank, least, codes) => {
  const order = soundOrder(
    smallJob({
      site: { name: "Pitch", parts: [{ shape: "measured", area: { value: ft2, unit: "ft2" } }] },
      products: [{ id: "wetter", form: "liquid", formulation: "surfactant" }],
      sprayer: {
        tank: { value: tank, unit: "gal" },
        applicationVolume: { value: 1, unit: "gal/1000 ft2", of: "spray" },
        minimumLoad: { value: least, unit: "gal" },
      },
      treatments: [
        {
          id: "wet",
          method: "spray",
          mix: [{ product: "wetter", rate: { value: 3, unit: "fl oz/1000 ft2", of: "product" } }],
        },
      ],
    }),
  );
  expect(order.findings.map(({ code }) => code).filter((code) => code.startsWith("load/"))).toEqual(codes);
});

test("a label rate by volume and a rate by weight: the order says why they were not compared", () => {
  const label = { value: 3, unit: "fl oz/1000 ft2", of: "product" };
  const notChecked = (more: object): readonly string[] =>
    soundOrder(smallJob(more as never)).notChecked.filter((text) => text.includes("rate against the label"));
  const liquid = { id: "liq", form: "liquid", formulation: "EC", labelRate: { min: label, max: label } };
  const sprayed = (rate: object): object => ({
    products: [{ ...liquid, density: { value: 1.1, unit: "kg/L" } }],
    sprayer: {
      tank: { value: 50, unit: "gal" },
      applicationVolume: { value: 1, unit: "gal/1000 ft2", of: "spray" },
    },
    treatments: [{ id: "t", method: "spray", mix: [{ product: "liq", rate }] }],
  });
  const check = (rate: object): unknown =>
    soundOrder(smallJob(sprayed(rate) as never)).sprays[0]?.products[0]?.labelRate;
  expect(check({ value: 3, unit: "oz/1000 ft2", of: "product" })).toBe("other measure");
  expect(check({ value: 3, unit: "fl oz/1000 ft2", of: "product" })).toBe("within");
  expect(check({ value: 4, unit: "fl oz/1000 ft2", of: "product" })).toBe("outside");
  expect(notChecked(sprayed({ value: 3, unit: "oz/1000 ft2", of: "product" }))).toEqual([
    "liq: the rate against the label, because one is by weight and the other by volume.",
  ]);
  expect(notChecked(sprayed({ value: 1, unit: "% v/v", of: "product/spray" }))).toEqual([
    "liq: the rate against the label, because one is per area and the other per volume of spray.",
  ]);
  expect(
    notChecked({
      products: [{ id: "feed-a", form: "dry", analysis: "24-0-11", labelRate: { min: label, max: label } }],
    }),
  ).toEqual(["feed-a: the rate against the label, because one is by weight and the other by volume."]);
});
