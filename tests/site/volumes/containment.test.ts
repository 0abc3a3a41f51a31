import { expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { containment, containmentRules } from "../../../src/site/index.js";
import { complaints } from "../../errors.js";
import { close, untyped } from "../helpers.js";

const gal = (value: number) => quantity(value, "gal");
const ft2 = (value: number) => quantity(value, "ft2");

test("by rule: the largest, a share of it, and what others displace", () => {
  const open = containment({
    largest: gal(1000),
    rule: "open 125 %",
    displaced: [gal(40), quantity(10, "ft3")],
  });
  close(open.volume.in("gal"), 1250 + 40 + (10 * 1728) / 231);
  expect(open).not.toHaveProperty("wall");
  const roofed = containment({ largest: gal(1000), rule: "roofed 110 %" });
  close(roofed.volume.in("gal"), 1100);
  close(containment({ largest: gal(1000), margin: quantity(110, "%") }).volume.in("gal"), 1100);
  expect(Object.isFrozen(containmentRules["open 125 %"].source)).toBe(true);
});

test("by a design rain: the rain on the floor comes on top", () => {
  const dike = containment({ largest: gal(20_000), rain: quantity(4.5, "in"), floor: ft2(900) });
  close(dike.reserve.in("ft3"), 900 * 0.375);
  close(dike.wall?.in("ft") ?? 0, (20_000 * 231) / 1728 / 900 + 0.375);
});

test("footprints of other upright tanks raise the wall", () => {
  const dike = containment({
    largest: gal(1000),
    margin: quantity(1, "1"),
    floor: ft2(100),
    footprints: [ft2(20), ft2(5)],
  });
  close(dike.wall?.in("ft") ?? 0, (1000 * 231) / 1728 / 75);
  // held to the top: floor times wall is the volume and the tanks in it
  close((dike.wall?.in("ft") ?? 0) * 100, dike.volume.in("ft3") + (dike.wall?.in("ft") ?? 0) * 25);
});

test("refusals", () => {
  expect(complaints(untyped(containment, { largest: gal(1) }))).toEqual(["missing rule"]);
  expect(
    complaints(untyped(containment, { largest: gal(1), rule: "open 125 %", margin: quantity(1, "1") })),
  ).toEqual(["conflict rule"]);
  expect(complaints(untyped(containment, { largest: gal(1), margin: quantity(10, "%") }))).toEqual([
    "range margin",
  ]);
  expect(complaints(untyped(containment, { largest: gal(1), rain: quantity(3, "in") }))).toEqual([
    "missing floor",
  ]);
  expect(complaints(untyped(containment, { largest: gal(1), rule: "open", displaced: [3] }))).toEqual([
    "type rule",
    "type displaced[0]",
  ]);
  expect(
    complaints(() =>
      containment({ largest: gal(1), rule: "open 125 %", floor: ft2(10), footprints: [ft2(10)] }),
    ),
  ).toEqual(["infeasible footprints"]);
  expect(
    complaints(untyped(containment, { largest: gal(1), rule: "open 125 %", footprints: [ft2(1)] })),
  ).toEqual(["missing floor"]);
});
