import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity, sulfurApplications, sulfurForCarbonate, sulfurToIncorporate } from "../../../src/index.js";
import { complaints } from "../../errors.js";

const turf = {
  mowingHeight: quantity(3, "in"),
  freeLime: false,
  first: "2026-03-01",
  monthsApart: 3,
} as const;
const sulfur = (pounds: number) => quantity(pounds, "lb/1000 ft2", "S");

describe("sulfur on turf", () => {
  test("never passes 5 lb at once nor 10 lb in twelve months", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 60, noNaN: true }),
        fc.integer({ min: 1, max: 12 }),
        (total, monthsApart) => {
          const { applications } = sulfurApplications({ ...turf, total: sulfur(total), monthsApart });
          const months = applications.map(
            ({ date }) => Number(date.slice(0, 4)) * 12 + Number(date.slice(5, 7)),
          );
          applications.forEach(({ rate }, i) => {
            expect(rate.value).toBeLessThanOrEqual(5 * (1 + 1e-9));
            const year = applications.filter(
              (_, j) => j <= i && (months[i] as number) - (months[j] as number) < 12,
            );
            expect(year.reduce((sum, one) => sum + one.rate.value, 0)).toBeLessThanOrEqual(10 * (1 + 1e-9));
          });
        },
      ),
    );
  });
  test("is refused on close-cut turf, and free lime is a warning", () => {
    const total = sulfur(4);
    expect(
      complaints(() => sulfurApplications({ ...turf, total, mowingHeight: quantity(0.5, "in") })),
    ).toEqual(["range mowingHeight"]);
    const found = sulfurApplications({ ...turf, total, freeLime: true }).findings;
    expect(found.map(({ code, severity }) => [code, severity])).toEqual([["sulfur/free-lime", "warning"]]);
  });
});

test("sulfur for bare soil is refused outside its span and with free lime", () => {
  const input = { material: "sulfur", texture: "clay", pH: 7.2, targetPH: 6.2, freeLime: false } as const;
  expect(complaints(() => sulfurToIncorporate({ ...input, pH: 8.1, targetPH: 5 }))).toEqual([
    "range pH",
    "range targetPH",
  ]);
  expect(complaints(() => sulfurToIncorporate({ ...input, freeLime: true }))).toEqual([
    "infeasible freeLime",
  ]);
});

test("free lime takes up sulfur in proportion to lime and depth", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.01, max: 40, noNaN: true }),
      fc.double({ min: 1, max: 12, noNaN: true }),
      (percent, inches) => {
        const by = (share: number, depth: number) =>
          sulfurForCarbonate({
            carbonate: quantity(share, "% w/w", "CaCO3 equivalent/soil"),
            layer: { assumed: "2,000,000 lb/acre", depth: quantity(depth, "in") },
          }).in("lb/acre");
        expect(by(percent, inches) / by(1, 1)).toBeCloseTo(percent * inches, 6);
      },
    ),
  );
});
