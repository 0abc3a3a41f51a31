import { quantity } from "../../../src/quantity/index.js";
import { areaPerTank, loadAmounts, mixToFinish, tankLoads } from "../../../src/tank/index.js";
import { describeRefused, type Refused } from "../../refused.js";

// What is refused of the loads of a tank, where the refusal points, and what it says would have been right.

const gallons = (value: number) => quantity(value, "gal", "spray");
const job = {
  area: quantity(10, "acre"),
  applicationVolume: quantity(20, "gal/acre", "spray"),
  capacity: gallons(50),
};
const cut = (change: object) => () => tankLoads({ ...job, ...change } as never);
const powder = { id: "a", form: "dry", rate: quantity(2, "lb/acre", "product:a") } as const;
const liquid = { id: "b", form: "liquid", rate: quantity(1, "pt/acre", "product:b") } as const;
const loads = () => tankLoads(job);
const mix =
  (product: object, more: object = {}) =>
  () =>
    loadAmounts({ loads: loads(), products: [{ ...powder, ...product }], ...more } as never);
const stored = (change: object) => () =>
  loadAmounts({ loads: { ...JSON.parse(JSON.stringify(loads())), ...change }, products: [powder] } as never);
const storedLoad = (change: object) => () => stored({ loads: [{ ...loads().loads[0], ...change }] })();
const finish = (change: object) => () =>
  mixToFinish({ area: job.area, applicationVolume: job.applicationVolume, ...change } as never);

const rows: readonly Refused[] = [
  // The loads of a job
  [cut({ area: quantity(0, "acre") }), "range", "area", "zero"],
  [cut({ area: undefined }), "missing", "area", "an area"],
  [
    cut({ area: quantity(1, "acre", "N") }),
    "substance/mismatch",
    "area",
    "an area of none, treated, gross or plan",
  ],
  [cut({ capacity: gallons(0) }), "range", "capacity", "zero"],
  [cut({ capacity: quantity(50, "gal") }), "substance/mismatch", "capacity", "spray"],
  [cut({ applicationVolume: undefined }), "missing", "applicationVolume", "or a calibration"],
  [
    cut({ applicationVolume: quantity(1, "gal/min", "spray") }),
    "unit/mismatch",
    "applicationVolume",
    "a flow becomes one by applicationVolume()",
  ],
  [cut({ loadSplit: "halves" }), "type", "loadSplit", '"even"'],
  [
    cut({ loadSize: gallons(20) }),
    "conflict",
    "loadSize",
    'no size of the loads, or the loadSplit "fixed size"',
  ],
  [cut({ loadSplit: "even", loadSize: gallons(20) }), "conflict", "loadSize", '"fixed size"'],
  [cut({ loadSplit: "fixed size" }), "missing", "loadSize", 'because the loadSplit is "fixed size"'],
  [cut({ loadSplit: "fixed size", loadSize: gallons(0) }), "range", "loadSize", "zero"],
  [
    cut({ loadSplit: "fixed size", loadSize: gallons(51) }),
    "range",
    "loadSize",
    "50 gal or less: the tank holds no more",
  ],
  [
    cut({ loadSplit: "fixed size", loadSize: gallons(46), residualVolume: gallons(5) }),
    "range",
    "loadSize",
    "45 gal or less",
  ],
  [cut({ leastLoad: gallons(-1) }), "range", "leastLoad", "zero"],
  [cut({ residualVolume: gallons(-1) }), "range", "residualVolume", "zero"],
  [cut({ plumbingVolume: gallons(-1) }), "range", "plumbingVolume", "zero"],
  [
    cut({ residualVolume: gallons(50) }),
    "range",
    "residualVolume",
    "less than 50 gal: more leaves no room in the tank",
  ],
  [cut({ plumbingVolume: gallons(50) }), "range", "plumbingVolume", "less than 50 gal"],
  [
    cut({ residualVolume: gallons(5), plumbingVolume: gallons(45) }),
    "range",
    "plumbingVolume",
    "less than 45 gal",
  ],
  [cut({ leastLoad: gallons(60) }), "infeasible", "leastLoad", "50 gal or less, the job in even loads"],
  [
    cut({ area: quantity(5.25, "acre"), leastLoad: gallons(30) }),
    "infeasible",
    "leastLoad",
    'even loads (loadSplit "even") are 35 gal each',
  ],
  [cut({ area: quantity(0.5, "acre"), leastLoad: gallons(20) }), "infeasible", "leastLoad", "10 gal or less"],
  [
    cut({ area: quantity(26_000, "acre") }),
    "range",
    "capacity",
    "with less per load the job takes more than 10000 loads",
  ],
  [
    cut({ area: quantity(26_000, "acre"), capacity: gallons(60), residualVolume: gallons(20) }),
    "range",
    "residualVolume",
    "more than 10000 loads",
  ],
  [
    cut({ area: quantity(1000, "acre"), loadSplit: "fixed size", loadSize: gallons(1) }),
    "range",
    "loadSize",
    "2 gal or more",
  ],
  // What one tank covers
  [
    () => areaPerTank({ capacity: gallons(0), applicationVolume: job.applicationVolume }),
    "range",
    "capacity",
    "zero",
  ],
  [
    () => areaPerTank({ capacity: gallons(50) } as never),
    "missing",
    "applicationVolume",
    "a volume of spray per area",
  ],
  [
    () => areaPerTank({ capacity: gallons(5), applicationVolume: job.applicationVolume, area: 1 } as never),
    "type",
    "input.area",
    "capacity",
  ],
  // What finishes a job
  [finish({ area: undefined }), "missing", "area", "an area"],
  [finish({ applicationVolume: undefined }), "missing", "applicationVolume", "or a calibration"],
  [finish({ atHand: gallons(-1) }), "range", "atHand", "zero"],
  [finish({ atHand: quantity(1, "gal") }), "substance/mismatch", "atHand", "spray"],
  [finish({ residualVolume: gallons(-1) }), "range", "residualVolume", "zero"],
  [finish({ plumbingVolume: gallons(-1) }), "range", "plumbingVolume", "zero"],
  // Products
  [() => loadAmounts({ loads: loads(), products: [] }), "missing", "products", "product"],
  [
    () => loadAmounts({ loads: loads(), products: [null as never] }),
    "type",
    "products[0]",
    "a product with id, rate and form",
  ],
  [
    () => loadAmounts({ loads: loads(), products: [powder, powder] }),
    "duplicate",
    "products[1].id",
    "an id that no other product has",
  ],
  [mix({ id: "" }), "missing", "products[0].id", "an id of the product"],
  [mix({ id: "x".repeat(201) }), "range", "products[0].id", "200 characters or fewer"],
  [mix({ rate: undefined }), "missing", "products[0].rate", "a rate of product"],
  [
    mix({ rate: quantity(2, "lb/acre", "product:b") }),
    "substance/mismatch",
    "products[0].rate",
    "an amount or a rate of product:a",
  ],
  [mix({ form: "solid" }), "type", "products[0].form", '"dry"'],
  [mix({ form: "liquid" }), "missing", "products[0].density", "a density"],
  [mix({ increment: 7 }), "type", "products[0].increment", "a unit and a step"],
  [
    mix({ increment: { unit: "", step: 1 } }),
    "missing",
    "products[0].increment.unit",
    "a unit that the product is measured in",
  ],
  [mix({ increment: { unit: "oz", step: 0 } }), "range", "products[0].increment.step", "more than 0"],
  [
    mix({ increment: { unit: "fl oz", step: 1 } }),
    "unit/mismatch",
    "products[0].increment.unit",
    "a unit for a weight, such as lb or kg",
  ],
  [mix({}, { increments: 7 }), "type", "increments", "a measuring increment for dry, for liquid, or both"],
  [
    mix({}, { increments: { dry: { unit: "pt", step: 1 } } }),
    "unit/mismatch",
    "increments.dry.unit",
    "a unit for a weight, such as lb or kg",
  ],
  [
    mix({}, { increments: { liquid: { unit: "fl oz", step: -1 } } }),
    "range",
    "increments.liquid.step",
    "more than 0",
  ],
  [mix({}, { increments: { dry: { unit: "oz" } } }), "missing", "increments.dry.step", "a finite number"],
  [mix({}, { increments: { powder: { unit: "oz", step: 1 } } }), "type", "increments.powder", "dry"],
  [mix({ least: 7 }), "type", "products[0].least", "record"],
  [mix({ least: { value: 1, unit: "lb", per: "load" } }), "type", "products[0].least.per", "unit"],
  [mix({ least: { value: 0, unit: "lb" } }), "range", "products[0].least", "zero"],
  [mix({ least: { value: 1, unit: "pt" } }), "unit/mismatch", "products[0].least", "a weight"],
  // 50 gal at 20 gal/acre are 2.5 acres, and take 5 lb.
  [
    mix({ least: { value: 5.1, unit: "lb" } }),
    "infeasible",
    "products[0].least",
    "no more than a full tank takes at this rate, 5 lb",
  ],
  [
    mix({ concentration: 7 }),
    "type",
    "products[0].concentration",
    "the weakest or the strongest spray, and who says so",
  ],
  [
    mix({ concentration: { source: "the label" } }),
    "missing",
    "products[0].concentration",
    "min, max or both",
  ],
  [
    mix({ concentration: { max: quantity(1, "lb/gal", "product:a/spray") } }),
    "missing",
    "products[0].concentration.source",
    "who says so",
  ],
  [
    mix({ concentration: { max: quantity(1, "lb/gal", "product:a/spray"), source: " " } }),
    "missing",
    "products[0].concentration.source",
    "who says so",
  ],
  [
    mix({ concentration: { max: powder.rate, source: "the label" } }),
    "unit/mismatch",
    "products[0].concentration.max",
    "product per volume of spray",
  ],
  [
    mix({ concentration: { min: powder.rate, source: "the label" } }),
    "unit/mismatch",
    "products[0].concentration.min",
    "a concentration",
  ],
  [
    mix({ concentration: { min: quantity(1, "lb/gal", "product:b/spray"), source: "the label" } }),
    "substance/mismatch",
    "products[0].concentration.min",
    "a concentration of product:a",
  ],
  [
    mix({
      concentration: {
        min: quantity(0.2, "lb/gal", "product:a/spray"),
        max: quantity(0.1, "lb/gal", "product:a/spray"),
        source: "the label",
      },
    }),
    "conflict",
    "products[0].concentration.max",
    "min or more",
  ],
  // More product than spray
  [
    mix({ rate: quantity(200, "lb/acre", "product:a") }),
    "infeasible",
    "products[0].rate",
    "is the rate of a per 100 gal",
  ],
  [
    () =>
      loadAmounts({
        loads: loads(),
        products: [
          { ...liquid, rate: quantity(12, "gal/acre", "product:b") },
          { ...liquid, id: "c", rate: quantity(13, "gal/acre", "product:c") },
        ],
      }),
    "infeasible",
    "products[1].rate",
    "the liquids together are 125 % of it",
  ],
  // Loads that come back from a store
  [stored({ type: "plan" }), "type", "loads", '"tank-loads", of what tankLoads returns'],
  [stored({ loads: [] }), "missing", "loads.loads", "load"],
  [stored({ loadSplit: "halves" }), "type", "loads.loadSplit", '"even"'],
  [stored({ volume: gallons(0) }), "range", "loads.volume", "zero"],
  [stored({ capacity: quantity(50, "gal") }), "substance/mismatch", "loads.capacity", "spray"],
  [stored({ mixedFor: quantity(-1, "acre") }), "range", "loads.mixedFor", "zero"],
  [stored({ areaPerTank: quantity(1, "gal") }), "unit/mismatch", "loads.areaPerTank", "an area"],
  [stored({ loads: [7] }), "type", "loads.loads[0]", "a load"],
  [storedLoad({ number: 0 }), "range", "loads.loads[0].number", "1"],
  [storedLoad({ volume: gallons(0) }), "range", "loads.loads[0].volume", "zero"],
  [storedLoad({ volume: quantity(50, "gal") }), "substance/mismatch", "loads.loads[0].volume", "spray"],
  [storedLoad({ area: quantity(-1, "acre") }), "range", "loads.loads[0].area", "zero"],
  [storedLoad({ mixedFor: quantity(-1, "acre") }), "range", "loads.loads[0].mixedFor", "zero"],
  [storedLoad({ full: "yes" }), "type", "loads.loads[0].full", "true"],
  [storedLoad({ left: 1 }), "type", "loads.loads[0].left", "full"],
  [() => loadAmounts({ loads: null as never, products: [powder] }), "type", "loads", "tankLoads"],
];

describeRefused("what is refused of the loads", rows);
