import { touches } from "../../ledger/house.js";
import { type Finding, inUnit } from "../../quantity/index.js";
import { type WateringIn, wateringIn } from "../../water/index.js";
import type { ReadWater, ReadWaterEvent } from "../job/read-water.js";
import type { ReadTreatment } from "../job/treatments.js";
import { depthWords, momentWords, type ProductWatering } from "./watering-conflicts.js";

/** The water of the job that reaches a treatment. */
const eventsOn = (treatment: ReadTreatment, water: ReadWater): readonly ReadWaterEvent[] =>
  water.events.filter(
    ({ parts = [] }) =>
      parts.length === 0 ||
      treatment.parts === undefined ||
      parts.some((part) => touches(treatment.parts ?? [], part)),
  );

/** How one rule stands to the water of the job: to all of it, and to what does not rest on a forecast. */
export const weighed = (
  { rule }: ProductWatering,
  treatment: ReadTreatment,
  water: ReadWater,
): { readonly all: WateringIn; readonly sure: WateringIn } | undefined => {
  const { end } = treatment;
  if (end === undefined || Date.parse(water.until) < Date.parse(end)) return undefined;
  const events = eventsOn(treatment, water);
  const of = (list: readonly ReadWaterEvent[]): WateringIn => {
    const found = wateringIn({
      rule,
      end,
      until: water.until,
      water: list.map(({ at, depth, by }) => ({ at, depth, by })),
    });
    // A rule that states no depth is told in the unit in which the job writes its water.
    const unit = (rule.least ?? rule.most ?? events[0]?.depth)?.unit;
    return unit === undefined ? found : { ...found, early: inUnit(found.early, unit) };
  };
  return { all: of(events), sure: of(events.filter(({ known }) => known !== "forecast")) };
};

const finding = (
  code: string,
  severity: Finding["severity"],
  treatment: ReadTreatment,
  rule: ProductWatering,
  params: Finding["params"],
  text: string,
): Finding => ({
  code: `watering-in/${code}`,
  severity,
  path: `${treatment.path}`,
  params: { treatment: treatment.id, product: rule.product, ...params },
  text: `${rule.productName}: ${text}`,
  source: rule.rule.source,
});

/** What the water of the job does to one rule. */
export const waterFindings = (
  rule: ProductWatering,
  { all, sure }: { readonly all: WateringIn; readonly sure: WateringIn },
  treatment: ReadTreatment,
): Finding[] => {
  const { least, most } = rule.rule;
  const found: Finding[] = [];
  // Rain that is only forecast does not count as water; what it would leave is told beside what is missing.
  const forecast =
    all.remaining.value < sure.remaining.value
      ? ` (${depthWords(all.remaining)} if the forecast rain falls)`
      : "";
  if (all.early.value > 0 && all.dryUntil !== null)
    found.push(
      finding(
        "too-soon",
        "warning",
        treatment,
        rule,
        { early: all.early.value, unit: all.early.unit, dryUntil: all.dryUntil },
        `${depthWords(all.early)} of water is expected before ${momentWords(all.dryUntil)}, but the label wants the leaf dry. Postpone the irrigation or the application.`,
      ),
    );
  if (all.over.value > 0 && most !== undefined)
    found.push(
      finding(
        "too-much",
        "warning",
        treatment,
        rule,
        { over: all.over.value, unit: all.over.unit, most: most.toString() },
        `${depthWords(all.over)} more water is expected than the label maximum of ${depthWords(most)}: product may leach or run off.`,
      ),
    );
  if (least !== undefined && sure.state === "missed" && sure.by !== null)
    found.push(
      all.state === "reached"
        ? finding(
            "by-forecast-only",
            "caution",
            treatment,
            rule,
            { by: sure.by, missing: sure.remaining.value, unit: sure.remaining.unit },
            `the ${depthWords(least)} of water that the label wants by ${momentWords(sure.by)} depends on forecast rain. If it stays dry, water ${depthWords(sure.remaining)}.`,
          )
        : finding(
            "not-planned",
            "caution",
            treatment,
            rule,
            { by: sure.by, missing: sure.remaining.value, unit: sure.remaining.unit },
            `irrigation and rain are ${depthWords(sure.remaining)} short of the ${depthWords(least)} that the label wants by ${momentWords(sure.by)}${forecast}: plan irrigation.`,
          ),
    );
  return found;
};
