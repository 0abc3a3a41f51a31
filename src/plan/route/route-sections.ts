import { counted } from "../../quantity/house.js";
import { numberIn } from "../../quantity/index.js";
import type { LoadingStep } from "../../tank/index.js";
import { loadText, sprayTool } from "../shed/spray-section.js";
import { inWords } from "../sheet/british-words.js";
import { penned, type SheetBlock, type SheetRow, type SheetSection } from "../sheet/sheet-types.js";
import { areaText, type FirstUnits, measureText, plainNumber, unitWords } from "../sheet/sheet-units.js";
import type { Measure } from "../visit/measure.js";
import type { SprayedProduct } from "../visit/spray-order.js";
import type { RouteFill } from "./route-loads.js";
import type { RouteOrder } from "./route-order.js";

/** What the sections of a route are written with. */
export interface Writer {
  readonly order: RouteOrder;
  readonly first: FirstUnits;
  readonly unit: string;
  readonly areaUnit: string;
}

const amountText = (q: Measure, { unit }: Writer): string => {
  const value = numberIn(q, unit);
  return `${plainNumber(value, value < 20 ? 2 : 1)} ${unitWords(unit)}`;
};

const fillRow = (fill: RouteFill, writer: Writer): SheetRow => {
  const there = numberIn(fill.doneThere, "m2") > 0;
  const when = there ? `, when ${areaText(fill.doneThere, writer.areaUnit)} there are done` : "";
  return {
    cells: [
      `FILL ${fill.number}${when}`,
      "",
      // what goes into a tank stands with each product, below
      writer.order.method === "spread" ? `add ${amountText(fill.added, writer)}` : "",
      amountText(fill.before, writer),
      amountText(fill.after, writer),
    ],
  };
};

/** What of the first filling goes into the hoses: the tank is lower by it after the first stop than the spray there explains. */
const hosesText = (writer: Writer): string => {
  const { method, loads, stops } = writer.order;
  const [first] = stops;
  if (method !== "spray" || first === undefined) return "";
  const value = (q: Measure): number => numberIn(q, writer.unit);
  const filled = loads.fills
    .filter(({ stop }) => stop === first.id)
    .reduce((sum, { added }) => sum + value(added), 0);
  const hoses = value(first.arriveWith) + filled - value(first.amount) - value(first.leaveWith);
  return hoses > 0.005
    ? ` The hoses take ${amountText({ ...first.amount, value: hoses, unit: writer.unit }, writer)} of the first fill.`
    : "";
};

/** What is in the hoses where the tank is not empty at the start: what is left at the end and the fillings do not explain. */
const hosesAtStart = (start: Measure, writer: Writer): string => {
  const { amount, loaded, leftOver } = writer.order.loads;
  const value = (q: Measure): number => numberIn(q, writer.unit);
  const hoses = value(amount) + value(leftOver) - value(loaded) - value(start);
  return hoses > 0.005
    ? ` in the tank and ${amountText({ ...start, value: hoses, unit: writer.unit }, writer)} in the hoses`
    : "";
};

/** The stops in their order, with the fillings where they come. */
export const routeSection = (writer: Writer): SheetSection => {
  const { order, areaUnit } = writer;
  const holder = order.method === "spray" ? "tank" : "hopper";
  const rows = order.stops.flatMap((stop, i): readonly SheetRow[] => {
    const fills = order.loads.fills.filter((fill) => fill.stop === stop.id);
    const before = fills.filter(({ doneThere }) => doneThere.value === 0);
    const within = fills.filter(({ doneThere }) => doneThere.value > 0);
    const where = stop.address === undefined ? stop.name : `${stop.name}, ${stop.address}`;
    const cells = [
      `${i + 1}  ${where}`,
      areaText(stop.area, areaUnit),
      amountText(stop.amount, writer),
      amountText(before[0]?.after ?? stop.arriveWith, writer),
      amountText(stop.leaveWith, writer),
    ];
    return [
      ...before.map((fill) => fillRow(fill, writer)),
      { cells },
      ...within.map((fill) => fillRow(fill, writer)),
    ];
  });
  const out = order.method === "spray" ? "spray" : "product";
  const start = order.stops[0]?.arriveWith;
  const onTop =
    start !== undefined && start.value > 0
      ? `, on top of ${amountText(start, writer)}${hosesAtStart(start, writer)} at the start`
      : "";
  return {
    id: "route",
    title: `ROUTE  ${counted(order.stops.length, "stop")} in this order, ${areaText(order.loads.area, areaUnit)}`,
    blocks: [
      { kind: "table", heads: ["", "area", out, `${holder} before`, `${holder} after`], rows },
      {
        kind: "text",
        text: `Whole route: ${amountText(order.loads.amount, writer)}. ${counted(order.loads.fills.length, "fill")}: ${amountText(order.loads.loaded, writer)}${onTop}; ${amountText(order.loads.leftOver, writer)} left in ${order.method === "spray" ? "tank and hoses" : "the hopper"} at the end${order.method === "spray" && order.loads.leftOver.value > 0 ? `: ${penned} (${inWords("labeled site", writer.first)}, at or below the label rate)` : ""}.${hosesText(writer)}`,
      },
    ],
  };
};

/** A step of mixing, for any filling: the marks stand in the table. */
const stepText = (step: LoadingStep): string => {
  if (step.action === "fill")
    return `${step.number} Clean water up to the first tank mark, "water first to".`;
  if (step.action === "top up") return `${step.number} Clean water up to the last tank mark, "fill up to".`;
  return `${step.number} ${step.text}`;
};

/** The tank mark of the water that goes in before the first product, on top of what is in the tank. */
const waterFirst = (fill: RouteFill, steps: readonly LoadingStep[], writer: Writer): string => {
  const at = (share: number): string => {
    const [before, added] = [numberIn(fill.before, writer.unit), numberIn(fill.added, writer.unit)];
    return amountText({ ...fill.added, value: before + share * added, unit: writer.unit }, writer);
  };
  const shares = steps.flatMap(({ action, fraction = [] }) => (action === "fill" ? fraction : []));
  return [...new Set(shares)].map(at).join(" to ");
};

/** What goes into each filling, and in which order. */
export const fillSection = (writer: Writer, machine: readonly SheetBlock[]): SheetSection[] => {
  const { order, first } = writer;
  const { spray } = order;
  if (spray === undefined) return [];
  // the columns stand in the order in which the products go in
  const place = ({ product }: SprayedProduct): number => spray.order.order.indexOf(product);
  const products = [...spray.products].sort((a, b) => place(a) - place(b));
  const tools = products.map((product) => sprayTool(product, first));
  const rows = order.loads.fills.map(
    (fill, i): SheetRow => ({
      cells: [
        `FILL ${fill.number}`,
        amountText(fill.added, writer),
        waterFirst(fill, spray.order.steps, writer),
        ...products.map((product, p) => {
          const tool = tools[p];
          return tool === undefined ? "" : loadText(product, i, tool);
        }),
        amountText(fill.after, writer),
      ],
    }),
  );
  const measuredBy = ({ formulation }: SprayedProduct, p: number): string =>
    formulation === "water-soluble packet" ? "COUNT" : (tools[p]?.name ?? "");
  const names = products.map((product, p) => `${product.productName} (${measuredBy(product, p)})`);
  return [
    {
      id: "fills",
      title: "EACH FILL",
      blocks: [
        {
          kind: "text",
          strong: true,
          text: `SPRAYER SET FOR ${measureText(spray.tank.applicationVolume, first, true)}.`,
        },
        ...machine,
        { kind: "table", heads: ["", "adds", "water first to", ...names, "fill up to"], rows },
        {
          kind: "text",
          text: "In this order, on top of what is in the tank:",
        },
        {
          kind: "list",
          mark: "[ ]",
          items: spray.order.steps.map(stepText),
        },
      ],
    },
  ];
};

/** A row for each stop, for a pen. */
export const recordSection = ({ order, first }: Writer): SheetSection => {
  const heads = [
    "",
    "start",
    "end",
    first === "US" ? "wind mph, from" : "wind m/s, from",
    first === "US" ? "temp °F" : "temp °C",
  ];
  return {
    id: "record",
    title: "RECORD: fill in at each stop",
    blocks: [
      {
        kind: "table",
        heads,
        rows: order.stops.map(({ name }, i) => ({
          cells: [`${i + 1}  ${name}`, penned, penned, penned, penned],
        })),
      },
      {
        kind: "blanks",
        blanks: [
          { label: "Remarks", value: null, room: 30 },
          { label: "Signed", value: null, room: 20 },
        ],
      },
    ],
  };
};
