import { expectFields, expectNumber, expectOneOf, numberIn } from "../../quantity/index.js";
import type { LoadingStep } from "../../tank/index.js";
import type { SheetUnits } from "../job/job.js";
import { shedSheet } from "../shed/shed-sheet.js";
import { sprayTool } from "../shed/spray-section.js";
import { sheetHtml } from "../sheet/sheet-html.js";
import { sheetText } from "../sheet/sheet-text.js";
import {
  penned,
  type SheetBlock,
  type SheetRow,
  type SheetSection,
  type WorkOrderSheet,
} from "../sheet/sheet-types.js";
import {
  areaText,
  areaUnitOf,
  type FirstUnits,
  firstUnits,
  measureText,
  plainNumber,
  unitFor,
  unitWords,
} from "../sheet/sheet-units.js";
import { stepsOf, stepsText } from "../sheet/tool-amount.js";
import type { Measure } from "../visit/measure.js";
import type { WorkOrder } from "../visit/work-order.js";
import type { RouteJob } from "./route-job.js";
import type { RouteFill } from "./route-loads.js";
import { type RouteOrder, routeOrder } from "./route-order.js";

/** The sheet of a route as data: sections of lines, tables and blanks. */
export interface RouteSheet extends Omit<WorkOrderSheet, "type" | "copy"> {
  readonly type: "route-sheet";
  readonly copy: "shed";
}

/** In which units; those of the route where left out. */
export interface RouteSheetOptions {
  readonly units?: SheetUnits;
}

/** How the sheet is written as text. */
export interface RouteTextOptions extends RouteSheetOptions {
  /** Columns of a line; 72 where it is left out. */
  readonly width?: number;
}

/** The route as a visit whose site is all stops: what a sheet of a visit says of the machine and the work holds for it. */
const asVisit = (order: RouteOrder): WorkOrder => ({
  type: "work-order",
  version: 1,
  title: order.title,
  date: order.date,
  units: order.units,
  applicator: order.applicator,
  site: {
    name: counted(order.stops.length, "stop"),
    area: {
      type: "site-area",
      version: 1,
      parts: [],
      cutOuts: [],
      total: order.loads.area,
      net: order.loads.area,
    } as never,
  },
  spreads: order.spread === undefined ? [] : [order.spread],
  sprays: order.spray === undefined ? [] : [order.spray],
  nutrients: [],
  repeats: [],
  findings: order.findings,
  cautions: order.cautions,
  checked: [],
  notChecked: order.notChecked,
});

interface Writer {
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
      "",
      amountText(fill.before, writer),
      amountText(fill.after, writer),
    ],
  };
};

const counted = (count: number, what: string): string => `${count} ${what}${count === 1 ? "" : "s"}`;

/** The stops in their order, with the fillings where they come. */
const routeSection = (writer: Writer): SheetSection => {
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
  return {
    id: "route",
    title: `ROUTE  ${counted(order.stops.length, "stop")} in this order, ${areaText(order.loads.area, areaUnit)}`,
    blocks: [
      { kind: "table", heads: ["", "area", out, `${holder} before`, `${holder} after`], rows },
      {
        kind: "text",
        text: `Whole route: ${amountText(order.loads.amount, writer)} in ${counted(order.loads.fills.length, "filling")}; ${amountText(order.loads.leftOver, writer)} left in ${order.method === "spray" ? "tank and hoses" : "the hopper"} at the end${order.method === "spray" ? `: ${penned} (labeled site, at or below the label rate)` : ""}.`,
      },
    ],
  };
};

/** A step of mixing, for any filling: the marks stand in the table. */
const stepText = (step: LoadingStep): string => {
  const [low = 0.5, high = low] = step.fraction ?? [];
  const share = low === high ? `${low * 100} %` : `${low * 100} to ${high * 100} %`;
  if (step.action === "fill") return `${step.number} Clean water: ${share} of the mix that is added.`;
  if (step.action === "top up") return `${step.number} Clean water up to the tank mark.`;
  return `${step.number} ${step.text}`;
};

/** What goes into each filling, and in which order. */
const fillSection = (writer: Writer, machine: readonly SheetBlock[]): SheetSection[] => {
  const { order, first } = writer;
  const { spray } = order;
  if (spray === undefined) return [];
  const tools = spray.products.map((product) => sprayTool(product, first));
  const rows = order.loads.fills.map(
    (fill, i): SheetRow => ({
      cells: [
        `FILL ${fill.number}`,
        amountText(fill.added, writer),
        ...spray.products.map((product, p) => {
          const tool = tools[p];
          const amount = product.loads[i]?.amount;
          if (tool === undefined || amount === undefined) return "";
          if (product.formulation !== "water-soluble packet") return stepsText(stepsOf(amount, tool), tool);
          const packets = product.packets?.perLoad[i];
          if (packets === undefined) return "ASK: packets?";
          const whole = Math.round(packets);
          return whole >= 1 && Math.abs(packets - whole) <= 1e-3 * packets
            ? `${whole} packets`
            : "STOP: part";
        }),
        amountText(fill.after, writer),
      ],
    }),
  );
  const names = spray.products.map(({ productName }, p) => `${productName} (${tools[p]?.name ?? ""})`);
  return [
    {
      id: "fills",
      title: "EACH FILLING",
      blocks: [
        {
          kind: "text",
          strong: true,
          text: `SPRAYER SET FOR ${measureText(spray.tank.applicationVolume, first, true)}.`,
        },
        ...machine,
        { kind: "table", heads: ["", "mix", ...names, "tank mark"], rows },
        {
          kind: "text",
          text: "In this order, for the mix that is added, on top of what is in the tank:",
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

const recordSection = ({ order, first }: Writer): SheetSection => {
  const heads = [
    "",
    "start",
    "end",
    first === "US" ? "wind mph, from" : "wind m/s, from",
    first === "US" ? "temp °F" : "temp °C",
  ];
  return {
    id: "record",
    title: "RECORD, filled in at each stop",
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

const sheetOf = (order: RouteOrder, units: SheetUnits): RouteSheet => {
  const { type: _, copy: __, front, ...visit } = shedSheet(asVisit({ ...order, units }));
  const first = firstUnits(units);
  const unit = unitFor(order.loads.capacity, first);
  const perArea = order.spray?.tank.applicationVolume ?? order.spread?.rate;
  const areaUnit = areaUnitOf(
    perArea === undefined ? "" : unitFor(perArea, first, order.method === "spray"),
    first,
  );
  const writer: Writer = { order, first, unit, areaUnit };
  const section = (id: string): SheetSection[] => front.filter((one) => one.id === id);
  const machine = section("spray").flatMap(({ blocks }) =>
    blocks.filter((block) => block.kind === "blanks" || (block.kind === "list" && block.mark === "!")),
  );
  const setting = section("spread").map((one) => ({
    ...one,
    title: `SPREAD ${order.spread?.productName ?? ""}`,
    blocks: one.blocks.filter(({ kind }) => kind !== "table"),
  }));
  return {
    ...visit,
    type: "route-sheet",
    copy: "shed",
    front: [
      ...section("stop"),
      routeSection(writer),
      ...setting,
      ...fillSection(writer, machine),
      ...section("store"),
      ...section("after"),
      recordSection(writer),
    ],
  };
};

const readOptions = (order: RouteOrder, units: unknown): SheetUnits =>
  units === undefined ? order.units : expectOneOf(units, ["US customary", "metric", "both"], "options.units");

/**
 * The sheet of a day's route as data, for an app that draws it itself: what stops the work, the stops in their order
 * with the fillings where they come, what goes into each filling, what comes out of the store, and the record of each
 * stop. Figures are rounded for measuring and reading only; those of {@link routeOrder} are not.
 *
 * @param job - a route, as {@link routeOrder} takes it
 * @param options - `units`, those of the route where left out
 * @throws RatewrightError as {@link routeOrder}; `type` for an option that is not known
 *
 * @example
 * ```ts
 * import { routeSheet } from "ratewright";
 * const sheet = routeSheet({
 *   type: "route-job",
 *   version: 1,
 *   title: "Tuesday feed",
 *   date: "2026-05-05",
 *   products: [{ id: "feed-a", form: "dry", analysis: "24-0-11" }],
 *   spread: { product: "feed-a", target: { value: 0.9, unit: "lb/1000 ft2", of: "N" } },
 *   spreader: { hopper: { value: 100, unit: "lb" } },
 *   stops: [{ id: "town hall", area: { value: 12000, unit: "ft2" } }],
 * });
 * sheet.front.map(({ id }) => id); // => ["stop", "route", "spread", "store", "after", "record"]
 * ```
 */
export const routeSheet = (job: RouteJob, options: RouteSheetOptions = {}): RouteSheet => {
  const { units } = expectFields(options, ["units"], "options");
  const order = routeOrder(job);
  return sheetOf(order, readOptions(order, units));
};

/**
 * The sheet of a day's route as plain text.
 *
 * @param job - a route, as {@link routeOrder} takes it
 * @param options - `units`; `width`, the columns of a line: 60 to 400, 72 where left out
 * @throws RatewrightError as {@link routeSheet}; `range`, `not-finite` for the width
 *
 * @example
 * ```ts
 * import { routeText } from "ratewright";
 * const text = routeText({
 *   type: "route-job",
 *   version: 1,
 *   title: "Tuesday feed",
 *   date: "2026-05-05",
 *   products: [{ id: "feed-a", form: "dry", analysis: "24-0-11" }],
 *   spread: { product: "feed-a", target: { value: 0.9, unit: "lb/1000 ft2", of: "N" } },
 *   spreader: { hopper: { value: 100, unit: "lb" } },
 *   stops: [{ id: "town hall", area: { value: 12000, unit: "ft2" } }],
 * });
 * text.split("\n").filter((line) => line.startsWith("ROUTE")); // => ["ROUTE  1 stop in this order, 12,000 sq ft"]
 * ```
 */
export const routeText = (job: RouteJob, options: RouteTextOptions = {}): string => {
  const { units, width } = expectFields(options, ["units", "width"], "options");
  const order = routeOrder(job);
  const columns = Math.floor(expectNumber(width ?? 72, "options.width", { min: 60, max: 400 }));
  return sheetText({ ...sheetOf(order, readOptions(order, units)), type: "work-order-sheet" }, columns);
};

/**
 * The sheet of a day's route as one HTML page to print, complete in itself, without scripts.
 *
 * @param job - a route, as {@link routeOrder} takes it
 * @param options - `units`
 * @throws RatewrightError as {@link routeSheet}
 *
 * @example
 * ```ts
 * import { routeHtml } from "ratewright";
 * routeHtml({
 *   type: "route-job",
 *   version: 1,
 *   title: "Tuesday feed",
 *   date: "2026-05-05",
 *   products: [{ id: "feed-a", form: "dry", analysis: "24-0-11" }],
 *   spread: { product: "feed-a", target: { value: 0.9, unit: "lb/1000 ft2", of: "N" } },
 *   spreader: { hopper: { value: 100, unit: "lb" } },
 *   stops: [{ id: "town hall", area: { value: 12000, unit: "ft2" } }],
 * }).includes("<h1>Tuesday feed</h1>"); // => true
 * ```
 */
export const routeHtml = (job: RouteJob, options: RouteSheetOptions = {}): string => {
  const { units: stated } = expectFields(options, ["units"], "options");
  const order = routeOrder(job);
  const units = readOptions(order, stated);
  return sheetHtml(
    { ...sheetOf(order, units), type: "work-order-sheet" },
    units === "metric" ? "en" : "en-US",
  );
};
