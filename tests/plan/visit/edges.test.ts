// Each finding of a visit, provoked once and shown not to come just on the other side of its limit, with what a person reads.
import { describe, expect, test } from "vitest";
import type { Job, JobProduct } from "../../../src/plan/index.js";
import { codes, found, smallJob, soundOrder } from "../helpers.js";

const of = "product";
const lb = "lb/1000 ft2";
const floz = "fl oz/1000 ft2";
type More = Partial<Omit<JobProduct, "id">>;

const spreadJob = (value: number, unit: string, more: More = {}): Job =>
  smallJob({
    products: [{ id: "feed-a", form: "dry", analysis: "24-0-11", ...more } as JobProduct],
    treatments: [{ id: "feed", method: "spread", product: "feed-a", rate: { value, unit, of } }],
  });
const sprayJob = (value: number, unit: string, more: More = {}, job: Partial<Job> = {}): Job =>
  smallJob({
    products: [{ id: "liq", form: "liquid", formulation: "EC", ...more } as JobProduct],
    sprayer: {
      tank: { value: 10, unit: "gal" },
      applicationVolume: { value: 1, unit: "gal/1000 ft2", of: "spray" },
    },
    treatments: [{ id: "s", method: "spray", mix: [{ product: "liq", rate: { value, unit, of } }] }],
    ...job,
  });
const range = (min: number, max: number, unit: string): More => ({
  labelRate: { min: { value: min, unit, of }, max: { value: max, unit, of } },
});

describe("a rate and its label", () => {
  test("at either end it is within; a shade outside it is not, and says so", () => {
    const label = range(3, 4, lb);
    for (const value of [3, 3.5, 4, 4 * (1 + 1e-12)]) {
      expect(codes(spreadJob(value, lb, label), "rate/")).toEqual([]);
      expect(soundOrder(spreadJob(value, lb, label)).spreads[0]?.labelRate).toBe("within");
    }
    expect(found(spreadJob(4.1, lb, label), "rate/")).toEqual([
      {
        code: "rate/above-label",
        severity: "warning",
        path: "treatments[0]",
        params: { product: "feed-a", rate: 4.1, unit: lb, min: 3, max: 4 },
        text: "feed-a: 4.1 lb/1000 ft2 is above the label rate of 3 to 4 lb/1000 ft2.",
      },
    ]);
    expect(found(sprayJob(2.5, floz, range(3, 4, floz)), "rate/")).toEqual([
      {
        code: "rate/below-label",
        severity: "caution",
        path: "treatments[0].mix[0]",
        params: { product: "liq", rate: 2.5, unit: floz, min: 3, max: 4 },
        text: "liq: 2.5 fl oz/1000 ft2 is below the label rate of 3 to 4 fl oz/1000 ft2.",
      },
    ]);
    expect(soundOrder(spreadJob(4.1, lb, label)).spreads[0]?.labelRate).toBe("outside");
    expect(soundOrder(spreadJob(4.1, lb)).spreads[0]?.labelRate).toBe("not stated");
    expect(soundOrder(spreadJob(4.1, lb, range(3, 4, floz))).spreads[0]?.labelRate).toBe("other measure");
  });

  const slip = (job: Job) =>
    found(job, "rate/").map(({ params, text }) => [params.slip, text.split(". ").slice(1).join(". ")]);

  test("a slip is named to 5 % beyond the range, and no further", () => {
    // 43.56 x 4 x 1.05 = 182.952; 3 / 43.56 x 0.95 = 0.065427
    const label = range(3, 4, lb);
    const told = ["acre-for-1000-ft2", "Check for per acre and per 1000 ft2 mixed up (43.56 times)."];
    expect(slip(spreadJob(182.9, lb, { ...label, analysis: "1-0-0" }))).toEqual([told]);
    expect(slip(spreadJob(183.1, lb, { ...label, analysis: "1-0-0" }))).toEqual([[undefined, ""]]);
    expect(slip(spreadJob(0.0655, lb, { ...label, analysis: "1-0-0" }))).toEqual([told]);
    expect(slip(spreadJob(0.0653, lb, { ...label, analysis: "1-0-0" }))).toEqual([[undefined, ""]]);
  });

  test("each slip by its own factor, in words", () => {
    expect(slip(sprayJob(128 * 0.035, floz, range(0.03, 0.04, floz)))).toEqual([
      ["fluid-ounce-for-gallon", "Check for fluid ounces and gallons mixed up (128 times)."],
    ]);
    expect(slip(spreadJob(3.5 * 2.2914, lb, { ...range(3, 4, lb), analysis: "0-20-0" }))).toEqual([
      ["phosphorus-for-phosphate", "Check for phosphorus and phosphate (P2O5) mixed up (2.29 times)."],
    ]);
    expect(slip(spreadJob(3.5 * 0.24, lb, range(3, 4, lb)))).toEqual([
      ["product-for-nutrient", "Check for product and nitrogen mixed up (4.17 times at 24 % N)."],
    ]);
    // A rate of spray by volume can be no slip of acres.
    const perSpray = { value: 43.56, unit: "% v/v", of: "product/spray" };
    const job = sprayJob(1, floz, {
      labelRate: { min: { ...perSpray, value: 0.9 }, max: { ...perSpray, value: 1 } },
    });
    const treatments = [{ id: "s", method: "spray", mix: [{ product: "liq", rate: perSpray }] }];
    expect(slip({ ...job, treatments } as Job)).toEqual([[undefined, ""]]);
  });
});

describe("nitrogen and common advice", () => {
  const target = (value: number, more: More = {}): Job =>
    smallJob({
      products: [{ id: "feed-a", form: "dry", analysis: "24-0-11", ...more } as JobProduct],
      treatments: [{ id: "f", method: "spread", product: "feed-a", target: { value, unit: lb, of: "N" } }],
    });
  test("one pound is the advice; above it a caution, above two a warning", () => {
    expect(codes(target(1), "nitrogen/above")).toEqual([]);
    expect(codes(target(1.001), "nitrogen/above")).toEqual(["nitrogen/above-common-advice caution"]);
    expect(codes(target(2), "nitrogen/above")).toEqual(["nitrogen/above-common-advice caution"]);
    expect(codes(target(2.001), "nitrogen/above")).toEqual(["nitrogen/above-common-advice warning"]);
    // 1.2 lb per 1,000 ft2 x 43.56 / 0.40468564 ha x 0.45359237 kg = 58.59 kg/ha
    expect(found(target(1.2), "nitrogen/above")[0]?.text).toBe(
      "feed-a: 1.2 lb of N per 1000 ft2 (58.59 kg/ha) in one application is above the common advice of 1 lb.",
    );
    const [over] = found(target(0.9 * 43.56), "nitrogen/above");
    expect(over?.text).toMatch(/of 1 lb\. Check for per acre and per 1000 ft2 mixed up \(43\.56 times\)\.$/);
    expect(over?.params).toEqual({
      product: "feed-a",
      nitrogen: expect.closeTo(39.204, 6),
      unit: lb,
      advice: 1,
      slip: "acre-for-1000-ft2",
    });
    expect(over?.path).toBe("treatments[0]");
  });
  test("no slip is named for what is just above the advice, nor where the slip leads to no turf rate", () => {
    expect(found(target(1.2), "nitrogen/above")[0]?.params).not.toHaveProperty("slip", "acre-for-1000-ft2");
    // 4.1 lb: 4.1 / 43.56 = 0.094, below the 0.095 that a tenth of a pound leaves; 4.2 is above
    const none = { analysis: "99-0-0" };
    expect(found(target(4.1, none), "nitrogen/above")[0]?.params.slip).toBeUndefined();
    expect(found(target(4.2, none), "nitrogen/above")[0]?.params.slip).toBe("acre-for-1000-ft2");
  });
  test("a label without slow nitrogen is told, one with it is not, and no nitrogen is nothing to tell", () => {
    const slowNitrogen = { value: 12, unit: "% w/w", of: "N:slow/product" };
    expect(found(target(0.9), "nitrogen/")).toEqual([
      {
        code: "nitrogen/no-slow-stated",
        severity: "note",
        path: "treatments[0]",
        params: { product: "feed-a" },
        text: "feed-a: no slow-release nitrogen on the label, so all of its nitrogen is counted as quick-release.",
      },
    ]);
    expect(found(target(0.9, { slowNitrogen }), "nitrogen/")).toEqual([]);
    expect(found(spreadJob(3, lb, { analysis: "0-0-50" }), "nitrogen/")).toEqual([]);
  });
});

describe("packets", () => {
  const packets = (oz: number, more: More = {}): Job =>
    sprayJob(oz, "oz/1000 ft2", {
      form: "dry",
      formulation: "water-soluble packet",
      packetSize: { value: 5, unit: "oz" },
      ...more,
    });
  test("whole ones in each load, to a tenth of a percent", () => {
    // 12.4 gal in 10 and 2.4: 10 x 12.5 = 125 oz is 25 packets, 2.4 x 12.5 = 30 oz 6
    const share = soundOrder(packets(12.5)).sprays[0]?.products[0]?.packets;
    expect(share?.perLoad.map((count) => Number(count.toFixed(9)))).toEqual([25, 6]);
    expect(share?.whole).toBe(true);
    expect(share?.areaPerPacket.in("ft2")).toBeCloseTo(400, 6);
    expect(codes(packets(12.5 * 1.0009), "packet/")).toEqual([]);
    expect(codes(packets(12.5 * 1.0011), "packet/")).toEqual(["packet/part-of-one warning"]);
    expect(found(packets(2), "packet/")).toEqual([
      {
        code: "packet/part-of-one",
        severity: "warning",
        path: "treatments[0].mix[0]",
        params: { product: "liq", loads: ["2"], areaPerPacket: expect.closeTo(2500, 6), unit: "ft2" },
        text: "liq: load 2 takes 0.96 packets. Packets go in whole and are never cut. One packet treats 2,500 ft2 at this rate: plan loads for a whole number of packets, or use a product that does not come in packets.",
      },
    ]);
    expect(codes(packets(0.002), "packet/")).toEqual(["packet/part-of-one warning"]);
    // 141.75 g at 1.2 g/ha are 118.1 ha, 12.71 million ft2; and at 120 g/ha 1.181 ha, which is no 11810 m2
    const metric = sprayJob(1.2, "g/ha", {
      form: "dry",
      formulation: "water-soluble packet",
      packetSize: { value: 5, unit: "oz" },
    });
    expect(found(metric, "packet/")[0]?.text).toContain("One packet treats 12,710,000 ft2 at");
    const site = {
      name: "pitch",
      parts: [{ name: "pitch", shape: "measured", area: { value: 1000, unit: "m2" } }],
    } as const;
    const told = (rate: number): string | undefined =>
      found(
        {
          ...sprayJob(rate, "g/ha", {
            form: "dry",
            formulation: "water-soluble packet",
            packetSize: { value: 5, unit: "oz" },
          }),
          site,
        } as never,
        "packet/",
      )[0]?.text;
    expect(told(120)).toContain("One packet treats 1.181 ha at");
    expect(told(200)).toContain("One packet treats 7,087 m2 at");
    // 5 oz at 87 oz/acre are 5/87 of an acre, 2,503.4 ft2
    const acres = {
      ...sprayJob(87, "oz/acre", {
        form: "dry",
        formulation: "water-soluble packet",
        packetSize: { value: 5, unit: "oz" },
      }),
      site: {
        name: "pitch",
        parts: [{ name: "pitch", shape: "measured", area: { value: 0.2, unit: "acre" } }],
      },
    };
    expect(found(acres as never, "packet/")[0]?.text).toContain("One packet treats 2,503 ft2 at");
  });
  test("three loads are told by name, and that there are more", () => {
    const job = packets(1);
    const three = { ...job.sprayer, tank: { value: 4.2, unit: "gal" } };
    const four = { ...job.sprayer, tank: { value: 3.2, unit: "gal" } };
    // 12.4 gal: 4.2, 4.2, 4 at 1 oz per gal and 5 oz a packet
    expect(found({ ...job, sprayer: three }, "packet/")[0]?.text).toMatch(
      /^liq: load 1 takes 0\.84 packets, load 2 takes 0\.84 packets, load 3 takes 0\.8 packets\. Packets/,
    );
    expect(found({ ...job, sprayer: four }, "packet/")[0]?.text).toMatch(
      /load 3 takes 0\.64 packets and others like it\. Packets/,
    );
  });
  test("the size of a packet is asked for where nothing states it, or in another measure", () => {
    const bare = sprayJob(2, "oz/1000 ft2", { form: "dry", formulation: "water-soluble packet" });
    expect(found(bare, "packet/")).toEqual([
      {
        code: "packet/size-not-known",
        severity: "warning",
        path: "treatments[0].mix[0]",
        params: { product: "liq" },
        text: "liq: the job does not state what one packet holds, so this sheet cannot say how many whole packets a load takes. State packetSize. Never cut or open a packet.",
      },
    ]);
    expect(soundOrder(bare).notChecked).toContain(
      "liq: whether each load takes whole packets, because no packet size is stated.",
    );
    const other = sprayJob(2, floz, {
      formulation: "water-soluble packet",
      packetSize: { value: 5, unit: "oz" },
    });
    expect(found(other, "packet/")[0]?.text).toMatch(/what one packet holds in the measure of the rate, so/);
    // A bag of one packet says what the packet holds.
    const bag = {
      form: "dry",
      formulation: "water-soluble packet",
      package: { value: 5, unit: "oz" },
    } as const;
    expect(codes(sprayJob(12.5, "oz/1000 ft2", bag), "packet/")).toEqual([]);
    expect(codes(sprayJob(2, floz, { package: { value: 5, unit: "gal" } }), "packet/")).toEqual([]);
  });
});

describe("packages of what is sold and measured otherwise", () => {
  const need = (
    value: number,
    unit: string,
    more: More,
  ): readonly [number | undefined, readonly string[]] => {
    const order = soundOrder(sprayJob(value, unit, more));
    const lines = order.notChecked.filter((text) => text.includes("packages"));
    return [order.sprays[0]?.products[0]?.packages?.count, lines];
  };
  test("through the density, either way; without it they are not counted, and that is told", () => {
    // 12.4 x 128 fl oz = 12.4 gal at 10 lb/gal: 124 lb, 3 drums of 50 lb
    const density = { value: 10, unit: "lb/gal" };
    const drum = { package: { value: 50, unit: "lb" } };
    expect(need(128, floz, { ...drum, density })).toEqual([3, []]);
    expect(need(128, floz, drum)).toEqual([
      undefined,
      [
        "liq: how many packages, because it is sold by weight and measured by volume, and no density is stated.",
      ],
    ]);
    // 12.4 x 10 lb = 124 lb at 10 lb/gal: 12.4 gal, 13 jugs of a gallon
    const jug = { package: { value: 1, unit: "gal" }, density };
    expect(need(10, lb, jug)).toEqual([13, []]);
    expect(need(1, floz, {})).toEqual([undefined, []]);
  });
});
