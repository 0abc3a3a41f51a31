import { allOf, expectFields, expectQuantity, type Finding } from "../../quantity/index.js";
import { expectBufferPH } from "../report/expect-ph.js";
import { expectTarget, noneNeeded } from "./expect-target.js";
import type { FoundRequirement } from "./found-requirement.js";
import { iowaTable } from "./iowa-table.js";
import { type LimeTable, tableRate } from "./lime-table.js";
import { oregonSikoraTable } from "./oregon-sikora-table.js";
import { pennStateTurfTable } from "./penn-state-turf-table.js";

/** The methods that read a table. */
type TableMethod = "Mehlich buffer, Pennsylvania turf" | "Sikora buffer, Oregon" | "buffer pH, Iowa";

const tables: Readonly<Record<TableMethod, LimeTable>> = {
  "Mehlich buffer, Pennsylvania turf": pennStateTurfTable,
  "Sikora buffer, Oregon": oregonSikoraTable,
  "buffer pH, Iowa": iowaTable,
};

const readingOf = (
  table: LimeTable,
  record: { readonly acidity?: unknown; readonly bufferPH?: unknown },
): number => {
  if (table.by === "bufferPH") return expectBufferPH(record.bufferPH, "bufferPH");
  const wanted = { dimension: "exchange capacity", of: "none", bound: "non-negative" } as const;
  return expectQuantity(record.acidity, wanted, "acidity").in("meq/100 g");
};

/** Lime by a published table. */
export const tableRequirement = (method: TableMethod, input: unknown): FoundRequirement => {
  const table = tables[method];
  const record = expectFields(input, ["method", "pH", "targetPH", table.by], "input");
  const read = allOf({
    phs: () => expectTarget(record),
    reading: () => readingOf(table, record),
  });
  const { targetPH, pH } = read.phs;
  const of = "CaCO3 equivalent" as const;
  if (pH === targetPH) return { value: 0, unit: table.unit, of, targetPH, findings: [noneNeeded(read.phs)] };
  const { value, exact } = tableRate(table, read.reading, targetPH);
  return {
    value,
    unit: table.unit,
    of,
    targetPH,
    findings: [
      ...(exact ? [] : [between(table, read.reading)]),
      ...(method === "buffer pH, Iowa" && targetPH === 6.9 && read.reading < 6 ? [oddFigure(table)] : []),
    ],
  };
};

const between = (table: LimeTable, reading: number): Finding => ({
  code: "lime/between-rows",
  severity: "note",
  path: table.by,
  params: { reading },
  text: `The table has no row for ${reading}: the rate is interpolated between its neighbors.`,
  source: table.source,
});

const oddFigure = (table: LimeTable): Finding => ({
  code: "lime/doubtful-figure",
  severity: "caution",
  path: "bufferPH",
  params: { printed: 10_600, bySteps: 11_000 },
  text: "The last figure of this column, 10,600 lb an acre, breaks the steps of the rest, which would give 11,000: it may be a misprint.",
  source: table.source,
});
