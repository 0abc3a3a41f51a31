import { describe, expect, test } from "vitest";
import {
  concentrationOf,
  fertilizer,
  injectionRate,
  injector,
  productForConcentration,
  stockFlow,
  stockTank,
} from "../../../src/nutrient/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";
import { describeRefused, type Refused } from "../../refused.js";

// What is refused of stock tanks and injectors, where the refusal points, and what happens exactly at a limit.

const feed = fertilizer({ id: "feed", analysis: "20-0-20" });
const potash = fertilizer({ id: "potash", analysis: "0-0-50" });
const setting = () => injector("1:100");
const n = quantity(100, "mg/L", "N");
const tank = (change: object) => () =>
  stockTank({
    targets: [n],
    salts: [{ product: feed }],
    injector: setting(),
    tank: quantity(10, "L"),
    ...change,
  } as never);
const salt = (change: object) => tank({ salts: [{ product: feed, ...change }] });
const flow = (change: object) => () =>
  stockFlow({ flow: quantity(10, "gal/min"), injector: setting(), ...change } as never);
const rate = (change: object) => () =>
  injectionRate({
    application: quantity(5, "gal/acre", "product:a"),
    covered: quantity(2, "acre/h"),
    ...change,
  } as never);
const spelled = "1:100 for one part in 100, or 1+100 for one part and 100 of water";

const rows: readonly Refused[] = [
  [() => injector("100" as never), "text", "injector", spelled],
  [() => injector("1:" as never), "text", "injector", spelled],
  [() => injector("2:100" as never), "text", "injector", spelled],
  [() => injector("11:100" as never), "text", "injector", spelled],
  [() => injector("1:100 gal" as never), "text", "injector", spelled],
  [() => injector(["1:100"] as never), "text", "injector", spelled],
  [() => injector(`1:${"1".repeat(40)}` as never), "text", "injector", spelled],
  [() => injector(7 as never), "text", "injector", spelled],
  [() => injector("1:1"), "range", "injector.parts", "more than 1"],
  [() => injector("1+0"), "range", "injector.parts", "more than 0"],
  [() => injector("1:100001"), "range", "injector.parts", "100000 or less"],
  [() => injector("1:100", 7 as never), "type", "path", "a path"],
  [tank({ injector: 7 }), "type", "injector", 'an injector setting, such as injector("1:100")'],
  [tank({ injector: { ...setting(), reading: "1/N" } }), "type", "injector.reading", '"1:N"'],
  [tank({ injector: { ...setting(), dilution: 101 } }), "conflict", "injector.dilution", "100"],
  [tank({ injector: { ...setting(), flow: 1 } }), "type", "injector.flow", "dilution"],
  [tank({ tank: quantity(0, "L") }), "range", "tank", "more than zero"],
  [tank({ tank: quantity(1, "lb") }), "unit/mismatch", "tank", "a volume"],
  [tank({ targets: [] }), "missing", "targets", "concentration"],
  [
    tank({ targets: [quantity(1, "mg/L", "product")] }),
    "substance/mismatch",
    "targets[0]",
    "a concentration of a nutrient",
  ],
  [tank({ targets: [quantity(-1, "mg/L", "N")] }), "range", "targets[0]", "zero or more"],
  [
    tank({ targets: [quantity(1, "mg/L", "P"), quantity(1, "mg/L", "P2O5")] }),
    "duplicate",
    "targets[1]",
    "one target for the nutrient of targets[0]",
  ],
  [tank({ salts: [] }), "missing", "salts", "salt"],
  [tank({ salts: [7] }), "type", "salts[0]", "a salt: { product }"],
  [
    tank({ salts: [{ product: feed }, { product: feed }] }),
    "duplicate",
    "salts[1].product.id",
    "an id of its own",
  ],
  [
    tank({ salts: [{ product: feed }, { product: potash }] }),
    "conflict",
    "salts",
    "as many salts as targets, which is 1",
  ],
  [tank({ salts: [{ product: potash }] }), "infeasible", "salts", "a salt that states N, as targets[0] asks"],
  [
    tank({ targets: [n, quantity(10, "mg/L", "K2O")], salts: [{ product: feed }, { product: potash }] }),
    "infeasible",
    "salts[1]",
    "targets that these salts can meet without taking one of them out",
  ],
  [
    tank({
      targets: [n, quantity(100, "mg/L", "K2O")],
      salts: [{ product: feed }, { product: { ...feed, id: "twin" } }],
    }),
    "infeasible",
    "salts[1]",
    "the targets do not fix this one",
  ],
  [salt({ product: 7 }), "type", "salts[0].product", "fertilizer"],
  [salt({ solubility: quantity(0, "g/L") }), "range", "salts[0].solubility", "more than zero"],
  [salt({ solubility: quantity(1, "g") }), "unit/mismatch", "salts[0].solubility", "a weight per volume"],
  [salt({ solubilitySource: "" }), "missing", "salts[0].solubilitySource", "a source"],
  [salt({ amount: 1 }), "type", "salts[0].amount", "solubility"],
  [flow({ flow: quantity(-1, "gal/min") }), "range", "flow", "zero or more"],
  [flow({ flow: quantity(1, "gal") }), "unit/mismatch", "flow", "a flow"],
  [flow({ injector: 7 }), "type", "injector", "an injector setting"],
  [rate({ application: quantity(-1, "gal/acre") }), "range", "application", "zero or more"],
  [rate({ application: quantity(1, "gal") }), "unit/mismatch", "application", "a volume over an area"],
  [rate({ covered: quantity(0, "acre/h") }), "range", "covered", "more than zero"],
  [rate({ covered: quantity(1, "acre") }), "unit/mismatch", "covered", "an area per time"],
  [() => productForConcentration(quantity(-1, "mg/L", "N"), feed), "range", "concentration", "zero or more"],
  [
    () => productForConcentration(quantity(1, "mg/L") as never, feed),
    "substance/mismatch",
    "concentration",
    "a concentration of a nutrient, such as N",
  ],
  [
    () => productForConcentration(n, potash),
    "infeasible",
    "product.analysis",
    "some N, of which potash states none",
  ],
  [() => productForConcentration(n, 7 as never), "type", "product", "fertilizer"],
  [
    () => concentrationOf(quantity(1, "g/L", "product:b") as never, feed, "N"),
    "substance/mismatch",
    "amount",
    "product:feed",
  ],
  [() => concentrationOf(quantity(-1, "g/L", "product:feed"), feed, "N"), "range", "amount", "zero or more"],
  [
    () => concentrationOf(quantity(1, "g/L", "product:feed"), feed, "Zz" as never),
    "type",
    "nutrient",
    "a nutrient, such as N or P2O5",
  ],
];

describeRefused("what is refused of stock tanks and injectors", rows);

describe("at the limits", () => {
  test("the weakest and the strongest settings are read, each in its reading", () => {
    expect([injector("1:100").dilution, injector("1+100").dilution, injector("1:1.5").dilution]).toEqual([
      100, 101, 1.5,
    ]);
    expect(injector("1+0.5").dilution).toBe(1.5);
    for (const text of ["1:100000", "1+100000"] as const)
      expect(problemsOf(() => injector(text))).toEqual([]);
  });

  test("a stock by hand: 100 mg/L of N from a salt of 20 % at 1:100 are 50 g in a liter of stock", () => {
    const found = stockTank({
      targets: [n],
      salts: [{ product: feed }],
      injector: setting(),
      tank: quantity(10, "L"),
    });
    expect(found.salts[0]?.perVolume.in("g/L")).toBeCloseTo(50, 9);
    expect(found.salts[0]?.amount.in("g")).toBeCloseTo(500, 9);
    expect(found.makes.in("L")).toBe(1000);
    expect(found.solution.K2O?.in("mg/L")).toBeCloseTo(100, 9);
    expect(found.solution).not.toHaveProperty("P2O5");
  });

  test("a target of none takes none, and a salt that just is not needed is none", () => {
    const found = stockTank({
      targets: [n, quantity(100, "mg/L", "K2O")],
      salts: [{ product: feed }, { product: potash }],
      injector: setting(),
      tank: quantity(10, "L"),
    });
    expect(found.salts.map(({ amount }) => amount.in("mg"))).toEqual([expect.closeTo(500_000, 6), 0]);
    expect(tank({ targets: [quantity(0, "mg/L", "N")] })().salts[0]?.amount.value).toBe(0);
  });

  test("what an injector takes in, and what a sprayer needs in a minute", () => {
    expect(stockFlow({ flow: quantity(10, "gal/min"), injector: setting() }).in("gal/min")).toBeCloseTo(
      0.1,
      12,
    );
    expect(rate({})().in("gal/h")).toBeCloseTo(10, 12);
    expect(concentrationOf(quantity(1, "g/L", "product:feed"), feed, "N").in("mg/L")).toBeCloseTo(200, 9);
    expect(productForConcentration(n, feed).in("mg/L")).toBeCloseTo(500, 9);
  });
});
