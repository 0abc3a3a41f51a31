import { described } from "../quantity/house.js";
import {
  allOf,
  checks,
  expectFields,
  expectList,
  expectQuantity,
  expectText,
  fail,
  outOfRange,
  Quantity,
  quantityOf,
} from "../quantity/index.js";

export type { Share, Time } from "../quantity/index.js";

/** An amount of money in one currency. */
export type Money<C extends string> = Quantity<`money:${C}`, "none">;
/** Money per time: a wage, a machine rate. */
export type MoneyPerTime<C extends string> = Quantity<`money:${C}/time`, "none">;
/** A span of time. */
/** A share. */

/** Money as it was read: the number in the unit asked for, and the currency. */
export interface Cash {
  readonly value: number;
  readonly currency: string;
}

/** A sum of money. */
export const cash = <C extends string>(value: number, currency: C): Money<C> => {
  const unit = `money:${currency}` as const;
  return new Quantity(value + 0, unit, "none", unit);
};

/** Money per hour. */
export const cashPerHour = <C extends string>(value: number, currency: C): MoneyPerTime<C> =>
  new Quantity(value + 0, `money:${currency}/h`, "none", `money:${currency}/time` as const);

/**
 * Takes money, or money per something, as a number; `per` is the unit below the line, as `"h"`. Throws where it is none,
 * below zero, or another currency than `like`.
 */
export const expectCash = (
  input: unknown,
  path: string,
  asked: { readonly per?: string; readonly what: string; readonly like?: string | undefined },
): Cash => {
  const { per, what, like } = asked;
  const example = `${what}, such as money(20, "USD")${per === undefined ? "" : ` per 1 ${per}`}`;
  if (input === undefined || input === null) return fail("missing", path, input, example);
  const { value, unit, of } = Object(input) as { value?: unknown; unit?: unknown; of?: unknown };
  if (typeof unit !== "string" || typeof value !== "number") return fail("type", path, input, example);
  const q = quantityOf(value, unit, typeof of === "string" ? of : "none", path);
  const currency = /^money:([A-Z]{3})(?=\/|$)/.exec(q.unit)?.[1];
  if (currency === undefined) return fail("unit/mismatch", path, q, example);
  if (like !== undefined && currency !== like) {
    return fail(
      "unit/mismatch",
      path,
      q,
      `${what} in ${like}, as the first amount is: there are no exchange rates here`,
    );
  }
  const wanted = per === undefined ? `money:${currency}` : `money:${currency}/${per}`;
  const { dimension } = quantityOf(0, wanted, "none", path);
  const read = expectQuantity(q, { dimension, of: "none", bound: "non-negative" }, path);
  return { value: read.in(wanted as never), currency };
};

/** Takes a share of 0 up to, not including, `below` percent (any height where it is left out), as a number of percent. */
export const expectShare = (input: unknown, path: string, what: string, below?: number): number => {
  if (input === undefined) return fail("missing", path, input, `${what}, 0 % where there is none`);
  if (typeof input === "number" || typeof input === "string") {
    return fail("type", path, input, `${what} with its unit, such as quantity(10, "%")`);
  }
  const share = expectQuantity(input, { dimension: "1", of: "none", bound: "non-negative" }, path);
  const percent = share.in("%");
  return below === undefined || percent < below ? percent : outOfRange(path, share, { below, unit: "%" });
};

/** Takes hours. */
export const expectHours = (
  input: unknown,
  path: string,
  what: string,
  bound: "positive" | "non-negative",
): number => {
  if (input === undefined) return fail("missing", path, input, what);
  return expectQuantity(input, { dimension: "time", of: "none", bound }, path).in("h");
};

/** A list of things for the visit or the machine that is not empty, and of a bounded length. */
export const boundedList = (input: unknown, path: string, of: string, most: number): readonly unknown[] => {
  const list = expectList(input, path, of);
  return list.length <= most ? list : outOfRange(path, described(`${list.length} lines`), { max: most });
};

/** Takes costs with a name each, all of one currency: that of `like`, or of the first of them. */
export const expectCosts = (
  input: unknown,
  path: string,
  asked: { readonly of: string; readonly most: number; readonly like?: string },
): { readonly sum: number; readonly currency: string } => {
  const problems = checks();
  let currency = asked.like;
  let sum = 0;
  boundedList(input, path, asked.of, asked.most).forEach((one, i) => {
    const at = `${path}[${i}]`;
    const read = problems.run(() => {
      const fields = expectFields(one, ["name", "cost"], at, "a name and a cost");
      return allOf({
        name: () => expectText(fields.name, `${at}.name`, "what the cost is for"),
        cost: () => expectCash(fields.cost, `${at}.cost`, { what: "the cost", like: currency }),
      }).cost;
    });
    currency ??= read?.currency;
    sum += read?.value ?? 0;
  });
  problems.done();
  return { sum, currency: currency ?? "" };
};
