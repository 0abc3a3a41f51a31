import { describe, expect, it } from "vitest";
import { type Job, numberIn, RatewrightError, workOrder, workOrderText } from "../../../src/index.js";
import { explainWorkOrder } from "../../../src/teach/index.js";
import { read } from "../../house/sources.js";

const job = JSON.parse(read("examples/park-visit/job.json")) as Job;
const year = (value: number): number[] => Array.from({ length: 365 }, () => value);
const orderOf = () =>
  workOrder({
    ...job,
    temperatures: {
      type: "daily-temperatures",
      version: 1,
      start: "2015-01-01",
      unit: "°C",
      sensor: "air",
      min: year(8),
      max: year(20),
      source: "level days, for a test",
    },
  });

describe("the working of a work order", () => {
  const made = () => {
    const order = orderOf();
    const working = explainWorkOrder(order);
    return {
      order,
      working,
      titled: (title: string) => working.derivations.find((one) => one.title === title),
    };
  };

  it("explains every amount of what is spread, part by part", () => {
    const { order, titled } = made();
    expect(order.spreads.length).toBeGreaterThan(0);
    for (const spread of order.spreads) {
      const whole = titled(`${spread.productName}: in all`);
      expect(whole?.exact.in("lb" as never)).toBeCloseTo(spread.amount.in("lb"), 6);
      for (const part of spread.byPart)
        expect(titled(`${spread.productName}: ${part.part}`)?.exact.in("lb" as never)).toBeCloseTo(
          part.amount.in("lb"),
          6,
        );
      if (spread.packages !== undefined)
        expect(titled(`${spread.productName}: packages`)?.exact.value).toBe(spread.packages.count);
    }
  });

  it("explains every load of what is sprayed, and the carrier", () => {
    const { order, working, titled } = made();
    expect(order.sprays.length).toBeGreaterThan(0);
    for (const spray of order.sprays) {
      expect(titled(`${spray.treatment}: spray to mix`)?.exact.in("gal" as never)).toBeCloseTo(
        spray.tank.volume.in("gal"),
        6,
      );
      for (const product of spray.products) {
        for (const share of product.loads) {
          const title = `${product.productName}: load ${share.number}`;
          const derivation = titled(title);
          if (derivation === undefined) expect(working.notExplained.join()).toContain(title);
          else expect(derivation.exact.in(share.exact.unit as never)).toBeCloseTo(share.exact.value, 6);
        }
      }
    }
  });

  it("comes to the figures that the sheet prints, to its digits", () => {
    const { order, titled } = made();
    const sheet = workOrderText(order);
    // 106,425 sq ft at 3 1/3 lb are 354.75 lb, of which the south pitch has 47,025 sq ft, 156.75 lb
    for (const [title, printed] of [
      ["feed 24-0-11: in all", "354.8 lb"],
      ["feed 24-0-11: south pitch", "156.8 lb"],
    ] as const) {
      expect(sheet).toContain(printed);
      expect(`${titled(title)?.result.value} lb`).toBe(printed);
    }
    // 10 gal at 1 gal per 1,000 sq ft; the sheet says that load 1 covers 10,000 sq ft
    expect(sheet).toContain("10,000 sq ft");
    const covered = titled("regulate the bowling green: area that one full tank covers");
    expect(`${covered?.result.value} ${covered?.result.unit}`).toBe("10 1000 ft2");
  });

  it("leaves little out, and says what", () => {
    const { working } = made();
    expect(working.derivations.length).toBeGreaterThan(4 * working.notExplained.length);
    expect(working.notExplained.filter((text) => !text.endsWith("."))).toEqual([]);
  });

  it("comes out the same of a stored order, and in the units that are asked for", () => {
    const { order, working } = made();
    const stored = JSON.parse(JSON.stringify(order)) as typeof order;
    expect(JSON.stringify(explainWorkOrder(stored))).toBe(JSON.stringify(working));
    const metric = explainWorkOrder(order, { units: "metric" });
    expect(metric.derivations.length).toBe(working.derivations.length);
    metric.derivations.forEach(({ exact }, n) => {
      expect(numberIn(exact, working.derivations[n]?.exact.unit as string)).toBeCloseTo(
        working.derivations[n]?.exact.value as number,
        6,
      );
    });
  });

  it("refuses what is no work order", () => {
    const order = orderOf();
    expect(() => explainWorkOrder({} as never)).toThrow(RatewrightError);
    expect(() => explainWorkOrder(order, { units: "us" as "US" })).toThrow(/options.units/);
    expect(() => explainWorkOrder(order, { unit: "US" } as never)).toThrow(/units/);
  });
});
