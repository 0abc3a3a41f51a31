import type { CivilDate } from "../../calendar/index.js";
import {
  type AreaRates,
  addRates,
  type Content,
  completeRates,
  completionFindings,
  type HistoryRow,
  historyOf,
  touches,
  unweighedOf,
  weighedContents,
  wholeSite,
} from "../../ledger/house.js";
import type { NutrientRates } from "../../ledger/index.js";
import { limitsOn } from "../../limits/house.js";
import type { ApplicationFacts, LimitTest, LimitUse } from "../../limits/index.js";
import { percentOf } from "../../nutrient/index.js";
import { type Finding, type Quantity, quantityOf } from "../../quantity/index.js";
import type { ReadJob } from "../job/read-job.js";
import type { ReadLogEntry } from "../job/read-log.js";
import type { ReadProduct } from "../job/read-products.js";
import { logFindings } from "./log-findings.js";
import { perAreaRates, type SprayOrder, statedRate, suppliedBy } from "./spray-order.js";
import type { SpreadOrder } from "./spread-order.js";

/** What one application adds. */
export interface NutrientEntry {
  readonly date: CivilDate;
  /** The treatment of this visit, or the place in the log. */
  readonly from: string;
  readonly supplies: NutrientRates;
}

/** The nutrients and active ingredients of one part of the site. */
export interface NutrientAccount {
  /** A part of the site, or `"whole site"`. */
  readonly part: string;
  /** This calendar year so far, without this visit. */
  readonly yearSoFar: NutrientRates;
  readonly visit: readonly NutrientEntry[];
  /** The visit added up. */
  readonly visitTotal: NutrientRates;
  readonly yearAfter: NutrientRates;
  /** What went down this year, or goes down now, in an amount that could not be weighed: more than stands above. */
  readonly unweighed: readonly string[];
  /** Limits on amounts and counts; the whole visit counts as one application. */
  readonly limits: readonly LimitUse[];
  /** The other limits, where this visit treats the part. */
  readonly tests: readonly LimitTest[];
}

type Any = Quantity<string, string>;

const productRates = (product: string, rates: AreaRates): readonly Any[] =>
  [rates.byMass, rates.byVolume].flatMap((q) =>
    q === undefined ? [] : [quantityOf(q.value, q.unit, `product:${product}`, "rate")],
  );

/** What a product brings beside nutrients, as far as it can be weighed; nothing where it states nothing. */
const otherContents = (product: ReadProduct, rates: AreaRates, notChecked: string[]): NutrientRates => {
  const { contents = [] } = product;
  if (unweighedOf({ contents }, rates).length > 0) {
    notChecked.push(
      `Active ingredients of ${product.name}: its rate and its contents do not meet without a density.`,
    );
  }
  return weighedContents(contents, rates);
};

const logRow = (entry: ReadLogEntry, job: ReadJob, findings: Finding[], notChecked: string[]): HistoryRow => {
  const { date, path, product, rate, parts = [], nutrients } = entry;
  const base = { date, from: path, parts, products: product === undefined ? [] : [product.id] };
  if (product !== undefined && rate !== undefined) {
    const one = statedRate(rate, product.id, path);
    const rates = perAreaRates(product, one, job.sprayer);
    const known = product.fertilizer !== undefined || product.contents !== undefined;
    const nutrition = suppliedBy(product, one, job.sprayer, notChecked) as NutrientRates | undefined;
    const supplied = addRates([nutrition ?? {}, otherContents(product, rates, notChecked)]);
    return {
      ...base,
      productRates: productRates(product.id, rates),
      rates: known ? supplied : undefined,
      unweighed: unweighedOf(product, rates),
    };
  }
  if (nutrients === undefined) return { ...base, productRates: [], rates: undefined };
  const { rates, completed } = completeRates(
    addRates(nutrients.map((q) => ({ [q.of]: q as Quantity<"mass/area", string> }))),
  );
  findings.push(...completionFindings(completed, `The entry of ${date}`, path, date));
  return { ...base, productRates: [], rates };
};

interface VisitRow {
  readonly order: SpreadOrder | SprayOrder;
  readonly row: HistoryRow;
  readonly products: readonly ReadProduct[];
  readonly facts: ApplicationFacts;
}

const visitRow = (order: SpreadOrder | SprayOrder, job: ReadJob, notChecked: string[]): VisitRow => {
  const items = order.method === "spread" ? [order] : order.products;
  const products = items.map((item) => job.products.get(item.product) as ReadProduct);
  const rates = items.map((item, i) =>
    perAreaRates(products[i] as ReadProduct, item.rate as never, job.sprayer),
  );
  const supplied = items.map((item, i) =>
    addRates([
      (item.supplies ?? {}) as NutrientRates,
      otherContents(products[i] as ReadProduct, rates[i] as AreaRates, notChecked),
    ]),
  );
  const treatment = job.treatments.find(({ id }) => id === order.treatment);
  return {
    order,
    products,
    facts: { ...job.facts, ...treatment?.facts },
    row: {
      date: job.date,
      from: order.treatment,
      parts: order.parts,
      products: products.map(({ id }) => id),
      productRates: products.flatMap(({ id }, i) => productRates(id, rates[i] as AreaRates)),
      rates: addRates(supplied),
      unweighed: products.flatMap((product, i) => unweighedOf(product, rates[i] as AreaRates)),
    },
  };
};

/** What is known of several treatments at once: a fact on which they differ is not known. */
const commonFacts = (list: readonly ApplicationFacts[]): ApplicationFacts => {
  const [first = {}, ...others] = list;
  return Object.fromEntries(
    Object.entries(first).filter(([name, value]) =>
      others.every((facts) => JSON.stringify(facts[name as "grass"]) === JSON.stringify(value)),
    ),
  );
};

/** The visit on one part, as one application. */
const together = (date: CivilDate, part: string, rows: readonly VisitRow[]): HistoryRow => {
  const byProduct = new Map<string, Any>();
  for (const rate of rows.flatMap(({ row }) => row.productRates)) {
    const key = `${rate.of} ${rate.dimension}`;
    const before = byProduct.get(key);
    byProduct.set(key, before === undefined ? rate : (before.plus(rate as never) as Any));
  }
  return {
    date,
    from: "this visit",
    parts: part === wholeSite ? [] : [part],
    products: [...new Set(rows.flatMap(({ row }) => row.products))],
    // What one treatment gives by weight and another by volume only adds up to neither.
    productRates: [...byProduct.values()].filter(
      ({ of, dimension }) =>
        rows.filter(({ row }) => row.products.includes(of.slice(8))).length ===
        rows.filter(({ row }) => row.productRates.some((q) => q.of === of && q.dimension === dimension))
          .length,
    ),
    rates: addRates(rows.map(({ row }) => row.rates ?? {})),
    unweighed: rows.flatMap(({ row }) => row.unweighed ?? []),
  };
};

/** The richest product of a visit, and whether all of its products state an analysis. */
const contentOf =
  (rows: readonly VisitRow[]): Content =>
  (of) => {
    const products = rows.flatMap((row) => row.products);
    const percents = products.flatMap(({ fertilizer }) =>
      fertilizer === undefined ? [] : [percentOf(fertilizer.analysis, of as "N")],
    );
    return percents.length === 0
      ? undefined
      : { percent: Math.max(...percents), all: percents.length === products.length };
  };

/** Adds up the nutrients of each part of the site, and compares with the limits that the job states. */
export const nutrientAccounts = (
  job: ReadJob,
  orders: readonly (SpreadOrder | SprayOrder)[],
  findings: Finding[],
  notChecked: string[],
): readonly NutrientAccount[] => {
  const log = job.log.map((entry) => logRow(entry, job, findings, notChecked));
  findings.push(...logFindings(job));
  const history = historyOf({
    dates: log.map(({ date }) => date),
    parts: (i) => log[i]?.parts ?? [],
    row: (i) => log[i] as HistoryRow,
  });
  const visit = orders.map((order) => visitRow(order, job, notChecked));
  const byPart = [...job.treatments, ...job.log].some((item) => item.parts !== undefined);
  const names = byPart ? [...job.site.parts.keys()] : [wholeSite];
  const nextYear = `${String(Number(job.date.slice(0, 4)) + 1).padStart(4, "0")}-01-01`;
  return names.map((part): NutrientAccount => {
    const year: NutrientRates[] = [];
    const unweighed: string[] = [];
    history.visit(part, `${job.date.slice(0, 4)}-01-01` as CivilDate, (row) => {
      if (row.date >= nextYear) return;
      if (row.rates !== undefined) year.push(row.rates);
      unweighed.push(...(row.unweighed ?? []));
    });
    const now = visit.filter(({ order }) => touches(order.parts, part));
    const row = together(job.date, part, now);
    const treated = now.length > 0;
    const adding = job.limits.filter(({ kind }) => treated || kind === "amount" || kind === "count");
    const checked = limitsOn({
      proposal: {
        row,
        facts: treated ? commonFacts(now.map(({ facts }) => facts)) : job.facts,
        content: contentOf(now),
        completed: [],
      },
      date: job.date,
      parts: [part],
      history,
      limits: adding,
    });
    findings.push(...checked.findings);
    notChecked.push(...checked.notChecked);
    const visitTotal = row.rates ?? {};
    return {
      part,
      yearSoFar: addRates(year),
      visit: now.map(({ row: one }) => ({ date: one.date, from: one.from, supplies: one.rates ?? {} })),
      visitTotal,
      yearAfter: addRates([...year, visitTotal]),
      unweighed: [...new Set([...unweighed, ...(row.unweighed ?? [])])],
      limits: checked.uses,
      tests: checked.tests,
    };
  });
};
