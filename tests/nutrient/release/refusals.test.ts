import { releaseModel } from "../../../src/nutrient/index.js";
import { describeRefused, type Refused } from "../../refused.js";

// What is refused of a model of release, where the refusal points, and what it says would have been right.

const right = {
  name: "a coating",
  placement: "either",
  curve: { kind: "first order", ratePerDay: { low: 0.01, high: 0.02 } },
  temperature: { kind: "none" },
  assumptions: [],
  source: "a bulletin",
} as const;
const model = (change: object) => () => releaseModel({ ...right, ...change } as never);
const curve = (input: unknown) => model({ curve: input });
const warmth = (input: unknown) => model({ temperature: input });
const models: readonly Refused[] = [
  [model({ name: "" }), "missing", "model.name", "a name"],
  [model({ placement: undefined }), "missing", "model.placement", '"surface or thatch" or "incorporated"'],
  [model({ placement: "air" }), "type", "model.placement", '"surface or thatch" or "incorporated"'],
  [model({ coating: "wax" }), "type", "model.coating", '"polymer"'],
  [model({ fitErrorPercent: 101 }), "range", "model.fitErrorPercent", "100 or less"],
  [model({ assumptions: undefined }), "missing", "model.assumptions", "a list of texts"],
  [model({ assumptions: "x" }), "type", "model.assumptions", "a list of texts"],
  [model({ assumptions: [7] }), "type", "model.assumptions[0]", "a text"],
  [model({ assumptions: Array(201).fill("x") }), "range", "model.assumptions", "200 texts or fewer"],
  [model({ source: undefined }), "missing", "model.source", "a source"],
  [model({ source: "" }), "missing", "model.source", "a source"],
  [model({ source: { title: "x" } }), "missing", "model.source.publisher", "a publisher"],
  [model({ source: { publisher: "x" } }), "missing", "model.source.title", "a title"],
  [model({ source: { title: "x", publisher: "y", year: 0 } }), "range", "model.source.year", "1 or more"],
  [model({ source: { title: "x", publisher: "y", where: 7 } }), "type", "model.source.where", "a text"],
  [model({ source: { title: "x", publisher: "y", url: 7 } }), "type", "model.source.url", "a text"],
  [model({ source: { title: "x", publisher: "y", page: 7 } }), "type", "model.source.page", "where"],
  [model({ observed: 7 }), "type", "model.observed", "record"],
  [model({ observed: { days: 0 } }), "range", "model.observed.days", "more than 0"],
  [model({ observed: { fromC: -61 } }), "range", "model.observed.fromC", "-60 or more"],
  [model({ observed: { toC: 101 } }), "range", "model.observed.toC", "100 or less"],
  [
    model({ observed: { fromC: 20, toC: 10 } }),
    "conflict",
    "model.observed.fromC",
    "not more than the warmest temperature",
  ],
  [model({ rate: 1 }), "type", "model.rate", "curve"],
  [() => releaseModel(7 as never), "type", "model", "a release model"],
  [() => releaseModel(right, 7 as never), "type", "path", "a path"],
  [curve(undefined), "missing", "model.curve.kind", "at once, duration, first order or Richards"],
  [curve({ kind: "third order" }), "type", "model.curve.kind", "at once, duration, first order or Richards"],
  [curve({ kind: "at once", days: 1 }), "type", "model.curve.days", "kind"],
  [curve({ kind: "duration" }), "missing", "model.curve.days", "a range { low, high }"],
  [curve({ kind: "duration", days: { low: 0, high: 1 } }), "range", "model.curve.days.low", "more than 0"],
  [
    curve({ kind: "duration", days: { low: 2, high: 1 } }),
    "conflict",
    "model.curve.days.low",
    "not more than the high end, which is 1",
  ],
  [
    curve({ kind: "duration", days: { low: 1, mid: 3, high: 2 } }),
    "conflict",
    "model.curve.days.mid",
    "a figure from 1 to 2",
  ],
  [
    curve({ kind: "first order", ratePerDay: { low: 0, high: 1 } }),
    "range",
    "model.curve.ratePerDay.low",
    "more than 0",
  ],
  [curve({ ...right.curve, lagDays: { low: -1, high: 1 } }), "range", "model.curve.lagDays.low", "0 or more"],
  [
    curve({ ...right.curve, mostPercent: { low: 1, high: 101 } }),
    "range",
    "model.curve.mostPercent.high",
    "100 or less",
  ],
  [
    curve({ ...right.curve, mostPercent: { low: 0, high: 100 } }),
    "range",
    "model.curve.mostPercent.low",
    "more than 0",
  ],
  [
    curve({
      kind: "Richards",
      shape: -1,
      ratePerDay: { low: 1, high: 1 },
      inflectionDays: { low: 1, high: 1 },
    }),
    "range",
    "model.curve.shape",
    "0 or more",
  ],
  [
    curve({
      kind: "Richards",
      shape: 1,
      ratePerDay: { low: 0, high: 1 },
      inflectionDays: { low: 1, high: 1 },
    }),
    "range",
    "model.curve.ratePerDay.low",
    "more than 0",
  ],
  [
    curve({
      kind: "Richards",
      shape: 1,
      ratePerDay: { low: 1, high: 1 },
      inflectionDays: { low: -1, high: 1 },
    }),
    "range",
    "model.curve.inflectionDays.low",
    "0 or more",
  ],
  [
    curve({
      kind: "Richards",
      shape: 1,
      ratePerDay: { low: 1, high: 1 },
      inflectionDays: { low: 1, high: 1 },
      mostPercent: { low: 0, high: 1 },
    }),
    "range",
    "model.curve.mostPercent.low",
    "more than 0",
  ],
  [warmth(undefined), "missing", "model.temperature.kind", "none, Q10 or Arrhenius"],
  [warmth({ kind: "linear" }), "type", "model.temperature.kind", "none, Q10 or Arrhenius"],
  [warmth({ kind: "none", referenceC: 1 }), "type", "model.temperature.referenceC", "kind"],
  [
    warmth({ kind: "Q10", q10: { low: 0, high: 2 }, referenceC: 25 }),
    "range",
    "model.temperature.q10.low",
    "more than 0",
  ],
  [
    warmth({ kind: "Q10", q10: { low: 1, high: 11 }, referenceC: 25 }),
    "range",
    "model.temperature.q10.high",
    "10 or less",
  ],
  [
    warmth({ kind: "Q10", q10: { low: 1, high: 2 }, referenceC: 51 }),
    "range",
    "model.temperature.referenceC",
    "50 or less",
  ],
  [
    warmth({ kind: "Q10", q10: { low: 1, high: 2 }, referenceC: 25, restsBelowC: 26 }),
    "range",
    "model.temperature.restsBelowC",
    "25 or less",
  ],
  [
    warmth({ kind: "Arrhenius", activationEnergy: { low: -1, high: 2 }, referenceC: 25 }),
    "range",
    "model.temperature.activationEnergy.low",
    "0 or more",
  ],
  [
    warmth({ kind: "Arrhenius", activationEnergy: { low: 1, high: 301 }, referenceC: 25 }),
    "range",
    "model.temperature.activationEnergy.high",
    "300 or less",
  ],
  [
    warmth({ kind: "Arrhenius", q10: { low: 1, high: 2 }, referenceC: 25 }),
    "type",
    "model.temperature.q10",
    "activationEnergy",
  ],
];

describeRefused("what is refused of a model", models);
