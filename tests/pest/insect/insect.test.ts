import { describe, expect, it } from "vitest";
import {
  accumulatedDegreeDays,
  dailyTemperatures,
  dateReached,
  degreeDayWindowState,
  insectModel,
  insectTargets,
  insectTargetsFor,
} from "../../../src/index.js";
import { complaints } from "../../errors.js";

const complete = {
  unit: "°F d",
  method: "simple average",
  base: { value: 50, unit: "°F" },
  upper: "none",
  sensor: "air",
  start: "03-01",
} as const;
const [first] = insectTargets;
if (first === undefined) throw new Error("there are targets");

describe("insectTargets", () => {
  it("say what they do not say, and cannot be changed", () => {
    expect(new Set(insectTargets.map(({ id }) => id)).size).toBe(insectTargets.length);
    for (const target of insectTargets) {
      expect(target.to === null || target.to >= target.from, target.id).toBe(true);
      expect(target.source.url, target.id).toMatch(/^https?:/);
      expect(target.region.length).toBeGreaterThan(3);
      expect(Object.isFrozen(target.source)).toBe(true);
    }
    expect(insectTargetsFor("emerge").length).toBeGreaterThan(1);
    expect(insectTargetsFor("no such insect")).toEqual([]);
  });

  it("each becomes a model, with what its source leaves open assumed openly", () => {
    for (const target of insectTargets) {
      const open = Object.fromEntries(
        Object.entries(complete).filter(([part]) => target[part as keyof typeof complete] === null),
      );
      const counted = insectModel({ target, assume: open });
      expect([...counted.assumed].sort()).toEqual(Object.keys(open).sort());
      expect(counted.from.in(target.unit ?? "°F d")).toBeCloseTo(target.from, 9);
      expect(counted.findings.map(({ code }) => code)).toEqual(["insect/scout", "insect/assumed"]);
    }
  });
});

describe("insectModel", () => {
  it("goes into the degree-day engine as it is", () => {
    const { model, from, to } = insectModel({ target: first, assume: complete });
    const series = dailyTemperatures({
      start: "2026-03-01",
      unit: "°F",
      sensor: "air",
      source: "invented",
      min: Array(60).fill(45),
      max: Array(60).fill(65),
    });
    const when = dateReached({ series, model, from: "2026-03-01", threshold: from });
    // Five a day: 100 are reached on the twentieth day.
    expect(when.reached ? when.date : null).toBe("2026-03-20");
    const { total } = accumulatedDegreeDays({ series, model, from: "2026-03-01", to: "2026-03-22" });
    expect(degreeDayWindowState({ total, from, ...(to === null ? {} : { to }) })).toBe("within");
  });

  it("refuses to fill in, and to overrule, in silence", () => {
    expect(complaints(() => insectModel({ target: first }))).toEqual(
      ["unit", "method", "base", "upper", "sensor", "start"].map((part) => `missing assume.${part}`),
    );
    const beetle = insectTargetsFor("Japanese beetle")[0] as typeof first;
    const { unit: _, ...rest } = complete;
    expect(complaints(() => insectModel({ target: beetle, assume: rest }))).toEqual(["conflict assume.base"]);
    expect(
      complaints(() =>
        insectModel({ target: { ...first, from: -1 }, assume: { ...complete, sensro: "air" } } as never),
      ),
    ).toEqual(["type assume.sensro"]);
    expect(complaints(() => insectModel({ target: { ...first, from: 200 }, assume: complete }))).toEqual([
      "conflict target.to",
    ]);
  });
});
