import type { CivilDate } from "../../calendar/index.js";
import { type Caution, checks, type Finding, type Problem, RatewrightError } from "../../quantity/index.js";
import type { SiteArea } from "../../site/index.js";
import type { Job } from "../job/job.js";
import { type ReadJob, readJob } from "../job/read-job.js";
import { withSuggestions } from "../job/with-suggestions.js";
import { cautionsFor } from "./cautions.js";
import { type NutrientAccount, nutrientAccounts } from "./nutrient-account.js";
import { type RepeatPlan, repeatPlan } from "./repeat.js";
import { type SprayOrder, sprayOrder } from "./spray-order.js";
import { type SpreadOrder, spreadOrder } from "./spread-order.js";

/** The work order of a visit. Plain data: through JSON its quantities become `{ value, unit, of }`. */
export interface WorkOrder {
  readonly type: "work-order";
  readonly version: 1;
  readonly title: string;
  readonly date: CivilDate;
  readonly site: { readonly name: string; readonly area: SiteArea };
  readonly spreads: readonly SpreadOrder[];
  readonly sprays: readonly SprayOrder[];
  /** Nutrients by part of the site: this year so far, this visit, and the limits that the job states. */
  readonly nutrients: readonly NutrientAccount[];
  readonly repeats: readonly RepeatPlan[];
  /** What is unusual. An empty list is no approval: see `checked` and `notChecked`. */
  readonly findings: readonly Finding[];
  readonly cautions: readonly Caution[];
  readonly checked: readonly string[];
  readonly notChecked: readonly string[];
}

const computed = (input: unknown): WorkOrder => {
  try {
    return compute(input);
  } catch (error) {
    if (!(error instanceof RatewrightError)) throw error;
    throw new RatewrightError(withSuggestions(error.problems, input));
  }
};

const compute = (input: unknown): WorkOrder => {
  const door = checks();
  const job = readJob(input, door);
  const findings: Finding[] = [];
  const notChecked: string[] = [];
  // What only the arithmetic can tell (a nutrient that the product lacks, a circle of labels) is told together
  // with what is wrong elsewhere.
  const spreads = job.treatments.flatMap((t) =>
    t.method === "spread" ? (door.run(() => spreadOrder(t, findings, notChecked)) ?? []) : [],
  );
  const { sprayer } = job;
  const sprays = job.treatments.flatMap((t) =>
    t.method === "spray" && sprayer !== undefined
      ? (door.run(() => sprayOrder(t, sprayer, findings, notChecked)) ?? [])
      : [],
  );
  door.done();
  const nutrients = nutrientAccounts(job, [...spreads, ...sprays], findings, notChecked);
  const repeats = job.treatments.map((t) => repeatPlan(t, job, findings, notChecked));
  const used = new Map(
    job.treatments
      .flatMap((t) => (t.method === "spread" ? [t.product] : t.mix.map(({ product }) => product)))
      .map((product) => [product.id, product]),
  );
  for (const product of used.values()) {
    if (product.labelRate === undefined)
      notChecked.push(`${product.name}: the rate against the label, for the job states no label rate.`);
    if (product.fertilizer === undefined)
      notChecked.push(`${product.name}: its nutrients, for the job states no analysis.`);
  }
  if (job.limits.length === 0) notChecked.push("Limits on nutrients: the job states none.");
  if (job.site.area.cutOuts.length > 0 && job.treatments.some((t) => t.parts !== undefined)) {
    findings.push({
      code: "site/cut-outs-not-taken-off",
      severity: "caution",
      path: "site.cutOuts",
      params: {},
      text: "Treatments of named parts take the whole of these parts: what is cut out of the site is not taken off them. State the area of such a treatment.",
    });
  }
  notChecked.push("Weather, soil moisture, and what else the labels and local codes ask for.");
  return {
    type: "work-order",
    version: 1,
    title: job.title,
    date: job.date,
    site: { name: job.site.name, area: job.site.area },
    spreads,
    sprays,
    nutrients,
    repeats,
    findings,
    cautions: cautionsFor(job.treatments.map(({ method }) => method)),
    checked: checkedBy(job),
    notChecked: [...new Set(notChecked)],
  };
};

const checkedBy = (job: ReadJob): readonly string[] => [
  "that every figure has the unit and the substance that its place needs",
  ...([...job.products.values()].some((product) => product.labelRate)
    ? ["rates against the label rates that the job states"]
    : []),
  "nitrogen of each application against common advice",
  ...(job.limits.length > 0 ? ["nutrients against the limits that the job states"] : []),
  ...(job.treatments.some((t) => t.interval) ? ["dates against the intervals that the job states"] : []),
  ...(job.treatments.some((t) => t.heat)
    ? ["degree-days against the intervals by heat that the job states"]
    : []),
];

/**
 * The work order of a visit, from one job: product per area and in all, packages, tank loads and what
 * goes into each, loading order, nutrients against the stated limits, when to come back, findings and
 * cautions. Nothing is computed before the whole job is sound.
 *
 * @param job - the job; what `JSON.parse` gives of a job file will do
 * @throws RatewrightError with every problem of the job, each with its path such as
 *   `treatments[1].mix[0].rate`; {@link tryWorkOrder} returns them instead
 *
 * @example
 * ```ts
 * import { workOrder } from "ratewright";
 * const order = workOrder({
 *   type: "job",
 *   version: 1,
 *   title: "First feed",
 *   date: "2026-05-04",
 *   site: { name: "Practice pitch", parts: [{ shape: "measured", area: { value: 12400, unit: "ft2" } }] },
 *   products: [
 *     { id: "feed-a", form: "dry", analysis: "24-0-11", package: { value: 50, unit: "lb" } },
 *   ],
 *   treatments: [
 *     {
 *       id: "feed",
 *       method: "spread",
 *       product: "feed-a",
 *       target: { value: 0.9, unit: "lb/1000 ft2", of: "N" },
 *     },
 *   ],
 * });
 * order.spreads[0]?.rate.in("lb/1000 ft2"); // => 3.75
 * order.spreads[0]?.amount.in("lb"); // => 46.5
 * order.spreads[0]?.packages?.count; // => 1
 * ```
 */
export const workOrder = (job: Job): WorkOrder => computed(job);

/** What {@link tryWorkOrder} gives: the order, or all that is wrong with the job. */
export type WorkOrderResult =
  | { readonly order: WorkOrder; readonly problems: readonly [] }
  | { readonly order: null; readonly problems: readonly Problem[] };

/**
 * {@link workOrder} for an app: returns the problems of a job instead of throwing them.
 *
 * @param job - anything
 *
 * @example
 * ```ts
 * import { tryWorkOrder } from "ratewright";
 * const result = tryWorkOrder({ type: "job", version: 1, title: "No date" });
 * result.problems.map((problem) => problem.path);
 * // => ["date", "site", "products", "treatments"]
 * ```
 */
export const tryWorkOrder = (job: unknown): WorkOrderResult => {
  try {
    return { order: computed(job), problems: [] };
  } catch (error) {
    if (error instanceof RatewrightError) return { order: null, problems: error.problems };
    throw error;
  }
};
