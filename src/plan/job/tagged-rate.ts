import {
  expectNumber,
  expectQuantity,
  expectRecord,
  fail,
  isSubstance,
  type Quantity,
  quantityOf,
  shown,
} from "../../quantity/index.js";
import type { RateOf } from "../../tank/index.js";

/** Takes a stated rate of product and tags it with the id, so that two products never mix. */
export const taggedRate = (input: unknown, id: string, path: string): RateOf => {
  const { value, unit, of, per } = expectRecord(input, path, "a rate of product") as Record<string, unknown>;
  const top = `product:${id}`;
  if (of === undefined) fail("missing", `${path}.of`, of, `what it is a rate of: "product" or "${top}"`);
  const alone = of === "product" || of === top;
  const perSprayed = of === "product/spray" || of === `${top}/spray`;
  if (!alone && !perSprayed) {
    const [stuff = ""] = String(of).split("/");
    fail("substance/mismatch", `${path}.of`, of, `a rate of product: "product" or "${top}"`, {
      ...(isSubstance(String(of)) && stuff !== "product" && !stuff.startsWith("product:")
        ? { suggestion: "target, for a rate of a nutrient" }
        : {}),
    });
  }
  expectNumber(value, `${path}.value`, { min: 0 });
  const plain = quantityOf(value as number, unit as string, "none", path);
  if (per !== undefined && typeof per !== "object" && typeof per !== "function")
    fail("type", `${path}.per`, per, 'the volume of spray, such as { "value": 100, "unit": "gal" }');
  if (typeof per === "object" && per !== null) return perSpray({ value, unit, of: top, per }, plain, path);
  const perArea = plain.dimension.endsWith("/area");
  if (!perArea && plain.dimension !== "mass/volume" && plain.dimension !== "volume/volume") {
    fail("unit/mismatch", path, plain, "a rate per area, or per volume of spray", {
      ...(unit === "%" && { suggestion: '% v/v of "product/spray"' }),
    });
  }
  const whole = perArea ? top : `${top}/spray`;
  if (perSprayed && perArea) fail("conflict", path, shown(input), "a rate per volume of spray");
  return quantityOf(value as number, unit as string, whole, path) as RateOf;
};

/** An amount of product per so much spray: 2 pt per 100 gal. */
const perSpray = (rate: Record<string, unknown>, amount: Quantity<string, string>, path: string): RateOf => {
  if (amount.dimension !== "mass" && amount.dimension !== "volume")
    fail("unit/mismatch", `${path}.unit`, amount, "an amount such as 2 pt; `per` is the volume of spray");
  const spray = expectRecord(rate.per, `${path}.per`, "a volume of spray");
  if (spray.of !== undefined && spray.of !== "none" && spray.of !== "spray")
    fail("substance/mismatch", `${path}.per.of`, spray.of, "a volume of spray");
  const { value, unit } = spray as { value?: number; unit?: string };
  expectQuantity(
    { value, unit, of: "spray" },
    { dimension: "volume", of: "spray", bound: "positive" },
    `${path}.per`,
  );
  return rate as RateOf;
};
