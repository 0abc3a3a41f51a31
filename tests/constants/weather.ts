// Sun, heat, dew and wind a second time: the equations as their sources print them, in one piece.
import type { CivilDate } from "../../src/calendar/index.js";
import { quantity } from "../../src/quantity/index.js";
import {
  dailyLightIntegral,
  dayLength,
  dewPoint,
  heatIndex,
  heatTables,
  humidityFromDewPoint,
  inversionReading,
  lightFromRadiation,
  sunTimes,
  windAtHeight,
} from "../../src/weather/index.js";
import { solarAt } from "../../src/weather/sun/solar.js";
import { type Cell, type ConstantCheck, cells, edge, goes, same } from "./check.js";

const room = "weather";
const degrees = Math.PI / 180;
const sine = (d: number): number => Math.sin(d * degrees);
const cosine = (d: number): number => Math.cos(d * degrees);
const polynomial = (t: number, ...terms: readonly number[]): number =>
  terms.reduceRight((sum, term) => sum * t + term, 0);

/** Where the sun stands, from Julian centuries of 36,525 days since noon of 1 January 2000: equation of time in minutes, declination in degrees. */
const sunOf = (date: string, minutes: number): { readonly time: number; readonly declination: number } => {
  const t = (Date.parse(`${date}T00:00:00Z`) / 86_400_000 - 10_957.5 + minutes / (24 * 60)) / 36_525;
  const l0 = polynomial(t, 280.46646, 36_000.76983, 0.0003032);
  const m = polynomial(t, 357.52911, 35_999.05029, -0.0001537);
  const e = polynomial(t, 0.016708634, -0.000042037, -0.0000001267);
  const c =
    sine(m) * polynomial(t, 1.914602, -0.004817, -0.000014) +
    sine(2 * m) * polynomial(t, 0.019993, -0.000101) +
    sine(3 * m) * 0.000289;
  const omega = 125.04 - 1934.136 * t;
  const lambda = l0 + c - 0.00569 - 0.00478 * sine(omega);
  const seconds = polynomial(t, 21.448, -46.815, -0.00059, 0.001813);
  const epsilon = 23 + (26 + seconds / 60) / 60 + 0.00256 * cosine(omega);
  const y = Math.tan((epsilon / 2) * degrees) ** 2;
  const time =
    y * sine(2 * l0) -
    2 * e * sine(m) +
    4 * e * y * sine(m) * cosine(2 * l0) -
    (y * y * sine(4 * l0)) / 2 -
    (5 / 4) * e * e * sine(2 * m);
  return { time: (4 * time) / degrees, declination: Math.asin(sine(epsilon) * sine(lambda)) / degrees };
};

/** Hour angle of sunrise in degrees, the upper edge on the horizon with refraction: 90.833 degrees from the zenith. */
const hourAngle = (latitude: number, declination: number): number =>
  Math.acos(
    cosine(90.833) / (cosine(latitude) * cosine(declination)) -
      Math.tan(latitude * degrees) * Math.tan(declination * degrees),
  ) / degrees;

/** Minutes after 00:00 UTC of sunrise (1), noon (0) and sunset (-1), to the declination of that minute. */
const eventOf = (date: string, latitude: number, longitude: number, sign: number): number => {
  let at = 720 - 4 * longitude;
  for (let n = 0; n < 3; n += 1) {
    const { time, declination } = sunOf(date, at);
    const angle = sign === 0 ? 0 : sign * hourAngle(latitude, declination);
    at = 720 - 4 * (longitude + angle) - time;
  }
  return at;
};
const sun = (latitude: number, longitude: number, date: string, offset: string) =>
  sunTimes({
    latitude: quantity(latitude, "deg"),
    longitude: quantity(longitude, "deg"),
    date: date as CivilDate,
    offset,
  });
const clock = (minutes: number): string => {
  const whole = Math.round(minutes);
  const two = (value: number): string => String(value).padStart(2, "0");
  return `${two(Math.floor(whole / 60))}:${two(whole % 60)}`;
};

const far = ["3000-01-15", "3000-04-20", "3000-07-07", "3000-10-30"] as const;
const near = ["2026-02-03", "2026-06-21", "2026-11-05"] as const;
const places = [
  [40, -105, "-07:00", -420],
  [-33, 151, "+10:00", 600],
] as const;
const year = Array.from({ length: 365 }, (_, n) =>
  new Date(Date.UTC(2026, 0, 1 + n)).toISOString().slice(0, 10),
);

const suns: readonly Cell[] = [
  ...far.flatMap((date): Cell[] => [
    [
      `declination, ${date}`,
      sunOf(date, 300).declination,
      () => solarAt(date as CivilDate, 300).declination / degrees,
    ],
    [`equation of time, ${date}`, sunOf(date, 300).time, () => solarAt(date as CivilDate, 300).eqtime],
  ]),
  ...near.flatMap((date): Cell[] =>
    places.map(([latitude, longitude, offset]) => [
      `hours from sunrise to sunset, ${date} at ${latitude}`,
      (eventOf(date, latitude, longitude, -1) - eventOf(date, latitude, longitude, 1)) / 60,
      () => sun(latitude, longitude, date, offset).dayLength.in("h"),
    ]),
  ),
  ...places.map(
    ([latitude, longitude, offset, ahead]) =>
      [
        `noon, sunrise and sunset of each day of a year at ${latitude}`,
        1,
        () =>
          same(
            year.flatMap((date) => {
              const day = sun(latitude, longitude, date, offset);
              return [day.sunrise, day.noon, day.sunset].map((at) => at?.slice(11, 16));
            }),
            year.flatMap((date) =>
              [1, 0, -1].map((sign) => clock(eventOf(date, latitude, longitude, sign) + ahead)),
            ),
          ),
      ] as const,
  ),
  [
    "day length at one declination, that of 12 h UTC",
    (2 * hourAngle(40, sunOf("2026-04-10", 720).declination)) / 15,
    () => dayLength({ latitude: quantity(40, "deg"), date: "2026-04-10" as CivilDate }).in("h"),
  ],
  ["hours of a day on which the sun stays up", 24, () => sun(80, 0, "2026-06-21", "Z").dayLength.in("h")],
];
const tables: readonly Cell[] = (
  [
    ["from 103 and 125 °F", [80, 90, 103, 125]],
    ["from 105 and 130 °F", [80, 90, 105, 130]],
  ] as const
).flatMap(([name, from]) =>
  from.map(
    (f, n) => [`${name}, band ${n}`, f, () => heatTables[name].categories[n]?.fromF ?? Number.NaN] as const,
  ),
);
const heat = (t: number, rh: number) =>
  heatIndex({ temperature: quantity(t, "°F"), humidity: quantity(rh, "%") });
const feels = (t: number, rh: number): number => heat(t, rh).value.in("°F");
const adjusted = (t: number, rh: number): boolean => heat(t, rh).adjustment !== "none";
/** The nine terms. */
const rothfusz = (T: number, RH: number): number =>
  -42.379 +
  2.04901523 * T +
  10.14333127 * RH -
  0.22475541 * T * RH -
  0.00683783 * T ** 2 -
  0.05481717 * RH ** 2 +
  0.00122874 * T ** 2 * RH +
  0.00085282 * T * RH ** 2 -
  0.00000199 * T ** 2 * RH ** 2;
/** The simple formula: `0.5 * (T + hitemp)` with `hitemp = 61.0 + ((T - 68.0) * 1.2) + (RH * 0.094)`. */
const steadman = (T: number, RH: number): number => 0.5 * (T + 61.0 + (T - 68.0) * 1.2 + RH * 0.094);
const heats: readonly Cell[] = [
  ...(
    [
      [90, 70],
      [85, 85],
      [100, 40],
      [110, 20],
    ] as const
  ).map(([t, rh]) => [`${t} °F, ${rh} %`, rothfusz(t, rh), () => feels(t, rh)] as const),
  ["70 °F, 50 %", steadman(70, 50), () => feels(70, 50)],
  ["60 °F, 90 %", steadman(60, 90), () => feels(60, 90)],
  [
    "100 °F, 8 %: dry air",
    rothfusz(100, 8) - ((13 - 8) / 4) * Math.sqrt((17 - Math.abs(100 - 95)) / 17),
    () => feels(100, 8),
  ],
  [
    "90 °F, 10 %: dry air",
    rothfusz(90, 10) - ((13 - 10) / 4) * Math.sqrt((17 - Math.abs(90 - 95)) / 17),
    () => feels(90, 10),
  ],
  ["84 °F, 95 %: humid air", rothfusz(84, 95) + ((95 - 85) / 10) * ((87 - 84) / 5), () => feels(84, 95)],
  ["humidity below which air is dry, %", 13, () => edge((rh) => adjusted(100, rh), 5, 20)],
  ["temperature up to which air is dry, °F", 112, () => edge((t) => adjusted(t, 8), 100, 120)],
  ["humidity above which air is humid, %", 85, () => edge((rh) => adjusted(84, rh), 95, 60)],
  ["temperature from which air is humid, °F", 80, () => edge((t) => adjusted(t, 90), 84, 79.5)],
  ["temperature up to which air is humid, °F", 87, () => edge((t) => adjusted(t, 90), 84, 95)],
  [
    "simple index above which the regression holds",
    79,
    () => {
      const t = edge((at) => heat(at, 40).equation === "regression", 95, 60);
      return Number(steadman(t, 40).toFixed(6));
    },
  ],
  [
    "temperature up to which it is the index, °F",
    40,
    () => edge((t) => heat(t, 40).equation === "none", 30, 60),
  ],
];

/** Tetens' curve without its scale, equation 11 of FAO-56. */
const magnus = (t: number): number => (17.27 * t) / (t + 237.3);
const air = (t: number, rh: number) => ({ temperature: quantity(t, "°C"), humidity: quantity(rh, "%") });
const wind = (from: number, to: number): number =>
  windAtHeight({ wind: quantity(1, "m/s"), from: quantity(from, "m"), to: quantity(to, "m") }).in("m/s");
const profile = (z: number): number => Math.log(67.8 * z - 5.42);
const moist: readonly Cell[] = [
  [
    "dew point of 20 °C and 50 %",
    (237.3 * (Math.log(0.5) + magnus(20))) / (17.27 - Math.log(0.5) - magnus(20)),
    () => dewPoint(air(20, 50)).in("°C"),
  ],
  [
    "humidity at a dew point of 12 in 25 °C",
    100 * Math.exp(magnus(12) - magnus(25)),
    () => humidityFromDewPoint({ temperature: quantity(25, "°C"), dewPoint: quantity(12, "°C") }).in("%"),
  ],
  ["wind at 2 m by that at 10", 4.87 / profile(10), () => wind(10, 2)],
  ["wind at 1 m by that at 3", profile(1) / profile(3), () => wind(3, 1)],
];

const difference = (accuracy: number, warmer: number) =>
  inversionReading({
    lower: { temperature: quantity(10, "°C"), height: quantity(0.2, "m") },
    upper: { temperature: quantity(10 + warmer, "°C"), height: quantity(3, "m") },
    accuracy: quantity(accuracy, "°C diff"),
  }).state;
const readings = (count: number, everyMinutes: number) =>
  dailyLightIntegral({ ppfdMicromol: Array.from({ length: count }, () => 1000), everyMinutes });
const light: readonly Cell[] = [
  // 1000 micromol a second for 86,400 s
  ["1000 micromol all day, mol", 86.4, () => readings(24, 60).molPerSquareMeter],
  [
    "1440 minutes are a day",
    1,
    () => (goes(() => readings(96, 15)) && !goes(() => readings(95, 15)) ? 1 : 0),
  ],
  // thermometers that may be off by 0.5 each differ by 1 where nothing is to be seen
  [
    "difference that two thermometers of 0.5 °C cannot tell",
    1,
    () => Number(edge((warmer) => difference(0.5, warmer) !== "inversion", 0.2, 3).toFixed(7)),
  ],
  [
    "farthest that clock and sun may stand apart, deg at UTC",
    67.5,
    () => edge((longitude) => goes(() => sun(40, longitude, "2026-04-10", "Z")), 0, 100),
  ],
  [
    "the same five hours east of it",
    142.5,
    () => edge((longitude) => goes(() => sun(40, longitude, "2026-04-10", "+05:00")), 75, 170),
  ],
];

/** Sun, heat, dew, wind and light. */
export const weatherConstants: readonly ConstantCheck[] = [
  ...cells(
    {
      room,
      reached: "read",
      within: 1e-10,
      source:
        "NOAA's solar equations after J. Meeus, Astronomical Algorithms, as public programs repeat them coefficient by coefficient",
    },
    suns,
  ),
  ...cells(
    {
      room,
      reached: "read",
      source:
        "The heat index equation, Weather Prediction Center, National Weather Service (L. P. Rothfusz 1990); the simple form, 79 and 40 °F in the script of its page, quoted in geocat-comp, pull request 807 (2026)",
    },
    heats,
  ),
  ...cells(
    {
      room,
      reached: "from memory",
      source:
        "National Weather Service: bands of the heat index, by the table of effects and by the color chart",
    },
    [
      ...tables,
      [
        "degrees that full sun adds, °F",
        15,
        () => Number(heat(70, 50).findings.find(({ code }) => code === "heat-index/shade")?.params.addF),
      ],
      [
        "highest figure of the chart, °F",
        137,
        () =>
          feels(
            edge(
              (t) => !heat(t, 50).findings.some(({ code }) => code === "heat-index/beyond-chart"),
              90,
              120,
            ),
            50,
          ),
      ],
    ],
  ),
  ...cells(
    {
      room,
      reached: "from memory",
      source: "FAO Irrigation and Drainage Paper 56, equations 11 and 47 (to 2 m the printed 4.87)",
    },
    moist,
  ),
  ...cells(
    { room, reached: "derived", source: "definitions, on figures that divide evenly; 15 degrees an hour" },
    light,
  ),
  ...cells({ room, reached: "from memory", source: "half of the radiation is light, 4.6 micromol a joule" }, [
    ["20 MJ, mol", 46, () => lightFromRadiation({ radiation: quantity(20, "MJ/m2") }).molPerSquareMeter],
  ]),
];
