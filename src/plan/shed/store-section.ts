import { wholeUnitsFor } from "../../numeric/index.js";
import { numberIn } from "../../quantity/index.js";
import { penned, type SheetSection } from "../sheet/sheet-types.js";
import { type FirstUnits, figure, measureText, unitFor } from "../sheet/sheet-units.js";
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
  /** Of water-soluble packets: how many. */
  readonly packets: number | undefined;
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
    const steps = spreadSteps(order, site, tool);
    return { product, name, tool, steps, size, packets: undefined, registrationNumber, lot };
  }),
  ...sprays.flatMap(({ products }) =>
    products.map((item): Use => {
      const tool = sprayTool(item, first);
      const { product, productName: name, packageSize: size, registrationNumber, lot } = item;
      const packets = item.packets?.perLoad.reduce((sum, count) => sum + count, 0);
      return { product, name, tool, steps: spraySteps(item, tool), size, packets, registrationNumber, lot };
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
  const counted = uses.flatMap(({ packets }) => packets ?? []);
  const packets = counted.length === 0 ? undefined : counted.reduce((sum, count) => sum + count, 0);
  return { ...head, tool: finest.tool, steps, packets };
};

/** What one of the unit of a tool is in the base unit of its kind, to compare steps. */
const scaleOf = ({ name, unit }: Tool): number =>
  numberIn({ value: 1, unit, of: "none" }, name === "SCALE" ? "g" : "mL");

/** So many packages: `1 x 10 lb`, `8 x 50 lb = 400.0 lb`, and what they hold in the unit that is measured out. */
const packagesText = (count: number, size: Measure, held: number, tool: Tool, first: FirstUnits): string => {
  const one = `${count} x ${measureText(size, first)}`.replace(" by weight", " wt");
  const unit = unitFor(size, first);
  const figures = Number(figure(numberIn(size, unit)).replace(/,/g, ""));
  // 1 kg reads 2.2 lb, and with that what is used and what goes back would not add up.
  const exact = stepsOf({ value: figures, unit, of: "none", dimension: "" }, tool) === held;
  return count === 1 && exact && (unit === tool.unit || (tool.unit === "oz" && unit === "lb"))
    ? one
    : `${one} = ${stepsText(held, tool)}`;
};

/** What a job takes, in packets where it comes in them, and in metric units too where both are asked for. */
const useText = ({ tool, steps, packets }: Use, both: boolean): string => {
  const counted =
    packets === undefined ? "" : ` in ${figure(packets)} ${packets === 1 ? "packet" : "packets"}`;
  const amount = { value: steps * tool.step, unit: tool.unit, of: "none" } as const;
  const kind = tool.name === "SCALE" ? "mass" : "volume";
  const other = both ? ` (${measureText({ ...amount, dimension: kind }, "metric")})` : "";
  return `${stepsText(steps, tool)}${counted}${other}`;
};

/** The row of a product: packages out, use, and what goes back; the three add up. */
const storeCells = (used: Use, first: FirstUnits, both: boolean): readonly string[] => {
  const { name, tool, steps, size } = used;
  const use = useText(used, both);
  const sameKind = size !== undefined && (size.dimension === "mass") === (tool.name === "SCALE");
  if (size === undefined || !sameKind) return [name, penned, use, penned];
  const one = numberIn(size, tool.unit);
  const count = Math.max(1, wholeUnitsFor(steps * tool.step, one));
  const out = Math.round((count * one) / tool.step);
  return [name, packagesText(count, size, out, tool, first), use, stepsText(out - steps, tool)];
};

/** What to take out of the store and what goes back. */
export const storeSection = (
  spreads: readonly SpreadOrder[],
  sprays: readonly SprayOrder[],
  site: string,
  first: FirstUnits,
  both = false,
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
          cells: [...storeCells(use, first, both), use.registrationNumber ?? penned, use.lot ?? penned],
        })),
      },
    ],
  };
};
