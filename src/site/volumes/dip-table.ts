import {
  checks,
  expectFields,
  expectList,
  fail,
  inUnit,
  likeQuantity,
  numberIn,
  outOfRange,
} from "../../quantity/index.js";
import { type Length, lengthOf } from "../lengths.js";
import { type Volume, volumeOf } from "../volumes.js";
import { tankVolumeIn } from "./tank-contents.js";
import { type ReadTank, readTank, type Tank } from "./tank-shapes.js";

/** A table for a dip stick: what the tank holds at each mark. */
export interface DipTable {
  readonly type: "dip-table";
  readonly version: 1;
  readonly capacity: Volume;
  /** From empty to full; the last row is the height of the tank, which need not be a whole step. */
  readonly rows: readonly { readonly depth: Length; readonly volume: Volume }[];
}

/** As many rows as a table may have. */
const mostRows = 2000;

/**
 * The table for a dip stick: depth and volume from empty to full, a row for each step.
 *
 * Each row is worked out by {@link tankContents}; the last is the full tank, also where the height is no whole number
 * of steps. Depths in the unit of the step; volumes in gal for US customary measures and in L for metric ones, or in
 * `unit`.
 *
 * A table from measures is no calibration: fill the tank through a meter once, and check a few rows.
 *
 * @throws RatewrightError `range` for a step that is larger than the tank or makes more than 2000 rows; with every
 * measure that is not right: `missing`, `type`, `unit/mismatch`, `not-finite`
 *
 * Source: solid geometry.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { dipTable } from "ratewright/site";
 * const tank = { shape: "lying cylinder", diameter: quantity(48, "in"), length: quantity(65, "in") } as const;
 * const table = dipTable({ tank, step: quantity(12, "in") });
 * table.rows.map(({ depth, volume }) => [depth.in("in"), Math.round(volume.in("gal"))]);
 * // => [[0, 0], [12, 100], [24, 255], [36, 410], [48, 509]]
 * ```
 */
export const dipTable = (input: {
  readonly tank: Tank;
  readonly step: Length;
  /** A unit of volume; gal or L where it is left out. */
  readonly unit?: "gal" | "imp gal" | "ft3" | "L" | "m3";
}): DipTable => {
  const problems = checks();
  const record = expectFields(input, ["tank", "step", "unit"]);
  const read = problems.run(() => readTank(record.tank));
  const step = problems.run(() => lengthOf(record.step, "step"));
  const given = record.unit;
  if (given !== undefined) {
    problems.run(() =>
      typeof given === "string"
        ? volumeOf({ value: 1, unit: given }, "unit")
        : fail("type", "unit", given, 'a unit for a volume, such as "gal"'),
    );
  }
  problems.done();
  const tank = read as ReadTank;
  const each = step as Length;
  const size = each.in(tank.units.length);
  const steps = tank.height / size;
  if (steps < 1 || steps > mostRows) {
    outOfRange(
      "step",
      each,
      { min: tank.height / mostRows, max: tank.height, unit: tank.units.length },
      `{}, a step that goes 1 to ${mostRows} times into the height`,
    );
  }
  const volumeAt = (depth: number): Volume => {
    const volume = tankVolumeIn(tank.volumeTo(depth), tank.units);
    return typeof given === "string" ? inUnit(volume, given) : volume;
  };
  const rows: { depth: Length; volume: Volume }[] = [];
  const whole = Math.floor(steps * (1 + 1e-12));
  for (let i = 0; i <= whole; i++) {
    rows.push({
      depth: likeQuantity(each, i * each.value),
      volume: volumeAt(Math.min(i * size, tank.height)),
    });
  }
  if (tank.height - whole * size > 1e-9 * tank.height) {
    rows.push({
      depth: likeQuantity(each, Number((steps * each.value).toPrecision(12))),
      volume: volumeAt(tank.height),
    });
  }
  return { type: "dip-table", version: 1, capacity: volumeAt(tank.height), rows };
};

/**
 * A table for a dip stick as text, a line for each mark, for a card at the tank.
 *
 * Depths to the hundredth of the unit, in feet and meters to a ten-thousandth, volumes to the tenth; the numbers are rounded for reading only.
 *
 * @throws RatewrightError `type`, `missing`, `unit/mismatch`, `not-finite` for anything but a table; `range`
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { dipTable, dipTableText } from "ratewright/site";
 * const tank = { shape: "upright cylinder", diameter: quantity(1, "m"), height: quantity(50, "cm") } as const;
 * dipTableText(dipTable({ tank, step: quantity(25, "cm") }));
 * // => "Depth\tVolume\n0 cm\t0 L\n25 cm\t196.3 L\n50 cm\t392.7 L\nFull: 392.7 L"
 * ```
 */
export const dipTableText = (table: DipTable): string => {
  const record = expectFields(table, ["type", "version", "capacity", "rows"], "table");
  const problems = checks();
  const capacity = problems.run(() => volumeOf(record.capacity, "table.capacity"));
  const list = problems.run(() => expectList(record.rows, "table.rows", "row"));
  if ((list?.length ?? 0) > mostRows + 2)
    problems.run(() => outOfRange("table.rows", list, { max: mostRows, count: "rows" }));
  const lines = (list ?? []).slice(0, mostRows + 2).map((row, i) =>
    problems.run(() => {
      const { depth, volume } = expectFields(row, ["depth", "volume"], `table.rows[${i}]`);
      const dip = lengthOf(depth, `table.rows[${i}].depth`, "non-negative");
      const held = volumeOf(volume, `table.rows[${i}].volume`, "non-negative");
      return `${shortly(dip, /^(m|ft|yd)$/.test(dip.unit) ? 10_000 : 100)}\t${shortly(held, 10)}`;
    }),
  );
  problems.done();
  return ["Depth\tVolume", ...lines, `Full: ${shortly(capacity as Volume, 10)}`].join("\n");
};

/** A quantity to so many parts of its unit, as text. */
const shortly = (q: Length | Volume, parts: number): string => {
  const number = numberIn(q, q.unit);
  const rounded = Math.round(number * parts) / parts;
  // A number near the largest has no decimals to round, and times `parts` it is none
  return `${Number.isFinite(rounded) ? rounded : number} ${q.unit}`;
};
