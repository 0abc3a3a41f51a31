import { wholeUnitsFor } from "../../numeric/index.js";
import { numberIn } from "../../quantity/index.js";
import { penned, type SheetSection } from "../sheet/sheet-types.js";
import type { FirstUnits } from "../sheet/sheet-units.js";
import { stepsOf, stepsText, type Tool } from "../sheet/tool-amount.js";
import type { Measure } from "../visit/measure.js";
import type { SprayOrder } from "../visit/spray-order.js";
import type { SpreadOrder } from "../visit/spread-order.js";
import { spraySteps, sprayTool } from "./spray-section.js";
import { spreadSteps, spreadTool } from "./spread-section.js";

/** What one treatment takes of a product. */
interface Use {
  readonly product: string;
  readonly name: string;
  readonly tool: Tool;
  readonly steps: number;
  readonly size: Measure | undefined;
  readonly registrationNumber: string | undefined;
  readonly lot: string | undefined;
}

const usesOf = (
  spreads: readonly SpreadOrder[],
  sprays: readonly SprayOrder[],
  site: string,
  first: FirstUnits,
): Use[] => [
  ...spreads.map((order): Use => {
    const tool = spreadTool(order, site, first);
    const { product, productName: name, packageSize: size, registrationNumber, lot } = order;
    return { product, name, tool, steps: spreadSteps(order, site, tool), size, registrationNumber, lot };
  }),
  ...sprays.flatMap(({ products }) =>
    products.map((item): Use => {
      const tool = sprayTool(item, first);
      const { product, productName: name, packageSize: size, registrationNumber, lot } = item;
      return { product, name, tool, steps: spraySteps(item, tool), size, registrationNumber, lot };
    }),
  ),
];

/** All uses of a product as one, in the finest of their tools. */
const added = (uses: readonly Use[]): Use | undefined => {
  const [head] = uses;
  if (head === undefined) return undefined;
  const finest = uses.reduce((a, b) =>
    b.tool.step * scaleOf(b.tool) < a.tool.step * scaleOf(a.tool) ? b : a,
  );
  const steps = uses.reduce(
    (sum, use) =>
      sum +
      (use.tool === finest.tool
        ? use.steps
        : stepsOf(
            { value: use.steps * use.tool.step, unit: use.tool.unit, of: "none", dimension: "" },
            finest.tool,
          )),
    0,
  );
  return { ...head, tool: finest.tool, steps };
};

/** What one of the unit of a tool is in the base unit of its kind, to compare steps. */
const scaleOf = ({ name, unit }: Tool): number =>
  numberIn({ value: 1, unit, of: "none" }, name === "SCALE" ? "g" : "mL");

const holderOf = (count: number): string => (count === 1 ? "package" : "packages");

/** The row of a product: packages out, use, and what goes back; the three add up. */
const storeCells = ({ name, tool, steps, size }: Use): readonly string[] => {
  const use = stepsText(steps, tool);
  const sameKind = size !== undefined && (size.dimension === "mass") === (tool.name === "SCALE");
  if (size === undefined || !sameKind) return [name, penned, use, penned];
  const one = numberIn(size, tool.unit);
  const count = Math.max(1, wholeUnitsFor(steps * tool.step, one));
  const out = Math.round((count * one) / tool.step);
  return [name, `${count} ${holderOf(count)}, ${stepsText(out, tool)}`, use, stepsText(out - steps, tool)];
};

/** What to take out of the store and what goes back. */
export const storeSection = (
  spreads: readonly SpreadOrder[],
  sprays: readonly SprayOrder[],
  site: string,
  first: FirstUnits,
): SheetSection => {
  const byProduct = new Map<string, Use[]>();
  for (const use of usesOf(spreads, sprays, site, first)) {
    const before = byProduct.get(use.product);
    if (before === undefined) byProduct.set(use.product, [use]);
    else before.push(use);
  }
  const uses = [...byProduct.values()].flatMap((list) => added(list) ?? []);
  return {
    id: "store",
    title: "STORE",
    blocks: [
      {
        kind: "table",
        heads: ["product", "take out", "use", "goes back", "registration no.", "lot"],
        rows: uses.map((use) => ({
          cells: [...storeCells(use), use.registrationNumber ?? penned, use.lot ?? penned],
        })),
      },
    ],
  };
};
