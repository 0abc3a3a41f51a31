import { describe, expect, test } from "vitest";
import { type Job, tryWorkOrder, workOrder, workOrderText } from "../../../src/plan/index.js";
import { asJson, problemsOf, smallJob, soundOrder } from "../helpers.js";

const ft = (value: number) => ({ value, unit: "ft" });
const label = {
  kind: "buffer",
  of: "any",
  from: "water",
  atLeast: ft(50),
  reductions: [
    { measure: "deflector", percent: 50 },
    { measure: "coarse granules", percent: 30 },
  ],
  together: "sum",
  floor: ft(15),
  source: "label of the park's product (invented)",
} as const;
const measures = ["deflector", "coarse granules"];
const site: Job["site"] = {
  name: "Park",
  parts: [
    { name: "north pitch", shape: "rectangle", length: ft(300), width: ft(200) },
    { name: "lawn", shape: "circle", radius: ft(50) },
  ],
};
const job = (
  edges: readonly object[],
  treatment: object = { parts: ["north pitch"] },
  more: object = {},
): Job =>
  smallJob({
    site,
    limits: [label],
    facts: { edges } as never,
    treatments: [
      {
        id: "feed",
        method: "spread",
        product: "feed-a",
        target: { value: 0.9, unit: "lb/1000 ft2", of: "N" },
        ...treatment,
      },
    ],
    ...more,
  });
const creek = { part: "north pitch", from: "water", away: ft(0), measures, edges: [0] };

describe("the area that the stated distances leave", () => {
  test("15 ft along 300 ft take 4,500 of 60,000 sq ft", () => {
    const order = soundOrder(job([creek]));
    const [buffer] = order.buffers;
    expect(buffer?.strips[0]?.distance.in("ft")).toBeCloseTo(15, 12);
    expect(buffer?.area?.strips.in("ft2")).toBeCloseTo(4500, 6);
    expect(buffer?.area?.left.in("ft2")).toBeCloseTo(55_500, 6);
    expect(buffer?.area?.by).toBe("outline");
  });

  test("a site of one shape without a name has its edges; with a hole in it, it has to be told whose they are", () => {
    const alone = (more: object = {}): Job =>
      job(
        [{ from: "water", away: ft(0), measures, edges: [0] }],
        {},
        {
          site: { name: "Pitch", parts: [{ shape: "rectangle", length: ft(300), width: ft(200) }], ...more },
        },
      );
    // 15 ft along 300 ft, as above
    expect(soundOrder(alone()).buffers[0]?.area?.strips.in("ft2")).toBeCloseTo(4500, 6);
    const { problems } = tryWorkOrder(alone({ cutOuts: [{ shape: "circle", radius: ft(10) }] }));
    expect(problems.map(({ code, path, expected }) => `${code} ${path}: ${expected}`)).toEqual([
      "missing facts.edges[0].part: the part these edges belong to",
    ]);
  });

  test("treating the whole part, or with no strip, is told; treating what is left with the strip is not", () => {
    const codes = (one: Job) => soundOrder(one).findings.map(({ code }) => code);
    expect(codes(job([creek]))).toEqual(expect.arrayContaining(["limit/buffer", "buffer/treats-strip"]));
    const strip = [{ ...creek, untreated: ft(15) }];
    expect(codes(job(strip))).toContain("buffer/treats-strip");
    expect(codes(job(strip))).not.toContain("limit/buffer");
    const cut = codes(job(strip, { parts: ["north pitch"], area: { value: 55_500, unit: "ft2" } }));
    expect(cut).not.toContain("limit/buffer");
    expect(cut).not.toContain("buffer/treats-strip");
  });

  test("two edges at a corner are not counted twice", () => {
    const order = soundOrder(job([{ ...creek, edges: [0, 1] }]));
    // 15 x 300 + 15 x 200 - 15 x 15
    expect(order.buffers[0]?.area?.strips.in("ft2")).toBeCloseTo(7275, 6);
  });

  test("what lies between counts: 10 ft away leaves a strip of 5 ft; 15 ft away none", () => {
    const strip = (away: number) => soundOrder(job([{ ...creek, away: ft(away) }])).buffers[0];
    expect(strip(10)?.area?.strips.in("ft2")).toBeCloseTo(1500, 6);
    expect(strip(15)?.area?.strips.in("ft2")).toBe(0);
    expect(strip(15)?.strips[0]?.short).toBe(false);
  });

  test("a round part by the length of its edge, which leaves corners out", () => {
    const edge = { part: "lawn", from: "water", away: ft(0), measures, along: ft(60) };
    const area = soundOrder(job([edge], { parts: ["lawn"] })).buffers[0]?.area;
    expect(area?.strips.in("ft2")).toBeCloseTo(900, 6);
    expect(area?.by).toBe("length");
  });

  test("without edges or their length the area is not known, and said to be", () => {
    const { edges: _, ...bare } = creek;
    const order = soundOrder(job([bare]));
    expect(order.buffers[0]?.area).toBeNull();
    expect(order.notChecked.join("\n")).toMatch(/area within the distance from water/);
  });

  test("a strip wider than the part leaves nothing", () => {
    const wide = { ...label, atLeast: ft(500), floor: ft(400) };
    const area = soundOrder(job([creek], { parts: ["north pitch"] }, { limits: [wide] })).buffers[0]?.area;
    expect(area?.left.value).toBe(0);
  });

  test("a metric job: 300 m by 200 m, 50 ft are 15.24 m", () => {
    const m = (value: number) => ({ value, unit: "m" });
    const metric = soundOrder(
      job(
        [{ ...creek, away: m(0), measures: [] }],
        { parts: ["north pitch"] },
        {
          site: {
            name: "Park",
            parts: [{ name: "north pitch", shape: "rectangle", length: m(300), width: m(200) }],
          },
        },
      ),
    );
    expect(metric.buffers[0]?.area?.strips.in("m2")).toBeCloseTo(300 * 15.24, 6);
  });

  test("points under those of the label are told", () => {
    const points = {
      kind: "runoff points",
      of: "any",
      atLeastPoints: 3,
      source: "label (invented)",
    } as const;
    const runoff = [{ measure: "swale", points: 2 }];
    const order = soundOrder(job([], {}, { limits: [points], facts: { runoff } }));
    expect(order.findings.map(({ code }) => code)).toContain("limit/runoff-points");
  });

  test("the sheet prints what to leave, also from JSON, and never that an area may be treated", () => {
    const text = workOrderText(workOrder(job([creek])));
    expect(text.replace(/\s+/g, " ")).toContain(
      "Leave untreated on north pitch: a strip of 15 ft along water (15 ft from it). 55,500 sq ft of 60,000 sq ft is outside the stated distance.",
    );
    expect(workOrderText(asJson(job([creek])))).toBe(text);
    expect(text).not.toMatch(/allowed|permitted|safe to/i);
  });

  test("what is cut out of the site hides no strip that is treated", () => {
    const pond = {
      ...site,
      parts: [site.parts[0]],
      cutOuts: [{ shape: "measured", area: { value: 10_000, unit: "ft2" } }],
    };
    const strip = [{ ...creek, untreated: ft(15) }];
    const codes = (treatment: object) =>
      soundOrder(job(strip, treatment, { site: pond })).findings.map(({ code }) => code);
    expect(codes({})).toContain("buffer/treats-strip");
    expect(codes({ area: { value: 45_500, unit: "ft2" } })).not.toContain("buffer/treats-strip");
  });

  test("a part, an edge, or a number that is not there is refused at its place", () => {
    expect(problemsOf(job([{ ...creek, part: "pond" }]))).toEqual(["missing facts.edges[0].part"]);
    expect(problemsOf(job([{ ...creek, edges: [4] }]))).toEqual(["range facts.edges[0].edges[0]"]);
    expect(problemsOf(job([{ ...creek, part: "lawn" }]))).toEqual(["conflict facts.edges[0].edges"]);
    const { part: _, ...loose } = creek;
    expect(problemsOf(job([loose]))).toEqual(["missing facts.edges[0].part"]);
    expect(problemsOf(job([], {}, { facts: { runoff: [{ measure: "a", part: "x" }] } }))).toEqual([
      "missing facts.runoff[0].part",
    ]);
  });
});
