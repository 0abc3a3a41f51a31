// Salt indexes and potential acidity, typed a second time from the printed tables.
import {
  adviserAcidity,
  californiaAcidity,
  gardenSaltIndexes,
  growerAcidity,
  newMexicoSaltIndexes,
  oregonAcidity,
  oregonSaltIndexes,
  potentialAcidityOfSource,
  rememberedSaltIndexes,
  turfListSaltIndexes,
  weightSaltIndexes,
} from "../../src/nutrient/index.js";
import { type Cell, type ConstantCheck, cells } from "./check.js";

const room = "nutrient";

type Row = {
  readonly material: string;
  readonly value: number;
  readonly percent?: number;
  readonly nitrogenPercent?: number;
};
/** Rows of a table as printed: the material, its figure and, where the table has it, its percentage. */
const rows = (
  table: { readonly rows: readonly Row[] },
  printed: readonly (readonly [material: string, value: number, percent?: number])[],
): readonly Cell[] => [
  ["rows", printed.length, () => table.rows.length],
  ...printed.flatMap(([material, value, percent]) => {
    const of = (): Row | undefined => table.rows.find((row) => row.material === material);
    const figure: Cell = [`${material}: figure`, value, () => of()?.value ?? Number.NaN];
    const share: Cell = [
      `${material}: percent`,
      percent ?? 0,
      () => of()?.percent ?? of()?.nitrogenPercent ?? Number.NaN,
    ];
    return percent === undefined ? [figure] : [figure, share];
  }),
];

/** Every printed salt index and acidity. */
export const saltAcidityConstants: readonly ConstantCheck[] = [
  ...cells(
    { room, reached: "read", source: "Salinity index of common fertilizers (citing Mortvedt 2001), table" },
    rows(weightSaltIndexes, [
      ["ammonia", 47.1],
      ["urea", 74.4],
      ["ammonium nitrate", 104],
      ["calcium nitrate", 65],
      ["monoammonium phosphate", 26.7],
      ["monopotassium phosphate", 8.4],
      ["diammonium phosphate", 29.2],
      ["ammonium sulfate", 88.3],
      ["triple superphosphate", 10.1],
      ["potassium nitrate", 69.5],
      ["single superphosphate", 7.8],
      ["sodium nitrate", 100],
      ["potassium chloride", 116.2],
      ["calcium carbonate", 4.7],
      ["potassium sulfate", 42.6],
      ["calcium sulfate", 8.1],
      ["sodium chloride", 153.8],
    ]),
  ),
  ...cells(
    { room, reached: "read", source: "Salt index values for some garden materials, table" },
    rows(gardenSaltIndexes, [
      ["ammonium nitrate", 105, 33],
      ["ammonium sulfate", 69, 21],
      ["calcium nitrate", 69, 15.5],
      ["dolomite", 1],
      ["magnesium sulfate", 44, 16],
      ["gypsum", 8],
      ["isobutylidene diurea", 5, 30],
      ["potassium chloride", 114, 60],
      ["potassium sulfate", 46, 50],
      ["superphosphate", 8, 20],
      ["ureaform", 10, 38],
      ["urea", 75, 45],
    ]),
  ),
  ...cells(
    {
      room,
      reached: "read",
      source: "Table 26-2, Oregon State University: 3.2, 3.3, 0.2, 0.7, 5.3, 0.7, 1.7, 0.3",
    },
    rows(oregonSaltIndexes, [
      ["ammonium nitrate", 3.2, 33],
      ["ammonium sulfate", 3.3, 21],
      ["isobutylidene diurea", 0.2, 31],
      ["activated sewage sludge", 0.7, 6],
      ["potassium nitrate", 5.3, 13],
      ["sulfur-coated urea", 0.7, 32],
      ["urea", 1.7, 45],
      ["ureaform or methylene urea", 0.3, 38],
    ]),
  ),
  ...cells(
    { room, reached: "read", source: "Saline fertiliser index (after McCarty 2001), list" },
    rows(turfListSaltIndexes, [
      ["ammonium nitrate", 3],
      ["ammonium sulfate", 3.3],
      ["potassium nitrate", 1.6],
      ["calcium nitrate", 4.1],
      ["urea", 1.6],
      ["monoammonium phosphate", 0.5],
      ["diammonium phosphate", 0.6],
      ["potassium chloride", 2.2],
      ["potassium sulfate", 0.9],
    ]),
  ),
  ...cells(
    {
      room,
      reached: "read",
      source: "Fertilizer part 2 (salt index), New Mexico State University 2017, table",
    },
    rows(newMexicoSaltIndexes, [
      ["ammonium sulfate", 53.7],
      ["ammonium nitrate", 49.3],
      ["potassium chloride", 26.7],
      ["potassium sulfate", 14.1],
      ["ammonia", 9.4],
      ["diammonium phosphate", 7.5],
      ["monoammonium phosphate", 6.7],
      ["single superphosphate", 6.4],
      ["triple superphosphate", 3.5],
    ]),
  ),
  ...cells(
    { room, reached: "from memory", source: "partial salt indexes after Rader et al. 1943" },
    rows(rememberedSaltIndexes, [
      ["ammonia", 0.572],
      ["ammonium nitrate", 3.059],
      ["ammonium sulfate", 3.252],
      ["ammonium thiosulfate", 7.533],
      ["urea", 1.618],
      ["UAN 28", 2.25],
      ["UAN 32", 2.221],
      ["10-34-0", 0.455],
      ["diammonium phosphate", 0.456],
      ["monoammonium phosphate", 0.405],
      ["triple superphosphate", 0.224],
      ["single superphosphate", 0.39],
      ["monopotassium phosphate", 0.097],
      ["potassium chloride", 1.936],
      ["potassium nitrate", 1.219],
      ["potassium sulfate", 0.852],
      ["potassium thiosulfate", 2.72],
      ["sodium nitrate", 6.08],
    ]),
  ),
  ...cells(
    {
      room,
      reached: "read",
      source: "Acidity generated from common fertilizers, table 2: 1.8, 1.8, 1.8, 5.4, 5.4, 3.6",
    },
    rows(adviserAcidity, [
      ["ammonia", 1.8],
      ["urea", 1.8],
      ["urea ammonium nitrate", 1.8],
      ["ammonium sulfate", 5.4],
      ["monoammonium phosphate", 5.4],
      ["diammonium phosphate", 3.6],
    ]),
  ),
  ...cells(
    {
      room,
      reached: "read",
      source: "Nitrogen fertilizer characteristics (University of California), table 1",
    },
    rows(californiaAcidity, [
      ["anhydrous ammonia", 1.8, 82],
      ["ammonium sulfate", 5.24, 21],
      ["ammonium nitrate", 1.82, 33.5],
      ["calcium nitrate", -1.29, 15.5],
      ["urea", 1.56, 46],
      ["aqua ammonia", 1.8, 20],
      ["CAN-17", 0.53, 17],
      ["UAN-32", 1.78, 32],
      ["urea solution", 1.56, 23],
      ["ammonium nitrate solution", 1.82, 20],
    ]),
  ),
  ...cells(
    {
      room,
      reached: "read",
      source:
        "N source potential acidity and basicity: 2200, 1680, 1400, 1220, 1120 acid; 400, 520, 580 basic",
    },
    rows(growerAcidity, [
      ["ammonium sulfate", 2200],
      ["urea", 1680],
      ["diammonium phosphate", 1400],
      ["ammonium nitrate", 1220],
      ["monoammonium phosphate", 1120],
      ["calcium nitrate", -400],
      ["potassium nitrate", -520],
      ["sodium nitrate", -580],
    ]),
  ),
  ...cells(
    { room, reached: "read", source: "Table 26-2, Oregon State University: 62, 110, 71 acid, 23 basic" },
    rows(oregonAcidity, [
      ["ammonium nitrate", 62, 33],
      ["ammonium sulfate", 110, 21],
      ["potassium nitrate", -23, 13],
      ["urea", 71, 45],
    ]),
  ),
  // One acid equivalent needs half a CaCO3: 100.087 / 2 / 14.007 per N.
  ...cells(
    {
      room,
      reached: "derived",
      within: 2e-5,
      source: "CaCO3 of 40.078 + 12.011 + 3 x 15.999, nitrogen of 14.007 (IUPAC, abridged)",
    },
    [
      ...(
        [
          ["urea", 0.5, 1],
          ["ammonia", 0.5, 1],
          ["ammonium nitrate", 0.5, 1],
          ["urea ammonium nitrate", 0.5, 1],
          ["ammonium sulfate", 1.5, 2],
          ["monoammonium phosphate", 1.5, 2],
          ["diammonium phosphate", 1, 1.5],
        ] as const
      ).flatMap(([source, half, full]): Cell[] => {
        const per = (40.078 + 12.011 + 3 * 15.999) / 2 / 14.007;
        return [
          [
            `${source}: half credited`,
            half * per,
            () => potentialAcidityOfSource({ source, convention: "half nitrogen credit" }).in("lb/lb"),
          ],
          [
            `${source}: all nitrate`,
            full * per,
            () => potentialAcidityOfSource({ source, convention: "full nitrification" }).in("lb/lb"),
          ],
        ];
      }),
    ],
  ),
];
