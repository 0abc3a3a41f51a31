import { expectWithin } from "../../numeric/house.js";
import { exceeds } from "../../numeric/index.js";
import {
  allOf,
  expectFields,
  expectQuantity,
  likeQuantity,
  numberIn,
  outOfRange,
  type Quantity,
} from "../../quantity/index.js";
import { moistureOf } from "./moisture.js";

interface Basis {
  readonly content: Quantity<"mass/mass", string>;
  /** Percent of dry matter. */
  readonly dry: number;
}

const read = (input: unknown): Basis => {
  const record = expectFields(input, ["content", "moisture"], "input");
  const { content, moisture } = allOf({
    content: () => {
      const content = expectQuantity(
        record.content,
        { dimension: "mass/mass", bound: "non-negative" },
        "content",
      );
      return expectWithin(content, numberIn(content, "% w/w"), "content", { max: 100, unit: "% w/w" });
    },
    moisture: () => moistureOf(record.moisture),
  });
  return { content, dry: 100 - moisture };
};

/**
 * A content on the dry basis, from one on the wet basis (as received): `d = w 100 / (100 - m)`.
 *
 * - `w` content of the material as received, `m` moisture in percent of it, from 0 to below 100
 *
 * A report states its basis, and may state nitrogen on one and phosphorus on the other: read it line by line.
 *
 * @throws RatewrightError `range` (also where the content would pass all of the dry matter), `not-finite`, `type`,
 *   `unit/mismatch`
 *
 * Source: definition; "Understand your compost report", North Carolina Department of Agriculture and Consumer Services, on
 * the bases that one laboratory mixes.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { onDryBasis } from "ratewright/soil";
 * onDryBasis({ content: quantity(0.6, "% w/w", "N/product"), moisture: 40 }).in("% w/w"); // => 1
 * ```
 */
export const onDryBasis = <S extends string>(input: {
  readonly content: Quantity<"mass/mass", S>;
  readonly moisture: number;
}): Quantity<"mass/mass", S> => {
  const { content, dry } = read(input);
  const value = (content.value * 100) / dry;
  const found = likeQuantity(input.content, value);
  return exceeds(content.in("% w/w"), dry)
    ? outOfRange("content", content, { max: dry, unit: "%" }, "{}, which is the dry matter")
    : found;
};

/**
 * A content on the wet basis (as received), from one on the dry basis: `w = d (100 - m) / 100`. The inverse of
 * {@link onDryBasis}.
 *
 * @param input.moisture - `m`
 * @throws RatewrightError `range`, `not-finite`, `type`, `unit/mismatch`
 *
 * Source: definition.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { onWetBasis } from "ratewright/soil";
 * onWetBasis({ content: quantity(10000, "mg/kg", "N/product"), moisture: 45 }).in("% w/w"); // => 0.55
 * ```
 */
export const onWetBasis = <S extends string>(input: {
  readonly content: Quantity<"mass/mass", S>;
  readonly moisture: number;
}): Quantity<"mass/mass", S> => {
  const { content, dry } = read(input);
  return likeQuantity(input.content, (content.value * dry) / 100);
};
