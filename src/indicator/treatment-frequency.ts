import {
  allOf,
  checks,
  expectAmount,
  expectFields,
  expectQuantity,
  expectText,
  type Finding,
  fail,
  outOfRange,
  type Quantity,
  type QuantityJson,
} from "../quantity/index.js";
import { expectItems, expectWholeArea } from "./read.js";

/** One treatment: what was applied, against the full registered rate, on part of the area. A `Quantity` fits. */
export interface TreatmentDone {
  readonly name: string;
  readonly rate: QuantityJson;
  /** The full rate of the label for this use, of the same substance. */
  readonly fullRate: QuantityJson;
  readonly treated: QuantityJson;
}

/** Treatments counted as full rates on the whole area. */
export interface TreatmentFrequency {
  readonly type: "treatment-frequency";
  readonly version: 1;
  /** 1 is one full rate on the whole area. */
  readonly index: number;
  readonly treatments: readonly { readonly name: string; readonly index: number }[];
  readonly findings: readonly Finding[];
}

const mostTreatments = 5_000;
/** More full rates in one application are a slip of units: the largest of them, 43.56 and 128 times, multiply to less. */
const mostFullRates = 10_000;
const perArea = ["mass/area", "volume/area"] as const;

interface Counted {
  readonly name: string;
  readonly index: number;
  readonly share: number;
}

const countOf = (input: unknown, path: string, whole: number): Counted => {
  const fields = expectFields(input, ["name", "rate", "fullRate", "treated"], path);
  const { name, rate, full, treated } = allOf({
    name: () => expectText(fields.name, `${path}.name`, "the name of the treatment"),
    rate: () => expectAmount(fields.rate, { dimensions: perArea, bound: "non-negative" }, `${path}.rate`),
    full: () => expectAmount(fields.fullRate, { dimensions: perArea, bound: "positive" }, `${path}.fullRate`),
    treated: () => {
      const area = expectQuantity(
        fields.treated,
        { dimension: "area", bound: "positive" },
        `${path}.treated`,
      );
      return area.in("m2");
    },
  });
  if (rate.dimension !== full.dimension) {
    fail("unit/mismatch", `${path}.fullRate`, full, `a full rate of ${rate.dimension}, as the rate is`);
  }
  if (rate.of !== full.of) fail("substance/mismatch", `${path}.fullRate`, full, `a full rate of ${rate.of}`);
  if (treated > whole * (1 + 1e-9)) {
    outOfRange(
      `${path}.treated`,
      fields.treated,
      { max: whole, unit: "m2" },
      "{}, the whole area: state a second treatment separately",
    );
  }
  // Both rates are of one dimension by now; the unit of one serves both.
  const share = rate.value / full.in(rate.unit as never);
  if (!(share <= mostFullRates))
    outOfRange(
      `${path}.rate`,
      fields.rate,
      { max: mostFullRates, count: "full rates" },
      "{}: check the units of both",
    );
  return { name, share, index: (share * treated) / whole };
};

/**
 * The treatment frequency index of a season: how many treatments at the full registered rate on the whole area the
 * treatments amount to.
 *
 * `TFI = sum of (rate / full rate) (treated area / whole area)`
 *
 * It counts treatments, not their hazard: half a rate of a strong product weighs less than a full rate of a mild one. A
 * product of two active ingredients counts once where its rate is that of the product.
 *
 * @param input.treatments - rate and full rate of the same substance: both of product, or both of the active ingredient
 * @param input.area - the whole area, such as all fairways
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`, `substance/mismatch` with paths such as
 * `treatments[1].fullRate`
 * Source: MilKey project, treatment frequency index (1 is one full rate on the whole area); FAIRWAY information system.
 *
 * @example
 * ```ts
 * import { quantity, treatmentFrequency } from "ratewright";
 * const season = treatmentFrequency({
 *   area: quantity(10, "acre"),
 *   treatments: [
 *     { name: "May", rate: quantity(2, "pt/acre", "product"), fullRate: quantity(4, "pt/acre", "product"), treated: quantity(10, "acre") },
 *     { name: "June", rate: quantity(4, "pt/acre", "product"), fullRate: quantity(4, "pt/acre", "product"), treated: quantity(2.5, "acre") },
 *   ],
 * });
 * season.index; // => 0.75
 * ```
 */
export const treatmentFrequency = (input: {
  readonly treatments: readonly TreatmentDone[];
  readonly area: Quantity<"area", "none">;
}): TreatmentFrequency => {
  const fields = expectFields(input, ["treatments", "area"]);
  const { list, whole } = allOf({
    list: () => expectItems(fields.treatments, "treatments", "treatment", mostTreatments),
    whole: () => expectWholeArea(fields.area, "area").in("m2"),
  });
  const problems = checks();
  const counted = list.flatMap((one, i) => problems.run(() => countOf(one, `treatments[${i}]`, whole)) ?? []);
  problems.done();
  return {
    type: "treatment-frequency",
    version: 1,
    index: counted.reduce((sum, { index }) => sum + index, 0),
    treatments: counted.map(({ name, index }) => ({ name, index })),
    findings: counted.flatMap(({ name, share }, i): Finding[] =>
      share > 1 + 1e-9
        ? [
            {
              code: "treatment/above-full-rate",
              severity: "warning",
              path: `treatments[${i}].rate`,
              params: { name, share },
              text: `${name}: the rate is above the full rate. The label limits the rate; check both figures.`,
            },
          ]
        : [],
    ),
  };
};
