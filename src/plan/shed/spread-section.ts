import { numberIn } from "../../quantity/index.js";
import { sizeOf } from "../sheet/part-size.js";
import { blank, type SheetBlock, type SheetRow, type SheetSection } from "../sheet/sheet-types.js";
import { areaText, areaUnitOf, type FirstUnits, figure, measureText, unitFor } from "../sheet/sheet-units.js";
import { stepsOf, stepsText, type Tool, toolFor } from "../sheet/tool-amount.js";
import type { SpreadOrder, SpreadPart } from "../visit/spread-order.js";
import type { WorkOrder } from "../visit/work-order.js";
import { waterBlocks } from "./water-lines.js";

/** What is weighed out: part by part, or in one where the job does not say what lies on which. */
export const spreadRows = (order: SpreadOrder, site: string): readonly SpreadPart[] =>
  order.byPart.length > 0
    ? order.byPart
    : [
        {
          part: order.parts.length > 0 ? order.parts.join(", ") : site,
          area: order.area,
          amount: order.amount,
          perPass: order.ratePerPass.times(order.area),
        },
      ];

/** The scale for a treatment that is spread, fine enough for its smallest pass. */
export const spreadTool = (order: SpreadOrder, site: string, first: FirstUnits): Tool => {
  const tool = toolFor(
    spreadRows(order, site).map(({ perPass }) => perPass),
    first,
  );
  // A bag is weighed in tenths: 78.4 lb.
  return { ...tool, step: Math.min(tool.step, tool.unit === "lb" || tool.unit === "kg" ? 0.1 : 1) };
};

/** The steps of the scale that a treatment takes in all: what is weighed out for its passes, added up. */
export const spreadSteps = (order: SpreadOrder, site: string, tool: Tool): number =>
  spreadRows(order, site).reduce((sum, { perPass }) => sum + order.passes * stepsOf(perPass, tool), 0);

/** The spreader and how it is set: what the job says, and a blank for the rest. */
const machineBlanks = ({ spreader }: SpreadOrder, first: FirstUnits): SheetBlock => ({
  kind: "blanks",
  blanks: [
    blank("Spreader", spreader.name),
    blank("Setting", spreader.setting, 8),
    blank("Swath", spreader.swath && measureText(spreader.swath, first), 8),
    blank("Speed", spreader.speed && measureText(spreader.speed, first), 8),
    blank("Test catch", undefined, 10),
  ],
});

/** What the spreader is set for: the rate of one pass, and never the whole where it could be dialed. */
const setFor = ({ passes, ratePerPass, rate }: SpreadOrder, first: FirstUnits, both: boolean): SheetBlock => {
  const other = both ? ` (${measureText(ratePerPass, "metric")})` : "";
  return {
    kind: "text",
    strong: true,
    text:
      passes === 1
        ? `SET THE SPREADER FOR ${measureText(rate, first)}${other}: one pass.`
        : `SET THE SPREADER FOR ${measureText(ratePerPass, first)}${other}: ${passes} passes in different directions, NOT ${figure(numberIn(rate, unitFor(rate, first)))} in one.`,
  };
};

/** A treatment that is spread: the rate of one pass first, for that is what the spreader is set to. */
export const spreadSection = (
  order: SpreadOrder,
  number: number,
  { name: site, measures }: WorkOrder["site"],
  first: FirstUnits,
  both: boolean,
): SheetSection => {
  const { passes, rate, target } = order;
  const tool = spreadTool(order, site, first);
  const areaUnit = areaUnitOf(unitFor(rate, first), order.area, first);
  const row = (name: string, area: SpreadPart["area"], each: number): SheetRow => {
    const cells = [name, areaText(area, areaUnit), stepsText(each, tool)];
    return { cells: passes === 1 ? cells : [...cells, stepsText(each * passes, tool)] };
  };
  const parts = spreadRows(order, site);
  const rows = parts.map(({ part, area, perPass }) => {
    const size = order.byPart.length > 0 ? sizeOf(measures, part, first) : undefined;
    return row(size === undefined ? part : `${part}, ${size}`, area, stepsOf(perPass, tool));
  });
  const total = spreadSteps(order, site, tool);
  if (parts.length > 1) rows.push(row("whole job", order.area, total / passes));
  const heads = [
    "WEIGH OUT BY SCALE",
    "area",
    ...(passes === 1
      ? ["in one pass"]
      : ["each pass", passes === 2 ? "both passes" : `all ${passes} passes`]),
  ];
  return {
    id: "spread",
    title: `JOB ${number}  SPREAD ${order.productName}${target === undefined ? "" : `, for ${measureText(target, first)} of ${target.of} in all`}`,
    treatment: order.treatment,
    blocks: [
      setFor(order, first, both),
      { kind: "table", heads, rows },
      machineBlanks(order, first),
      {
        kind: "list",
        mark: "[ ]",
        items: ["Leaf dry, unless the label wants it wet."],
      },
      ...waterBlocks(order.watering, first),
    ],
  };
};
