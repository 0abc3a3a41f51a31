import { civilDateAt } from "../../ledger/house.js";
import { counted, described, dimensionDue, hasOwn, unitInWords } from "../../quantity/house.js";
import { expectFields, expectFlag, expectRecord, fail, outOfRange } from "../../quantity/index.js";
import { formulations } from "../../tank/index.js";
import { expectPackageSize } from "../job/read-package.js";
import { passesAt } from "../job/read-spread.js";
import { momentAt } from "../job/read-water.js";
import type { WorkOrder } from "../visit/work-order.js";
import { buffer, source } from "./order-parts.js";
import {
  amount,
  amounts,
  anyAmount,
  listOf,
  maybe,
  number,
  oneOf,
  orNull,
  record,
  type Shape,
  text,
} from "./read-shape.js";

const rate = amount("mass/area", "volume/area", "mass/volume", "volume/volume", "mass/mass");
const area = amount("area");
const held = amount("mass", "volume");
const mass = amount("mass");
const spray = amount("volume");
const labelRate = oneOf("within", "outside", "not stated", "other measure");

const whole: Shape<number> = (input, path) => {
  const n = number(input, path);
  return Number.isInteger(n) && n >= 1 ? n : outOfRange(path, input, { step: 1, min: 1 });
};
/** As many packages as are needed; none where nothing is. */
const wholeOrNone: Shape<number> = (input, path) => (input === 0 ? 0 : whole(input, path));
const packageSize: Shape<unknown> = (input, path) => {
  const size = held(input, path);
  expectPackageSize(size, path);
  return size;
};
const aboveZero: Shape<number> = (input, path) => {
  const n = number(input, path);
  return n > 0 ? n : outOfRange(path, input, { above: 0 });
};
const versionOne: Shape<1> = (input, path) =>
  input === 1 ? input : outOfRange(path, input, { min: 1, max: 1 }, "version {}, the one this release reads");

const period: Shape<unknown> = (input, path) => {
  if (typeof input === "string") return oneOf("application", "calendar year")(input, path);
  const given = expectRecord(input, path, "a period");
  if (given.days !== undefined) return record({ days: whole })(given, path);
  if (given.months !== undefined) return record({ months: whole })(given, path);
  return record({ from: text, to: text })(given, path);
};

const finding = record({
  code: text,
  severity: oneOf("note", "caution", "warning"),
  text,
  source: maybe(source),
});

const marks = {
  productName: text,
  product: text,
  rate,
  labelRate,
  packageSize: maybe(packageSize),
  packages: maybe(record({ count: wholeOrNone })),
  registrationNumber: maybe(text),
  lot: maybe(text),
};

const depth = orNull(amount("length"));
const time = orNull(amount("time"));
const stated = { least: maybe(amount("length")), most: maybe(amount("length")) };
const watering = record({
  rules: listOf(
    record({
      productName: text,
      rule: record({
        ...stated,
        within: maybe(amount("time")),
        notBefore: maybe(amount("time")),
        source: text,
      }),
    }),
  ),
  notStated: listOf(text),
  least: depth,
  within: time,
  most: depth,
  notBefore: time,
  conflict: expectFlag,
  dryUntil: orNull(momentAt),
  by: orNull(momentAt),
  remaining: depth,
  byPart: maybe(listOf(record({ parts: listOf(text), remaining: amount("length"), runTime: time }))),
  forecast: depth,
  runTime: time,
});

const spread = record({
  ...marks,
  treatment: text,
  method: oneOf("spread"),
  parts: listOf(text),
  area,
  target: maybe(amount("mass/area")),
  passes: passesAt,
  ratePerPass: amount("mass/area"),
  amount: mass,
  supplies: maybe(amounts),
  byPart: listOf(record({ part: text, area, amount: mass, perPass: mass })),
  watering,
  spreader: record({
    name: maybe(text),
    setting: maybe(text),
    swath: maybe(amount("length")),
    speed: maybe(amount("length/time")),
  }),
});

const sprayed = record({
  ...marks,
  form: oneOf("dry", "liquid"),
  formulation: (input: unknown, path: string) =>
    typeof input === "string" && hasOwn(formulations, input)
      ? input
      : fail("type", path, input, "a kind of product, as workOrder returned it"),
  amount: held,
  loads: listOf(record({ number: whole, amount: held, exact: maybe(held) })),
  measured: maybe(record({ unit: text, step: aboveZero })),
  packets: maybe(record({ perLoad: listOf(number) })),
});

const step = record({
  number: whole,
  action: text,
  productId: maybe(text),
  fraction: maybe(listOf(number)),
  text,
  reason: text,
  cautions: listOf(record({ code: text })),
  sources: listOf(source),
});

const pair = record({
  first: text,
  second: text,
  counts: record({ for: number, against: number, same: number }),
});

const tank = record({
  count: whole,
  volume: spray,
  capacity: spray,
  applicationVolume: amount("volume/area"),
  leftOver: record({ volume: spray }),
  mixedFor: maybe(area),
  areaPerTank: maybe(area),
  loads: listOf(record({ number: whole, volume: spray, area, mixedFor: maybe(area) })),
});

const sprayShape = record({
  treatment: text,
  method: oneOf("spray"),
  parts: listOf(text),
  area,
  tank,
  products: listOf(sprayed),
  order: record({
    mixingOrder: text,
    steps: listOf(step),
    firm: listOf(pair),
    open: listOf(pair),
    unopposed: listOf(pair),
    unsaid: listOf(pair),
  }),
  sprayer: record({
    nozzle: maybe(text),
    pressure: maybe(amount("pressure")),
    speed: maybe(amount("length/time")),
    residualVolume: maybe(spray),
  }),
  watering,
});

/** A treatment that is sprayed, whose products have an amount for every load. */
const wholeSpray: Shape<object> = (input, path) => {
  const order = sprayShape(input, path);
  const loads = order.tank.loads.length;
  const short = (at: string, list: readonly unknown[]): never =>
    fail("conflict", at, described(counted(list.length, "load")), `${loads}, as the tank has`);
  if (order.tank.count !== loads)
    fail("conflict", `${path}.tank.count`, order.tank.count, `${loads}, as many as there are loads`);
  order.products.forEach((product, i) => {
    const at = `${path}.products[${i}]`;
    if (product.loads.length !== loads) short(`${at}.loads`, product.loads);
    const { dimension } = product.amount;
    const unlike = product.loads.findIndex((load) => load.amount.dimension !== dimension);
    if (unlike >= 0)
      dimensionDue(
        "unit/mismatch",
        `${at}.loads[${unlike}].amount`,
        product.loads[unlike]?.amount,
        dimension,
      );
    if (product.measured !== undefined)
      anyAmount({ value: 1, unit: product.measured.unit }, `${at}.measured`).dimension === dimension ||
        fail("unit/mismatch", `${at}.measured.unit`, product.measured.unit, unitInWords(dimension));
    if (product.packets !== undefined && product.packets.perLoad.length !== loads)
      short(`${at}.packets.perLoad`, product.packets.perLoad);
  });
  return order;
};

const use = record({
  limit: record({ kind: oneOf("amount", "count"), of: text, amount: anyAmount, per: period, source }),
  after: anyAmount,
  remainingUnderStatedLimits: anyAmount,
  violated: orNull(expectFlag),
  moreCanBeAppliedFrom: orNull(civilDateAt),
  appliesIf: listOf(text),
});

const test = record({
  limit: record({ of: text, states: text, source }),
  found: orNull(text),
  violated: orNull(expectFlag),
  appliesIf: listOf(text),
});

const account = record({
  part: text,
  yearSoFar: amounts,
  visitTotal: amounts,
  yearAfter: amounts,
  unweighed: listOf(text),
  limits: listOf(use),
  tests: listOf(test),
});

const degreeDayAmount = amount("degree-days");
const degreeDays = record({
  from: civilDateAt,
  interval: degreeDayAmount,
  total: degreeDayAmount,
  runsOut: orNull(civilDateAt),
  countedTo: orNull(civilDateAt),
});

const repeat = record({
  treatment: text,
  calendar: orNull(record({ earliestByStatedRules: civilDateAt, reapplyBy: orNull(civilDateAt) })),
  degreeDaysAfter: orNull(degreeDays),
});

const shapes: { readonly [K in keyof WorkOrder]: Shape<unknown> } = {
  type: oneOf("work-order"),
  version: versionOne,
  title: text,
  date: civilDateAt,
  units: oneOf("US customary", "metric", "both"),
  applicator: record({ name: maybe(text), certificate: maybe(text) }),
  site: record({
    name: text,
    area: record({ net: area }),
    measures: maybe(listOf(record({ part: text, shape: text, lengths: amounts }))),
  }),
  spreads: listOf(spread),
  sprays: listOf(wholeSpray),
  nutrients: listOf(account),
  repeats: listOf(repeat),
  buffers: listOf(buffer),
  findings: listOf(finding),
  cautions: listOf(
    record({ code: text, text, source, place: oneOf("stop", "step", "after", "back"), line: maybe(text) }),
  ),
  checked: listOf(text),
  notChecked: listOf(text),
};

/**
 * A work order as its sheets read it: everything that is printed is checked, also where the order was stored as JSON or came
 * from another copy of the package.
 */
export const readOrder = (input: unknown): WorkOrder => {
  const given = expectRecord(input, "order", "what workOrder returned");
  if (given.type !== "work-order")
    fail("type", "order.type", given.type, "work-order: give what workOrder returned");
  versionOne(given.version, "order.version");
  expectFields(given, Object.keys(shapes), "order", "what workOrder returned");
  // What is not printed was not looked at and is not used: the shapes cover every field that a sheet reads.
  return record(shapes)(given, "order") as WorkOrder;
};
