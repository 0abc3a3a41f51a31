// The copy for the shed, section by section, each worked out on paper: short jobs, so that one thing is seen at a time.
import { describe, expect, test } from "vitest";
import type { Job, WorkOrder } from "../../../src/plan/index.js";
import { spraySection } from "../../../src/plan/shed/spray-section.js";
import { storeSection } from "../../../src/plan/shed/store-section.js";
import { smallJob, soundOrder } from "../helpers.js";
import { liquid, oz3, product, sprayJob } from "./short-jobs.js";

/** Heads and cells of the loads of an order. */
const tables = (order: WorkOrder) =>
  order.sprays.flatMap((spray) =>
    spraySection(spray, 1, order.site, "US", []).blocks.flatMap((block) =>
      block.kind === "table" ? [[block.heads, ...block.rows.map(({ cells }) => cells)]] : [],
    ),
  );

describe("the loads of a spray", () => {
  test("two alike share a column: 20 gal in two tanks, 30 fl oz each", () => {
    const [table] = tables(soundOrder(sprayJob(20_000, [liquid()], [oz3])));
    expect(table?.slice(0, 4)).toEqual([
      ["DO IN THIS ORDER", "LOADS 1-2, EACH", "MEASURE BY"],
      ["   covers", "10,000 sq ft", ""],
      ["1  Clean water up to half the load", "5 gal", "tank marks"],
      ["2  Start agitation: rolling surface, no foam, no vortex.", "[ ]", ""],
    ]);
    expect(table).toContainEqual(["3  ADD wetter.", "30.0 fl oz", "JUG"]);
    expect(table).toContainEqual(["4  Clean water up to", "10 gal", "tank marks"]);
  });

  test("sixty loads that differ by the noise of their sums share a column", () => {
    // 399 ha at 300 L/ha, a tank of 2,000 L that keeps 15 L and hoses of 5 L: 1,980 L of the first load are sprayed, 1,985 L of
    // each later one. (119,700 - 1,980) / 1,985 is 59.3: 61 loads in all, and for the last 119,700 - 1,980 - 59 x 1,985 = 605 L.
    const order = soundOrder({
      ...sprayJob(1, [liquid()], [product(2, "L/ha")]),
      site: { name: "Estate", parts: [{ shape: "measured", area: { value: 399, unit: "ha" } }] },
      sprayer: {
        tank: { value: 2000, unit: "L" },
        applicationVolume: { value: 300, unit: "L/ha", of: "spray" },
        residualVolume: { value: 15, unit: "L" },
        plumbingVolume: { value: 5, unit: "L" },
      },
    });
    const blocks = order.sprays.flatMap((spray) => spraySection(spray, 1, order.site, "metric", []).blocks);
    const shown = blocks.flatMap((block) => (block.kind === "table" ? [block] : []));
    expect(shown.map(({ heads }) => heads)).toEqual([
      ["DO IN THIS ORDER", "LOAD 1", "LOADS 2-60, EACH", "LOAD 61", "MEASURE BY"],
    ]);
    expect(shown[0]?.rows[0]?.cells).toEqual(["   covers", "6.6 ha", "6.617 ha", "2.017 ha", ""]);
    expect(shown[0]?.rows.map(({ note }) => note).pop()).toBe("Only then mix the next load.");
  });

  test("a table of the last load alone has no next one", () => {
    // Increments of 1 fl oz split 49.5 in turns: 50 and 49, so that no two neighbors are alike, and load 4 stands alone.
    const job = sprayJob(40_000, [liquid()], [product(4.95, "fl oz/1000 ft2")], {
      increments: { liquid: { unit: "fl oz", step: 1 } },
    });
    const order = soundOrder(job);
    const notes = order.sprays
      .flatMap((spray) => spraySection(spray, 1, order.site, "US", []).blocks)
      .flatMap((block) => (block.kind === "table" ? [block.rows.map(({ note }) => note).pop()] : []));
    expect(notes).toEqual(["Only then mix the next load.", undefined]);
  });

  test("what the pump leaves sets the first apart: the second goes on top of it", () => {
    // 10 gal of tank, 1 gal under the outlet, which the first load fills too: 10, and 11 of 21 gal after it.
    const order = soundOrder(
      sprayJob(18_000, [liquid()], [oz3], { residualVolume: { value: 1, unit: "gal" } }),
    );
    const marks = tables(order).flatMap((table) =>
      table.filter(([what = ""]) => /Clean water/.test(what)).map((cells) => cells.slice(1, -1)),
    );
    expect(tables(order)[0]?.[0]).toEqual(["DO IN THIS ORDER", "LOAD 1", "LOAD 2", "MEASURE BY"]);
    // Load 2 is 9 gal on top of 1: half of it is reached at 5.5 gal, all of it at 10.
    expect(marks).toEqual([
      ["5 gal", "5.5 gal"],
      ["10 gal", "10 gal"],
    ]);
  });

  test("a last load that is smaller has a column of its own, and more than three columns make two tables", () => {
    const order = soundOrder(sprayJob(24_000, [liquid()], [oz3]));
    expect(tables(order)[0]?.slice(0, 2)).toEqual([
      ["DO IN THIS ORDER", "LOADS 1-2, EACH", "LOAD 3", "MEASURE BY"],
      ["   covers", "10,000 sq ft", "4,000 sq ft", ""],
    ]);
    const [spray] = order.sprays;
    if (spray === undefined) throw new Error("no spray");
    const loads = [1, 2, 3, 4].map((number) => ({
      ...spray.tank.loads[0],
      number,
      area: spray.area.times(number / 10),
    }));
    const four = {
      ...order,
      sprays: [{ ...spray, tank: { ...spray.tank, count: 4, loads: loads as never } }],
    };
    expect(tables(four).map(([heads]) => heads)).toEqual([
      ["DO IN THIS ORDER", "LOAD 1", "LOAD 2", "LOAD 3", "MEASURE BY"],
      ["DO IN THIS ORDER", "LOAD 4", "MEASURE BY"],
    ]);
    expect(tables(four)[1]?.[1]).toEqual(["   covers", "9,600 sq ft", ""]);
  });

  test("packets are counted, where their size is known and they come out whole", () => {
    const packets = (more: object) =>
      tables(
        soundOrder(
          sprayJob(
            8000,
            [{ id: "p", form: "dry", formulation: "water-soluble packet", ...more } as never],
            [product(1, "oz/1000 ft2")],
          ),
        ),
      )[0]?.filter(([what = ""]) => /ADD/.test(what));
    expect(packets({ packetSize: { value: 8, unit: "oz" } })).toEqual([
      [expect.stringMatching(/ADD p/), "1 packet", "COUNT"],
    ]);
    expect(packets({ packetSize: { value: 4, unit: "oz" } })).toEqual([
      [expect.stringMatching(/ADD p/), "2 packets", "COUNT"],
    ]);
    expect(packets({})).toEqual([[expect.stringMatching(/ADD p/), "ASK: packets?", "COUNT"]]);
    expect(packets({ packetSize: { value: 3, unit: "oz" } })).toEqual([
      [expect.stringMatching(/ADD p/), "STOP: part", "COUNT"],
    ]);
  });

  test("the first water as a share of the load where it is not half of it", () => {
    const order = soundOrder(sprayJob(20_000, [liquid()], [oz3]));
    const first = (fraction: readonly number[] | undefined): readonly string[] | undefined => {
      const sprays = order.sprays.map((spray) => ({
        ...spray,
        order: {
          ...spray.order,
          steps: spray.order.steps.map(({ fraction: _, ...step }) =>
            step.action === "fill" ? { ...step, ...(fraction && { fraction }) } : step,
          ),
        },
      }));
      return tables({ ...order, sprays: sprays as never })[0]?.[2]?.slice(0, 2);
    };
    expect(first([0.5])).toEqual(["1  Clean water up to half the load", "5 gal"]);
    expect(first([0.75])).toEqual(["1  Clean water up to 75 % of the load", "7.5 gal"]);
    expect(first([0.25, 0.5])).toEqual(["1  Clean water up to a level between", "2.5 gal to 5 gal"]);
  });
});

describe("what comes out of the store and goes back", () => {
  const rows = (job: Job, both = false) => {
    const { spreads, sprays } = soundOrder(job);
    const [block] = storeSection(spreads, sprays, "Lawn", "US", both).blocks;
    return block?.kind === "table" ? block.rows.map(({ cells }) => cells) : [];
  };
  const gal = (value: number) => ({ package: { value, unit: "gal" } });

  test("a liquid in gallons: 60 fl oz of 128", () => {
    expect(rows(sprayJob(20_000, [liquid(gal(1))], [oz3]))).toEqual([
      ["wetter", "1 x 1 gal = 128.0 fl oz", "60.0 fl oz", "68.0 fl oz", "____", "____"],
    ]);
    expect(rows(sprayJob(20_000, [liquid(gal(1))], [oz3]), true)[0]?.[2]).toBe("60.0 fl oz (1.77 L)");
  });

  test("a liquid whose package is stated by weight: how many come out is for the pen", () => {
    const byWeight = { package: { value: 10, unit: "lb" } };
    expect(rows(sprayJob(20_000, [liquid(byWeight)], [oz3]))).toEqual([
      ["wetter", "____", "60.0 fl oz", "____", "____", "____"],
    ]);
    expect(rows(sprayJob(20_000, [liquid()], [oz3]))[0]?.slice(1, 4)).toEqual(["____", "60.0 fl oz", "____"]);
  });

  test("a dry product: 46.5 lb of a bag of 50", () => {
    const feed = {
      id: "feed-a",
      form: "dry",
      analysis: "24-0-11",
      lot: "F9",
      registrationNumber: "0-1",
    } as const;
    const bag = (value: number) => smallJob({ products: [{ ...feed, package: { value, unit: "lb" } }] });
    expect(rows(bag(50))).toEqual([["feed-a", "1 x 50 lb", "46.5 lb", "3.5 lb", "0-1", "F9"]]);
    // Two of 25 lb, and exactly one of 46.5.
    expect(rows(bag(25))[0]?.slice(1, 4)).toEqual(["2 x 25 lb = 50.0 lb", "46.5 lb", "3.5 lb"]);
    expect(rows(bag(46.5))[0]?.slice(1, 4)).toEqual(["1 x 46.5 lb", "46.5 lb", "0.0 lb"]);
  });

  test("one product in two treatments is one row, in the finer of its jugs", () => {
    // 60 fl oz in tenths of an ounce, and 400 fl oz, told in gallons: 3.125 gal.
    const twice = sprayJob(20_000, [liquid(gal(5))], [oz3, product(20, "fl oz/1000 ft2")]);
    expect(rows(twice)).toEqual([
      ["wetter", "1 x 5 gal = 640.0 fl oz", "460.0 fl oz", "180.0 fl oz", "____", "____"],
    ]);
  });

  test("packets of two treatments are counted together", () => {
    const packet = {
      id: "p",
      form: "dry",
      formulation: "water-soluble packet",
      packetSize: { value: 8, unit: "oz" },
      package: { value: 4, unit: "lb" },
    } as const;
    const one = product(1, "oz/1000 ft2");
    expect(rows(sprayJob(8000, [packet as never], [one]))[0]?.[2]).toBe("8.00 oz wt in 1 packet");
    expect(rows(sprayJob(8000, [packet as never], [one, one]))[0]?.[2]).toBe("1 lb in 2 packets");
  });
});
