import { describe, expect, test } from "vitest";
import { type CivilDate, dailySeries } from "../../src/calendar/index.js";
import { type Finding, quantity } from "../../src/quantity/index.js";
import { frostDates, heatIndex, inversionReading, leafWetness } from "../../src/weather/index.js";

const heat = (t: number, rh: number, table?: "from 105 and 130 °F") =>
  heatIndex({
    temperature: quantity(t, "°F"),
    humidity: quantity(rh, "%"),
    ...(table === undefined ? {} : { table }),
  }).findings;
const air = (warmer: number, low: number, high: number, accuracy?: number) =>
  inversionReading({
    lower: { temperature: quantity(10, "°C"), height: quantity(low, "m") },
    upper: { temperature: quantity(10 + warmer, "°C"), height: quantity(high, "m") },
    ...(accuracy === undefined ? {} : { accuracy: quantity(accuracy, "°C diff") }),
  }).findings;
const winters = (frost: string) => {
  const days = Array.from({ length: 731 }, (_, n) =>
    new Date(Date.UTC(2024, 6, 24 + n)).toISOString().slice(0, 10),
  );
  return frostDates({
    minima: dailySeries({
      start: "2024-07-24" as CivilDate,
      unit: "°C",
      what: "lowest air temperature",
      source: "invented",
      values: days.map((day) => (day === frost ? -1 : 20)),
    }),
  }).findings;
};

const emergency = "Water, shade, rest and someone to watch the crew; heat stroke is an emergency.";
const told: readonly (readonly [
  name: string,
  found: () => readonly Finding[],
  told: readonly (readonly [string, Finding["severity"], string])[],
])[] = [
  [
    "a mild day",
    () => heat(70, 50),
    [
      [
        "heat-index/shade",
        "note",
        "The heat index is for shade and light wind. Full sun can add up to 15 °F (8 °C). Impermeable protective clothing adds more.",
      ],
    ],
  ],
  [
    "a warm day",
    () => heat(85, 50),
    [
      [
        "heat-index/shade",
        "caution",
        "The heat index is for shade and light wind. Full sun can add up to 15 °F (8 °C). Impermeable protective clothing adds more.",
      ],
      [
        "heat-index/category",
        "caution",
        `Heat index: caution. With long exposure or hard work: work and exercise are more tiring than usual. ${emergency}`,
      ],
    ],
  ],
  [
    "a hot day",
    () => heat(90, 60).slice(1),
    [
      [
        "heat-index/category",
        "caution",
        `Heat index: extreme caution. With long exposure or hard work: heat cramps, heat exhaustion and heat stroke possible. ${emergency}`,
      ],
    ],
  ],
  [
    "a dangerous day",
    () => heat(95, 55).slice(1),
    [
      [
        "heat-index/category",
        "warning",
        `Heat index: danger. With long exposure or hard work: heat cramps or heat exhaustion likely, heat stroke possible. ${emergency}`,
      ],
    ],
  ],
  [
    "a day of extreme danger, beyond the chart",
    () => heat(110, 60).slice(1),
    [
      [
        "heat-index/category",
        "warning",
        `Heat index: extreme danger. With long exposure or hard work: heat stroke highly likely. ${emergency}`,
      ],
      [
        "heat-index/beyond-chart",
        "warning",
        "Above 137 °F, the highest figure of the chart. The equation is not valid for air that hot and humid.",
      ],
    ],
  ],
  [
    "the chart that warns later, at 104 °F",
    () => heat(92, 60, "from 105 and 130 °F").slice(1),
    [
      [
        "heat-index/category",
        "caution",
        `Heat index: extreme caution. With long exposure or hard work: heat cramps and heat exhaustion possible. ${emergency}`,
      ],
      [
        "heat-index/higher-in-other-table",
        "warning",
        "Another table of the weather service calls this danger: there it begins at 103 °F.",
      ],
    ],
  ],
  [
    "warmer above",
    () => air(2, 0.2, 3, 0.5),
    [
      [
        "inversion/measured",
        "warning",
        "Warmer above than below: an inversion. Spray droplets can hang in the cool air and move off target. Many labels prohibit spraying in an inversion.",
      ],
    ],
  ],
  [
    "cooler above, with thermometers of unknown accuracy at odd heights",
    () => air(-2, 0.6, 3),
    [
      [
        "inversion/not-seen",
        "caution",
        "These two readings show no inversion. It can form within minutes toward sunset: measure again before each load, and watch smoke or dust.",
      ],
      [
        "inversion/accuracy-not-stated",
        "caution",
        "The accuracy of the thermometers is not stated. A difference smaller than their error says nothing.",
      ],
      [
        "inversion/heights",
        "caution",
        "Put the lower thermometer 6 to 12 in above the surface and the upper one at 8 to 10 ft, both shaded and in moving air.",
      ],
    ],
  ],
  [
    "an upper thermometer too low",
    () => air(2, 0.2, 1.9, 0.5).slice(1),
    [
      [
        "inversion/heights",
        "caution",
        "Put the lower thermometer 6 to 12 in above the surface and the upper one at 8 to 10 ft, both shaded and in moving air.",
      ],
    ],
  ],
  [
    "wet leaves",
    () => leafWetness({ humidity: { unit: "%", values: [95, 80] } }).findings,
    [
      [
        "leaf-wetness/estimated",
        "note",
        "Leaf wetness is estimated from humid air. A threshold for your own site, found with a sensor on the turf, is better.",
      ],
    ],
  ],
  [
    "two winters, with a frost in October",
    () => winters("2024-10-10"),
    [
      [
        "frost/few-winters",
        "caution",
        "2 winters: a chance of 10 or 90 % rests on very few of them. Climate normals take 30 years.",
      ],
    ],
  ],
  [
    "two winters, with a frost in August",
    () => winters("2025-08-10").slice(1),
    [
      [
        "frost/near-dividing-day",
        "warning",
        'Frosts fall within 30 days of the dividing day, 07-24, in 1 of the years: first and last frosts may be mixed up. South of the equator give divide "01-24".',
      ],
    ],
  ],
];

describe("what the weather says", () => {
  test.each(told.map(([name, found, list]) => [name, found, list] as const))("%s", (_name, found, list) => {
    expect(found().map(({ code, severity, text }) => [code, severity, text])).toEqual(list);
    for (const finding of found()) expect(finding.source ?? "common sense").not.toBe("");
  });
});
