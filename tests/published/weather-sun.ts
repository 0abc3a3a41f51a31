import {
  dailyLightIntegral,
  dayLength,
  hoursBetween,
  type Instant,
  lightFromRadiation,
  quantity,
  sunTimes,
} from "../../src/index.js";
import type { Answer, PublishedCheck } from "./check.js";

const deg = (value: number) => quantity(value, "deg");

/** Sunrise on 1 January 2002 at Greenwich's longitude, hours and minutes, for latitudes from 64° south on, each two degrees. */
const januaryRises =
  "1:43 2:18 2:43 3:02 3:19 3:32 3:44 3:55 4:05 4:13 4:21 4:28 4:35 4:41 4:47 4:52 4:57 5:02 5:07 5:11 5:16 5:20 5:24 5:28 5:32 5:35 5:39 5:43 5:46 5:50 5:53 5:56 6:00 6:03 6:07 6:10 6:13 6:17 6:20 6:24 6:28 6:31 6:35 6:39 6:43 6:47 6:51 6:56 7:01 7:05 7:11 7:16 7:22 7:28 7:35 7:42 7:50 7:59".split(
    " ",
  );
const minutesOf = (clock: string): number => {
  const [hours, minutes] = clock.split(":").map(Number) as [number, number];
  return 60 * hours + minutes;
};
/** Minutes after midnight at which the sun rises. */
const riseAt = (latitude: number): number => {
  const day = sunTimes({ latitude: deg(latitude), longitude: deg(0), date: "2002-01-01", offset: "Z" });
  return 60 * hoursBetween("2002-01-01T00:00Z", day.sunrise as Instant);
};

/** Sun and light. */
export const weatherSunChecks: readonly PublishedCheck[] = [
  {
    entry: "weather-005",
    formulas: ["dayLength"],
    source: {
      title: "daylight_fao56: maximum number of daylight hours as described in FAO 56",
      publisher: "NCAR Command Language, manual",
      where: "example 1",
      url: "http://ncl.ucar.edu/Document/Functions/Crop/daylight_fao56.shtml",
    },
    reached: "read",
    given: "20° south, day 246 of the year",
    answers: [{ of: "h", printed: 11.66559, to: 0.00001 }],
    compute: () => [dayLength({ latitude: deg(-20), date: "2026-09-03", method: "FAO-56" }).in("h")],
  },
  {
    entry: "weather-006",
    formulas: ["sunTimes"],
    source: {
      title: "The position of the sun: tables",
      publisher: "Astronomy Answers",
      where: "table 1, time of sunrise, row of 1 January",
      url: "http://aa.quae.nl/en/antwoorden/zonpositie-tabel.html",
    },
    reached: "read",
    given: "1 January 2002 on the meridian of Greenwich, from 64° south to 50° north",
    answers: januaryRises.map(
      (clock, i): Answer => ({
        of: `min after midnight at ${-64 + 2 * i}°`,
        printed: minutesOf(clock),
        to: 2,
      }),
    ),
    compute: () => januaryRises.map((_, i) => riseAt(-64 + 2 * i)),
    note: "Printed for 2002 and, by its page, useful for other years: to two minutes here.",
  },
  {
    entry: "weather-007",
    formulas: ["dailyLightIntegral"],
    source: {
      title: "Conversion from instantaneous to daily photosynthetic photon flux",
      publisher: "maker of quantum sensors, technical page",
      url: "http://www.apogee-inst.com/conv_daily.htm",
    },
    reached: "read",
    given: "1 µmol/(m2 s) through 24 h",
    answers: [{ of: "mol/m2", printed: 0.0864, to: 0.0001 }],
    compute: () => [dailyLightIntegral({ ppfdMicromol: Array(24).fill(1) }).molPerSquareMeter],
  },
  {
    entry: "weather-008",
    formulas: ["lightFromRadiation", "dailyLightIntegral"],
    source: {
      title: "Rg.to.PPFD: conversions between global radiation and photosynthetic photon flux density",
      publisher: "R package bigleaf, manual",
      where: "examples",
      url: "https://search.r-project.org/CRAN/refmans/bigleaf/html/Rg.to.PPFD.html",
    },
    reached: "read",
    kind: "transcription",
    given: "500 W/m2 and 1,150 µmol/(m2 s) are the same light: here through one day",
    answers: [
      { of: "mol/m2 from 43.2 MJ/m2, less mol/m2 from 24 h of 1,150 µmol/(m2 s)", printed: 0, to: 0.001 },
    ],
    compute: () => [
      lightFromRadiation({ radiation: quantity(43.2, "MJ/m2") }).molPerSquareMeter -
        dailyLightIntegral({ ppfdMicromol: Array(24).fill(1150) }).molPerSquareMeter,
    ],
  },
];
