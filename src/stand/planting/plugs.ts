import { wholeUnitsFor, wholeUnitsWithin } from "../../numeric/index.js";
import { allOf, expectFields, fail, type Quantity, quantity } from "../../quantity/index.js";
import {
  type Area,
  areaAt,
  isMetric,
  type Length,
  lengthAt,
  percentAt,
  type Share,
  wholeAt,
} from "../read.js";

/** A plug: square with a side, or round with a diameter. */
export type Plug = { readonly side: Length } | { readonly diameter: Length };

/** A plug in millimetres: the square that it takes of the sod, and the ground that it covers. */
export interface PlugInMm {
  /** Side of the square of sod that it is cut from. */
  readonly square: number;
  /** Area that is green, in mm2. */
  readonly area: number;
  readonly unit: string;
}

/** Reads a plug. */
export const plugAt = (input: unknown, path: string): PlugInMm => {
  const record = expectFields(input, ["side", "diameter"], path, "a plug with side or diameter");
  const { side, diameter } = record;
  if ((side === undefined) === (diameter === undefined)) {
    fail(
      side === undefined ? "missing" : "conflict",
      path,
      input,
      "side for a square plug, or diameter for a round one",
    );
  }
  const size = side === undefined ? lengthAt(diameter, `${path}.diameter`) : lengthAt(side, `${path}.side`);
  const mm = size.in("mm");
  return { square: mm, area: side === undefined ? (Math.PI / 4) * mm * mm : mm * mm, unit: size.unit };
};

/**
 * Whole plugs out of a piece of sod: as many whole squares as fit along its length, times as many as fit
 * along its width. A round plug is cut from its square. One ft2 gives 36 plugs of 2 in, 9 of 4 in.
 *
 * @param input.piece - length and width of the piece of sod
 * @throws RatewrightError `missing`, `conflict`, `range`, `unit/mismatch`, `type`; all that are found
 * Source: geometry.
 *
 * @example
 * ```ts
 * import { plugsFromSod, quantity } from "ratewright";
 * const piece = { length: quantity(24, "in"), width: quantity(16, "in") };
 * plugsFromSod({ piece, plug: { side: quantity(3, "in") } }); // => 40
 * ```
 */
export const plugsFromSod = (input: {
  readonly piece: { readonly length: Length; readonly width: Length };
  readonly plug: Plug;
}): number => {
  const record = expectFields(input, ["piece", "plug"]);
  const { piece, plug } = allOf({
    piece: () => pieceAt(record.piece, "piece"),
    plug: () => plugAt(record.plug, "plug"),
  });
  return wholeUnitsWithin(piece.length, plug.square) * wholeUnitsWithin(piece.width, plug.square);
};

/** Reads a piece of sod, in millimetres. */
export const pieceAt = (
  input: unknown,
  path: string,
): { readonly length: number; readonly width: number; readonly unit: string } => {
  const record = expectFields(input, ["length", "width"], path, "a piece with length and width");
  const { length, width } = allOf({
    length: () => lengthAt(record.length, `${path}.length`),
    width: () => lengthAt(record.width, `${path}.width`),
  });
  return { length: length.in("mm"), width: width.in("mm"), unit: length.unit };
};

/**
 * The sod to cut a number of plugs from: `A = N p^2 (1 + w)`, with `p` the side of the plug, or the
 * diameter of a round one, which is cut from its square.
 *
 * Pieces that end between two plugs waste more: count them with {@link plugsFromSod}.
 *
 * @param input.plugs - `N`, whole plugs, as `plantsFor` gives
 * @param input.waste - `w`, on top, for plugs that fall apart; none where it is left out
 * @returns in m2 for a plug in metric units, else in ft2
 * @throws RatewrightError `missing`, `conflict`, `range`, `unit/mismatch`, `type`; all that are found
 * Source: geometry.
 *
 * @example
 * ```ts
 * import { quantity, sodForPlugs } from "ratewright";
 * sodForPlugs({ plugs: 3600, plug: { side: quantity(2, "in") } }).in("ft2"); // => 100
 * ```
 */
export const sodForPlugs = (input: {
  readonly plugs: number;
  readonly plug: Plug;
  readonly waste?: Share;
}): Area => {
  const record = expectFields(input, ["plugs", "plug", "waste"]);
  const { plugs, plug, waste } = allOf({
    plugs: () => wholeAt(record.plugs, "plugs"),
    plug: () => plugAt(record.plug, "plug"),
    waste: () => percentAt(record.waste, "waste", { min: 0, max: 100 }, 0),
  });
  const mm2 = (plugs * plug.square * plug.square * (100 + waste)) / 100;
  return isMetric(plug.unit) ? quantity(mm2 / 1e6, "m2") : quantity(mm2 / (25.4 * 25.4) / 144, "ft2");
};

/** Sod to order. */
export interface SodOrder {
  readonly type: "sod-order";
  readonly version: 1;
  /** The area to order: the ground and the waste. */
  readonly needed: Area;
  /** Area of one piece or roll; `null` where none was stated. */
  readonly piece: Area | null;
  /** Whole pieces or rolls. */
  readonly pieces: number | null;
  /** Area of one pallet. */
  readonly pallet: Area | null;
  /** Whole pallets. */
  readonly pallets: number | null;
  /** What comes beyond the ground itself, by pallets where they are stated, else by pieces. */
  readonly beyond: Area | null;
}

/**
 * Sod for an area, by piece or roll and by pallet, both rounded up: `A (1 + w)`.
 *
 * A pallet holds 400 to 700 ft2 by farm and grass, 450 often: ask. Waste of 3 to 5 % for straight edges is
 * printed, 10 % for curved ones; it is asked for, not assumed.
 *
 * @param input.area - `A`, the ground, more than zero
 * @param input.waste - `w`, on top of the area; 0 % is an answer too
 * @param input.piece - length and width of a piece or roll
 * @param input.pallet - the area on a pallet, or the whole number of pieces
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`, `type`; `missing` for a pallet by pieces
 * without a piece; all that are found
 * Source: geometry; University of Maryland Extension for 3 to 5 % of waste, from search notes.
 *
 * @example
 * ```ts
 * import { quantity, sodOrder } from "ratewright";
 * const order = sodOrder({
 *   area: quantity(4000, "ft2"), waste: quantity(5, "%"),
 *   piece: { length: quantity(6, "ft"), width: quantity(18, "in") }, pallet: { pieces: 50 },
 * });
 * order.pieces; // => 467
 * order.pallet?.in("ft2"); // => 450
 * order.pallets; // => 10
 * ```
 */
export const sodOrder = (input: {
  readonly area: Area;
  readonly waste: Share;
  readonly piece?: { readonly length: Length; readonly width: Length };
  readonly pallet?: { readonly area: Area } | { readonly pieces: number };
}): SodOrder => {
  const record = expectFields(input, ["area", "waste", "piece", "pallet"]);
  const read = allOf({
    area: () => areaAt(record.area, "area"),
    waste: () => percentAt(record.waste, "waste", { min: 0, max: 100 }),
    piece: () => (record.piece === undefined ? undefined : pieceAt(record.piece, "piece")),
    pallet: () => (record.pallet === undefined ? undefined : palletAt(record.pallet, record.piece)),
  });
  const metric = isMetric(read.area.unit);
  const unit = metric ? "m2" : "ft2";
  const squareMm = metric ? 1e6 : 144 * 25.4 * 25.4;
  const ground = read.area.in(unit);
  const needed = (ground * (100 + read.waste)) / 100;
  const piece = read.piece === undefined ? null : (read.piece.length * read.piece.width) / squareMm;
  const pieces = piece === null ? null : wholeUnitsFor(needed, piece);
  const pallet =
    read.pallet === undefined
      ? null
      : "area" in read.pallet
        ? read.pallet.area.in(unit)
        : read.pallet.pieces * (piece as number);
  const pallets = pallet === null ? null : wholeUnitsFor(needed, pallet);
  const comes =
    pallet !== null && pallets !== null
      ? pallet * pallets
      : piece !== null && pieces !== null
        ? piece * pieces
        : null;
  const area = (value: number | null): Area | null => (value === null ? null : quantity(value, unit));
  return {
    type: "sod-order",
    version: 1,
    needed: quantity(needed, unit),
    piece: area(piece),
    pieces,
    pallet: area(pallet),
    pallets,
    beyond: area(comes === null ? null : comes - ground),
  };
};

const palletAt = (
  input: unknown,
  piece: unknown,
): { readonly area: Quantity<"area", "none"> } | { readonly pieces: number } => {
  const record = expectFields(input, ["area", "pieces"], "pallet", "a pallet with area or pieces");
  if ((record.area === undefined) === (record.pieces === undefined)) {
    fail(
      record.area === undefined ? "missing" : "conflict",
      "pallet",
      input,
      "the area on a pallet, or its number of pieces",
    );
  }
  if (record.area !== undefined) return { area: areaAt(record.area, "pallet.area") };
  if (piece === undefined) fail("missing", "piece", piece, "length and width of a piece");
  return { pieces: wholeAt(record.pieces, "pallet.pieces") };
};
