import { numberIn } from "../../quantity/index.js";
import type { LoadingStep } from "../../tank/index.js";
import { inWords } from "../sheet/british-words.js";
import { sizeOf, sizesOf } from "../sheet/part-size.js";
import { blank, penned, type SheetBlock, type SheetRow, type SheetSection } from "../sheet/sheet-types.js";
import {
  areaText,
  areaUnitOf,
  coversUnitOf,
  type FirstUnits,
  measureText,
  plainNumber,
  tankMark,
  unitFor,
} from "../sheet/sheet-units.js";
import { stepsOf, stepsText, type Tool, toolFor } from "../sheet/tool-amount.js";
import type { WorkOrderCaution } from "../visit/cautions.js";
import type { SprayedProduct, SprayOrder } from "../visit/spray-order.js";
import { nearWhole } from "../visit/whole-packets.js";
import type { WorkOrder } from "../visit/work-order.js";
import { waterBlocks } from "./water-lines.js";

/** The scale or the jug of a product of a mix. */
export const sprayTool = (product: SprayedProduct, first: FirstUnits): Tool =>
  toolFor(
    product.loads.map(({ amount }) => amount),
    first,
    product.measured,
  );

/** What all loads of a product take, in steps of its tool. */
export const spraySteps = (product: SprayedProduct, tool: Tool): number =>
  product.loads.reduce((sum, { amount }) => sum + stepsOf(amount, tool), 0);

/** Loads that are filled alike, one after another: they share a column. */
interface LoadColumn {
  readonly from: number;
  readonly to: number;
}

/** How many columns of loads a table of 72 columns holds beside the steps. */
const mostColumns = 3;

const columnsOf = (order: SprayOrder, tools: readonly Tool[]): readonly LoadColumn[] => {
  const kept = order.sprayer.residualVolume?.in("L") ?? 0;
  // Loads that differ by the noise of adding them up are alike.
  const told = (value = 0): number => Number(value.toPrecision(9));
  const key = (i: number): string =>
    JSON.stringify([
      told(order.tank.loads[i]?.volume.value),
      told(order.tank.loads[i]?.area.value),
      i === 0 && kept > 0,
      order.products.map((product, p) => {
        const amount = product.loads[i]?.amount;
        const tool = tools[p];
        return amount === undefined || tool === undefined ? null : stepsOf(amount, tool);
      }),
    ]);
  const columns: LoadColumn[] = [];
  let last = "";
  order.tank.loads.forEach((_, i) => {
    const now = key(i);
    const open = columns[columns.length - 1];
    if (open !== undefined && now === last) columns[columns.length - 1] = { from: open.from, to: i };
    else columns.push({ from: i, to: i });
    last = now;
  });
  return columns;
};

const headOf = ({ from, to }: LoadColumn): string =>
  from === to ? `LOAD ${from + 1}` : `LOADS ${from + 1}-${to + 1}, EACH`;

interface Writer {
  readonly order: SprayOrder;
  readonly tools: readonly Tool[];
  readonly first: FirstUnits;
  readonly tankUnit: string;
  readonly areaUnit: string;
  /** Lines of caution by code; each is printed at the first step that it belongs to. */
  readonly lines: ReadonlyMap<string, string>;
}

/** How far the tank is filled at a step: a later load goes on top of what the pump left in it. */
const marks = (step: LoadingStep, columns: readonly LoadColumn[], { order, tankUnit }: Writer): string[] =>
  columns.map(({ from }) => {
    const load = order.tank.loads[from];
    const [low = 1, high = low] = step.fraction ?? [];
    if (load === undefined) return "";
    const below = from === 0 ? 0 : (order.sprayer.residualVolume?.in("L") ?? 0);
    const at = (part: number): string => tankMark(below + part * load.volume.in("L"), tankUnit);
    return low === high ? at(low) : `${at(low)} to ${at(high)}`;
  });

/** What of a product goes into one load, as it is measured or counted. */
export const loadText = (product: SprayedProduct, load: number, tool: Tool): string => {
  const amount = product.loads[load]?.amount;
  if (amount === undefined) return "";
  const packets = product.packets?.perLoad[load];
  if (product.formulation !== "water-soluble packet") return stepsText(stepsOf(amount, tool), tool);
  if (packets === undefined) return "ASK: packets?";
  const whole = Math.round(packets);
  if (!nearWhole(packets)) return "STOP: part";
  return `${whole} ${whole === 1 ? "packet" : "packets"}`;
};

const amounts = (index: number, columns: readonly LoadColumn[], { order, tools }: Writer): string[] =>
  columns.map(({ from }) => {
    const product = order.products[index];
    const tool = tools[index];
    return product === undefined || tool === undefined ? "" : loadText(product, from, tool);
  });

const textOf = (step: LoadingStep): string => {
  if (step.action === "fill") {
    const [share, other] = new Set(step.fraction);
    if (share === undefined || other !== undefined) return "Clean water up to a level between";
    return `Clean water up to ${share === 0.5 ? "half the load" : `${plainNumber(numberIn({ value: share, unit: "1" }, "%"), 1)} % of the load`}`;
  }
  if (step.action === "top up") return "Clean water up to";
  return step.text.replace(/^Add (?=\S)/, "ADD ");
};

/** The next load waits until this one is out, where another follows one of these columns. */
const nextLoad = (
  step: LoadingStep,
  last: boolean,
  columns: readonly LoadColumn[],
  loads: number,
): readonly string[] =>
  last && (columns[0]?.from ?? 0) < loads - 1 && step.action === "agitate"
    ? ["Only then mix the next load."]
    : [];

/** The step at which a product is measured out: where it is stirred in a bucket first, that one, and otherwise its pouring. */
const measuredAt = ({ action, productId, number }: LoadingStep, { order }: Writer): boolean =>
  action === "premix" ||
  (action === "add" &&
    !order.order.steps.some(
      (other) => other.action === "premix" && other.productId === productId && other.number < number,
    ));

const rowOf = (step: LoadingStep, columns: readonly LoadColumn[], writer: Writer): SheetRow => {
  const index = writer.order.products.findIndex(({ product }) => product === step.productId);
  const what = `${step.number}  ${textOf(step)}`;
  const filled = step.action === "fill" || step.action === "top up";
  const cells = filled
    ? [what, ...marks(step, columns, writer), "tank marks"]
    : index >= 0 && measuredAt(step, writer)
      ? [
          what,
          ...amounts(index, columns, writer),
          writer.order.products[index]?.formulation === "water-soluble packet"
            ? "COUNT"
            : (writer.tools[index]?.name ?? ""),
        ]
      : [what, ...columns.map(() => "[ ]"), ""];
  return { cells };
};

/** The rows of the steps, each caution under the first step that it belongs to. */
const stepRows = (columns: readonly LoadColumn[], writer: Writer): readonly SheetRow[] => {
  const said = new Set<string>();
  const { steps } = writer.order.order;
  return steps.map((step, i) => {
    const row = rowOf(step, columns, writer);
    const codes = step.cautions
      .map(({ code }) => code)
      .filter((code) => writer.lines.has(code) && !said.has(code));
    for (const code of codes) said.add(code);
    const note = [
      ...codes.map((code) => writer.lines.get(code)),
      ...nextLoad(step, i === steps.length - 1, columns, writer.order.tank.count),
    ].join(" ");
    return note === "" ? row : { ...row, note };
  });
};

const loadTables = (writer: Writer): SheetBlock[] => {
  const columns = columnsOf(writer.order, writer.tools);
  const { loads } = writer.order.tank;
  const unit = coversUnitOf(
    writer.areaUnit,
    loads.map(({ area }) => area),
    writer.first,
  );
  const blocks: SheetBlock[] = [];
  for (let at = 0; at < columns.length; at += mostColumns) {
    const shown = columns.slice(at, at + mostColumns);
    const covers = shown.map(({ from }) => {
      const area = loads[from]?.area;
      return area === undefined ? "" : areaText(area, unit);
    });
    blocks.push({
      kind: "table",
      heads: ["DO IN THIS ORDER", ...shown.map(headOf), "MEASURE BY"],
      rows: [{ cells: ["   covers", ...covers, ""] }, ...stepRows(shown, writer)],
    });
  }
  return blocks;
};

/** What a crew looks to before the first pour. */
const beforePouring = (mixed: boolean): SheetBlock => ({
  kind: "list",
  mark: "!",
  items: [
    "Before you pour: wear what each label requires for mixing, at least gloves and eye protection.",
    ...(mixed
      ? ["Jar test first (steps on the back). It does not replace the labels' tank-mix restrictions."]
      : []),
  ],
});

/** A treatment that is sprayed: loads as columns beside the steps. */
export const spraySection = (
  order: SprayOrder,
  number: number,
  { name: site, area, measures }: WorkOrder["site"],
  first: FirstUnits,
  cautions: readonly WorkOrderCaution[],
): SheetSection => {
  const { tank, products, sprayer } = order;
  const writer: Writer = {
    order,
    tools: products.map((product) => sprayTool(product, first)),
    first,
    tankUnit: unitFor(tank.capacity, first),
    areaUnit: areaUnitOf(unitFor(tank.applicationVolume, first, true), order.area, first),
    lines: new Map(cautions.flatMap(({ code, line }) => (line === undefined ? [] : [[code, line]]))),
  };
  const where = order.parts.length > 0 ? order.parts.join(", ") : site;
  // The size of a part is the size of what is sprayed only where it is sprayed whole.
  const whole = order.byPart.length > 0 || order.area.value === area.net.value;
  const sizes = whole ? sizesOf(measures, order.parts, first) : [];
  const [only] = order.parts;
  const size =
    whole && order.parts.length === 1 && only !== undefined ? sizeOf(measures, only, first) : undefined;
  const sized = size === undefined ? "" : ` (${size})`;
  const mixed = products.length > 1;
  return {
    id: "spray",
    title: `JOB ${number}  SPRAY ${where}`,
    treatment: order.treatment,
    blocks: [
      {
        kind: "text",
        strong: true,
        text: `${areaText(order.area, writer.areaUnit)}${sized} at ${measureText(tank.applicationVolume, first, true)}: ${tankMark(tank.volume.in("L"), writer.tankUnit)} of spray in ${tank.count} ${tank.count === 1 ? "load" : "loads"}.`,
      },
      ...(size === undefined && sizes.length > 0
        ? [{ kind: "text" as const, text: `Size: ${sizes.join("; ")}.` }]
        : []),
      {
        kind: "blanks",
        blanks: [
          blank("Nozzle", sprayer.nozzle),
          blank("Pressure", sprayer.pressure && measureText(sprayer.pressure, first), 8),
          blank("Speed", sprayer.speed && measureText(sprayer.speed, first), 8),
          blank("Last product in sprayer", undefined, 14),
          blank("Cleaned by", undefined, 10),
          ...(mixed ? [blank("Jar test: good, or bad = STOP", undefined, 8)] : []),
        ],
      },
      beforePouring(mixed),
      ...loadTables(writer),
      ...leftOver(order, writer),
      ...waterBlocks(order.watering, first),
    ],
  };
};

const leftOver = (order: SprayOrder, { tankUnit, first }: Writer): SheetBlock[] => {
  const left = order.tank.leftOver.volume.in("L");
  return left > 0 && numberIn(order.tank.leftOver.volume, "L") > 1e-6
    ? [
        {
          kind: "text",
          text: inWords(
            `${tankMark(left, tankUnit)} of spray is left in tank and hoses when the area is done. It goes to a labeled site, at or below the label rate: ${penned}`,
            first,
          ),
        },
      ]
    : [];
};
