import { limitTexts } from "../office/account-section.js";
import type { SheetSection } from "../sheet/sheet-types.js";
import { areaText, type FirstUnits, measureText } from "../sheet/sheet-units.js";
import type { RouteOrder, RouteOrderStop } from "./route-order.js";

/** What went down at each stop, for the books of its owner. */
const amountsSection = ({ stops }: RouteOrder, first: FirstUnits, areaUnit: string): SheetSection => ({
  id: "stops",
  title: "PRODUCT AT EACH STOP",
  blocks: [
    {
      kind: "table",
      heads: ["", "area", ...(stops[0]?.products.map(({ productName }) => productName) ?? [])],
      rows: stops.map(({ name, area, products }, i) => ({
        cells: [
          `${i + 1}  ${name}`,
          areaText(area, areaUnit),
          ...products.map(({ amount }) => measureText(amount, first)),
        ],
      })),
    },
  ],
});

const limitsOf =
  (first: FirstUnits) =>
  ({ name, limits }: RouteOrderStop, i: number): readonly string[] =>
    limitTexts(limits.uses, limits.tests, first).map((text) => `${i + 1} ${name}: ${text}`);

/** The sections that only the office copy of a route has: product and limits, stop by stop. */
export const officeSections = (
  order: RouteOrder,
  first: FirstUnits,
  areaUnit: string,
): readonly SheetSection[] => {
  const items = order.stops.flatMap(limitsOf(first));
  return [
    amountsSection(order, first, areaUnit),
    ...(items.length === 0
      ? []
      : [
          {
            id: "limits",
            title: "LIMITS AT EACH STOP",
            blocks: [{ kind: "list", mark: "-", items } as const],
          },
        ]),
  ];
};
