import fc from "fast-check";
import { expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { paceCalibration, pacedDistance } from "../../../src/site/index.js";
import { complaints, problemsOf } from "../../errors.js";
import { close, untyped } from "../helpers.js";

const ft = (value: number) => quantity(value, "ft");
const counts = fc.array(fc.integer({ min: 20, max: 200 }), { minLength: 2, maxLength: 12 });

test("a pace times the mean count is the course again", () => {
  fc.assert(
    fc.property(counts, fc.double({ min: 50, max: 500, noNaN: true }), (walks, course) => {
      const pace = paceCalibration({ course: ft(course), counts: walks });
      const mean = walks.reduce((a, b) => a + b) / walks.length;
      close(pacedDistance({ pace, counts: mean }).value.in("ft"), course, 1e-12);
      close(pacedDistance({ pace, counts: walks }).value.in("ft"), course, 1e-12);
    }),
  );
});

test("the error by hand: 62, 60 and 64 scatter by 2 paces", () => {
  const mine = paceCalibration({ course: ft(200), counts: [62, 60, 64] });
  const share = 2 / 62;
  close(mine.walkError.in("1"), share);
  close(mine.pace.standardError.in("ft"), (200 / 62) * (share / Math.sqrt(3)));
  expect(mine.pace.degreesOfFreedom).toBe(2);
  const once = pacedDistance({ pace: mine, counts: 375 });
  close(once.standardError.in("ft"), once.value.in("ft") * share * Math.sqrt(1 / 3 + 1));
  const twice = pacedDistance({ pace: mine, counts: [370, 380] });
  close(twice.standardError.in("ft"), twice.value.in("ft") * share * Math.sqrt(1 / 3 + 1 / 2));
});

test("five walks leave four degrees of freedom, however often the distance is walked", () => {
  const five = paceCalibration({ course: ft(100), counts: [30, 31, 32, 33, 34] });
  expect(five.pace.degreesOfFreedom).toBe(4);
  for (const walked of [375, [370, 380], [370, 375, 380, 381, 379, 374]])
    expect(pacedDistance({ pace: five, counts: walked }).degreesOfFreedom).toBe(4);
  const dropped = paceCalibration({ course: ft(100), counts: [30, 31, 32, 33, 34], drop: "high and low" });
  expect([
    dropped.pace.degreesOfFreedom,
    pacedDistance({ pace: dropped, counts: 9 }).degreesOfFreedom,
  ]).toEqual([4, 4]);
});

test("counts that agree are no proof of no error: whole paces are off by 0.29", () => {
  const same = paceCalibration({ course: ft(100), counts: [30, 30, 30] });
  close(same.walkError.in("1"), 1 / Math.sqrt(12) / 30);
});

test("high and low dropped: the mean without them, the error of all", () => {
  const list = [30, 40, 31, 20, 32];
  const mine = paceCalibration({ course: ft(310), counts: list, drop: "high and low" });
  close(mine.pace.value.in("ft"), 10);
  expect(mine.dropped).toEqual([20, 40]);
  expect(mine.walks).toBe(5);
  const all = paceCalibration({ course: ft(310), counts: list });
  close(mine.walkError.in("1") * 31, all.walkError.in("1") * (153 / 5));
});

test("a calibration comes back from a file, and is read again", () => {
  const pace = paceCalibration({ course: ft(200), counts: [62, 60, 64] });
  const stored = JSON.parse(JSON.stringify(pace));
  expect(pacedDistance({ pace: stored, counts: 375 })).toEqual(pacedDistance({ pace, counts: 375 }));
  expect(complaints(untyped(pacedDistance, { pace: { ...stored, walks: "3" }, counts: 9 }))).toEqual([
    "not-finite pace.walks",
  ]);
  expect(problemsOf(untyped(pacedDistance, { pace: ft(3.2), counts: 375 }))[0]?.expected).toContain(
    "paceCalibration",
  );
});

test("refusals", () => {
  expect(complaints(untyped(paceCalibration, { course: ft(100), counts: [30] }))).toEqual(["range counts"]);
  expect(complaints(untyped(paceCalibration, { course: 100, counts: [30, 0, "31"] }))).toEqual([
    "type course",
    "range counts[1]",
    "not-finite counts[2]",
  ]);
  expect(complaints(untyped(paceCalibration, { course: ft(100), counts: [1, 2, 3], drop: "all" }))).toEqual([
    "type drop",
  ]);
  expect(
    complaints(untyped(paceCalibration, { course: ft(100), counts: [1, 2, 3], drop: "high and low" })),
  ).toEqual(["range counts"]);
  expect(complaints(untyped(pacedDistance, {}))).toEqual(["missing pace", "missing counts"]);
});
