import { checks, expectFields, expectNumber, fail, outOfRange, quantity } from "../../quantity/index.js";
import { above, fieldsOf, isMetric, type Length } from "../inputs.js";

/** A spreader, by what decides the width of one pass. */
export type Spreader =
  | {
      readonly kind: "drop";
      /** The inside width of the opening of the hopper, not from wheel to wheel. */
      readonly opening: Length;
    }
  | {
      readonly kind: "rotary";
      /** The distance from pass to pass, after overlap: see `effectiveSwath`. Not the thrown width. */
      readonly effectiveSwath: Length;
    }
  | {
      /** Outlets in a row: a drill, or a boom of tubes. */
      readonly kind: "outlets";
      readonly outlets: number;
      readonly spacing: Length;
    };

/**
 * The width of ground that counts for one pass of a spreader.
 *
 * - `"drop"`: the opening of the hopper. From wheel to wheel is wider: counted so, the rate comes out low
 *   and strips between the passes get none.
 * - `"rotary"`: the effective swath, the distance from pass to pass. The thrown width is wider still.
 * - `"outlets"`: `w = n s`, the number of outlets times their spacing; in ft or m.
 *
 * @throws RatewrightError `type` for an unknown kind; `conflict` where a drop spreader is given a swath or a
 * rotary one an opening; `missing`, `range`, `unit/mismatch`, `not-finite`
 *
 * Source: the drop spreader: University of Arizona (strips of 4 to 5 in are missed); the outlets: Wyoming
 * extension column, "Calibration is key to accurate seeding rates", 2012.
 *
 * @example
 * ```ts
 * import { quantity, spreadWidth } from "ratewright";
 * spreadWidth({ kind: "drop", opening: quantity(36, "in") }).in("ft"); // => 3
 * spreadWidth({ kind: "outlets", outlets: 12, spacing: quantity(15, "cm") }).in("m"); // => 1.8
 * ```
 */
export const spreadWidth = (spreader: Spreader): Length => {
  const record: Readonly<Record<string, unknown>> = expectFields(
    spreader,
    ["kind", "opening", "effectiveSwath", "outlets", "spacing"],
    "spreader",
    "a record with kind",
  );
  const length = (key: "opening" | "effectiveSwath" | "spacing"): Length =>
    fieldsOf(record, { [key]: { dimension: "length" } })[key] as Length;
  const only = (...keys: readonly string[]): void => {
    for (const key of ["opening", "effectiveSwath", "outlets", "spacing"]) {
      if (record[key] !== undefined && !keys.includes(key)) {
        fail("conflict", key, record[key], `${keys.join(" and ")} for the kind ${String(record.kind)}`);
      }
    }
  };
  switch (record.kind) {
    case "drop":
      only("opening");
      return length("opening");
    case "rotary":
      only("effectiveSwath");
      return length("effectiveSwath");
    case "outlets": {
      only("outlets", "spacing");
      const problems = checks();
      const outlets = problems.run(() => outletsOf(record.outlets)) as number;
      const found = problems.run(() => length("spacing"));
      problems.done();
      const spacing = found as Length;
      return isMetric(spacing.unit)
        ? quantity(above((outlets * spacing.in("mm")) / 1000, "spacing"), "m")
        : quantity(above((outlets * spacing.in("in")) / 12, "spacing"), "ft");
    }
    default:
      return fail("type", "kind", record.kind, "drop, rotary or outlets");
  }
};

const outletsOf = (input: unknown): number => {
  if (input === undefined || input === null)
    return fail("missing", "outlets", input, "a whole number, 1 or more");
  const outlets = expectNumber(input, "outlets", { min: 1 });
  return Number.isInteger(outlets) ? outlets : outOfRange("outlets", outlets, { step: 1 });
};
