import { wholeUnitsFor } from "../../numeric/index.js";
import { allOf, expectFields, type Quantity, quantity } from "../../quantity/index.js";
import { type Area, areaAt, optional, percentAt, type Share, wholeAt } from "../read.js";
import { gridFields, gridOf, type PlantingGrid, plantsPerArea } from "./grid.js";

/** Plants or plugs to buy. */
export interface PlantOrder {
  readonly type: "plant-order";
  readonly version: 1;
  readonly perArea: Quantity<"count/area", "none">;
  /** Whole plants, the share for losses included. */
  readonly plants: number;
  /** Whole trays; `null` where no tray was stated. */
  readonly trays: number | null;
  /** Plants that are left over of the last tray. */
  readonly leftOver: number | null;
}

/**
 * Plants or plugs for an area: `N = A n (1 + x)`, rounded up, with `n` of {@link plantsPerArea}.
 *
 * @param input.area - `A`, more than zero
 * @param input.extra - `x`, on top, for losses and for edges; none where it is left out
 * @param input.perTray - whole plants in a tray; trays are rounded up
 * @throws RatewrightError `missing`, `range`, `conflict`, `unit/mismatch`, `type`; all that are found
 * Source: plane geometry; nursery spacing charts.
 *
 * @example
 * ```ts
 * import { plantsFor, quantity } from "ratewright";
 * const order = plantsFor({
 *   area: quantity(360, "ft2"), pattern: "square", spacing: quantity(10, "in"), perTray: 18,
 * });
 * order.plants; // => 519
 * order.trays; // => 29
 * ```
 */
export const plantsFor = (
  input: PlantingGrid & { readonly area: Area; readonly extra?: Share; readonly perTray?: number },
): PlantOrder => {
  const record = expectFields(input, ["area", ...gridFields, "extra", "perTray"]);
  const { area, extra, tray } = allOf({
    area: () => areaAt(record.area, "area"),
    grid: () => gridOf(record),
    extra: () => percentAt(record.extra, "extra", { min: 0 }, 0),
    tray: () => optional(record.perTray, (count) => wholeAt(count, "perTray")),
  });
  const { pattern, spacing, rowSpacing } = input;
  const perArea = plantsPerArea({ pattern, spacing, ...(rowSpacing === undefined ? {} : { rowSpacing }) });
  const plants = wholeUnitsFor((area.in("ft2") * perArea.in("count/ft2") * (100 + extra)) / 100, 1);
  const trays = tray === undefined ? null : wholeUnitsFor(plants, tray);
  return {
    type: "plant-order",
    version: 1,
    perArea: quantity(perArea.value, perArea.unit as "count/ft2"),
    plants,
    trays,
    leftOver: trays === null || tray === undefined ? null : trays * tray - plants,
  };
};
