// Tables of the tank room, typed a second time from what their sources print.
import { quantity } from "../../src/quantity/index.js";
import { type HardnessSchemeId, halfLives, hardnessClass } from "../../src/tank/index.js";
import { fixedJarAmounts } from "../../src/tank/jar/jar-facts.js";
import { type Cell, type ConstantCheck, cells, edge } from "./check.js";

const room = "tank";
const read = { room, reached: "read" } as const;

const classOf = (scheme: HardnessSchemeId, name: string, outside: number) => (): number =>
  // A hardness is rounded to whole mg/L first: the class ends half a unit above its printed end.
  edge(
    (mg) => hardnessClass(quantity(mg, "mg/L", "hardness as CaCO3"), scheme) === name,
    outside - 25,
    outside,
  ) - 0.5;
const hardness: readonly ConstantCheck[] = [
  ...cells(
    {
      ...read,
      source: "US Geological Survey: 0-60 soft, 61-120 moderately hard, 121-180 hard, over 180 very hard",
    },
    [
      ["USGS: soft to, mg/L", 60, classOf("USGS", "soft", 80)],
      ["USGS: moderately hard to, mg/L", 120, classOf("USGS", "moderately hard", 140)],
      ["USGS: hard to, mg/L", 180, classOf("USGS", "hard", 200)],
    ],
  ),
  ...cells({ ...read, source: "Vermont Department of Health: below 75, 76-150, 151-300, above 300" }, [
    ["Vermont: soft to, mg/L", 75, classOf("Vermont", "soft", 90)],
    ["Vermont: moderately hard to, mg/L", 150, classOf("Vermont", "moderately hard", 170)],
    ["Vermont: hard to, mg/L", 300, classOf("Vermont", "hard", 320)],
  ]),
];

type Unit = "min" | "h" | "d";
const life = (
  active: string,
  pH: number,
  shortest: number,
  longest: number,
  unit: Unit,
  publisher: RegExp,
): readonly Cell[] => {
  const of = () =>
    halfLives.find((one) => one.active === active && one.pH === pH && publisher.test(one.source.publisher));
  const minutes = { min: 1, h: 60, d: 1440 };
  const inMinutes = (time: { readonly value: number; readonly unit: Unit } | undefined): number =>
    time === undefined ? Number.NaN : time.value * minutes[time.unit];
  return [
    [`${active} at pH ${pH}: shortest, min`, shortest * minutes[unit], () => inMinutes(of()?.shortest)],
    [`${active} at pH ${pH}: longest, min`, longest * minutes[unit], () => inMinutes(of()?.longest)],
    [`${active} at pH ${pH}: pH`, pH, () => of()?.pH ?? Number.NaN],
  ];
};
const lives: readonly ConstantCheck[] = [
  ...cells(
    { ...read, source: "Sprayer loading and the jar test, Ontario: captan 32 h at pH 5, 10 min at pH 8" },
    [...life("captan", 5, 32, 32, "h", /Ontario/), ...life("captan", 8, 10, 10, "min", /Ontario/)],
  ),
  ...cells(
    {
      ...read,
      source:
        "Pesticides leftover, garden column: carbaryl 100-150, 24-30 and 1-3 d at pH 6, 7, 9; malathion 8 d at 6, 19 h at 8; captan 8 h at 7, 2 min at 9",
    },
    [
      ...life("carbaryl", 6, 100, 150, "d", /Hawai/),
      ...life("carbaryl", 7, 24, 30, "d", /Hawai/),
      ...life("carbaryl", 9, 1, 3, "d", /Hawai/),
      ...life("malathion", 6, 8, 8, "d", /Hawai/),
      ...life("malathion", 8, 19, 19, "h", /Hawai/),
      ...life("captan", 7, 8, 8, "h", /Hawai/),
      ...life("captan", 9, 2, 2, "min", /Hawai/),
    ],
  ),
  ...cells(
    {
      ...read,
      source:
        "European Chemicals Agency, captan dossier: 4.9 h at pH 7; carbaryl data sheet: DT50 12 d (pH 7), 3.2 h (pH 9)",
    },
    [
      ...life("captan", 7, 4.9, 4.9, "h", /Chemicals Agency/),
      ...life("carbaryl", 7, 12, 12, "d", /supplier/),
      ...life("carbaryl", 9, 3.2, 3.2, "h", /supplier/),
    ],
  ),
  ...cells(
    {
      ...read,
      source: "JMPR 1998, thiophanate-methyl: half-life at 25 °C 867 d (pH 5), 36 d (pH 7), 0.7 d (pH 9)",
    },
    (
      [
        [5, 867],
        [7, 36],
        [9, 0.7],
      ] as const
    ).flatMap(([pH, days]): readonly Cell[] => [
      ...life("thiophanate-methyl", pH, days, days, "d", /Residues/),
      [
        `thiophanate-methyl at pH ${pH}: temperature, °C`,
        25,
        () =>
          Number(halfLives.find((one) => one.active === "thiophanate-methyl" && one.pH === pH)?.temperature),
      ],
    ]),
  ),
];

const jar = (kind: keyof typeof fixedJarAmounts, printed: number): Cell => [
  `jar: ${kind}, ${fixedJarAmounts[kind]?.unit}`,
  printed,
  () => fixedJarAmounts[kind]?.value ?? Number.NaN,
];
const jars = cells(
  {
    ...read,
    source:
      "Using a Jar Test, Utah State University 2012: a tablespoon of dry, a teaspoon of liquid products, 1.1 g of fertilizer to the pint",
  },
  [
    ...(["water-soluble packet", "WP", "WG", "CS", "EC", "SL", "SP", "surfactant"] as const).map((kind) =>
      jar(kind, 1),
    ),
    ...(["liquid fertilizer", "dry fertilizer"] as const).map((kind) => jar(kind, 1.1)),
  ],
);

/** Every figure of the tank room that is typed a second time. */
export const tankConstants: readonly ConstantCheck[] = [...hardness, ...lives, ...jars];
