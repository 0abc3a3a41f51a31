// Rules of a visit one by one: each where it holds, and just beside it where it does not.
import { describe, expect, test } from "vitest";
import type { Job } from "../../../src/plan/index.js";
import type { ReadTreatment } from "../../../src/plan/job/treatments.js";
import { weighed } from "../../../src/plan/watering/watering-grounds.js";
import { quantity } from "../../../src/quantity/index.js";
import { codes, found, smallJob, soundOrder } from "../helpers.js";

const ft = (value: number) => ({ value, unit: "ft" });
const product = (value: number, unit: string) => ({ value, unit, of: "product" });
const parts = [
  { name: "pitch", shape: "rectangle", length: ft(100), width: ft(50) },
  { name: "lawn", shape: "square", side: ft(30) },
] as const;
const site = { name: "Park", parts };
const feeding = (more: object = {}) => ({
  id: "feed",
  method: "spread" as const,
  product: "feed-a",
  target: { value: 0.9, unit: "lb/1000 ft2", of: "N" },
  ...more,
});

describe("what the log has of a treatment", () => {
  const applied = (log: NonNullable<Job["log"]>) =>
    soundOrder(smallJob({ site, log, treatments: [feeding({ parts: ["pitch"] })] })).repeats[0]?.applied;
  const rate = product(3, "lb/1000 ft2");

  test("by its name, or by its product where no name stands there", () => {
    expect(applied([{ date: "2026-04-01", treatment: "feed" }])).toEqual(["2026-04-01"]);
    expect(applied([{ date: "2026-04-01", product: "feed-a", rate }])).toEqual(["2026-04-01"]);
    expect(applied([{ date: "2026-04-01", treatment: "other", product: "feed-a", rate }])).toEqual([]);
    expect(applied([{ date: "2026-04-01", nutrients: [{ value: 1, unit: "lb/acre", of: "N" }] }])).toEqual(
      [],
    );
  });

  test("on its parts, each day once and in order", () => {
    expect(applied([{ date: "2026-04-01", treatment: "feed", parts: ["lawn"] }])).toEqual([]);
    expect(
      applied([
        { date: "2026-04-20", treatment: "feed", parts: ["lawn", "pitch"] },
        { date: "2026-04-01", treatment: "feed" },
        { date: "2026-04-20", treatment: "feed", parts: ["pitch"] },
      ]),
    ).toEqual(["2026-04-01", "2026-04-20"]);
  });
});

describe("nutrients that cannot be weighed", () => {
  const logged = (more: object, rate: object): readonly string[] =>
    soundOrder(
      smallJob({
        products: [
          { id: "feed-a", form: "dry", analysis: "24-0-11" },
          { id: "iron", name: "iron", form: "liquid", analysis: "6-0-0", ...more },
        ],
        log: [{ date: "2026-04-01", product: "iron", rate: rate as never }],
      }),
    ).notChecked.filter((text) => text.startsWith("Nutrients of iron"));

  test("say what is missing: the sprayer, or the density", () => {
    const density = { density: { value: 10, unit: "lb/gal" } };
    expect(logged(density, { value: 1, unit: "% v/v", of: "product/spray" })).toEqual([
      "Nutrients of iron: its rate is per volume of spray, and no sprayer is stated.",
    ]);
    expect(logged({}, product(3, "fl oz/1000 ft2"))).toEqual([
      "Nutrients of iron: its rate is by volume, and no density is stated.",
    ]);
    expect(logged(density, product(3, "fl oz/1000 ft2"))).toEqual([]);
    // a product that feeds nothing has none to weigh
    expect(logged({ analysis: "0-0-0" }, product(3, "fl oz/1000 ft2"))).toEqual([]);
    expect(logged({ analysis: "0-0-0 6Fe" }, product(3, "fl oz/1000 ft2"))).toHaveLength(1);
  });
});

describe("what was checked", () => {
  const wateringIn = { least: { value: 0.25, unit: "in" }, source: "label" } as const;
  const water = { events: [], until: "2026-05-06T06:00-05:00" } as const;
  const products = (more: object) => [{ id: "feed-a", form: "dry", analysis: "24-0-11", ...more } as const];
  const line = "rain and irrigation against the label rules that the job states";

  test("water only where the job has both water and a rule", () => {
    const checked = (more: Partial<Job>) => soundOrder(smallJob(more)).checked.includes(line);
    expect(checked({ water, products: products({ wateringIn }) })).toBe(true);
    expect(checked({ water })).toBe(false);
    expect(checked({ products: products({ wateringIn }) })).toBe(false);
  });

  test("and nothing that is not in the job", () => {
    expect(soundOrder(smallJob()).checked).toEqual([
      "that every figure has the unit and the substance it needs",
      "nitrogen of each application against common advice",
    ]);
    const interval = { minimumDays: 28, source: "plan" };
    const labelRate = { min: product(1, "lb/1000 ft2"), max: product(5, "lb/1000 ft2") };
    const limits = [
      { amount: { value: 3, unit: "lb/1000 ft2", of: "N" }, per: "calendar year", source: "plan" },
    ];
    expect(
      soundOrder({
        ...smallJob({ products: products({ labelRate }) }),
        limits,
        treatments: [feeding({ interval })],
      }).checked,
    ).toEqual([
      "that every figure has the unit and the substance it needs",
      "rates against the label rates that the job states",
      "nitrogen of each application against common advice",
      "nutrients against the limits that the job states",
      "dates against the intervals that the job states",
    ]);
  });
});

describe("what is cut out of the site", () => {
  const cutOuts = [{ shape: "measured", area: { value: 100, unit: "ft2" } }] as const;
  const told = (more: object, ...treatments: readonly object[]) =>
    codes({ ...smallJob({ site: { ...site, ...more } }), treatments }, "site/");

  test("is told of where a treatment names its parts, and nowhere else", () => {
    const all = feeding();
    const named = feeding({ id: "named", parts: ["pitch"] });
    expect(told({ cutOuts }, all)).toEqual([]);
    expect(told({}, named)).toEqual([]);
    expect(told({ cutOuts }, all, named)).toEqual(["site/cut-outs-not-taken-off caution"]);
    expect(told({ cutOuts }, named)).toEqual(["site/cut-outs-not-taken-off caution"]);
  });
});

describe("strips along an edge", () => {
  const limits = [{ kind: "buffer", of: "any", from: "water", atLeast: ft(10), source: "label" }];
  // Edge 0 of the pitch is 100 ft long: 10 ft less 4 ft of bank leave a strip of 6 ft, 600 sq ft of 5,000.
  const facts = { edges: [{ part: "pitch", from: "water", away: ft(4), edges: [0] }] };
  const job = (more: object) => ({ ...smallJob({ site }), limits, facts, treatments: [feeding(more)] });

  test("only the part with an edge has strips, and what they leave", () => {
    const { buffers } = soundOrder(job({}));
    expect(
      buffers.map(({ part, area }) => [part, area?.strips.in("ft2"), area?.left.in("ft2"), area?.by]),
    ).toEqual([["pitch", expect.closeTo(600, 8), expect.closeTo(4400, 8), "outline"]]);
  });

  test("a treatment of the whole part is told with both areas; one of what is left is not", () => {
    // 4,400 of the pitch and 900 of the lawn are left of 5,900.
    expect(found(job({}), "buffer/treats-strip")).toEqual([
      {
        code: "buffer/treats-strip",
        severity: "warning",
        path: "treatments[0].area",
        params: { treatment: "feed", area: 5900, left: expect.closeTo(5300, 8), unit: "ft2" },
        text: "feed: 5900 ft2 is treated on pitch, lawn, but the stated distances leave 5300 ft2. Every amount here is for the larger area: state the area of the treatment without the strip.",
      },
    ]);
    expect(codes(job({ area: { value: 5300, unit: "ft2" } }), "buffer/treats-strip")).toEqual([]);
    expect(codes(job({ area: { value: 5301, unit: "ft2" } }), "buffer/treats-strip")).toHaveLength(1);
  });
});

describe("water on the parts of a treatment", () => {
  const rule = { least: quantity(0.5, "in"), source: "label" };
  const weigh = (treated: readonly string[] | undefined, wet: readonly string[] | undefined) => {
    const treatment = {
      id: "feed",
      path: "treatments[0]",
      end: "2026-06-08T09:00-05:00",
      ...(treated && { parts: treated }),
    } as unknown as ReadTreatment; // only these fields are read
    const event = {
      at: "2026-06-08T20:00-05:00",
      depth: quantity(0.4, "in"),
      by: "rain",
      known: "forecast",
      ...(wet && { parts: wet }),
    } as const;
    const found = weighed({ product: "a", productName: "a", rule: rule as never }, treatment, {
      events: [event],
      until: "2026-06-09T06:00-05:00",
      ground: ["lawn", "pitch"],
    });
    const most = (of: (one: (typeof found)[number]) => { in(unit: "in"): number }): number =>
      Math.max(...found.map((one) => of(one).in("in")));
    return [most(({ all }) => all.remaining), most(({ sure }) => sure.remaining)];
  };

  test("the driest of those that are treated; a forecast is not sure", () => {
    const reached = [expect.closeTo(0.1, 9), 0.5];
    const dry = [0.5, 0.5];
    expect(weigh(undefined, undefined)).toEqual(reached);
    expect(weigh(["lawn"], undefined)).toEqual(reached);
    expect(weigh(["lawn"], [])).toEqual(reached);
    expect(weigh(undefined, ["lawn", "pitch"])).toEqual(reached);
    expect(weigh(["pitch"], ["lawn", "pitch"])).toEqual(reached);
    expect(weigh(undefined, ["lawn"])).toEqual(dry);
    expect(weigh(["lawn", "pitch"], ["pitch"])).toEqual(dry);
    expect(weigh(["lawn"], ["pitch"])).toEqual(dry);
  });
});

describe("cautions of a tank", () => {
  const spray = (more: object): Job => ({
    ...smallJob({
      products: [
        { id: "x", form: "dry", formulation: { code: "WG", scheme: "international" }, ...more } as never,
      ],
      sprayer: {
        tank: { value: 50, unit: "gal" },
        applicationVolume: { value: 1, unit: "gal/1000 ft2", of: "spray" },
      },
    }),
    treatments: [{ id: "s", method: "spray", mix: [{ product: "x", rate: product(1, "oz/1000 ft2") }] }],
  });
  const stepLines = (more: object) =>
    soundOrder(spray(more))
      .cautions.filter(({ place }) => place === "step")
      .map(({ code, line }) => `${code}: ${line}`)
      .sort();

  test("have one line at their step", () => {
    expect(stepLines({})).toEqual([
      "caution/backflow: Air gap at the hose; stay with the fill.",
      "caution/container-rinse: Container empty? Triple-rinse it into the tank.",
      "caution/dry-powder: Weigh it; pour low, out of the wind; no dust.",
    ]);
    expect(stepLines({ formulation: "water-soluble packet", packetSize: { value: 8, unit: "oz" } })).toEqual([
      "caution/backflow: Air gap at the hose; stay with the fill.",
      "caution/container-rinse: Container empty? Triple-rinse it into the tank.",
      "caution/water-soluble-packet: Dry gloves, whole packets, never cut.",
    ]);
  });

  test("and each of a visit has a source: words, or a title with where it is found", () => {
    for (const job of [spray({}), smallJob()])
      for (const { code, text, source } of soundOrder(job).cautions) {
        expect(text, code).toMatch(/\.$|:$|;$/);
        if (typeof source === "string") expect(source, code).not.toBe("");
        else {
          expect(source.title, code).toMatch(/\w{3}/);
          expect(source.publisher ?? source.url, code).toMatch(/\w{3}/);
          if (source.url !== undefined) expect(source.url, code).toMatch(/^https?:\/\/[\w.-]+\/./);
          if (source.where !== undefined) expect(source.where, code).toMatch(/\w/);
          if (source.year !== undefined) expect(source.year, code).toBeGreaterThan(1970);
        }
      }
  });

  test("a note of the label stands at the product, and a low rate is stirred into water first", () => {
    const steps = (more: object) =>
      soundOrder(spray(more)).sprays[0]?.order.steps.map(({ action, text }) => `${action}: ${text}`) ?? [];
    expect(steps({ labelNote: "Add with the agitator running." }).join("\n")).toContain(
      "Add with the agitator running.",
    );
    expect(steps({}).join("\n")).not.toContain("agitator running");
    // So little of it is stirred into a bucket first; of more it is not.
    const emulsion = { formulation: { code: "EC", scheme: "international" } };
    expect(steps({ ...emulsion, lowRate: true }).filter((step) => step.startsWith("premix"))).toHaveLength(1);
    expect(steps({ ...emulsion, lowRate: false }).filter((step) => step.startsWith("premix"))).toEqual([]);
  });
});

describe("a log of the day itself", () => {
  const log = (date: Job["date"]) => [{ date, treatment: "feed" }];
  test("is told on that day alone", () => {
    expect(soundOrder(smallJob({ log: log("2026-05-03") })).findings.map(({ code }) => code)).not.toContain(
      "log/day-of-visit",
    );
    for (const { code } of soundOrder(smallJob({ log: log("2026-05-03") })).findings)
      expect(code).toMatch(/\w\/\w/);
    expect(codes(smallJob({ log: log("2026-05-04") }), "log/")).toEqual(["log/day-of-visit caution"]);
  });
});
