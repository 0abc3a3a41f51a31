// Reference evapotranspiration a second time: the equations of FAO-56 by number, as one program of plain arithmetic.
import type { CivilDate, Instant } from "../../src/calendar/index.js";
import { quantity } from "../../src/quantity/index.js";
import {
  actualVaporPressure,
  clearSkyRadiation,
  dailyReferenceEvapotranspiration,
  hargreavesEvapotranspiration,
  hargreavesEvapotranspirationsMmPerD,
  hourlyExtraterrestrialRadiation,
  hourlyReferenceEvapotranspiration,
  meanSaturationVaporPressure,
  monthlyReferenceEvapotranspiration,
  monthlySoilHeatFlux,
  netLongwaveRadiation,
  referenceEvapotranspirationsMmPerD,
  solarRadiationFromSunshine,
  solarRadiationFromTemperatures,
} from "../../src/water/index.js";
import { type Cell, type ConstantCheck, cells, edge, goes } from "./check.js";

const room = "water";
const degrees = Math.PI / 180;

/** Equation 11. */
const vapor = (t: number): number => 0.6108 * Math.exp((17.27 * t) / (t + 237.3));
/** Equation 13, written out as the paper has it. */
const slope = (t: number): number =>
  (4098 * (0.6108 * Math.exp((17.27 * t) / (t + 237.3)))) / (t + 237.3) ** 2;
/** Equation 7. */
const pressure = (z: number): number => 101.3 * ((293 - 0.0065 * z) / 293) ** 5.26;
/** Equations 23 and 24. */
const sunOn = (day: number) => ({
  dr: 1 + 0.033 * Math.cos(((2 * Math.PI) / 365) * day),
  delta: 0.409 * Math.sin(((2 * Math.PI) / 365) * day - 1.39),
});
/** Equations 21 and 25, at a latitude in degrees, MJ/m2/d; and hours of daylight (34). */
const top = (latitude: number, day: number) => {
  const { dr, delta } = sunOn(day);
  const phi = latitude * degrees;
  const sunset = Math.acos(-Math.tan(phi) * Math.tan(delta));
  const ra =
    ((24 * 60) / Math.PI) *
    0.082 *
    dr *
    (sunset * Math.sin(phi) * Math.sin(delta) + Math.cos(phi) * Math.cos(delta) * Math.sin(sunset));
  return { ra, daylight: (24 / Math.PI) * sunset };
};
/** Equation 39: of a day, or of another period with its constant. */
const longwave = (min: number, max: number, ea: number, share: number, sigma = 4.903e-9): number =>
  sigma *
  (((max + 273.16) ** 4 + (min + 273.16) ** 4) / 2) *
  (0.34 - 0.14 * Math.sqrt(ea)) *
  (1.35 * share - 0.35);

interface Day {
  readonly min: number;
  readonly max: number;
  readonly ea: number;
  readonly u2: number;
  readonly rs: number;
  readonly z: number;
  readonly latitude: number;
  readonly day: number;
}
/** Equation 6. */
const penman = ({ min, max, ea, u2, rs, z, latitude, day }: Day, heat = 0): number => {
  const t = (max + min) / 2;
  const clear = (0.75 + 2e-5 * z) * top(latitude, day).ra;
  const net = (1 - 0.23) * rs - longwave(min, max, ea, Math.min(1, rs / clear));
  const gamma = 0.665e-3 * pressure(z);
  const es = (vapor(max) + vapor(min)) / 2;
  return (
    (0.408 * slope(t) * (net - heat) + gamma * (900 / (t + 273)) * u2 * (es - ea)) /
    (slope(t) + gamma * (1 + 0.34 * u2))
  );
};

const days: readonly Day[] = [
  { min: 12.3, max: 21.5, ea: 1.409, u2: 2.078, rs: 22.07, z: 100, latitude: 50.8, day: 187 },
  { min: 4, max: 24, ea: 0.7, u2: 3.5, rs: 15, z: 1500, latitude: 39, day: 100 },
  { min: 15, max: 35, ea: 1.2, u2: 1, rs: 25, z: 2800, latitude: -20, day: 20 },
];
const of = (value: number): Float64Array => Float64Array.of(value);
const arrays = (day: Day) => ({
  tMinC: of(day.min),
  tMaxC: of(day.max),
  vaporPressureKPa: of(day.ea),
  windAtTwoMetersMPerS: of(day.u2),
  solarMJPerM2D: of(day.rs),
  elevationM: of(day.z),
  latitudeDeg: of(day.latitude),
  dayOfYear: of(day.day),
});
const kernel = (day: Day): number => referenceEvapotranspirationsMmPerD(arrays(day))[0] as number;
const celsius = (value: number) => quantity(value, "°C");
const place = { latitude: quantity(39, "deg"), elevation: quantity(1500, "m") };
const calm = { speed: quantity(2, "m/s"), height: quantity(2, "m") };
/** 10 April is day 100, 15 April day 105 of a common year. */
const april = { min: 4, max: 24, ea: 0.7, u2: 2, rs: 15, z: 1500, latitude: 39 };
const weather = {
  min: celsius(4),
  max: celsius(24),
  moisture: { vaporPressure: quantity(0.7, "kPa") },
  sunlight: { solar: quantity(15, "MJ/m2/d") },
  wind: calm,
  ...place,
};
const daily = (change: object) =>
  dailyReferenceEvapotranspiration({ ...weather, date: "2026-04-10" as CivilDate, ...change });
const monthly = (change: object): number =>
  monthlyReferenceEvapotranspiration({ ...weather, month: 4, before: celsius(10), ...change }).value.in(
    "mm/d",
  );
const air = (moisture: object, z?: number): number =>
  actualVaporPressure({
    min: celsius(18),
    max: celsius(25),
    moisture: moisture as { saturatedAtMinimum: true },
    ...(z === undefined ? {} : { elevation: quantity(z, "m") }),
  }).in("kPa");
const percent = (value: number) => quantity(value, "%");
const wet = (psychrometer: "ventilated" | "natural" | "indoor") =>
  air({ wet: celsius(19.5), dry: celsius(25.6), psychrometer }, 1200);
const bulb = (a: number): number => vapor(19.5) - a * pressure(1200) * (25.6 - 19.5);

/** Equation 52. */
const hargreaves = (min: number, max: number, latitude: number, day: number): number =>
  0.0023 * ((min + max) / 2 + 17.8) * (max - min) ** 0.5 * 0.408 * top(latitude, day).ra;
const cold = (mean: number) => ({
  tMinC: of(mean - 1),
  tMaxC: of(mean + 1),
  latitudeDeg: of(45),
  dayOfYear: of(100),
});
const top40 = quantity(40, "MJ/m2/d");
const mj = (value: number) => quantity(value, "MJ/m2/d");

/** 21 June is day 172: the sun goes round once, and the hour angles of sunset fill the circle. */
const midnightSun = (() => {
  const { dr, delta } = sunOn(172);
  return ((24 * 60) / Math.PI) * 0.082 * dr * Math.PI * Math.sin(75 * degrees) * Math.sin(delta);
})();

const steps: readonly Cell[] = [
  ...days.map((day, n) => [`a day, the array kernel, ${n}`, penman(day), () => kernel(day)] as const),
  ["a day with its steps", penman({ ...april, day: 100 }), () => daily({}).value.in("mm/d")],
  ["hours of daylight", top(39, 100).daylight, () => daily({}).daylight.in("h")],
  [
    "sunshine of 9 h: a + b n/N by 0.25 and 0.50",
    (0.25 + (0.5 * 9) / top(39, 100).daylight) * top(39, 100).ra,
    () => daily({ sunlight: { sunshine: quantity(9, "h") } }).solarRadiation.in("MJ/m2/d"),
  ],
  [
    "range of temperatures in the interior, 0.16",
    0.16 * Math.sqrt(20) * top(39, 100).ra,
    () => daily({ sunlight: { temperatures: "interior" } }).solarRadiation.in("MJ/m2/d"),
  ],
  [
    "range of temperatures near the coast, 0.19",
    0.19 * Math.sqrt(20) * top(39, 100).ra,
    () => daily({ sunlight: { temperatures: "coastal" } }).solarRadiation.in("MJ/m2/d"),
  ],
  ["a month, the one before known", penman({ ...april, day: 105 }, 0.14 * (14 - 10)), () => monthly({})],
  [
    "a month, both beside it known",
    penman({ ...april, day: 105 }, 0.07 * (18 - 10)),
    () => monthly({ after: celsius(18) }),
  ],
  [
    "heat of the soil by its own month",
    0.14 * 4,
    () => monthlySoilHeatFlux({ before: celsius(10), month: celsius(14) }).in("MJ/m2/d"),
  ],
  [
    "heat of the soil by both beside it",
    0.07 * 8,
    () => monthlySoilHeatFlux({ before: celsius(10), after: celsius(18) }).in("MJ/m2/d"),
  ],
  [
    "vapor by both humidities",
    (vapor(18) * 82 + vapor(25) * 54) / 200,
    () => air({ rhMax: percent(82), rhMin: percent(54) }),
  ],
  [
    "mean saturation of a day",
    (vapor(18) + vapor(25)) / 2,
    () => meanSaturationVaporPressure({ min: celsius(18), max: celsius(25) }).in("kPa"),
  ],
  ["clearness, %", (100 * 15) / (0.78 * top(39, 100).ra), () => daily({}).clearness.in("%")],
  [
    "hours of a day of midnight sun, together",
    midnightSun,
    () =>
      Array.from({ length: 24 }, (_, hour) =>
        hourlyExtraterrestrialRadiation({
          latitude: quantity(75, "deg"),
          longitude: quantity(0, "deg"),
          start: `2026-06-21T${String(hour).padStart(2, "0")}:00Z` as Instant,
          length: quantity(1, "h"),
        }).in("MJ/m2"),
      ).reduce((sum, one) => sum + one, 0),
  ],
  ["vapor by the highest", (vapor(18) * 82) / 100, () => air({ rhMax: percent(82) })],
  ["vapor by the mean", ((68 / 100) * (vapor(18) + vapor(25))) / 2, () => air({ rhMean: percent(68) })],
  ["wet bulb, ventilated", bulb(0.000662), () => wet("ventilated")],
  ["wet bulb, natural draft", bulb(0.0008), () => wet("natural")],
  ["wet bulb, indoors", bulb(0.0012), () => wet("indoor")],
  [
    "clear sky at 1500 m",
    0.78 * 40,
    () => clearSkyRadiation({ extraterrestrial: top40, elevation: quantity(1500, "m") }).in("MJ/m2/d"),
  ],
  [
    "radiation of 6 h of sun in 12",
    0.5 * 40,
    () =>
      solarRadiationFromSunshine({
        extraterrestrial: top40,
        sunshine: quantity(6, "h"),
        daylight: quantity(12, "h"),
      }).in("MJ/m2/d"),
  ],
  [
    "radiation of a range of 16 degrees, interior",
    0.16 * 4 * 40,
    () =>
      solarRadiationFromTemperatures({
        extraterrestrial: top40,
        min: celsius(4),
        max: celsius(20),
        location: "interior",
      }).in("MJ/m2/d"),
  ],
  [
    "net longwave on its own",
    longwave(4, 24, 0.7, 0.6),
    () =>
      netLongwaveRadiation({
        min: celsius(4),
        max: celsius(24),
        vaporPressure: quantity(0.7, "kPa"),
        solar: mj(18),
        clearSky: mj(30),
      }).in("MJ/m2/d"),
  ],
  [
    "Hargreaves and Samani",
    hargreaves(14.8, 26.6, 45.72, 196),
    () =>
      hargreavesEvapotranspiration({
        min: celsius(14.8),
        max: celsius(26.6),
        latitude: quantity(45.72, "deg"),
        date: "1998-07-15" as CivilDate,
      }).in("mm/d"),
  ],
  [
    "Hargreaves and Samani, the array kernel",
    hargreaves(14.8, 26.6, -30, 20),
    () =>
      hargreavesEvapotranspirationsMmPerD({
        tMinC: of(14.8),
        tMaxC: of(26.6),
        latitudeDeg: of(-30),
        dayOfYear: of(20),
      })[0] as number,
  ],
  [
    "mean temperature below which it has no answer",
    -17.8,
    () => edge((t) => goes(() => hargreavesEvapotranspirationsMmPerD(cold(t))), 0, -40),
  ],
  [
    "the same of a day",
    -17.8,
    () =>
      edge(
        (t) =>
          goes(() =>
            hargreavesEvapotranspiration({
              min: celsius(t - 1),
              max: celsius(t + 1),
              latitude: quantity(45, "deg"),
              date: "2026-04-10" as CivilDate,
            }),
          ),
        0,
        -40,
      ),
  ],
  // 1.35 Rs/Rso - 0.35 is zero there
  [
    "share of a clear sky below which the sky would warm the turf",
    0.35 / 1.35,
    () =>
      edge(
        (share) =>
          !daily({
            sunlight: { solar: mj(share * (0.75 + 2e-5 * 1500) * top(39, 100).ra) },
          }).findings.some(({ code }) => code === "water/darker-than-overcast"),
        0.9,
        0.1,
      ),
  ],
  [
    "wind that the source takes at least, m/s",
    0.5,
    () =>
      edge(
        (speed) =>
          !daily({ wind: { speed: quantity(speed, "m/s"), height: quantity(2, "m") } }).findings.some(
            ({ code }) => code === "water/calm",
          ),
        2,
        0.1,
      ),
  ],
];

interface Hour {
  readonly t: number;
  readonly rh: number;
  readonly rs: number;
  readonly u2: number;
  readonly z: number;
  readonly latitude: number;
  readonly longitude: number;
  readonly day: number;
  /** UTC at the middle of the period. */
  readonly utc: number;
  readonly hours: number;
  readonly share?: number;
}
/** Equations 28 to 33: MJ/m2 of a period between sunrise and sunset, 0 by night. */
const topOfHour = ({ latitude, longitude, day, utc, hours }: Hour): number => {
  const { dr, delta } = sunOn(day);
  const b = (2 * Math.PI * (day - 81)) / 364;
  const season = 0.1645 * Math.sin(2 * b) - 0.1255 * Math.cos(b) - 0.025 * Math.sin(b);
  const angle = (Math.PI / 12) * (utc + longitude / 15 + season - 12);
  const phi = latitude * degrees;
  const sunset = Math.acos(-Math.tan(phi) * Math.tan(delta));
  const [one, two] = [angle - (Math.PI * hours) / 24, angle + (Math.PI * hours) / 24];
  if (two < -sunset || one > sunset) return 0;
  return (
    ((12 * 60) / Math.PI) *
    0.082 *
    dr *
    ((two - one) * Math.sin(phi) * Math.sin(delta) +
      Math.cos(phi) * Math.cos(delta) * (Math.sin(two) - Math.sin(one)))
  );
};
/** Equation 53, mm/h. */
const penmanOfHour = (hour: Hour): number => {
  const { t, rh, rs, u2, z, hours } = hour;
  const ra = topOfHour(hour);
  const ea = (vapor(t) * rh) / 100;
  const share = hour.share ?? Math.min(1, rs / ((0.75 + 2e-5 * z) * ra));
  const out = hours * longwave(t, t, ea, share, 2.043e-10);
  const net = ((1 - 0.23) * rs - out) / hours;
  const heat = (ra > 0 ? 0.1 : 0.5) * net;
  const gamma = 0.665e-3 * pressure(z);
  return (
    (0.408 * slope(t) * (net - heat) + gamma * (37 / (t + 273)) * u2 * (vapor(t) - ea)) /
    (slope(t) + gamma * (1 + 0.34 * u2))
  );
};
const hourly = (hour: Hour, start: string, unit: "MJ/m2" | "W/m2" = "MJ/m2") =>
  hourlyReferenceEvapotranspiration({
    temperature: celsius(hour.t),
    humidity: percent(hour.rh),
    solar:
      unit === "MJ/m2" ? quantity(hour.rs, "MJ/m2") : quantity((hour.rs * 1e6) / (3600 * hour.hours), "W/m2"),
    wind: { speed: quantity(hour.u2, "m/s"), height: quantity(2, "m") },
    elevation: quantity(hour.z, "m"),
    latitude: quantity(hour.latitude, "deg"),
    longitude: quantity(hour.longitude, "deg"),
    start: start as Instant,
    length: quantity(hour.hours, "h"),
    ...(hour.share === undefined ? {} : { clearnessBefore: percent(100 * hour.share) }),
  });
/** 1 October is day 274; 14 to 15 h at an hour west of UTC has its middle at 15.5. */
const noon: Hour = {
  t: 38,
  rh: 52,
  rs: 2.45,
  u2: 3.3,
  z: 800,
  latitude: 16.21667,
  longitude: -16.25,
  day: 274,
  utc: 15.5,
  hours: 1,
};
const night: Hour = { ...noon, t: 28, rh: 90, rs: 0, u2: 1.9, utc: 3.5, share: 0.8 };

/** Reference evapotranspiration by FAO-56. */
export const waterReferenceConstants: readonly ConstantCheck[] = [
  ...cells(
    {
      room,
      reached: "read",
      source:
        "PyETo, fao.py, a public program after FAO Irrigation and Drainage Paper 56: equations 6 to 8, 11 to 21, 23 to 25, 34, 35, 37 to 39, 43, 44, 47, 50 and 52 by their numbers; 273.16 K and the least wind of 0.5 m/s from memory",
    },
    steps,
  ),
  ...cells(
    {
      room,
      reached: "read",
      source:
        "ETo, param_est.py and methods/ETo.py, a public program after FAO Irrigation and Drainage Paper 56: equations 28 to 33, 37 to 39, 45, 46 and 53 of an hour, 2.043e-10 MJ/m2/K4",
    },
    [
      ["an hour of day", penmanOfHour(noon), () => hourly(noon, "1998-10-01T14:00-01:00").value.in("mm/h")],
      [
        "the same with a mean radiation",
        penmanOfHour(noon),
        () => hourly(noon, "1998-10-01T15:00Z", "W/m2").value.in("mm/h"),
      ],
      [
        "two hours of day",
        penmanOfHour({ ...noon, hours: 2, rs: 4.6, utc: 15 }),
        () => hourly({ ...noon, hours: 2, rs: 4.6, utc: 15 }, "1998-10-01T14:00Z").value.in("mm/h"),
      ],
      ["an hour of night", penmanOfHour(night), () => hourly(night, "1998-10-01T03:00Z").value.in("mm/h")],
      [
        "vapor of an hour",
        (vapor(28) * 90) / 100,
        () => hourly(night, "1998-10-01T03:00Z").actualVaporPressure.in("kPa"),
      ],
      [
        "share of a clear sky in an hour below which the sky would warm the turf",
        0.35 / 1.35,
        () =>
          edge(
            (share) =>
              !hourly(
                { ...noon, rs: share * (0.75 + 2e-5 * 800) * topOfHour(noon) },
                "1998-10-01T15:00Z",
              ).findings.some(({ code }) => code === "water/darker-than-overcast"),
            0.9,
            0.1,
          ),
      ],
    ],
  ),
];
