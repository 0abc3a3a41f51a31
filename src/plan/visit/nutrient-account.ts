import type { CivilDate } from "../../calendar/index.js";
import {
  type AreaRates,
  addRates,
  type Content,
  completeRates,
  completionFindings,
  type History,
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
import { type NutrientsSupplied, percentOf } from "../../nutrient/index.js";
import { type Quantity, quantityOf } from "../../quantity/index.js";
import type { ReadJob } from "../job/read-job.js";
import type { ReadLogEntry } from "../job/read-log.js";
import type { ReadProduct } from "../job/read-products.js";
import { perAreaRates, statedRate, suppliedBy } from "./area-rates.js";
import { logFindings, twiceLogged } from "./log-findings.js";
import type { SprayOrder } from "./spray-order.js";
import type { SpreadOrder } from "./spread-order.js";
import { allWithFindings, type WithFindings } from "./with-findings.js";

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
  /** Limits on amounts, for which the whole visit is one application, and on counts, which count its treatments. */
  readonly limits: readonly LimitUse[];
  /** The other limits, where this visit treats the part. */
  readonly tests: readonly LimitTest[];
}

type Any = Quantity<string, string>;

const productRates = (product: string, { byMass, byVolume }: AreaRates): readonly Any[] => {
  const rates: Any[] = [];
  for (const q of [byMass, byVolume])
    if (q !== undefined) rates.push(quantityOf(q.value, q.unit, `product:${product}`, "rate"));
  return rates;
};

/** Nutrients per area by name; the record of a fertilizer has more of a type, and the same content. */
const ratesOf = (supplies: NutrientsSupplied<"mass/area"> | undefined): NutrientRates =>
  (supplies ?? {}) as NutrientRates;

/** What a product brings beside nutrients, as far as it can be weighed; nothing where it states nothing. */
const otherContents = (product: ReadProduct, rates: AreaRates): WithFindings<NutrientRates> => {
  const { contents = [] } = product;
  return {
    value: weighedContents(contents, rates),
    findings: [],
    notChecked:
      unweighedOf({ contents }, rates).length === 0
        ? []
        : [`Active ingredients of ${product.name}: its rate and its contents need a density to compare.`],
  };
};

const logRow = (entry: ReadLogEntry, job: ReadJob): WithFindings<HistoryRow> => {
  const { date, path, product, rate, parts = [], nutrients, treatment } = entry;
  if (entry.row !== undefined) return { value: entry.row(), findings: [], notChecked: [] };
  const from = path;
  const products = product === undefined ? [] : [product.id];
  if (product !== undefined && rate !== undefined) {
    const one = statedRate(rate, product.id, path);
    const rates = perAreaRates(product, one, job.sprayer);
    const known = product.fertilizer !== undefined || product.contents !== undefined;
    const nutrition = suppliedBy(product, one, job.sprayer);
    const others = otherContents(product, rates);
    return {
      value: {
        date,
        from,
        parts,
        products,
        productRates: productRates(product.id, rates),
        rates: known ? addRates([ratesOf(nutrition.value), others.value]) : undefined,
        unweighed: unweighedOf(product, rates),
        treatment,
      },
      findings: [],
      notChecked: [...nutrition.notChecked, ...others.notChecked],
    };
  }
  if (nutrients === undefined)
    return {
      value: { date, from, parts, products, productRates: [], rates: undefined, treatment },
      findings: [],
      notChecked: [],
    };
  const { rates, completed } = completeRates(
    addRates(nutrients.map((q) => ({ [q.of]: q as Quantity<"mass/area", string> }))),
  );
  return {
    value: { date, from, parts, products, productRates: [], rates, treatment },
    findings: completionFindings(completed, `The entry of ${date}`, path, date),
    notChecked: [],
  };
};

/** What one order of the visit puts down, as the limits weigh it. */
export interface VisitRow {
  readonly order: SpreadOrder | SprayOrder;
  readonly row: HistoryRow;
  readonly products: readonly ReadProduct[];
  readonly facts: ApplicationFacts;
}

/** An order of the visit as the limits weigh it. */
export const visitRow = (order: SpreadOrder | SprayOrder, job: ReadJob): WithFindings<VisitRow> => {
  const items = (order.method === "spread" ? [order] : order.products).flatMap(
    ({ product: id, rate, supplies }) => {
      const product = job.products.get(id);
      if (product === undefined) return [];
      const rates = perAreaRates(product, rate, job.sprayer);
      return [{ product, rates, supplies: ratesOf(supplies), others: otherContents(product, rates) }];
    },
  );
  const products = items.map(({ product }) => product);
  const treatment = job.treatments.find(({ id }) => id === order.treatment);
  return {
    value: {
      order,
      products,
      facts: { ...job.facts, ...treatment?.facts },
      row: {
        date: job.date,
        from: order.treatment,
        parts: order.parts,
        products: products.map(({ id }) => id),
        productRates: items.flatMap(({ product, rates }) => productRates(product.id, rates)),
        rates: addRates(items.map(({ supplies, others }) => addRates([supplies, others.value]))),
        unweighed: items.flatMap(({ product, rates }) => unweighedOf(product, rates)),
      },
    },
    findings: [],
    notChecked: items.flatMap(({ others }) => others.notChecked),
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
  const products = new Set<string>();
  for (const { row } of rows) {
    for (const product of row.products) products.add(product);
    for (const rate of row.productRates) {
      const key = `${rate.of} ${rate.dimension}`;
      const before = byProduct.get(key);
      byProduct.set(key, before === undefined ? rate : before.plus(rate));
    }
  }
  return {
    date,
    from: "this visit",
    parts: part === wholeSite ? [] : [part],
    products: [...products],
    // A product is measured in one way, or in both by its density: what is known of one treatment is known of all.
    productRates: [...byProduct.values()],
    rates: addRates(rows.map(({ row }) => row.rates ?? {})),
    unweighed: rows.flatMap(({ row }) => row.unweighed ?? []),
    // A count counts its treatments, as it does when they are in the log.
    together: rows.map(({ row }) => row),
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
): WithFindings<readonly NutrientAccount[]> => {
  const logged = allWithFindings(job.log.map((entry) => logRow(entry, job)));
  const log = logged.value;
  const history = historyOf({
    dates: log.map(({ date }) => date),
    parts: (i) => log[i]?.parts ?? [],
    row: (i) => log[i] as HistoryRow,
  });
  const visiting = allWithFindings(orders.map((order) => visitRow(order, job)));
  const visit = visiting.value;
  // A ledger may name parts that the site does not have.
  const byPart = [...job.treatments, ...job.log].some(({ parts = [] }) =>
    parts.some((part) => job.site.parts.has(part)),
  );
  const names = byPart ? [...job.site.parts.keys()] : [wholeSite];
  const accounts = allWithFindings(names.map((part) => accountOf(part, { job, visit, history })));
  const before = [logged, visiting];
  return {
    value: accounts.value,
    findings: [...logged.findings, ...logFindings(job), ...twiceLogged(job), ...accounts.findings],
    notChecked: [
      ...elsewhere(job),
      ...before.flatMap(({ notChecked }) => notChecked),
      ...accounts.notChecked,
    ],
  };
};

/** Parts that the ledger names and the site does not have: what went down there counts for none of them. */
const elsewhere = ({ log, site }: ReadJob): readonly string[] => {
  const strange = new Set(log.flatMap(({ parts = [] }) => parts.filter((part) => !site.parts.has(part))));
  return strange.size === 0
    ? []
    : [`Ledger entries on ${[...strange].sort().join(", ")}: the site of the job has no part of that name.`];
};

/** The account of one part. */
const accountOf = (
  part: string,
  known: {
    readonly job: ReadJob;
    readonly visit: readonly VisitRow[];
    readonly history: History;
  },
): WithFindings<NutrientAccount> => {
  const { job, visit, history } = known;
  const year: NutrientRates[] = [];
  const unweighed: string[] = [];
  history.visit(part, `${job.date.slice(0, 4)}-01-01` as CivilDate, (row) => {
    // A log ends with the day of the visit; a ledger may go on.
    if (row.date > job.date) return;
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
  const visitTotal = row.rates ?? {};
  const value = {
    part,
    yearSoFar: addRates(year),
    visit: now.map(({ row: one }) => ({ date: one.date, from: one.from, supplies: one.rates ?? {} })),
    visitTotal,
    yearAfter: addRates([...year, visitTotal]),
    unweighed: [...new Set([...unweighed, ...(row.unweighed ?? [])])],
    limits: checked.uses,
    tests: checked.tests,
  };
  return { value, findings: checked.findings, notChecked: checked.notChecked };
};
