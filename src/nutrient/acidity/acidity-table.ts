import {
  allOf,
  type Citation,
  expectFields,
  expectNumber,
  expectOneOf,
  expectText,
  fail,
  Quantity,
} from "../../quantity/index.js";
import { expectSource } from "../label/expect-source.js";
import { listOf } from "../label/under-path.js";

/** One printed potential acidity; below zero for a base. */
export interface AcidityRow {
  readonly material: string;
  readonly value: number;
  /** Percent of nitrogen that the source prints with the material, where it does. */
  readonly nitrogenPercent?: number;
  readonly doubtful?: string;
}

/** What a table states its figures per: nitrogen, or product. */
export type AcidityBasis = "CaCO3 equivalent/N" | "CaCO3 equivalent/product";

/** A printed table of potential acidity, in one unit. */
export interface AcidityTable<B extends AcidityBasis> {
  readonly of: B;
  /** `lb/lb`, `% w/w` (pounds per 100 lb) or `lb/US ton`. */
  readonly unit: "lb/lb" | "% w/w" | "lb/US ton";
  readonly source: Citation;
  readonly rows: readonly AcidityRow[];
}

/**
 * The potential acidity that a table prints for a material, per nitrogen or per product as the table does.
 *
 * @param table - one of the tables by source, such as `californiaAcidity`
 * @param material - as the table names it
 * @throws RatewrightError `type` for a material that is not in the table, with the names that are
 *
 * Source: the table's own.
 *
 * @example
 * ```ts
 * import { californiaAcidity, tabulatedAcidity } from "ratewright";
 * tabulatedAcidity(californiaAcidity, "calcium nitrate").in("lb/lb"); // => -1.29
 * ```
 */
export const tabulatedAcidity = <B extends AcidityBasis>(
  table: AcidityTable<B>,
  material: string,
): Quantity<"mass/mass", B> => {
  const { of, unit, source, rows } = expectFields(table, ["of", "unit", "source", "rows"], "table");
  const list = listOf(rows, "table.rows", "row", 1000) as readonly AcidityRow[];
  const row = list.find((one) => one?.material === material);
  if (row === undefined) {
    const names = list
      .slice(0, 60)
      .map((one, i) => expectText(one?.material, `table.rows[${i}].material`, "the name of a material"));
    return fail("type", "material", material, `a material of the table: ${names.join(", ")}`.slice(0, 2000));
  }
  const { basis, read } = allOf({
    source: () => expectSource(source, "table.source"),
    row: () => expectFields(row, ["material", "value", "nitrogenPercent", "doubtful"], "table.rows"),
    basis: () => expectOneOf(of, bases, "table.of"),
    read: () => ({
      value: expectNumber(row.value, "table.rows.value"),
      unit: expectOneOf(unit, units, "table.unit"),
    }),
  });
  return new Quantity(read.value, read.unit, basis as B, "mass/mass");
};

const bases = ["CaCO3 equivalent/N", "CaCO3 equivalent/product"] as const;
const units = ["lb/lb", "% w/w", "lb/US ton"] as const;
