import { describe, expect, test } from "vitest";
import type { Job, WorkOrder } from "../../../src/plan/index.js";
import { workOrderText } from "../../../src/plan/index.js";
import { smallJob, soundOrder } from "../helpers.js";

const inch = (value: number) => ({ value, unit: "in" });
const hours = (value: number) => ({ value, unit: "h" });
const rate = { value: 0.4, unit: "fl oz/1000 ft2", of: "product" };

/** Two liquids in one tank, each with what its label states of water. */
const tank = (a: object | undefined, b: object | undefined, more: Partial<Job> = {}, treatment = {}): Job =>
  smallJob({
    products: [
      {
        id: "a",
        name: "A",
        form: "liquid",
        formulation: "EC",
        ...(a && { wateringIn: a as never }),
      },
      { id: "b", name: "B", form: "liquid", formulation: "EC", ...(b && { wateringIn: b as never }) },
    ],
    sprayer: {
      tank: { value: 20, unit: "gal" },
      applicationVolume: { value: 1, unit: "gal/1000 ft2", of: "spray" },
    },
    treatments: [
      {
        id: "s",
        method: "spray",
        end: "2026-05-04T09:00-05:00",
        irrigationRate: { value: 0.5, unit: "in/h" },
        mix: [
          { product: "a", rate },
          { product: "b", rate },
        ],
        ...treatment,
      },
    ],
    ...more,
  });

const label = (rule: object) => ({ ...rule, source: "label" });
const wet = label({ least: inch(0.25), most: inch(0.5), within: hours(24) });
const findings = (order: WorkOrder) =>
  order.findings
    .filter(({ code }) => code.startsWith("watering-in/"))
    .map(({ code, severity }) => `${severity} ${code.slice(12)}`);
const events = (...list: readonly (readonly [string, number, string, string])[]) => ({
  water: {
    until: "2026-05-06T09:00-05:00",
    events: list.map(([at, depth, by, known]) => ({ at, depth: inch(depth), by, known })),
  } as never,
});

describe("what labels state of water after the work", () => {
  test("is the strictest of the products, with clock times and a run time, by hand", () => {
    const order = soundOrder(tank(wet, label({ least: inch(0.3), within: hours(12) })));
    const { least, most, within, by, runTime, conflict } = order.sprays[0]?.watering ?? {};
    expect([least?.in("in"), most?.in("in"), within?.in("h"), by, conflict]).toEqual([
      0.3,
      0.5,
      12,
      "2026-05-04T21:00-05:00",
      false,
    ]);
    // 0.3 in at 0.5 in/h are 36 min.
    expect(runTime?.in("min")).toBeCloseTo(36, 9);
    expect(workOrderText(order)).toMatch(
      /WATER IN with 0\.3 to 0\.5 in of water within\s+12\s+h\s+of\s+the\s+end\s+\(by\s+Mon\s+May\s+4,\s+9:00\s+pm\):\s+run\s+the\s+irrigation\s+36\s+min/,
    );
  });

  test("of two labels that ask for as much, the first is told as it is written", () => {
    const [us, metric] = [label({ least: inch(1) }), label({ least: { value: 25.4, unit: "mm" } })];
    expect(soundOrder(tank(us, metric)).sprays[0]?.watering.least?.toString()).toBe("1 in");
    expect(soundOrder(tank(metric, us)).sprays[0]?.watering.least?.toString()).toBe("25.4 mm");
  });

  test("one wants water in and the other must dry: a warning without time between, else a caution", () => {
    const dry = (h: number) => label({ notBefore: hours(h) });
    const clash = soundOrder(tank(label({ least: inch(0.25), within: hours(4) }), dry(6)));
    expect(findings(clash)).toEqual(["warning wet-and-dry"]);
    expect(clash.sprays[0]?.watering.conflict).toBe(true);
    expect(workOrderText(clash)).toMatch(/DO NOT START[\s\S]*A has to be watered in within 4 h/);
    expect(workOrderText(clash)).not.toMatch(/WATER IN /);
    expect(findings(soundOrder(tank(wet, dry(6))))).toEqual(["caution wet-and-dry"]);
    // As long as the window itself leaves no time.
    expect(findings(soundOrder(tank(wet, dry(24))))).toEqual(["warning wet-and-dry"]);
    // Without a stated window nobody can say that there is time.
    expect(findings(soundOrder(tank(label({ least: inch(0.25) }), dry(6))))).toEqual(["warning wet-and-dry"]);
  });

  test("the leaf stays dry for the longest time that is stated, by hand", () => {
    const both = [hours(6), hours(2)].map((notBefore) => label({ notBefore }));
    for (const [a, b] of [both, [...both].reverse()]) {
      const { notBefore, dryUntil, least, conflict } = soundOrder(tank(a, b)).sprays[0]?.watering ?? {};
      // The work ends at 9:00; 6 h later it is 15:00.
      expect([notBefore?.in("h"), dryUntil, least, conflict]).toEqual([
        6,
        "2026-05-04T15:00-05:00",
        null,
        false,
      ]);
    }
  });

  test("one wants more than the other takes", () => {
    const order = soundOrder(tank(label({ least: inch(0.6) }), label({ most: inch(0.5) })));
    expect(findings(order)).toEqual(["warning amounts"]);
    expect(findings(soundOrder(tank(label({ least: inch(0.5) }), label({ most: inch(0.5) }))))).toEqual([]);
  });

  test("a label that is not given is named, and its caution stays", () => {
    const order = soundOrder(tank(wet, undefined));
    expect(order.notChecked.join("\n")).toMatch(/Watering-in and rain-free time of B:/);
    expect(workOrderText(order)).toMatch(/\[ \] B: Irrigation off for the label's rain-free time/);
    const both = soundOrder(tank(wet, wet));
    expect(both.cautions.map(({ code }) => code)).not.toContain("caution/rain-free");
    expect(both.notChecked.join("\n")).toMatch(/because the job states no rain and no irrigation/);
  });
});

describe("rain and irrigation of the job", () => {
  const one = (rule: object, water: object) => soundOrder(tank(rule, undefined, water));
  test("planned irrigation counts, forecast rain is told apart", () => {
    const order = one(
      wet,
      events(
        ["2026-05-04T20:00-05:00", 0.1, "irrigation", "planned"],
        ["2026-05-04T22:00-05:00", 0.05, "rain", "forecast"],
      ),
    );
    const { remaining, forecast, runTime } = order.sprays[0]?.watering ?? {};
    expect(
      [remaining?.in("in"), forecast?.in("in"), runTime?.in("min")].map((x) => Number(x?.toFixed(9))),
    ).toEqual([0.15, 0.05, 18]);
    expect(findings(order)).toEqual(["caution not-planned"]);
    expect(workOrderText(order)).toMatch(
      /On\s+top\s+of\s+what\s+is\s+planned,\s+water\s+0\.15\s+in:\s+run\s+the\s+irrigation\s+18\s+min\./,
    );
  });
  test("enough by the forecast alone is a caution, enough by plan is none", () => {
    expect(findings(one(wet, events(["2026-05-04T22:00-05:00", 0.3, "rain", "forecast"])))).toEqual([
      "caution by-forecast-only",
    ]);
    const planned = one(wet, events(["2026-05-04T22:00-05:00", 0.3, "irrigation", "planned"]));
    expect(findings(planned)).toEqual([]);
    expect(workOrderText(planned)).toMatch(/what is\s+planned is enough/);
  });
  test("too soon, and too much", () => {
    const dry = label({ notBefore: hours(6) });
    expect(findings(one(dry, events(["2026-05-04T14:59-05:00", 0.1, "rain", "forecast"])))).toEqual([
      "warning too-soon",
    ]);
    expect(findings(one(dry, events(["2026-05-04T15:00-05:00", 0.1, "rain", "forecast"])))).toEqual([]);
    expect(findings(one(wet, events(["2026-05-04T22:00-05:00", 0.6, "rain", "observed"])))).toEqual([
      "warning too-much",
    ]);
  });
  test("water on other parts does not count", () => {
    const site = {
      name: "Park",
      parts: ["north", "south"].map((name) => ({
        name,
        shape: "measured" as const,
        area: { value: 6_000, unit: "ft2" as const },
      })),
    };
    const order = (part: string) =>
      soundOrder(
        tank(
          wet,
          undefined,
          {
            site,
            water: {
              until: "2026-05-06T09:00-05:00",
              events: [
                {
                  at: "2026-05-04T20:00-05:00",
                  depth: inch(0.3),
                  by: "irrigation",
                  known: "planned",
                  parts: [part],
                },
              ],
            },
          },
          { parts: ["north"] },
        ),
      );
    expect(order("north").sprays[0]?.watering.remaining?.value).toBe(0);
    expect(order("south").sprays[0]?.watering.remaining?.in("in")).toBe(0.25);
  });
});

test("two treatments on one ground: one to water in, one to keep dry", () => {
  const job = tank(undefined, label({ notBefore: hours(30) }));
  const order = soundOrder({
    ...job,
    products: [...job.products, { id: "g", name: "G", form: "dry", analysis: "24-0-11", wateringIn: wet }],
    treatments: [
      ...job.treatments,
      { id: "g", method: "spread", product: "g", target: { value: 0.5, unit: "lb/1000 ft2", of: "N" } },
    ],
  });
  expect(findings(order)).toEqual(["warning wet-and-dry"]);
  expect(order.findings.find(({ code }) => code === "watering-in/wet-and-dry")?.text).toMatch(
    /on the same ground/,
  );
});

test("a product that both treatments have hides no conflict of the others", () => {
  const job = tank(undefined, label({ most: inch(5) }));
  const [first] = job.treatments;
  const [a] = job.products;
  const mixed = (id: string, own: string) => ({
    ...first,
    id,
    mix: ["b", own].map((product) => ({
      product,
      rate: { value: 1, unit: "fl oz/1000 ft2", of: "product" },
    })),
  });
  const order = soundOrder({
    ...job,
    products: [
      ...job.products,
      { ...a, id: "w", name: "W", wateringIn: wet },
      { ...a, id: "d", name: "D", wateringIn: label({ notBefore: hours(30) }) },
    ],
    treatments: [mixed("t1", "w"), mixed("t2", "d")],
  } as never);
  expect(findings(order)).toEqual(["warning wet-and-dry"]);
  expect(order.findings.find(({ code }) => code === "watering-in/wet-and-dry")?.params).toMatchObject({
    wet: "w",
    dry: "d",
  });
});

test("what two products of one tank ask for is told once, though one of them stands in another treatment too", () => {
  const job = tank(wet, label({ most: inch(5) }));
  const [first] = job.treatments;
  const [a] = job.products;
  const mixed = (id: string, ...products: readonly string[]) => ({
    ...first,
    id,
    mix: products.map((product) => ({
      product,
      rate: { value: 1, unit: "fl oz/1000 ft2", of: "product" },
    })),
  });
  const order = soundOrder({
    ...job,
    products: [...job.products, { ...a, id: "d", name: "D", wateringIn: label({ notBefore: hours(30) }) }],
    treatments: [mixed("t1", "a", "b"), mixed("t2", "a", "d")],
  } as never);
  expect(
    order.findings.filter(({ code }) => code === "watering-in/wet-and-dry").map(({ path }) => path),
  ).toEqual(["treatments[1]"]);
});
