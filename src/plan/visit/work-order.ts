import type { CivilDate } from "../../calendar/index.js";
import { checks, type Finding, type Problem, RatewrightError } from "../../quantity/index.js";
import type { SiteArea } from "../../site/index.js";
import type { Job, JobApplicator, SheetUnits } from "../job/job.js";
import { type ReadJob, readJob } from "../job/read-job.js";
import type { ReadProduct } from "../job/read-products.js";
import type { PartMeasures } from "../job/read-site.js";
import { withSuggestions } from "../job/with-suggestions.js";
import { groundConflicts } from "../watering/watering.js";
import { type BufferOrder, bufferOrders } from "./buffers.js";
import { cautionsFor, type WorkOrderCaution } from "./cautions.js";
import { type NutrientAccount, nutrientAccounts } from "./nutrient-account.js";
import { type RepeatPlan, repeatPlan } from "./repeat.js";
import { type SprayOrder, sprayOrder } from "./spray-order.js";
import { type SpreadOrder, spreadOrder } from "./spread-order.js";
import { allWithFindings } from "./with-findings.js";

/** The work order of a visit. Plain data: through JSON its quantities become `{ value, unit, of }`. */
export interface WorkOrder {
  readonly type: "work-order";
  readonly version: 1;
  readonly title: string;
  readonly date: CivilDate;
  /** The units that its sheets are written in. */
  readonly units: SheetUnits;
  readonly applicator: JobApplicator;
  readonly site: {
    readonly name: string;
    readonly area: SiteArea;
    /** The lengths of its named parts, as the job states them. */
    readonly measures?: readonly PartMeasures[];
  };
  readonly spreads: readonly SpreadOrder[];
  readonly sprays: readonly SprayOrder[];
  /** Nutrients by part of the site: this year so far, this visit, and the limits that the job states. */
  readonly nutrients: readonly NutrientAccount[];
  readonly repeats: readonly RepeatPlan[];
  /** Distances from water and other edges, by treatment and part, and the area that they leave. */
  readonly buffers: readonly BufferOrder[];
  /** What is unusual. An empty list is no approval: see `checked` and `notChecked`. */
  readonly findings: readonly Finding[];
  readonly cautions: readonly WorkOrderCaution[];
  readonly checked: readonly string[];
  readonly notChecked: readonly string[];
}

/** The work order of a job beside what was read of it: a job is read once. */
export const computed = (input: unknown): { readonly order: WorkOrder; readonly job: ReadJob } => {
  try {
    return compute(input);
  } catch (error) {
    if (!(error instanceof RatewrightError)) throw error;
    throw new RatewrightError(withSuggestions(error.problems, input));
  }
};

const compute = (input: unknown): { readonly order: WorkOrder; readonly job: ReadJob } => {
  const problems = checks();
  const job = readJob(input, problems);
  // What only the arithmetic can tell (a nutrient that the product lacks, a circle of labels) is told together
  // with what is wrong elsewhere.
  const { sprayer, water } = job;
  const spreads = job.treatments.flatMap((t) =>
    t.method === "spread" ? (problems.run(() => spreadOrder(t, job.spreader, water)) ?? []) : [],
  );
  const sprays = job.treatments.flatMap((t) =>
    t.method === "spray" && sprayer !== undefined
      ? (problems.run(() => sprayOrder(t, sprayer, water)) ?? [])
      : [],
  );
  problems.done();
  const orders = [...spreads, ...sprays].map(({ value }) => value);
  const nutrients = nutrientAccounts(job, orders);
  const repeats = allWithFindings(job.treatments.map((t) => repeatPlan(t, job)));
  const buffers = bufferOrders(job, orders);
  const told = [...spreads, ...sprays, nutrients, repeats, buffers];
  const order: WorkOrder = {
    type: "work-order",
    version: 1,
    title: job.title,
    date: job.date,
    units: job.units,
    applicator: job.applicator,
    site: {
      name: job.site.name,
      area: job.site.area,
      ...(job.site.measures && { measures: job.site.measures }),
    },
    spreads: spreads.map(({ value }) => value),
    sprays: sprays.map(({ value }) => value),
    nutrients: nutrients.value,
    repeats: repeats.value,
    buffers: buffers.value,
    findings: [
      ...told.flatMap(({ findings }) => findings),
      ...groundConflicts(job.treatments),
      ...siteFindings(job),
      ...usedProducts(job).flatMap(({ fertilizer }) => fertilizer?.findings ?? []),
    ],
    cautions: cautionsFor(job.treatments, job.sprayer),
    checked: checkedBy(job),
    notChecked: [...new Set([...told.flatMap(({ notChecked }) => notChecked), ...neverStated(job)])],
  };
  return { order, job };
};

/** What is cut out of the site may lie on parts that are treated whole. */
const siteFindings = ({ site, treatments }: ReadJob): readonly Finding[] =>
  site.area.cutOuts.length > 0 && treatments.some((t) => t.parts !== undefined)
    ? [
        {
          code: "site/cut-outs-not-taken-off",
          severity: "caution",
          path: "site.cutOuts",
          params: {},
          text: "A treatment of named parts covers each part in full: cutouts of the site are not subtracted. State the area of such a treatment.",
        },
      ]
    : [];

/** The products of the treatments, each once. */
const usedProducts = ({ treatments }: ReadJob): readonly ReadProduct[] => [
  ...new Set(
    treatments.flatMap((t) => (t.method === "spread" ? [t.product] : t.mix.map(({ product }) => product))),
  ),
];

/** What the job does not state, and what no job can. */
const neverStated = (job: ReadJob): readonly string[] => [
  ...usedProducts(job).flatMap(({ name, labelRate, fertilizer }) => [
    ...(labelRate === undefined
      ? [`${name}: the rate against the label, because no label rate is given.`]
      : []),
    ...(fertilizer === undefined ? [`${name}: its nutrients, because no analysis is given.`] : []),
  ]),
  ...(job.limits.length === 0 ? ["Limits on nutrients: the job states none."] : []),
  "Weather, soil moisture, and everything else on the labels and in local codes.",
];

const checkedBy = (job: ReadJob): readonly string[] => [
  "that every figure has the unit and the substance it needs",
  ...([...job.products.values()].some((product) => product.labelRate)
    ? ["rates against the label rates that the job states"]
    : []),
  "nitrogen of each application against common advice",
  ...(job.water !== undefined && [...job.products.values()].some((product) => product.wateringIn)
    ? ["rain and irrigation against the label rules that the job states"]
    : []),
  ...(job.limits.length > 0 ? ["nutrients against the limits that the job states"] : []),
  ...(job.treatments.some((t) => t.interval) ? ["dates against the intervals that the job states"] : []),
  ...(job.treatments.some((t) => t.degreeDays)
    ? ["growing degree days against the intervals that the job states"]
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
export const workOrder = (job: Job): WorkOrder => computed(job).order;

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
    return { order: computed(job).order, problems: [] };
  } catch (error) {
    if (error instanceof RatewrightError) return { order: null, problems: error.problems };
    throw error;
  }
};
