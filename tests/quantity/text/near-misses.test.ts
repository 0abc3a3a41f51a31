import { expect, test } from "vitest";
import { parseRange, suggestSubstance, suggestUnit } from "../../../src/quantity/index.js";
import { twoAmounts } from "../../../src/quantity/text/two-amounts.js";

// Each is the name of another thing or another size, one or two letters from a name that is known.
const strangers =
  "mcg mgd kip dam dag hm dm ksi psf bbl bbls barrel barrels bag bags rod rods chain chains link links dram drams peck gill pinch cal kcal lbf kgf slugs mills gray phosphite phosphide phosphine sulfite sulphite sulfide sulphide nitrite nitride chlorate chlorite carbide silicone ammonia ammonium bromide iodide mmol umol mole moles kmol joule joules watts hp btu lux newton newtons volt volts amp amps hertz hz dalton daltons silicates oils manganates permanganate";

test.each(strangers.split(" "))("%s is no slip of a name that is known", (word) => {
  expect([suggestUnit(word), suggestSubstance(word)]).toEqual([undefined, undefined]);
});

test("two amounts with decimals keep them all", () => {
  expect(twoAmounts(5, "ft 6.25 in")).toBe("5.52083333333 ft");
  expect(twoAmounts(1, "kg 250.125 g")).toBe("1.250125 kg");
});

test("a range whose second end has a sign", () => {
  const { min, max } = parseRange("-5 °C to -2 °C");
  expect([`${min}`, `${max}`]).toEqual(["-5 °C", "-2 °C"]);
  expect(`${parseRange("-5 °C to +2 °C").max}`).toBe("2 °C");
});
