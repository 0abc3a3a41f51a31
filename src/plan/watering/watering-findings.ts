import type { Finding } from "../../quantity/index.js";
import type { WateringIn } from "../../water/index.js";
import type { ReadTreatment } from "../job/treatments.js";
import { depthWords, momentWords, type ProductWatering } from "./watering-conflicts.js";
import { asMuch, type Told, told, type Weighed } from "./watering-grounds.js";

/** Tells what one rule and the water of the job come to. */
type Tell = (
  code: string,
  severity: Finding["severity"],
  told: Told,
  params: Finding["params"],
  text: string,
) => Finding;

const telling =
  (rule: ProductWatering, treatment: ReadTreatment): Tell =>
  (code, severity, { where, others }, params, text) => ({
    code: `watering-in/${code}`,
    severity,
    path: treatment.path,
    params: {
      treatment: treatment.id,
      product: rule.product,
      ...(where !== "" && { parts: where }),
      ...params,
    },
    text: `${rule.productName}${where === "" ? "" : `, ${where}`}: ${text}${others}`,
    source: rule.rule.source,
  });

const tooSoon = (grounds: readonly Weighed[], tell: Tell): Finding[] => {
  const early = ({ all }: Weighed): WateringIn["early"] => all.early;
  const wet = grounds.filter((one) => early(one).value > 0);
  const soon = told(wet, grounds, early);
  const dryUntil = soon?.most.all.dryUntil;
  if (soon === undefined || !dryUntil) return [];
  const depth = early(soon.most);
  const params = { early: depth.value, unit: depth.unit, dryUntil };
  const text = `${depthWords(depth)} of water is expected before ${momentWords(dryUntil)}, but the label wants the leaf dry. Postpone the irrigation or the application.`;
  return [tell("too-soon", "warning", soon, params, text)];
};

const tooMuch = (
  grounds: readonly Weighed[],
  most: ProductWatering["rule"]["most"],
  tell: Tell,
): Finding[] => {
  const over = ({ all }: Weighed): WateringIn["over"] => all.over;
  const wet = grounds.filter((one) => over(one).value > 0);
  const much = told(wet, grounds, over);
  if (much === undefined || most === undefined) return [];
  const depth = over(much.most);
  const params = { over: depth.value, unit: depth.unit, most: most.toString() };
  const text = `${depthWords(depth)} more water is expected than the label maximum of ${depthWords(most)}: product may leach or run off.`;
  return [tell("too-much", "warning", much, params, text)];
};

const missing = (
  code: "by-forecast-only" | "not-planned",
  among: readonly Weighed[],
  grounds: readonly Weighed[],
  least: ProductWatering["rule"]["least"],
  tell: Tell,
): Finding[] => {
  const short = told(among, grounds, ({ sure }) => sure.remaining);
  const by = short?.most.sure.by;
  if (least === undefined || short === undefined || !by) return [];
  const { remaining } = short.most.sure;
  // Of parts that lack the same, rain on one is none on the other.
  const left = among
    .filter(({ sure }) => asMuch(sure.remaining, remaining))
    .map(({ all }) => all.remaining)
    .reduce((a, b) => (b.compare(a) > 0 ? b : a));
  const forecast = left.value < remaining.value ? ` (${depthWords(left)} if the forecast rain falls)` : "";
  const text =
    code === "by-forecast-only"
      ? `the ${depthWords(least)} of water that the label wants by ${momentWords(by)} depends on forecast rain. If it stays dry, water ${depthWords(remaining)}.`
      : `irrigation and rain are ${depthWords(remaining)} short of the ${depthWords(least)} that the label wants by ${momentWords(by)}${forecast}: plan irrigation.`;
  return [tell(code, "caution", short, { by, missing: remaining.value, unit: remaining.unit }, text)];
};

/** What the water of the job does to one rule. */
export const waterFindings = (
  rule: ProductWatering,
  grounds: readonly Weighed[],
  treatment: ReadTreatment,
): Finding[] => {
  const { least, most } = rule.rule;
  const tell = telling(rule, treatment);
  const missed = grounds.filter(({ sure }) => sure.state === "missed");
  // Rain that is only forecast does not count as water; what it would leave is told beside what is missing.
  const byForecast = missed.filter(({ all }) => all.state === "reached");
  const notPlanned = missed.filter(({ all }) => all.state !== "reached");
  return [
    ...tooSoon(grounds, tell),
    ...tooMuch(grounds, most, tell),
    ...missing("by-forecast-only", byForecast, grounds, least, tell),
    ...missing("not-planned", notPlanned, grounds, least, tell),
  ];
};
