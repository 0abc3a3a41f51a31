import { quantity } from "../../../src/quantity/index.js";
import {
  nurseryArea,
  plantsFor,
  plantsPerArea,
  plugsFromSod,
  sodForPlugs,
  sodOrder,
  spacingFor,
  sprigBushelsOf,
  sprigsFor,
  staggeredRowSpacing,
} from "../../../src/stand/index.js";
import { type Refusal, refusalsOf } from "../../told.js";

const inches = (value: number) => quantity(value, "in");
const percent = (value: number) => quantity(value, "%");
const area = quantity(1000, "ft2");
const spacing = inches(12);
const plug = { side: inches(2) };
const piece = { length: quantity(6, "ft"), width: quantity(1.5, "ft") };
const rate = quantity(400, "count/acre");
const bushel = quantity(1, "bu");

const rows: readonly Refusal[] = [
  [
    "no grid at all",
    plantsPerArea,
    [undefined],
    ["missing grid: a record with pattern, spacing [undefined]"],
  ],
  [
    "a grid of nothing",
    plantsPerArea,
    [{}],
    [
      'missing pattern: one of "square", "triangular", "rectangular" [undefined]',
      "missing spacing: a length, such as 10 ft or 3 m [undefined]",
    ],
  ],
  [
    "a grid as a quantity",
    plantsPerArea,
    [spacing],
    ["type pattern: a record with pattern, spacing, rowSpacing: write { pattern: ... } [12 in]"],
  ],
  [
    "another pattern",
    plantsPerArea,
    [{ pattern: "hexagonal", spacing }],
    ['type pattern: one of "square", "triangular", "rectangular" ["hexagonal"]'],
  ],
  [
    "a rectangle without rows",
    plantsPerArea,
    [{ pattern: "rectangular", spacing }],
    ["missing rowSpacing: a length, such as 10 ft or 3 m [undefined]"],
  ],
  [
    "rows of a triangle",
    plantsPerArea,
    [{ pattern: "triangular", spacing, rowSpacing: spacing }],
    [
      'conflict rowSpacing: none for a triangular pattern, which sets it itself; or pattern "rectangular" [12 in]',
    ],
  ],
  [
    "a field of a grid that is not known",
    plantsPerArea,
    [{ pattern: "square", spacing, rows: 2 }],
    ['type rows: one of the fields pattern, spacing, rowSpacing [a field "rows"]'],
  ],
  [
    "no spacing of rows",
    staggeredRowSpacing,
    [undefined],
    ["missing spacing: a length, such as 10 ft or 3 m [undefined]"],
  ],
  ["a spacing of nothing", staggeredRowSpacing, [inches(0)], ["range spacing: more than zero [0 in]"]],
  [
    "nothing for a spacing",
    spacingFor,
    [{}],
    [
      'missing pattern: one of "square", "triangular" [undefined]',
      "missing plantsPerArea: a count over an area, such as 12 count/ft2 or 130 count/m2 [undefined]",
    ],
  ],
  [
    "a rectangle for a spacing",
    spacingFor,
    [{ pattern: "rectangular", plantsPerArea: quantity(1, "count/ft2") }],
    ['type pattern: one of "square", "triangular" ["rectangular"]'],
  ],
  [
    "no plants for a spacing",
    spacingFor,
    [{ pattern: "square", plantsPerArea: quantity(0, "count/ft2") }],
    ["range plantsPerArea: more than zero [0 count/ft2]"],
  ],
  [
    "nothing of plants",
    plantsFor,
    [{}],
    [
      "missing area: an area, such as 5000 ft2 or 500 m2 [undefined]",
      'missing pattern: one of "square", "triangular", "rectangular" [undefined]',
      "missing spacing: a length, such as 10 ft or 3 m [undefined]",
    ],
  ],
  [
    "less than no losses, part of a tray",
    plantsFor,
    [{ area, pattern: "square", spacing, extra: percent(-1), perTray: 1.5 }],
    ["range extra: 0 % or more [-1 %]", "range perTray: a whole number, 1 or more [1.5]"],
  ],
  [
    "a tray of none",
    plantsFor,
    [{ area, pattern: "square", spacing, perTray: 0 }],
    ["range perTray: a whole number, 1 or more [0]"],
  ],
  [
    "nothing of sod",
    plugsFromSod,
    [{}],
    [
      "missing piece: a piece with length and width [undefined]",
      "missing plug: a plug with side or diameter [undefined]",
    ],
  ],
  [
    "a piece without its sides",
    plugsFromSod,
    [{ piece: {}, plug: {} }],
    [
      "missing piece.length: a length, such as 10 ft or 3 m [undefined]",
      "missing piece.width: a length, such as 10 ft or 3 m [undefined]",
      "missing plug: side for a square plug, or diameter for a round one [a record]",
    ],
  ],
  [
    "a plug that is square and round",
    plugsFromSod,
    [{ piece, plug: { side: inches(1), diameter: inches(1) } }],
    ["conflict plug: side for a square plug, or diameter for a round one [a record]"],
  ],
  [
    "a plug of no side",
    plugsFromSod,
    [{ piece, plug: { side: inches(0) } }],
    ["range plug.side: more than zero [0 in]"],
  ],
  [
    "a plug of no diameter",
    plugsFromSod,
    [{ piece, plug: { diameter: inches(0) } }],
    ["range plug.diameter: more than zero [0 in]"],
  ],
  [
    "a plug as a length",
    plugsFromSod,
    [{ piece, plug: inches(2) }],
    ["type plug: a record with side, diameter: write { side: ... } [2 in]"],
  ],
  [
    "a piece of no length",
    plugsFromSod,
    [{ piece: { length: inches(0), width: inches(0) }, plug }],
    ["range piece.length: more than zero [0 in]", "range piece.width: more than zero [0 in]"],
  ],
  [
    "nothing for plugs",
    sodForPlugs,
    [{}],
    ["missing plugs: a whole number [undefined]", "missing plug: a plug with side or diameter [undefined]"],
  ],
  [
    "no plugs, and less than no waste",
    sodForPlugs,
    [{ plugs: 0, plug, waste: percent(-1) }],
    ["range plugs: a whole number, 1 or more [0]", "range waste: 0 to 100 % [-1 %]"],
  ],
  [
    "nothing of an order",
    sodOrder,
    [{}],
    [
      "missing area: an area, such as 5000 ft2 or 500 m2 [undefined]",
      "missing waste: a share, such as 85 % [undefined]",
    ],
  ],
  [
    "waste below nothing",
    sodOrder,
    [{ area: quantity(0, "ft2"), waste: percent(-1) }],
    ["range area: more than zero [0 ft2]", "range waste: 0 to 100 % [-1 %]"],
  ],
  [
    "a pallet without a size",
    sodOrder,
    [{ area, waste: percent(5), pallet: {} }],
    ["missing pallet: the area on a pallet, or its number of pieces [a record]"],
  ],
  [
    "a pallet of two sizes",
    sodOrder,
    [{ area, waste: percent(5), piece, pallet: { area, pieces: 5 } }],
    ["conflict pallet: the area on a pallet, or its number of pieces [a record]"],
  ],
  [
    "pieces of no size on a pallet",
    sodOrder,
    [{ area, waste: percent(5), pallet: { pieces: 5 } }],
    ["missing piece: length and width of a piece [undefined]"],
  ],
  [
    "part of a piece on a pallet",
    sodOrder,
    [{ area, waste: percent(5), piece, pallet: { pieces: 1.5 } }],
    ["range pallet.pieces: a whole number, 1 or more [1.5]"],
  ],
  [
    "a pallet of no area",
    sodOrder,
    [{ area, waste: percent(5), pallet: { area: quantity(0, "ft2") } }],
    ["range pallet.area: more than zero [0 ft2]"],
  ],
  [
    "a pallet as an area",
    sodOrder,
    [{ area, waste: percent(5), pallet: area }],
    ["type pallet: a record with area, pieces: write { area: ... } [1000 ft2]"],
  ],
  [
    "a piece that has no width",
    sodOrder,
    [{ area, waste: percent(5), piece: { length: inches(9) } }],
    ["missing piece.width: a length, such as 10 ft or 3 m [undefined]"],
  ],
  ["a bushel of nobody", sprigBushelsOf, ["Ohio"], ['type name: one of "US", "Georgia", "Texas" ["Ohio"]']],
  [
    "nothing of sprigs",
    sprigsFor,
    [{}],
    [
      "missing area: an area, such as 5000 ft2 or 500 m2 [undefined]",
      "missing rate: bushels per area, such as 400 count/acre, or a volume per area [undefined]",
      "missing bushel: a volume, such as 2 gal or 8 L [undefined]",
    ],
  ],
  [
    "no sprigs",
    sprigsFor,
    [{ area, rate: quantity(0, "count/acre"), bushel }],
    ["range rate: more than zero [0 count/acre]"],
  ],
  [
    "no layer of sprigs",
    sprigsFor,
    [{ area, rate: quantity(0, "ft3/acre"), bushel }],
    ["range rate: more than zero [0 ft3/acre]"],
  ],
  [
    "sprigs by weight",
    sprigsFor,
    [{ area, rate: quantity(5, "lb/acre"), bushel }],
    [
      "unit/mismatch rate: a count over an area or a volume over an area, such as 12 count/ft2 or 1 gal/1000 ft2 [5 lb/acre]",
    ],
  ],
  [
    "sprigs per pound",
    sprigsFor,
    [{ area, rate: quantity(5, "count/lb"), bushel }],
    [
      "unit/mismatch rate: a count over an area or a volume over an area, such as 12 count/ft2 or 1 gal/1000 ft2 [5 count/lb]",
    ],
  ],
  [
    "a rate that is null",
    sprigsFor,
    [{ area, rate: null, bushel }],
    [
      "type rate: a count over an area or a volume over an area, such as 12 count/ft2 or 1 gal/1000 ft2, made by quantity(number, unit) [null]",
    ],
  ],
  [
    "sprigs in US bushels beside a bushel of another size",
    sprigsFor,
    [{ area, rate: quantity(10, "bu/1000 ft2"), bushel: quantity(0.4, "ft3") }],
    [
      "conflict rate: bushels of 0.4 ft3 as a count: the unit bu is 1.244 ft3 [10 bu/1000 ft2] 10 count/1000 ft2?",
    ],
  ],
  [
    "a bushel of nothing",
    sprigsFor,
    [{ area, rate, bushel: quantity(0, "bu") }],
    ["range bushel: more than zero [0 bu]"],
  ],
  [
    "a nursery of nothing",
    nurseryArea,
    [{}],
    [
      "missing area: an area, such as 5000 ft2 or 500 m2 [undefined]",
      "missing expansion: area planted by area harvested [undefined]",
    ],
  ],
  [
    "a nursery that does not grow",
    nurseryArea,
    [{ area: quantity(0, "acre"), expansion: 0 }],
    ["range area: more than zero [0 acre]", "range expansion: more than 0 [0]"],
  ],
];

refusalsOf("what is refused of planting", rows);
