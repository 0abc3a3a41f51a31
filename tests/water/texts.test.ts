import { describe, expect, test } from "vitest";
import { type CivilDate, dailySeries, type Instant } from "../../src/calendar/index.js";
import { type Finding, quantity } from "../../src/quantity/index.js";
import {
  catchCanTest,
  cycleAndSoak,
  matchedPrecipitation,
  pipeVelocity,
  soilWaterBalance,
  supplyPressure,
  wateringIn,
  wateringInRule,
  wateringWeek,
} from "../../src/water/index.js";

const inch = (value: number) => quantity(value, "in");
const psi = (value: number) => quantity(value, "psi");
const mm = (value: number) => quantity(value, "mm");
const head = (flow: number, arc: number) => ({
  flow: quantity(flow, "gal/min", "water"),
  radius: quantity(30, "ft"),
  arc: quantity(arc, "deg"),
});
const cans = (values: readonly number[]) =>
  catchCanTest({ catches: values.map(inch), time: quantity(15, "min") }).findings;
const rainy = (values: readonly (number | null)[]) => {
  const series = (list: readonly (number | null)[]) =>
    dailySeries({
      start: "2026-06-01" as CivilDate,
      unit: "mm",
      what: "test",
      source: "invented",
      values: [...list],
    });
  return soilWaterBalance({
    available: mm(40),
    depletion: quantity(50, "%"),
    before: mm(10),
    use: series(values.map(() => 3)),
    rain: series(values),
    missingRain: "dry",
  }).findings;
};
const rule = wateringInRule({
  least: inch(0.5),
  most: inch(1),
  within: quantity(24, "h"),
  notBefore: quantity(2, "h"),
  source: "the label",
});
const watered = (depth: number, at: string, until: string) =>
  wateringIn({
    rule,
    end: "2026-06-03T09:00-05:00" as Instant,
    until: until as Instant,
    water: [{ at: at as Instant, depth: inch(depth), by: "rain" }],
  }).findings;
const week = wateringWeek({
  need: inch(1.4),
  days: [1, 4],
  rate: quantity(0.7, "in/h"),
  window: quantity(45, "min"),
  holds: inch(0.6),
}).findings;
const told: readonly (readonly [
  name: string,
  found: () => readonly Finding[],
  told: readonly (readonly [string, Finding["severity"], string])[],
])[] = [
  [
    "few cans that do not divide by four, one of them dry",
    () => cans([0.2, 0.2, 0.2, 0.2, 0]),
    [
      ["water/few-cans", "caution", "5 cans say little about a zone: use at least 20, preferably 24."],
      [
        "water/cans-not-in-quarters",
        "note",
        "5 cans do not divide by four: the lower quarter takes the nearest whole number of cans, or what was asked for.",
      ],
      [
        "water/empty-can",
        "warning",
        "A can stayed empty: some ground gets no water, and no run time makes up for it.",
      ],
    ],
  ],
  ["twenty cans", () => cans(Array.from({ length: 20 }, () => 0.2)), []],
  [
    "nineteen cans",
    () => cans(Array.from({ length: 19 }, () => 0.2)).slice(0, 1),
    [["water/few-cans", "caution", "19 cans say little about a zone: use at least 20, preferably 24."]],
  ],
  [
    "heads that do not match",
    () => matchedPrecipitation({ heads: [head(4, 360), head(4, 180)] }).findings,
    [
      [
        "water/unmatched-heads",
        "caution",
        "The wettest head puts down 2.00 times as much as the driest: change nozzles, or put them on separate zones.",
      ],
    ],
  ],
  [
    "heads a tenth apart",
    () => matchedPrecipitation({ heads: [head(4, 360), head(2.19, 180)] }).findings,
    [],
  ],
  [
    "water that is fast in its pipe",
    () => pipeVelocity({ flow: quantity(15, "gal/min", "water"), diameter: inch(1) }).findings,
    [
      [
        "water/fast-in-pipe",
        "caution",
        "Water runs at 6.1 ft/s: above 5 ft/s, closing valves cause water hammer.",
      ],
    ],
  ],
  [
    "too little pressure",
    () => supplyPressure({ supply: psi(50), losses: [psi(20)], needed: psi(40) }).findings,
    [
      [
        "water/pressure-too-low",
        "warning",
        "30.0 psi is left at the head, which works at 40.0: run fewer heads at a time, or use larger pipe.",
      ],
    ],
  ],
  [
    "enough pressure",
    () => supplyPressure({ supply: psi(60), losses: [psi(20)], needed: psi(40) }).findings,
    [],
  ],
  [
    "a short soak",
    () =>
      cycleAndSoak({
        runTime: quantity(30, "min"),
        rate: quantity(1.5, "in/h"),
        intake: quantity(0.3, "in/h"),
        storage: inch(0.2),
        soak: quantity(20, "min"),
      }).findings,
    [
      [
        "water/short-soak",
        "caution",
        "The soak of 20 min is shorter than the 40 min that the standing water takes to soak in.",
      ],
    ],
  ],
  [
    "a week with a short window and a shallow root zone",
    () => week,
    [
      ["water/window-too-short", "warning", "Monday needs 60 min, and the window is 45 min."],
      [
        "water/below-the-roots",
        "caution",
        "Monday puts 0.7 in in the root zone, which holds 0.6 in: the rest drains below the roots.",
      ],
      ["water/window-too-short", "warning", "Thursday needs 60 min, and the window is 45 min."],
      [
        "water/below-the-roots",
        "caution",
        "Thursday puts 0.7 in in the root zone, which holds 0.6 in: the rest drains below the roots.",
      ],
    ],
  ],
  [
    "a day without rain figure",
    () => rainy([2, null, 0]),
    [["water/rain-assumed-dry", "caution", "A day without a figure of rain counted as dry: 2026-06-02."]],
  ],
  [
    "two of them",
    () => rainy([2, null, null]),
    [
      [
        "water/rain-assumed-dry",
        "caution",
        "2 days without a figure of rain counted as dry, the first on 2026-06-02.",
      ],
    ],
  ],
  [
    "water too soon",
    () => watered(0.5, "2026-06-03T10:00-05:00", "2026-06-03T12:00-05:00"),
    [
      [
        "water/water-too-soon",
        "warning",
        "0.5 in of water came before 2026-06-03T11:00-05:00, while the leaf had to stay dry. Read the label for what to do.",
      ],
    ],
  ],
  [
    "too much water",
    () => watered(1.5, "2026-06-03T15:00-05:00", "2026-06-03T16:00-05:00"),
    [
      [
        "water/too-much-water",
        "warning",
        "1.5 in of water came, and the label states 1 in at most: product may have moved below the roots, or off the site.",
      ],
    ],
  ],
  [
    "too little in time",
    () => watered(0.2, "2026-06-03T15:00-05:00", "2026-06-04T09:00-05:00"),
    [
      [
        "water/not-watered-in",
        "warning",
        "0.2 in of water came by 2026-06-04T09:00-05:00, and the label states 0.5 in at least.",
      ],
    ],
  ],
  [
    // 13 mm are 13 / 25.4 = 0.5118110236 in
    "too little of a depth that was converted",
    () =>
      wateringIn({
        rule: wateringInRule({
          least: quantity(13 / 25.4, "in"),
          within: quantity(24, "h"),
          source: "the label",
        }),
        end: "2026-06-03T09:00-05:00",
        until: "2026-06-04T09:00-05:00",
        water: [],
      }).findings,
    [
      [
        "water/not-watered-in",
        "warning",
        "0 in of water came by 2026-06-04T09:00-05:00, and the label states 0.511811 in at least.",
      ],
    ],
  ],
];

describe("what the water room says", () => {
  test.each(told.map(([name, found, list]) => [name, found, list] as const))("%s", (_name, found, list) => {
    expect(found().map(({ code, severity, text }) => [code, severity, text])).toEqual(list);
  });
});

test("what is a hair over its bound is told with as many decimals as it takes", () => {
  const texts = (findings: readonly Finding[]): readonly string[] => findings.map(({ text }) => text);
  // 1.4 in at 0.8 in/h take 105 min, three times 35
  const three = { need: inch(1.4), days: [1, 3, 6], rate: quantity(0.8, "in/h") } as const;
  expect(texts(wateringWeek({ ...three, window: quantity(34.9, "min") }).findings)[0]).toBe(
    "Monday needs 35.0 min, and the window is 34.9 min.",
  );
  expect(texts(wateringWeek({ ...three, holds: inch(0.4666) }).findings)[0]).toMatch(
    /puts 0\.4667 in in the root zone, which holds 0\.4666 in/,
  );
  const soak = { runTime: quantity(30, "min"), rate: quantity(1.5, "in/h"), intake: quantity(0.3, "in/h") };
  const short = cycleAndSoak({ ...soak, timeToRunoff: quantity(15, "min"), soak: quantity(59.8, "min") });
  expect(texts(short.findings)).toEqual([
    "The soak of 59.8 min is shorter than the 60.0 min that the standing water takes to soak in.",
  ]);
  // 0.40853 x 12.25 gal/min / 1 in2 is 5.0045 ft/s
  const pipe = pipeVelocity({ flow: quantity(12.25, "gal/min", "water"), diameter: inch(1) });
  expect(texts(pipe.findings)[0]).toMatch(/^Water runs at 5\.004 ft\/s: above 5 ft\/s/);
});
