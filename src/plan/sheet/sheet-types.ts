import type { CivilDate } from "../../calendar/index.js";

/** Columns of a table on a sheet; a cell that is left empty for a pen is `"____"`. */
export interface SheetRow {
  readonly cells: readonly string[];
  /** A line under the row, such as the caution of a step. */
  readonly note?: string;
}

/** A place to write: a label, and what the job fills in or `null` for a blank of so many characters. */
export interface SheetBlank {
  readonly label: string;
  readonly value: string | null;
  readonly room: number;
}

/** A part of a section. */
export type SheetBlock =
  | { readonly kind: "text"; readonly text: string; readonly strong?: boolean }
  | { readonly kind: "list"; readonly mark: "-" | "[ ]" | "!"; readonly items: readonly string[] }
  | { readonly kind: "table"; readonly heads: readonly string[]; readonly rows: readonly SheetRow[] }
  | { readonly kind: "blanks"; readonly blanks: readonly SheetBlank[] };

/** A section of a sheet. */
export interface SheetSection {
  /** Stable: `"stop"`, `"look first"`, `"spread"`, `"spray"`, `"store"`, `"after"`, `"record"`, `"back"`, ... */
  readonly id: string;
  readonly title: string;
  /** The treatment of the job that it is about. */
  readonly treatment?: string;
  readonly blocks: readonly SheetBlock[];
}

/** A sheet as data: every figure as it is printed, in the units of the sheet. */
export interface WorkOrderSheet {
  readonly type: "work-order-sheet";
  readonly version: 1;
  readonly copy: "shed" | "office";
  readonly units: "US customary" | "metric" | "both";
  readonly title: string;
  readonly site: string;
  readonly date: CivilDate;
  /** The date as people say it: `"Mon Jun 8, 2015"`. */
  readonly day: string;
  readonly head: readonly SheetBlank[];
  readonly front: readonly SheetSection[];
  /** What is printed on the back, or on the pages that follow. */
  readonly back: readonly SheetSection[];
}

/** A blank. */
export const blank = (label: string, value: string | undefined, room = 12): SheetBlank => ({
  label,
  value: value ?? null,
  room,
});

/** Where a pen writes. */
export const penned = "____";
