import { expectFields, expectQuantity, type Quantity } from "../../quantity/index.js";
import type { ExchangeCapacity } from "../report/exchange-capacity.js";
import { type GypsumRequirement, gypsumRequirement } from "../sodium/gypsum-requirement.js";
import type { SectionNotes } from "./plan-types.js";
import type { ReadReport } from "./read-plan-input.js";
import { amountText, relocate } from "./relocate.js";

/** Gypsum, or `null` with a line on why there is none. */
export type SodiumSection = SectionNotes & { readonly gypsum: GypsumRequirement | null };

const nothing = { gypsum: null, figures: [], findings: [], checked: [], notChecked: [] };
const at = "conventions.sodium";

/** Free lime swells the exchange capacity by summation, and so hides the sodium that it is divided by. */
const understated = (pH: number): string =>
  `sodium hidden by free lime: at pH ${pH} the exchange capacity by summation may be too high, and the sodium percentage too low; a saturation extract shows it (sodiumPercentageFromRatio)`;

/** Gypsum by the stated target. */
export const sodiumSection = (
  input: unknown,
  report: ReadReport,
  exchange: ExchangeCapacity | null,
): SodiumSection => {
  if (input === undefined) return { ...nothing, notChecked: ["sodium: no target was stated"] };
  const record = expectFields(
    input,
    ["targetPercent", "purity"],
    at,
    "a target sodium percentage and a purity",
  );
  const target = expectQuantity(
    record.targetPercent,
    { dimension: "1", of: "none", bound: "non-negative" },
    `${at}.targetPercent`,
  );
  const saturation = exchange?.cations.Na?.saturation;
  if (exchange === null || saturation === undefined) {
    return { ...nothing, notChecked: ["sodium: it takes the exchange capacity and sodium of the report"] };
  }
  const now = saturation.in("%");
  if (now <= target.in("%")) {
    const text = `exchangeable sodium is ${Number(now.toPrecision(3))} %, at or below the target: no gypsum is called for`;
    return { ...nothing, checked: [text], notChecked: report.pH >= 7.3 ? [understated(report.pH)] : [] };
  }
  const gypsum = relocate(
    () =>
      gypsumRequirement({
        capacity: exchange.capacity,
        sodiumPercent: saturation as Quantity<"1", "none">,
        targetPercent: target,
        purity: record.purity as number,
        layer: report.layer,
      }),
    (path) => (/^(targetPercent|purity)/.test(path) ? `${at}.${path}` : `report.${path}`),
  );
  return {
    gypsum,
    figures: [
      {
        section: "sodium",
        of: "gypsum",
        value: amountText(gypsum.rate),
        method: `${amountText(gypsum.sodium)} of sodium to replace, field factor ${gypsum.fieldFactor}, purity ${gypsum.purity} %`,
        source: gypsum.source,
      },
    ],
    findings: [],
    checked: ["exchangeable sodium"],
    notChecked: [
      "gypsum on standing turf: no published maximum for one application was found",
      "drainage: gypsum does nothing unless water can carry the sodium below the roots",
    ],
  };
};
