import { expectFields, expectText, type FactSource, fail } from "../../quantity/index.js";
import { listOf } from "../label/under-path.js";
import { checkedSaltIndex, type SaltIndex, type SaltScale, type UnitBasis } from "./salt-index.js";

/** One printed salt index. */
export interface SaltRow {
  readonly material: string;
  readonly value: number;
  /** What counts as a unit in this row; `null` by weight. */
  readonly basis: UnitBasis | null;
  /** Percent of nutrient that the source prints with the material, where it does. */
  readonly percent?: number;
  /** What the source calls its burn potential, where it does. */
  readonly burn?: "low" | "moderate" | "high";
  /** Why the printed figure is doubted. */
  readonly doubtful?: string;
}

/** A printed table of salt indexes, on one scale. Figures stand as printed, also the doubted ones. */
export interface SaltTable<S extends SaltScale> {
  readonly scale: S;
  readonly source: FactSource;
  readonly rows: readonly SaltRow[];
}

/**
 * The salt index that a table prints for a material, with the table's scale and source, and the doubt
 * where the print is doubted.
 *
 * @param table - one of the tables by source, such as `oregonSaltIndexes`
 * @param material - as the table names it
 * @throws RatewrightError `type` for a material that is not in the table, with the names that are
 *
 * Source: the table's own.
 *
 * @example
 * ```ts
 * import { oregonSaltIndexes, tabulatedSaltIndex } from "ratewright";
 * tabulatedSaltIndex(oregonSaltIndexes, "urea").value; // => 1.7
 * tabulatedSaltIndex(oregonSaltIndexes, "urea").scale; // => "per unit"
 * ```
 */
export const tabulatedSaltIndex = <S extends SaltScale>(
  table: SaltTable<S>,
  material: string,
): SaltIndex<S> => {
  const { rows, scale, source } = expectFields(table, ["scale", "source", "rows"], "table");
  const list = listOf(rows, "table.rows", "row", 1000) as readonly SaltRow[];
  const at = list.findIndex((one) => one?.material === material);
  if (at < 0) {
    const names = list
      .slice(0, 60)
      .map((one, i) => expectText(one?.material, `table.rows[${i}].material`, "the name of a material"));
    return fail("type", "material", material, `a material of the table: ${names.join(", ")}`.slice(0, 2000));
  }
  const { value, basis, doubtful } = expectFields(list[at], saltFields, `table.rows[${at}]`);
  const index = { type: "salt-index", version: 1, scale, value, basis, source };
  return checkedSaltIndex(doubtful === undefined ? index : { ...index, doubtful }, scale as S, "table");
};

const saltFields = ["material", "value", "basis", "percent", "burn", "doubtful"] as const;
