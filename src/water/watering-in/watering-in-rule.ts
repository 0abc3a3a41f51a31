import { exceeds } from "../../numeric/index.js";
import { expectText, fail } from "../../quantity/index.js";
import { depth, type Length, optional, type Read, readRecord, type Time, time, word } from "../read.js";

/** What a label or another source states of water after an application. Each part may be left out, but not all. */
export interface WateringInRule {
  readonly type: "watering-in-rule";
  readonly version: 1;
  /** At least so much water, rain and irrigation together. */
  readonly least?: Length;
  /** No more than so much. */
  readonly most?: Length;
  /** How soon after the end of the application `least` has to be there, and for how long `most` counts. */
  readonly within?: Time;
  /** How long after the end no water may come: until the spray has dried on the leaf. */
  readonly notBefore?: Time;
  /** Who states it: the label, by product and section. */
  readonly source: string;
}

/** Takes what a reader of a label typed, or what a store gave back. */
export const readRule: Read<WateringInRule> = (input, path) => {
  const q = readRecord(
    input,
    {
      type: optional(word(["watering-in-rule"])),
      version: (value: unknown, at: string): 1 | undefined =>
        value === undefined || value === 1 ? value : fail("type", at, value, "version 1"),
      least: optional(depth),
      most: optional(depth),
      within: optional(time),
      notBefore: optional(time),
      source: (value: unknown, at: string) => expectText(value, at, "who states it, such as the label"),
    },
    "a rule with least, most, within, notBefore and source",
    path,
  );
  const at = (name: string): string => (path === "" ? name : `${path}.${name}`);
  if (q.least === undefined && q.most === undefined && q.notBefore === undefined)
    fail("missing", at("least"), q.least, "what the source states: least, most or notBefore");
  if (q.least !== undefined && q.most !== undefined && exceeds(q.least.in("mm"), q.most.in("mm")))
    fail("conflict", at("most"), q.most, `not less than least, ${q.least.toString()}`);
  if (q.within !== undefined && q.notBefore !== undefined && !exceeds(q.within.in("h"), q.notBefore.in("h")))
    fail("conflict", at("within"), q.within, `longer than notBefore, ${q.notBefore.toString()}`);
  if (q.within !== undefined && q.least === undefined && q.most === undefined)
    fail("conflict", at("within"), q.within, "with least or most");
  return {
    type: "watering-in-rule",
    version: 1,
    ...(q.least === undefined ? {} : { least: q.least }),
    ...(q.most === undefined ? {} : { most: q.most }),
    ...(q.within === undefined ? {} : { within: q.within }),
    ...(q.notBefore === undefined ? {} : { notBefore: q.notBefore }),
    source: q.source,
  };
};

/**
 * Reads what a label states of water after an application: how much has to come and how soon, how much is too much, and how
 * long the leaf has to stay dry. There is no table of such rules here: labels differ, and the label decides.
 *
 * - `least`, `most` depths; `within` the time from the end of the application; `notBefore` the time in which no water may come
 * - `source` who states it
 *
 * @throws RatewrightError `missing` where nothing is stated; `conflict` for `most` below `least`, `within` not longer than
 * `notBefore`, `within` on its own; `range`, `unit/mismatch`, `type`
 *
 * @example
 * ```ts
 * import { quantity, wateringInRule } from "ratewright";
 * const rule = wateringInRule({
 *   least: quantity(0.25, "in"), most: quantity(0.5, "in"), within: quantity(24, "h"), source: "label, soil insects",
 * });
 * rule.least?.in("in"); // => 0.25
 * ```
 */
export const wateringInRule = (input: Omit<WateringInRule, "type" | "version">): WateringInRule =>
  readRule(input, "");
