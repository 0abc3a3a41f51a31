import type { LedgerEntry, Stated } from "../../ledger/index.js";
import type { Analysis } from "../../nutrient/index.js";
import { inUnit, type Quantity, timesOf } from "../../quantity/index.js";
import type { Job, JobApplicator } from "../job/job.js";
import type { ReadJob } from "../job/read-job.js";
import type { ReadProduct } from "../job/read-products.js";
import { computed, type WorkOrder } from "./work-order.js";

/** A quantity as an entry of a ledger states it. */
export const plain = ({ value, unit, of }: Stated): Stated => ({
  value,
  unit,
  ...(of !== undefined && of !== "none" && { of }),
});

/** An analysis as a bag prints it, `24-0-11`, where that is all of it; in a spreadsheet the record reads like code. */
const gradeOf = (analysis: Analysis): string | Analysis => {
  const { basis, percent } = analysis;
  const { N, P2O5, K2O } = percent as { readonly N?: number; readonly P2O5?: number; readonly K2O?: number };
  const grade = [N, P2O5, K2O].join("-");
  const whole = Object.keys(percent).length === 3 && /^\d+(?:\.\d+)?(?:-\d+(?:\.\d+)?){2}$/.test(grade);
  return basis === "oxide" && whole ? grade : analysis;
};

/** What an entry of a ledger says of a product: what it is, and what of its label counts. */
export const productLines = (product: ReadProduct): Partial<LedgerEntry> => {
  const { fertilizer: label, density, contents } = product;
  return {
    product: product.id,
    productName: product.name,
    form: product.form,
    ...(label && { analysis: gradeOf(label.analysis) }),
    ...(label?.slowNitrogen && { slowNitrogen: plain(label.slowNitrogen) }),
    ...(density && { density: plain(density) }),
    ...(contents && contents.length > 0 && { contents: contents.map(plain) }),
    ...(product.registrationNumber && { registrationNumber: product.registrationNumber }),
    ...(product.lot && { lot: product.lot }),
  };
};

/** Who did it. */
export const applicatorLines = ({ name, certificate }: JobApplicator): Partial<LedgerEntry> => ({
  ...(name !== undefined && { applicator: name }),
  ...(certificate !== undefined && { certificate }),
});

/**
 * The entries of a visit for the ledger of the site, one for each product of each treatment, as the work order of the job
 * plans it: `amount = rate x area`, what goes down and not what is left in the tank.
 *
 * Put them in with `ledgerWith` once the work is done. What was really used, when it began and ended, and the weather are
 * known by then: write them over the planned figures first, `{ ...entry, amount, start, end, weather }`, or correct an
 * entry that stands (`corrects`). `missingForRecord` says what a record-keeping scheme still asks for. The id of an entry is
 * the date, the treatment and the product, so that a ledger refuses the same visit twice.
 *
 * @param job - the job of {@link workOrder}
 * @throws RatewrightError what `workOrder` throws
 * Source: the fields are those of a ledger entry; the arithmetic is a rate times an area.
 *
 * @example
 * ```ts
 * import { ledger, ledgerTotals, visitEntries } from "ratewright";
 * const entries = visitEntries({
 *   type: "job",
 *   version: 1,
 *   title: "First feed",
 *   date: "2026-05-04",
 *   site: {
 *     name: "Park",
 *     parts: [{ name: "north pitch", shape: "measured", area: { value: 12400, unit: "ft2" } }],
 *   },
 *   products: [{ id: "feed-a", form: "dry", analysis: "24-0-11" }],
 *   treatments: [
 *     {
 *       id: "feed",
 *       method: "spread",
 *       product: "feed-a",
 *       target: { value: 0.9, unit: "lb/1000 ft2", of: "N" },
 *       parts: ["north pitch"],
 *     },
 *   ],
 * });
 * entries[0]?.id; // => "2026-05-04 feed feed-a"
 * entries[0]?.amount; // => { value: 46.5, unit: "lb", of: "product" }
 * const year = { from: "2026-01-01", to: "2026-12-31", part: "north pitch" } as const;
 * ledgerTotals({ ledger: ledger(entries), ...year }).supplies.N?.in("lb/1000 ft2"); // => 0.9
 * ```
 */
export const visitEntries = (job: Job): readonly LedgerEntry[] => {
  const { order, job: read } = computed(job);
  return [...order.spreads.map(spread(read)), ...order.sprays.flatMap(sprayed(read))];
};

const spread =
  (job: ReadJob) =>
  (one: WorkOrder["spreads"][number]): LedgerEntry =>
    entry(job, one, { id: one.product, amount: one.amount });

const sprayed =
  (job: ReadJob) =>
  (one: WorkOrder["sprays"][number]): readonly LedgerEntry[] => {
    const output = job.sprayer?.applicationVolume;
    const carrier = output === undefined ? undefined : inUnit(timesOf(output, one.area), one.volume.unit);
    return one.products.map(({ product, rate, amount }) => {
      const perArea = rate.dimension.endsWith("/area") || output === undefined ? rate : timesOf(rate, output);
      return {
        ...entry(job, one, { id: product, amount: inUnit(timesOf(perArea, one.area), amount.unit) }),
        ...(carrier && { carrierVolume: plain(carrier) }),
      };
    });
  };

/** An entry of what goes down of a product in a treatment. */
const entry = (
  job: ReadJob,
  treatment: {
    readonly treatment: string;
    readonly method: string;
    readonly parts: readonly string[];
    readonly area: Quantity<"area", "none">;
  },
  down: { readonly id: string; readonly amount: Stated },
): LedgerEntry => ({
  id: `${job.date} ${treatment.treatment} ${down.id}`,
  date: job.date,
  ...(treatment.parts.length > 0 && { parts: treatment.parts }),
  area: plain(treatment.area),
  ...productLines(job.products.get(down.id) as ReadProduct),
  amount: { value: down.amount.value, unit: down.amount.unit, of: "product" },
  treatment: treatment.treatment,
  method: treatment.method,
  site: job.site.name,
  ...applicatorLines(job.applicator),
});
