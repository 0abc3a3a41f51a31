import { roundedApart } from "../../numeric/house.js";
import { exceeds } from "../../numeric/index.js";
import {
  allOf,
  type Citation,
  expectAmount,
  expectFields,
  expectNumber,
  expectOneOf,
  expectQuantity,
  type Finding,
  fail,
  frozen,
  likeQuantity,
  numberIn,
  Quantity,
} from "../../quantity/index.js";

/** An element that is sprayed on the leaf in small amounts. */
export type FoliarElement = "Fe" | "Mn" | "Zn" | "Cu" | "B";

/** A foliar spray of a micronutrient: product beside element. */
export interface FoliarMicronutrient {
  readonly type: "foliar-micronutrient";
  readonly version: 1;
  readonly product: Quantity<"mass/area", "product">;
  readonly element: Quantity<"mass/area", FoliarElement>;
  readonly findings: readonly Finding[];
}

const arizona: Citation = /* @__PURE__ */ frozen({
  title: "Turf tips, March 1998: correcting iron chlorosis",
  publisher: "University of Arizona Cooperative Extension",
  year: 1998,
  url: "https://turf.arizona.edu/tips398.html",
});
/** Ounces of iron product per 1000 ft2, in 1 to 3 gal of water. */
const ironProduct = { from: 2, to: 4 } as const;

/**
 * The element in a foliar spray of iron or another micronutrient, from the rate of PRODUCT: `E = P p / 100`.
 *
 * - `P` product per area, `p` percent of the element in it: ferrous sulfate has about 20 % iron, chelates 5 to 12 %
 *
 * Rates in print are ounces of product, and a rate of product read as a rate of iron is five times too much. For iron the
 * published 2 to 4 oz of ferrous sulfate, ferrous ammonium sulfate or chelate per 1000 ft2, in 1 to 3 gal, is compared;
 * no threshold for burn was found, so none is checked. Other elements have no published rate here.
 *
 * Iron stains stone, concrete and clothing; in heat and at high rates it blackens turf. The label wins over all of it.
 *
 * @throws RatewrightError `range`, `missing`, `type`, `unit/mismatch`, `substance/mismatch`
 *
 * Source: "Turf tips, March 1998: correcting iron chlorosis", University of Arizona Cooperative Extension.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { foliarMicronutrient } from "ratewright/soil";
 * const spray = foliarMicronutrient({
 *   product: quantity(4, "oz/1000 ft2", "product"), element: "Fe", percent: 20,
 * });
 * Number(spray.element.in("lb/acre").toFixed(2)); // => 2.18
 * spray.findings; // => []
 * ```
 */
export const foliarMicronutrient = (input: {
  readonly product: Quantity<"mass/area", "product">;
  readonly element: FoliarElement;
  readonly percent: number;
}): FoliarMicronutrient => {
  const record = expectFields(input, ["product", "element", "percent"], "input");
  const spread = { dimension: "mass/area", of: "product", bound: "non-negative" } as const;
  const read = allOf({
    product: () => {
      const given = expectAmount(record.product, { dimensions: ["mass/area", "volume/area"] }, "product");
      return given.dimension === "mass/area"
        ? expectQuantity(given, spread, "product")
        : fail(
            "unit/mismatch",
            "product",
            given,
            'a weight: rate.times(quantity(11, "lb/gal")), with the density of the jug',
          );
    },
    element: () => expectOneOf(record.element, ["Fe", "Mn", "Zn", "Cu", "B"], "element"),
    percent: () => expectNumber(record.percent, "percent", { above: 0, max: 100 }),
  });
  const { value, unit } = read.product;
  return {
    type: "foliar-micronutrient",
    version: 1,
    product: likeQuantity(read.product, value),
    element: new Quantity<"mass/area", FoliarElement>(
      (value * read.percent) / 100,
      unit,
      read.element,
      "mass/area",
    ),
    findings: read.element === "Fe" ? ironFindings(read.product) : [],
  };
};

const ironFindings = (product: Quantity<"mass/area", "product">): Finding[] => {
  const ounces = product.in("oz/1000 ft2");
  const high = exceeds(ounces, ironProduct.to);
  const low = exceeds(ironProduct.from, ounces);
  const metric = /(?:ha|m2)$/.test(product.unit);
  const unit = metric ? product.unit : "oz/1000 ft2";
  const [rate, from, to] = [ounces, ironProduct.from, ironProduct.to].map((oz) =>
    numberIn({ value: oz, unit: "oz/1000 ft2" }, unit),
  ) as [number, number, number];
  const told = roundedApart(rate, high ? to : from, 3);
  return high || low
    ? [
        {
          code: "iron/outside-published-rate",
          severity: high ? "warning" : "note",
          path: "product",
          params: { rate, from, to, unit },
          text: `${told(rate)} ${metric ? `${unit} of product` : "oz of product per 1,000 sq ft"} is ${high ? "above" : "below"} the published ${told(from)} to ${told(to)} ${metric ? unit : "oz"}. Check that the rate is of product, not of iron.`,
          source: arizona,
        },
      ]
    : [];
};
