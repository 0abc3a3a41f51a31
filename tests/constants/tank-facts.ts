// Rinsing, ammonium sulfate, hard water, pH and first fillings, typed a second time from what the sources print.
import { quantity } from "../../src/quantity/index.js";
import { jarTest, loadingOrder, mixingOrders, type RinseRuleId, rinseRules } from "../../src/tank/index.js";
import { type Cell, type ConstantCheck, cells, edge } from "./check.js";

const room = "tank";
const read = { room, reached: "read" } as const;
const remembered = { room, reached: "from memory" } as const;
const number = (value: number | undefined): number => value ?? Number.NaN;

const rinse = (
  id: RinseRuleId,
  [under5, from5]: readonly [under5: readonly [number, number], from5: readonly [number, number]],
  rest: Readonly<Partial<Record<"rinses" | "drainSeconds" | "shakeSeconds" | "withinHours", number>>>,
): readonly Cell[] => [
  [`${id}: least share of a jug`, under5[0], () => rinseRules[id].fraction(2.5)[0]],
  [`${id}: most share of a jug`, under5[1], () => rinseRules[id].fraction(2.5)[1]],
  [`${id}: least share of a drum`, from5[0], () => rinseRules[id].fraction(30)[0]],
  [`${id}: most share of a drum`, from5[1], () => rinseRules[id].fraction(30)[1]],
  ...Object.entries(rest).map(
    ([field, value]): Cell => [`${id}: ${field}`, value, () => number(rinseRules[id][field as "rinses"])],
  ),
];
const quarter = [0.25, 0.25] as const;
const fifth = [0.2, 0.2] as const;
const tenth = [0.1, 0.1] as const;
/** Where a quarter of the container becomes a fifth of it. */
const turn = (id: RinseRuleId) => () => edge((gallons) => rinseRules[id].fraction(gallons)[0] > 0.22, 1, 20);

const rinses: readonly ConstantCheck[] = [
  ...cells(
    {
      ...read,
      source:
        "Farm pesticide container rinsing, US EPA archive: drain 30 s, 20 to 25 %, shake 30 s, three times; pressure rinse 30 s",
    },
    [
      ...rinse(
        "US EPA archive",
        [
          [0.2, 0.25],
          [0.2, 0.25],
        ],
        { rinses: 3, drainSeconds: 30, shakeSeconds: 30 },
      ),
      ["US EPA archive: pressure rinse, s", 30, () => number(rinseRules["US EPA archive"].pressure?.seconds)],
    ],
  ),
  ...cells(
    {
      ...read,
      source:
        "Administrative Rules of Montana 4.10 (1)-(2): a quarter under 5 gal, a fifth from 5 gal on, drain 30 s, within 48 h, at least half by power rinse",
    },
    [
      ...rinse("Montana", [quarter, fifth], { drainSeconds: 30, withinHours: 48 }),
      ["Montana: power rinse, share", 0.5, () => number(rinseRules.Montana.pressure?.fraction)],
    ],
  ),
  ...cells({ ...read, within: 1e-8, source: "Administrative Rules of Montana 4.10 (1)-(2): 5 gallons" }, [
    ["Montana: turns at, gal", 5, turn("Montana")],
    ["Illinois: turns at, gal", 5, turn("Illinois")],
  ]),
  ...cells(
    { ...read, source: "Triple rinsing, definition of 1974: a tenth of the container, three times" },
    rinse("1974 definition", [tenth, tenth], { rinses: 3 }),
  ),
  ...cells(
    {
      ...read,
      source:
        "University of Illinois, 50 ways, no. 30: drain 30 s, rinse, repeat two more times, pressure rinse 60 s; Administrative Rules of Montana 4.10.803 (2)(a)(iv): a second and a third time",
    },
    [
      ...rinse("Illinois", [quarter, fifth], { rinses: 3, drainSeconds: 30 }),
      ["Illinois: pressure rinse, s", 60, () => number(rinseRules.Illinois.pressure?.seconds)],
      ["Montana: rinses", 3, () => number(rinseRules.Montana.rinses)],
    ],
  ),
  ...cells(
    {
      ...remembered,
      source:
        "40 CFR 156.146 as labels print it: a quarter full, shake 10 s, drain 10 s after the flow begins to drip, three times; over 5 gal roll for 30 s; pressure rinse 30 s",
    },
    [
      ...rinse("US federal label text", [quarter, quarter], {
        rinses: 3,
        drainSeconds: 10,
        shakeSeconds: 10,
      }),
      [
        "US federal label text: rolled above, gal",
        5,
        () => number(rinseRules["US federal label text"].roll?.aboveGallons),
      ],
      [
        "US federal label text: rolled for, s",
        30,
        () => number(rinseRules["US federal label text"].roll?.seconds),
      ],
      [
        "US federal label text: pressure rinse, s",
        30,
        () => number(rinseRules["US federal label text"].pressure?.seconds),
      ],
    ],
  ),
];

const first = (id: string, low: number, high: number): readonly Cell[] => {
  const of = () => mixingOrders.find((one) => one.id === id)?.waterFirst;
  return [
    [`${id}: first filling, least`, low, () => number(of()?.[0])],
    [`${id}: first filling, most`, high, () => number(of()?.[1])],
  ];
};
const fillings: readonly ConstantCheck[] = [
  ...cells(
    {
      ...read,
      source:
        "first fillings as printed: Manitoba 1/4 to 3/4, South Dakota State 1/3, Oklahoma State 50 to 75 %, Missouri DOT 1/2, Country Guide column 1/2 to 3/4",
    },
    [
      ...first("manitoba-2013", 0.25, 0.75),
      ...first("south-dakota-state", 1 / 3, 1 / 3),
      ...first("oklahoma-state", 0.5, 0.75),
      ...first("missouri-dot", 0.5, 0.5),
      ...first("ontario-wales", 0.5, 0.75),
      [
        "South Dakota State: filled to before liquids",
        0.8,
        () =>
          number(
            mixingOrders
              .find(({ id }) => id === "south-dakota-state")
              ?.between?.find(({ fraction }) => fraction !== undefined)?.fraction,
          ),
      ],
    ],
  ),
];

const mix = loadingOrder({
  products: [
    { id: "a", formulation: "water-soluble packet" },
    { id: "b", formulation: "EC" },
  ],
});
const stood = (stand: "Utah State" | "University of Arizona") => () =>
  number(
    jarTest({
      jar: quantity(1, "qt", "spray"),
      applicationVolume: quantity(20, "gal/acre", "spray"),
      products: [{ id: "a", formulation: "EC", rate: quantity(1, "pt/acre", "product:a") }],
      stand,
    }).steps.find(({ minutes }) => minutes !== undefined)?.minutes,
  );
const steps: readonly ConstantCheck[] = [
  ...cells(
    {
      ...read,
      source:
        "Ontario, Water soluble packages 2017: wait up to 5 min (mix-018); Utah State 2012: stand 15 min (mix-034); University of Arizona 1999: stand 5 min (mix-037)",
    },
    [
      ["packets dissolve, min", 5, () => number(mix.steps.find(({ action }) => action === "wait")?.minutes)],
      ["a jar stands, Utah State, min", 15, stood("Utah State")],
      ["a jar stands, Arizona, min", 5, stood("University of Arizona")],
    ],
  ),
  ...cells(
    { ...read, source: "half of the water first: Missouri DOT 1/2; Oklahoma State and Ontario from 1/2 on" },
    [
      ["first filling without an order, least", 0.5, () => number(mix.steps[0]?.fraction?.[0])],
      ["first filling without an order, most", 0.5, () => number(mix.steps[0]?.fraction?.[1])],
    ],
  ),
];

/** Facts of mixing and rinsing that are typed a second time. */
export const tankFactConstants: readonly ConstantCheck[] = [...rinses, ...fillings, ...steps];
