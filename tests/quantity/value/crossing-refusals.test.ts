import { describe, expect, test } from "vitest";
import {
  depthOf,
  fractionByVolume,
  fractionByWeight,
  inUnit,
  likeQuantity,
  max,
  min,
  money,
  numberIn,
  ofKind,
  perOf,
  quantity,
  quantityOf,
  shareOf,
  sum,
  temperatureDifference,
  timesOf,
  volumePerAreaOf,
  weightFractionOf,
  weightPerVolumeOf,
} from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";

const lb = quantity(3, "lb");
const due = 'a quantity, as quantity(3, "lb") makes';
const finite = "a finite number";
const unit = "a unit, such as lb/acre (suggestUnit names the nearest)";
const substance =
  "a substance, such as N or product, or other:sand for one of your own (suggestSubstance names the nearest)";
const told = (call: () => unknown): readonly string[] =>
  problemsOf(call).map(({ code, path, expected, got }) => `${code} | ${path} | ${expected} | ${got}`);
type Row = readonly [name: string, call: () => unknown, problem: string];

describe("what goes from one kind to another", () => {
  const share = quantity(24, "% w/w", "N/product");
  test.each<Row>([
    [
      "depthOf",
      () => depthOf(lb as never),
      "unit/mismatch | volumePerArea | a volume over an area or a volume over an area and per time, such as 1 gal/1000 ft2 or 2 gal/acre/h | 3 lb",
    ],
    ["depthOf nothing", () => depthOf(undefined as never), `missing | volumePerArea | ${due} | undefined`],
    [
      "volumePerAreaOf",
      () => volumePerAreaOf(lb as never),
      "unit/mismatch | depth | a length or a speed or a depth per time, such as 10 ft or 3 mi/h | 3 lb",
    ],
    [
      "volumePerAreaOf a stranger",
      () => volumePerAreaOf(quantity(1, "in"), "wet" as never),
      'substance/unknown | of | a substance, such as water | "wet"',
    ],
    [
      "volumePerAreaOf nothing",
      () => volumePerAreaOf(undefined as never),
      `missing | depth | ${due} | undefined`,
    ],
    [
      "shareOf",
      () => shareOf(lb as never),
      "unit/mismatch | fraction | a share by weight, a share by volume or a slope, such as 24 % w/w, 0.25 % v/v or 5 % grade | 3 lb",
    ],
    ["shareOf nothing", () => shareOf(null as never), `type | fraction | ${due} | null`],
    [
      "fractionByWeight",
      () => fractionByWeight(share as never),
      "unit/mismatch | share | a share, such as 40 % or 0.4 | 24 % w/w of N/product",
    ],
    [
      "fractionByVolume",
      () => fractionByVolume(share as never),
      "unit/mismatch | share | a share, such as 40 % or 0.4 | 24 % w/w of N/product",
    ],
    [
      "weightPerVolumeOf, fraction",
      () => weightPerVolumeOf(lb as never, quantity(1, "kg/L") as never),
      "unit/mismatch | fraction | a share by weight, such as 24 % w/w or 20 lb/US ton | 3 lb",
    ],
    [
      "weightPerVolumeOf, less than none",
      () => weightPerVolumeOf(quantity(-1, "% w/w"), quantity(1, "kg/L")),
      "range | fraction | zero or more | -1 % w/w",
    ],
    [
      "weightPerVolumeOf, density",
      () => weightPerVolumeOf(share, lb as never),
      "unit/mismatch | density | a weight per volume, such as 10 lb/gal or 1.2 kg/L | 3 lb",
    ],
    [
      "weightPerVolumeOf, of nothing",
      () => weightPerVolumeOf(share, quantity(0, "kg/L", "product")),
      "range | density | more than zero | 0 kg/L of product",
    ],
    [
      "weightPerVolumeOf, of another",
      () => weightPerVolumeOf(share, quantity(1, "kg/L", "water") as never),
      "substance/mismatch | density | a density of what N/product is a fraction of | 1 kg/L of water",
    ],
    [
      "weightFractionOf",
      () => weightFractionOf(lb as never, quantity(1, "kg/L")),
      "unit/mismatch | weightPerVolume | a weight per volume, such as 10 lb/gal or 1.2 kg/L | 3 lb",
    ],
    [
      "weightFractionOf, less than none",
      () => weightFractionOf(quantity(-1, "kg/L", "N"), quantity(1, "kg/L", "product")),
      "range | weightPerVolume | zero or more | -1 kg/L of N",
    ],
    [
      "weightFractionOf, density",
      () => weightFractionOf(quantity(1, "kg/L", "N"), lb as never),
      "unit/mismatch | density | a weight per volume, such as 10 lb/gal or 1.2 kg/L | 3 lb",
    ],
    [
      "weightFractionOf, of nothing",
      () => weightFractionOf(quantity(1, "kg/L", "N"), quantity(0, "kg/L", "product")),
      "range | density | more than zero | 0 kg/L of product",
    ],
    [
      "weightFractionOf, in itself",
      () => weightFractionOf(quantity(1, "kg/L", "N"), quantity(2, "kg/L", "N")),
      "substance/mismatch | density | the density of what N is dissolved in | 2 kg/L of N",
    ],
    [
      "temperatureDifference",
      () => temperatureDifference(lb as never, lb as never),
      "unit/mismatch | warmer | a temperature, such as 72 °F or 22 °C | 3 lb",
    ],
    [
      "temperatureDifference, cooler",
      () => temperatureDifference(quantity(3, "°C"), lb as never),
      "unit/mismatch | cooler | a temperature, such as 72 °F or 22 °C | 3 lb",
    ],
    [
      "temperatureDifference of two things",
      () => temperatureDifference(quantity(3, "°C", "soil"), quantity(1, "°C", "water") as never),
      "substance/mismatch | cooler | a quantity of soil | 1 °C of water",
    ],
    ["money", () => money("3" as never, "USD"), 'not-finite | amount | a finite number | "3"'],
    [
      "money of no code",
      () => money(3, "usd" as never),
      'unit/unknown | currency | a currency code of three capitals, such as USD | "usd"',
    ],
    [
      "money of four capitals",
      () => money(3, "USDX" as never),
      'unit/unknown | currency | a currency code of three capitals, such as USD | "USDX"',
    ],
    ["sum of no list", () => sum(lb as never), "type | items | a list of quantities | 3 lb"],
    ["sum of nothing", () => sum([]), "missing | items | at least one quantity | an empty list"],
    [
      "sum of temperatures",
      () => sum([quantity(3, "°C")]),
      "type | items | what adds up; temperatures do not | 3 °C",
    ],
    [
      "min of two kinds",
      () => min([lb, quantity(1, "acre")] as never),
      "unit/mismatch | items[1] | a weight, such as 50 lb or 20 kg | 1 acre",
    ],
    [
      "max of two substances",
      () => max([lb, lb, quantity(1, "lb", "N")] as never),
      "substance/mismatch | items[2] | a quantity of no substance | 1 lb of N",
    ],
    ["likeQuantity", () => likeQuantity(3 as never, 3), `type | like | ${due} | 3`],
    [
      "likeQuantity of no number",
      () => likeQuantity(lb, "3" as never),
      `not-finite | value | ${finite}; parseQuantity and readQuantity read text | "3"`,
    ],
    ["numberIn", () => numberIn(3, "lb"), `type | quantity | ${due} | 3`],
    ["inUnit", () => inUnit(3 as never, "lb"), `type | quantity | ${due} | 3`],
    ["timesOf", () => timesOf(3, lb), `type | factor | ${due} | 3`],
    ["timesOf another", () => timesOf(lb, 3), `type | factor | ${due} | 3`],
    ["perOf", () => perOf(3, lb), `type | dividend | ${due} | 3`],
    ["perOf another", () => perOf(lb, 3), `type | divisor | ${due} | 3`],
    ["ofKind", () => ofKind(3), `type | quantity | ${due} | 3`],
    [
      "quantityOf",
      () => quantityOf("3" as never, "lb", "N", "rate"),
      `not-finite | rate | ${finite}; parseQuantity and readQuantity read text | "3"`,
    ],
    ["quantityOf no unit", () => quantityOf(3, "lbs", "N", "rate"), `unit/unknown | rate | ${unit} | "lbs"`],
    [
      "quantityOf no substance",
      () => quantityOf(3, "lb", 3 as never, "rate"),
      `substance/unknown | rate | ${substance} | 3`,
    ],
  ])("%s", (_, call, problem) => {
    expect(told(call)).toEqual([problem]);
  });
});
