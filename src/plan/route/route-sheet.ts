import { counted } from "../../quantity/house.js";
import { expectFields, expectNumber, expectOneOf, ofKind } from "../../quantity/index.js";
import type { SheetUnits } from "../job/job.js";
import { officeSheet } from "../office/office-sheet.js";
import { shedSheet } from "../shed/shed-sheet.js";
import { sheetHtml } from "../sheet/sheet-html.js";
import { sheetText } from "../sheet/sheet-text.js";
import type { SheetSection, WorkOrderSheet } from "../sheet/sheet-types.js";
import { areaUnitOf, firstUnits, unitFor } from "../sheet/sheet-units.js";
import type { SpreadOrder } from "../visit/spread-order.js";
import type { WorkOrder } from "../visit/work-order.js";
import { ofFills } from "./of-fills.js";
import type { RouteJob } from "./route-job.js";
import { officeSections } from "./route-office.js";
import { type RouteOrder, routeOrder } from "./route-order.js";
import { fillSection, recordSection, routeSection, type Writer } from "./route-sections.js";

/** The sheet of a route as data: sections of lines, tables and blanks. */
export interface RouteSheet extends Omit<WorkOrderSheet, "type"> {
  readonly type: "route-sheet";
}

/** Which sheet, and in which units. */
export interface RouteSheetOptions {
  /** `"shed"`, for the crew, where it is left out; `"office"` has product and limits of each stop, findings and sources. */
  readonly copy?: "shed" | "office";
  /** The units of the route where it is left out. */
  readonly units?: SheetUnits;
}

/** How the sheet is written as text. */
export interface RouteTextOptions extends RouteSheetOptions {
  /** Columns of a line; 72 where it is left out. */
  readonly width?: number;
}

/** What is spread, by what leaves the store for it: what is in the hopper at the start is there already. */
const fromStore = ({ spread, loads, stops }: RouteOrder): readonly SpreadOrder[] => {
  if (spread === undefined) return [];
  const amount = ofKind<"mass", `product:${string}`>(loads.loaded);
  const part = {
    part: counted(stops.length, "stop"),
    area: spread.area,
    amount,
    perPass: amount.dividedBy(spread.passes),
  };
  return [{ ...spread, amount, byPart: [part] }];
};

/** The route as a visit whose site is all stops: what a sheet of a visit says of the machine and the work holds for it. */
const asVisit = (order: RouteOrder, whole = ofKind<"area", "none">(order.loads.area)): WorkOrder => ({
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
      gross: whole,
      cutOut: whole.times(0),
      net: whole,
    },
  },
  spreads: fromStore(order),
  sprays: order.spray === undefined ? [] : [order.spray],
  nutrients: [],
  repeats: [],
  buffers: [],
  findings: order.findings,
  cautions: order.cautions,
  checked: [],
  notChecked: order.notChecked,
});

/** The jar test of a visit, as the crew of a route reads it. */
const jarOfFills = (section: SheetSection): SheetSection =>
  section.id !== "jar test"
    ? section
    : {
        ...section,
        title: ofFills(section.title),
        blocks: section.blocks.map((block) =>
          block.kind === "list" ? { ...block, items: block.items.map(ofFills) } : block,
        ),
      };

const sheetOf = (order: RouteOrder, { copy, units }: Required<RouteSheetOptions>): RouteSheet => {
  const first = firstUnits(units);
  const unit = unitFor(order.loads.capacity, first);
  const perArea = order.spray?.tank.applicationVolume ?? order.spread?.rate;
  const areaUnit = areaUnitOf(perArea === undefined ? "" : unitFor(perArea, first), order.loads.area, first);
  const writer: Writer = { order, first, unit, areaUnit };
  if (copy === "office") {
    const { type: _, front, ...office } = officeSheet(asVisit({ ...order, units }));
    const [findings = [], others = []] = [true, false].map((wanted) =>
      front.filter(({ id }) => (id === "findings") === wanted),
    );
    const stops = officeSections(order, first, areaUnit);
    return { ...office, type: "route-sheet", front: [...findings, ...stops, ...others] };
  }
  const { type: _, front, back, ...visit } = shedSheet(asVisit({ ...order, units }));
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
    front: [
      ...section("stop"),
      routeSection(writer),
      ...setting,
      ...fillSection(writer, machine),
      ...section("store"),
      ...section("after"),
      recordSection(writer),
    ],
    back: back.map(jarOfFills),
  };
};

const readOptions = (
  order: RouteOrder,
  { copy = "shed", units = order.units }: { readonly copy?: unknown; readonly units?: unknown },
): Required<RouteSheetOptions> => ({
  copy: expectOneOf(copy, ["shed", "office"], "options.copy"),
  units: expectOneOf(units, ["US customary", "metric", "both"], "options.units"),
});

/**
 * The sheet of a day's route as data, for an app that draws it itself: what stops the work, the stops in their order
 * with the fillings where they come, what goes into each filling, what comes out of the store, and the record of each
 * stop. Figures are rounded for measuring and reading only; those of {@link routeOrder} are not.
 *
 * @param job - a route, as {@link routeOrder} takes it
 * @param options - `copy`, that for the shed where left out; `units`, those of the route where left out
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
  const given = expectFields(options, ["copy", "units"], "options");
  const order = routeOrder(job);
  return sheetOf(order, readOptions(order, given));
};

/**
 * The sheet of a day's route as plain text.
 *
 * @param job - a route, as {@link routeOrder} takes it
 * @param options - `copy`; `units`; `width`, the columns of a line: 60 to 400, 72 where left out
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
  const given = expectFields(options, ["copy", "units", "width"], "options");
  const order = routeOrder(job);
  const columns = Math.floor(expectNumber(given.width ?? 72, "options.width", { min: 60, max: 400 }));
  return sheetText({ ...sheetOf(order, readOptions(order, given)), type: "work-order-sheet" }, columns);
};

/**
 * The sheet of a day's route as one HTML page to print, complete in itself, without scripts.
 *
 * @param job - a route, as {@link routeOrder} takes it
 * @param options - `copy`; `units`
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
  const given = expectFields(options, ["copy", "units"], "options");
  const order = routeOrder(job);
  const read = readOptions(order, given);
  return sheetHtml(
    { ...sheetOf(order, read), type: "work-order-sheet" },
    read.units === "metric" ? "en" : "en-US",
  );
};
