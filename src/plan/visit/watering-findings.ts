import { touches } from "../../ledger/house.js";
import { type Finding, inUnit } from "../../quantity/index.js";
import { type WateringIn, wateringIn } from "../../water/index.js";
import type { ReadWater, ReadWaterEvent } from "../job/read-water.js";
import type { ReadTreatment } from "../job/treatments.js";
import { depthWords, momentWords, type ProductWatering } from "./watering-conflicts.js";

/** How a rule stands to the water of the job: to all of it, and to what does not rest on a forecast. */
export interface Weighed {
  readonly all: WateringIn;
  readonly sure: WateringIn;
  /** The part that gets the least, where the parts differ. */
  readonly driest?: string;
}

/** The parts of a treatment by the water that reaches them: the first part of each group names it. */
const groundOf = (
  treatment: ReadTreatment,
  { events, ground }: ReadWater,
): ReadonlyMap<string, readonly [part: string, events: readonly ReadWaterEvent[]]> => {
  const groups = new Map<string, readonly [string, readonly ReadWaterEvent[]]>();
  for (const part of treatment.parts ?? ground) {
    const reaching = events.filter(({ parts = [] }) => touches(parts, part));
    const key = reaching.map((event) => events.indexOf(event)).join();
    if (!groups.has(key)) groups.set(key, [part, reaching]);
  }
  return groups;
};

/** The largest of a depth; the first of those that are equal. */
const largest = (list: readonly Weighed[], of: (one: Weighed) => WateringIn["early"]): Weighed =>
  list.reduce((a, b) => (of(b).compare(of(a)) > 0 ? b : a));

/** How one rule stands to the water of the job, part by part: what the driest lacks, and what the wettest has too much. */
export const weighed = (
  { rule }: ProductWatering,
  treatment: ReadTreatment,
  water: ReadWater,
): Weighed | undefined => {
  const { end } = treatment;
  if (end === undefined || Date.parse(water.until) < Date.parse(end)) return undefined;
  const of = (list: readonly ReadWaterEvent[]): WateringIn => {
    const found = wateringIn({
      rule,
      end,
      until: water.until,
      water: list.map(({ at, depth, by }) => ({ at, depth, by })),
    });
    // A rule that states no depth is told in the unit in which the job writes its water.
    const unit = (rule.least ?? rule.most ?? list[0]?.depth)?.unit;
    return unit === undefined ? found : { ...found, early: inUnit(found.early, unit) };
  };
  const each = [...groundOf(treatment, water).values()].map(([driest, events]) => ({
    all: of(events),
    sure: of(events.filter(({ known }) => known !== "forecast")),
    driest,
  }));
  const lacking = largest(each, ({ sure }) => sure.remaining);
  const lacksMost = each.filter(({ sure }) => sure.remaining.compare(lacking.sure.remaining) === 0);
  const { all, sure, driest } = largest(lacksMost, (one) => one.all.remaining);
  return {
    all: {
      ...all,
      early: largest(each, (one) => one.all.early).all.early,
      over: largest(each, (one) => one.all.over).all.over,
    },
    sure,
    ...(each.length > 1 &&
      lacksMost.length < each.length &&
      driest !== undefined &&
      driest !== "" && { driest }),
  };
};

const finding = (
  code: string,
  severity: Finding["severity"],
  treatment: ReadTreatment,
  rule: ProductWatering,
  params: Finding["params"],
  text: string,
  part?: string,
): Finding => ({
  code: `watering-in/${code}`,
  severity,
  path: `${treatment.path}`,
  params: { treatment: treatment.id, product: rule.product, ...params },
  // The driest part alone is named: who waters it alone would leave the others short.
  text:
    part === undefined
      ? `${rule.productName}: ${text}`
      : `${rule.productName}, ${part}: ${text} This part lacks the most; other parts may be short as well.`,
  source: rule.rule.source,
});

/** What the water of the job does to one rule. */
export const waterFindings = (
  rule: ProductWatering,
  { all, sure, driest }: Weighed,
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
            driest,
          )
        : finding(
            "not-planned",
            "caution",
            treatment,
            rule,
            { by: sure.by, missing: sure.remaining.value, unit: sure.remaining.unit },
            `irrigation and rain are ${depthWords(sure.remaining)} short of the ${depthWords(least)} that the label wants by ${momentWords(sure.by)}${forecast}: plan irrigation.`,
            driest,
          ),
    );
  return found;
};
