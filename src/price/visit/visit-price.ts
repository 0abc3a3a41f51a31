import { described } from "../../quantity/house.js";
import {
  allOf,
  checks,
  expectFields,
  expectNumber,
  expectQuantity,
  expectText,
  type Finding,
  fail,
  Quantity,
  quantity,
} from "../../quantity/index.js";
import {
  boundedList,
  type Cash,
  cash,
  cashPerHour,
  expectCash,
  expectCosts,
  expectHours,
  expectShare,
  type Money,
  type MoneyPerTime,
  type Share,
  type Time,
} from "../cash.js";
import { expectMargin } from "./margin.js";

/** A machine on the visit, by its hours. */
export interface VisitMachine<C extends string = string> {
  readonly name: string;
  readonly hours: Time;
  readonly rate: MoneyPerTime<C>;
}

/** Something that is bought or used up for the visit. */
export interface VisitCost<C extends string = string> {
  readonly name: string;
  readonly cost: Money<C>;
}

/** How the price is made from the cost: one of the two, by its own name. */
export type PriceAim =
  | { readonly margin: Share; readonly markup?: never }
  | { readonly markup: Share; readonly margin?: never };

/** The price of a visit, step by step. */
export interface VisitPrice<C extends string = string> {
  readonly type: "visit-price";
  readonly version: 1;
  readonly labor: Money<C>;
  readonly machines: Money<C>;
  readonly products: Money<C>;
  readonly other: Money<C>;
  /** Labor, machines, products and other. */
  readonly direct: Money<C>;
  /** By the man-hour. */
  readonly overhead: Money<C>;
  /** Direct cost and overhead: below it the visit loses money. */
  readonly breakEven: Money<C>;
  readonly profit: Money<C>;
  readonly price: Money<C>;
  /** Profit as a share of the price. */
  readonly margin: Share;
  /** Profit as a share of the break-even point. */
  readonly markup: Share;
  readonly perManHour: MoneyPerTime<C>;
  /** `null` where no area is given. */
  readonly perArea: Quantity<`money:${C}/area`, "none"> | null;
  /** All visits of the season; `null` where their number is not given. */
  readonly season: Money<C> | null;
  readonly findings: readonly Finding[];
}

const costsOf = (input: unknown, path: string, like: string): number =>
  input === undefined ? 0 : expectCosts(input, path, { of: "cost", most: 200, like }).sum;

const machinesOf = (input: unknown, currency: string): number => {
  if (input === undefined) return 0;
  const problems = checks();
  const lines = boundedList(input, "machines", "machine", 200).flatMap(
    (one, i) =>
      problems.run((): number => {
        const at = `machines[${i}]`;
        const fields = expectFields(one, ["name", "hours", "rate"], at);
        const { hours, rate } = allOf({
          name: () => expectText(fields.name, `${at}.name`, "the name of the machine"),
          hours: () => expectHours(fields.hours, `${at}.hours`, "its hours on the visit", "non-negative"),
          rate: () => expectCash(fields.rate, `${at}.rate`, { what: "its rate", per: "h", like: currency }),
        });
        return hours * rate.value;
      }) ?? [],
  );
  problems.done();
  return lines.reduce((sum, cost) => sum + cost, 0);
};

/** The price for a cost, by whichever of the two the caller named. */
const pricer = (input: unknown): ((cost: number) => number) => {
  if (input === undefined) {
    return fail(
      "missing",
      "aim",
      input,
      "{ margin } as a share of the price, or { markup } as a share of the cost",
    );
  }
  const { margin, markup } = expectFields(input, ["margin", "markup"], "aim");
  if ((margin === undefined) === (markup === undefined)) {
    return fail(
      margin === undefined ? "missing" : "conflict",
      "aim",
      described(margin === undefined ? "neither" : "both"),
      "one of margin (share of the price) and markup (share of the cost): 10 % of one is not 10 % of the other",
    );
  }
  if (margin !== undefined) {
    const percent = expectMargin(margin, "aim.margin");
    return (cost) => (cost * 100) / (100 - percent);
  }
  const percent = expectShare(markup, "aim.markup", "the markup");
  return (cost) => (cost * (100 + percent)) / 100;
};

const findingsOf = (visit: { products: number; machines: number; overhead: number }): Finding[] => {
  const empty = (["products", "machines", "overhead"] as const).filter((part) => visit[part] === 0);
  return empty.length === 0
    ? []
    : [
        {
          code: "price/nothing-for",
          severity: "note",
          params: { parts: empty },
          text: `Nothing is counted for: ${empty.join(", ")}. Travel, loading and cleaning take labor hours too.`,
        },
      ];
};

const visitFields = [
  "manHours",
  "wage",
  "machines",
  "products",
  "other",
  "overhead",
  "aim",
  "area",
  "visits",
] as const;

/** The wage first, for its currency is that of everything else. */
const readVisit = (input: unknown) => {
  const fields = expectFields(input, visitFields);
  const { wage } = allOf({
    wage: (): Cash => expectCash(fields.wage, "wage", { what: "the loaded wage", per: "h" }),
  });
  const { currency } = wage;
  const figures = allOf({
    hours: () => expectHours(fields.manHours, "manHours", "the man-hours of the visit", "positive"),
    machines: () => machinesOf(fields.machines, currency),
    products: () => costsOf(fields.products, "products", currency),
    other: () => costsOf(fields.other, "other", currency),
    perHour: () =>
      expectCash(fields.overhead, "overhead", { what: "overhead per man-hour", per: "h", like: currency }),
    priceOf: () => pricer(fields.aim),
    area: () =>
      fields.area === undefined
        ? undefined
        : expectQuantity(fields.area, { dimension: "area", bound: "positive" }, "area"),
    visits: () =>
      fields.visits === undefined
        ? undefined
        : expectNumber(fields.visits, "visits", { above: 0, max: 1000 }),
  });
  return { wage, ...figures };
};

/**
 * The price of a visit: labor, machine time, product, overhead by the man-hour, the break-even point, and the price by a margin
 * or a markup.
 *
 * `direct = man-hours x loaded wage + sum of (machine hours x rate) + products + other`,
 * `break-even = direct + man-hours x overhead`, `price = break-even / (1 - margin)` or `break-even (1 + markup)`
 *
 * Overhead (office, shop, insurance, marketing) is spread by the man-hour: as a percent of the cost it would weigh on product
 * as on labor. All amounts are of one currency; there are no exchange rates and no sales tax here.
 *
 * @param input.manHours - paid hours of all people on the visit: drive, load and clean-up counted
 * @param input.wage - what a man-hour costs, burden counted: `cost` of {@link loadedWage}
 * @param input.overhead - money per man-hour; 0 where there is none. No default
 * @param input.aim - `{ margin }` of the price or `{ markup }` on the cost: one of the two, never both
 * @param input.area - for a price per area
 * @param input.visits - for the price of a season
 * @param input.machines - each with its hours on the visit and what an hour of it costs
 * @throws RatewrightError `conflict` for margin and markup together; `missing`, `range`, `unit/mismatch` for another currency
 * than the wage, with paths such as `products[0].cost`
 * Source: J. Huston, Lawn & Landscape, February 2019 and January 2021 (form of the bid, overhead by the
 * man-hour, margin by division).
 *
 * @example
 * ```ts
 * import { money, quantity, visitPrice } from "ratewright";
 * const hour = quantity(1, "h");
 * const visit = visitPrice({
 *   manHours: quantity(2, "h"), wage: money(23.04, "USD").per(hour),
 *   machines: [{ name: "spray rig", hours: quantity(1.5, "h"), rate: money(28, "USD").per(hour) }],
 *   products: [{ name: "24-0-11", cost: money(61.92, "USD") }],
 *   overhead: money(12, "USD").per(hour),
 *   aim: { margin: quantity(20, "%") },
 *   area: quantity(14.4, "1000 ft2"), visits: 5,
 * });
 * Number(visit.breakEven.value.toFixed(2)); // => 174
 * Number(visit.price.value.toFixed(2)); // => 217.5
 * Number(visit.markup.in("%").toFixed(2)); // => 25
 * Number(visit.season?.value.toFixed(2)); // => 1087.5
 * ```
 */
export const visitPrice = <C extends string>(input: {
  readonly manHours: Time;
  readonly wage: MoneyPerTime<C>;
  readonly machines?: readonly VisitMachine<C>[];
  readonly products?: readonly VisitCost<C>[];
  readonly other?: readonly VisitCost<C>[];
  readonly overhead: MoneyPerTime<C>;
  readonly aim: PriceAim;
  readonly area?: Quantity<"area", "none">;
  readonly visits?: number;
}): VisitPrice<C> => {
  const read = readVisit(input);
  const { wage, area } = read;
  const labor = read.hours * wage.value;
  const direct = labor + read.machines + read.products + read.other;
  const overhead = read.hours * read.perHour.value;
  const cost = direct + overhead;
  const price = read.priceOf(cost);
  const own = wage.currency as C;
  return {
    type: "visit-price",
    version: 1,
    labor: cash(labor, own),
    machines: cash(read.machines, own),
    products: cash(read.products, own),
    other: cash(read.other, own),
    direct: cash(direct, own),
    overhead: cash(overhead, own),
    breakEven: cash(cost, own),
    profit: cash(price - cost, own),
    price: cash(price, own),
    margin: quantity(price === 0 ? 0 : (100 * (price - cost)) / price, "%"),
    markup: quantity(cost === 0 ? 0 : (100 * (price - cost)) / cost, "%"),
    perManHour: cashPerHour(price / read.hours, own),
    perArea:
      area === undefined
        ? null
        : new Quantity(price / area.value, `money:${own}/${area.unit}`, "none", `money:${own}/area` as const),
    season: read.visits === undefined ? null : cash(price * read.visits, own),
    findings: findingsOf({ products: read.products, machines: read.machines, overhead }),
  };
};
