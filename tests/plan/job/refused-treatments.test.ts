// What a job says of its treatments and its machines that is wrong, place by place, and what its writer reads: the place, and what belongs there.
import { describe, expect, test } from "vitest";
import { check, problemsAt, type Row, withAt } from "./refused.js";

const spray = "treatments[1]";

describe("a job that is refused says where, and what belongs there", () => {
  test.each<Row>([
    ["missing treatments", "treatments", undefined, expect.stringMatching(/treatment/)],
    ["type treatments[0]", "treatments[0]", 5, "a treatment"],
    ["missing treatments[0].method", "treatments[0].method", undefined, 'one of "spread", "spray"'],
    ["missing treatments[0].id", "treatments[0].id", undefined, "a name for this treatment"],
    [
      "duplicate treatments[1].id",
      `${spray}.id`,
      "feed the pitches",
      "an id that no other treatment has",
      '"feed the pitches"',
    ],
    ["type treatments[0].parts", "treatments[0].parts", "north pitch", "a list of names of parts"],
    ["type treatments[0].parts", "treatments[0].parts", [], "a list of names of parts"],
    [
      "missing treatments[0].parts[1]",
      "treatments[0].parts",
      ["north pitch", "east pitch"],
      "the name of a part of the site",
      '"east pitch"',
    ],
    [
      "duplicate treatments[0].parts[1]",
      "treatments[0].parts",
      ["north pitch", "north pitch"],
      "each part once",
      '"north pitch"',
    ],
    [
      "missing treatments[0].product",
      "treatments[0].product",
      "nobody",
      "the id of a product of this job",
      '"nobody"',
    ],
    [
      "conflict treatments[0].product",
      "treatments[0].product",
      "wetter",
      "a dry product: a liquid is not spread",
      '"wetter"',
    ],
    [
      "missing treatments[0]",
      "treatments[0].target",
      undefined,
      "a target of a nutrient, or a rate of product",
      "neither target nor rate",
    ],
    [
      "conflict treatments[0]",
      "treatments[0].rate",
      { value: 3, unit: "lb/1000 ft2", of: "product" },
      "a target of a nutrient, or a rate of product",
      "target and rate",
    ],
    [
      "missing treatments[0].target.of",
      "treatments[0].target.of",
      undefined,
      "the nutrient, such as N",
      "nothing",
    ],
    [
      "substance/mismatch treatments[0].target.of",
      "treatments[0].target.of",
      "product",
      "a nutrient, such as N or P2O5",
      '"product"',
    ],
    ["range treatments[0].passes", "treatments[0].passes", 1.5, expect.stringMatching(/whole number/)],
    ["range treatments[0].passes", "treatments[0].passes", 9, expect.stringMatching(/^8 or less$/)],
    ["range treatments[0].passes", "treatments[0].passes", 0, expect.stringMatching(/^1 or more$/)],
    ["type treatments[0].setting", "treatments[0].setting", 5, "text"],
    ["missing treatments[1].mix", `${spray}.mix`, undefined, expect.stringMatching(/product/)],
    ["type treatments[1].mix[0]", `${spray}.mix[0]`, 5, "a product with its rate"],
    [
      "duplicate treatments[1].mix[1].product",
      `${spray}.mix[1]`,
      { product: "regulator-a", rate: { value: 1, unit: "fl oz/1000 ft2", of: "product" } },
      "each product once",
      '"regulator-a"',
    ],
    [
      "missing treatments[1].mix[0].product",
      "products[1].formulation",
      undefined,
      "a formulation of regulator-a in products, for the loading order",
      "no formulation",
    ],
    [
      "missing treatments[1].mix[0].rate.of",
      `${spray}.mix[0].rate.of`,
      undefined,
      'what it is a rate of: "product" or "product:regulator-a"',
      "nothing",
    ],
    [
      "substance/mismatch treatments[1].mix[0].rate.of",
      `${spray}.mix[0].rate.of`,
      "N",
      'a rate of product: "product" or "product:regulator-a"',
      '"N"',
    ],
    [
      "substance/mismatch treatments[1].mix[0].rate.of",
      `${spray}.mix[0].rate.of`,
      "product/N",
      'a rate of product: "product" or "product:regulator-a"',
      '"product/N"',
    ],
    [
      "conflict treatments[1].mix[0].rate",
      `${spray}.mix[0].rate.of`,
      "product/spray",
      "a rate per volume of spray",
    ],
    [
      "unit/mismatch treatments[1].mix[0].rate",
      `${spray}.mix[0].rate.unit`,
      "fl oz",
      "a rate per area, or per volume of spray",
    ],
    [
      "type treatments[1].mix[0].rate.per",
      `${spray}.mix[0].rate.per`,
      100,
      'the volume of spray, such as { "value": 100, "unit": "gal" }',
      "100",
    ],
    [
      "unit/mismatch treatments[1].mix[0].rate.unit",
      `${spray}.mix[0].rate.per`,
      { value: 100, unit: "gal" },
      "an amount such as 2 pt; `per` is the volume of spray",
    ],
    [
      "substance/mismatch treatments[1].mix[0].rate.per.of",
      `${spray}.mix[0].rate`,
      { value: 2, unit: "pt", of: "product", per: { value: 100, unit: "gal", of: "water" } },
      "a volume of spray",
      '"water"',
    ],
    [
      "range treatments[1].mix[0].rate.per",
      `${spray}.mix[0].rate`,
      { value: 2, unit: "pt", of: "product", per: { value: 0, unit: "gal" } },
      "more than zero",
    ],
    [
      "conflict treatments[0].end",
      "treatments[0].end",
      "2015-06-07T23:59-07:00",
      "a time on or after the day of the visit, 2015-06-08",
    ],
    [
      "missing treatments[1].degreeDays.source",
      `${spray}.degreeDays.source`,
      undefined,
      "the source of this interval",
    ],
    ["missing treatments[1].degreeDays.interval", `${spray}.degreeDays.interval`, undefined, "degree-days"],
    ["range treatments[1].degreeDays.interval.value", `${spray}.degreeDays.interval.value`, 0, "more than 0"],
    [
      "type treatments[0].end",
      "treatments[0].end",
      5,
      'a date and time, such as "2026-06-08T15:30-05:00"',
      "5",
    ],
  ])("%s", (...row: readonly unknown[]) => check(row as Row));

  test.each<Row>([
    ["missing sprayer.tank", "sprayer.tank", undefined, expect.stringMatching(/volume/)],
    ["substance/mismatch sprayer.tank.of", "sprayer.tank.of", "water", "a volume of spray", '"water"'],
    [
      "substance/mismatch sprayer.residualVolume.of",
      "sprayer.residualVolume",
      { value: 1, unit: "gal", of: "water" },
      "a volume of spray",
      '"water"',
    ],
    ["range sprayer.minimumLoad", "sprayer.minimumLoad.value", 0, "more than zero"],
    ["type sprayer.loadSplit", "sprayer.loadSplit", "odd", 'one of "full then partial", "even"'],
    ["type sprayer.increments", "sprayer.increments", 5, "what scale and jug can read"],
    ["type sprayer.increments.dry", "sprayer.increments.dry", 5, "a unit and a step"],
    ["missing sprayer.increments.dry.unit", "sprayer.increments.dry.unit", undefined, "a unit"],
    [
      "unit/mismatch sprayer.increments.dry.unit",
      "sprayer.increments.dry.unit",
      "mL",
      "a unit for a weight, such as lb or kg",
      '"mL"',
    ],
    [
      "unit/mismatch sprayer.increments.liquid.unit",
      "sprayer.increments.liquid.unit",
      "g",
      "a unit for a volume, such as gal or L",
      '"g"',
    ],
    ["range sprayer.increments.liquid.step", "sprayer.increments.liquid.step", 0, "more than 0"],
    ["type sprayer.nozzle", "sprayer.nozzle", 5, "text"],
    ["range sprayer.pressure", "sprayer.pressure.value", 0, "more than zero"],
    ["range sprayer.speed", "sprayer.speed.value", 0, "more than zero"],
    [
      "unit/mismatch sprayer.speed",
      "sprayer.speed.unit",
      "ft",
      expect.stringMatching(/^a speed or a depth per time/),
    ],
    ["type spreader", "spreader", 5, expect.stringMatching(/./)],
    ["type spreader.name", "spreader.name", 5, "text"],
    ["range spreader.swath", "spreader.swath.value", 0, "more than zero"],
  ])("%s", (...row: readonly unknown[]) => check(row as Row));

  test("nothing may stay in tank and hoses, and a load may take no time", () => {
    for (const [place, put] of [
      ["sprayer.residualVolume", { value: 0, unit: "gal" }],
      ["sprayer.plumbingVolume", { value: 0, unit: "gal", of: "spray" }],
      ["sprayer.timeToEmpty", { value: 0, unit: "min" }],
      ["sprayer.tank.of", "none"],
    ] as const)
      expect(problemsAt(withAt(place, put)), place).toEqual([]);
  });
});
