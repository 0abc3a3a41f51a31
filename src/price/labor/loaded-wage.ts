import { notShare } from "../../numeric/house.js";
import { described } from "../../quantity/house.js";
import { allOf, checks, expectFields, expectList, outOfRange } from "../../quantity/index.js";
import {
  type Cash,
  cashPerHour,
  expectCash,
  expectHours,
  expectShare,
  type MoneyPerTime,
  type Share,
  type Time,
} from "../cash.js";

/** What a man-hour costs, step by step. */
export interface LoadedWage<C extends string = string> {
  readonly type: "loaded-wage";
  readonly version: 1;
  readonly wage: MoneyPerTime<C>;
  /** What overtime adds, spread over all hours. */
  readonly overtime: MoneyPerTime<C>;
  /** What slow days, rework and callbacks add. */
  readonly risk: MoneyPerTime<C>;
  /** Wage with overtime and risk. */
  readonly paid: MoneyPerTime<C>;
  /** Payroll taxes, insurance, paid time off. */
  readonly burden: MoneyPerTime<C>;
  /** All of it. */
  readonly cost: MoneyPerTime<C>;
}

/**
 * What a man-hour costs: wage, overtime, risk and labor burden.
 *
 * `paid = wage (1 + overtime + risk)`, `cost = paid (1 + burden)`
 *
 * Overtime is the extra pay spread over all hours: 45 paid hours of which 5 at time and a half add `2.5 / 45 = 5.6 %`
 * ({@link overtimeShare}). The source adds overtime and risk to the wage side by side; it does not multiply them.
 *
 * @param input.overtime - share that overtime adds; 0 % where there is none. No default
 * @param input.risk - share for hours that take longer than planned; 0 % where there is none. No default
 * @param input.burden - what the employer pays on top, as a share of the pay
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`, `type`
 * Source: J. Huston, Lawn & Landscape, February and April 2019, January 2021.
 *
 * @example
 * ```ts
 * import { loadedWage, money, quantity } from "ratewright";
 * const crew = loadedWage({
 *   wage: money(16, "USD").per(quantity(1, "h")),
 *   overtime: quantity(10, "%"), risk: quantity(10, "%"), burden: quantity(20, "%"),
 * });
 * Number(crew.paid.value.toFixed(2)); // => 19.2
 * Number(crew.cost.value.toFixed(2)); // => 23.04
 * ```
 */
export const loadedWage = <C extends string>(input: {
  readonly wage: MoneyPerTime<C>;
  readonly overtime: Share;
  readonly risk: Share;
  readonly burden: Share;
}): LoadedWage<C> => {
  const fields = expectFields(input, ["wage", "overtime", "risk", "burden"]);
  const { wage, overtime, risk, burden } = allOf({
    wage: () => expectCash(fields.wage, "wage", { what: "the wage", per: "h" }),
    overtime: () => expectShare(fields.overtime, "overtime", "what overtime adds", 100),
    risk: () => expectShare(fields.risk, "risk", "what risk adds", 100),
    burden: () => notShare(expectShare(fields.burden, "burden", "the labor burden", 200), "burden"),
  });
  const per = (value: number): MoneyPerTime<C> => cashPerHour(value, wage.currency as C);
  const paid = (wage.value * (100 + overtime + risk)) / 100;
  return {
    type: "loaded-wage",
    version: 1,
    wage: per(wage.value),
    overtime: per((wage.value * overtime) / 100),
    risk: per((wage.value * risk) / 100),
    paid: per(paid),
    burden: per((paid * burden) / 100),
    cost: per((paid * (100 + burden)) / 100),
  };
};

/**
 * The average wage of a crew by its hours: `sum of (wage x hours) / sum of hours`.
 *
 * @param crew - wage and hours of each person
 * @throws RatewrightError `missing`, `range`, `unit/mismatch` for another currency than the first, with paths such as
 * `crew[1].wage`
 * Source: as for {@link loadedWage}.
 *
 * @example
 * ```ts
 * import { crewWage, money, quantity } from "ratewright";
 * const hour = quantity(1, "h");
 * crewWage([
 *   { wage: money(18, "USD").per(hour), hours: quantity(10, "h") },
 *   { wage: money(14, "USD").per(hour), hours: quantity(10, "h") },
 * ]).value; // => 16
 * ```
 */
export const crewWage = <C extends string>(
  crew: readonly { readonly wage: MoneyPerTime<C>; readonly hours: Time }[],
): MoneyPerTime<C> => {
  const list = expectList(crew, "crew", "person");
  if (list.length > 1000) outOfRange("crew", described(`${list.length} people`), { max: 1000 });
  const problems = checks();
  let first: string | undefined;
  const people = list.flatMap((one, i) => {
    const read = problems.run(() => {
      const fields = expectFields(one, ["wage", "hours"], `crew[${i}]`);
      return allOf({
        wage: (): Cash =>
          expectCash(fields.wage, `crew[${i}].wage`, { what: "the wage", per: "h", like: first }),
        hours: () => expectHours(fields.hours, `crew[${i}].hours`, "the hours of the person", "positive"),
      });
    });
    first ??= read?.wage.currency;
    return read === undefined ? [] : [read];
  });
  problems.done();
  const hours = people.reduce((sum, one) => sum + one.hours, 0);
  const pay = people.reduce((sum, one) => sum + one.wage.value * one.hours, 0);
  return cashPerHour(pay / hours, (first ?? "") as C);
};
