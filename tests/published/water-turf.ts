import { quantity } from "../../src/quantity/index.js";
import {
  actualVaporPressure,
  availableWater,
  dailyReferenceEvapotranspiration,
  effectiveRain,
  frictionLoss,
  type HoldingTexture,
  type IntakeSoil,
  pipeVelocity,
  pressureOfHeight,
  readilyAvailableWater,
  saturationVaporPressure,
  soilIntake,
  turfCoefficient,
  turfUse,
  waterHolding,
  waterVolume,
} from "../../src/water/index.js";
import { dewPoint } from "../../src/weather/index.js";
import type { Answer, LeftOut, PublishedCheck, Source } from "./check.js";

const c = (value: number) => quantity(value, "°C");
const inches = (value: number) => quantity(value, "in");

/** Station, reference in inches, and the printed use at acceptable and at high quality: of a day, of three, of seven. */
const arizona: readonly (readonly [string, number, number, number])[] = [
  ["Greenway, 1 day", 0.12, 0.08, 0.1],
  ["Greenway, 3 days", 0.3, 0.21, 0.24],
  ["Greenway, 7 days", 0.81, 0.57, 0.65],
  ["Encanto, 1 day", 0.12, 0.08, 0.1],
  ["Encanto, 3 days", 0.3, 0.21, 0.24],
  ["Encanto, 7 days", 0.85, 0.6, 0.68],
  ["Desert Ridge, 1 day", 0.11, 0.08, 0.09],
  ["Desert Ridge, 3 days", 0.29, 0.2, 0.23],
];

const months = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
];
const californiaCool = [0.61, 0.64, 0.75, 1.04, 0.95, 0.88, 0.94, 0.86, 0.74, 0.75, 0.69, 0.6];
const californiaWarm = [0.61, 0.54, 0.76, 0.72, 0.79, 0.68, 0.71, 0.71, 0.62, 0.54, 0.58, 0.55];

const holding: readonly (readonly [HoldingTexture, number, number])[] = [
  ["very coarse sand", 0.4, 0.75],
  ["coarse sand, fine sand, loamy sand", 0.75, 1.25],
  ["sandy loam, fine sandy loam", 1.25, 1.75],
  ["very fine sandy loam, loam, silt loam", 1.5, 2.3],
  ["clay loam, silty clay loam, sandy clay loam", 1.75, 2.5],
  ["sandy clay, silty clay, clay", 1.6, 2.5],
];

const intake: readonly (readonly [IntakeSoil, number, number])[] = [
  ["clay", 0.1, 0.2],
  ["silty clay", 0.15, 0.23],
  ["clay loam", 0.2, 0.26],
  ["loam", 0.35, 0.3],
  ["sandy loam", 0.4, 0.33],
  ["loamy sand", 0.5, 0.36],
  ["sand", 0.6, 0.4],
];

const layers = [
  { thickness: inches(8), capacity: quantity(1.5, "in/ft") },
  { thickness: inches(12), capacity: quantity(1.9, "in/ft") },
  { thickness: inches(28), capacity: quantity(0.9, "in/ft") },
];

const acreFoot = () => waterVolume({ depth: quantity(1, "ft"), area: quantity(1, "acre") });

const notes: Source = {
  title: "Water vapor pressure calculations",
  publisher: "personal technical notes page",
  where: "worked example",
};
const lab: Source = {
  title: "Example humidity calculations, lab 5 (ATSC 110L)",
  publisher: "university atmospheric science lab page",
  where: "T = 20, Tw = 12",
};
const newMexico: Source = {
  title: "Turf water use at Farmington (ASA annual meeting, P6853)",
  publisher: "New Mexico State University",
  year: 2005,
  where: "abstract",
  url: "http://a-c-s.confex.com/crops/2005am/techprogram/P6853.HTM",
};

const springs = () =>
  dailyReferenceEvapotranspiration({
    min: c(2),
    max: c(21),
    moisture: { rhMax: quantity(71, "%"), rhMin: quantity(25, "%") },
    sunlight: { solar: quantity(17.194, "MJ/m2/d") },
    wind: { speed: quantity(51, "km/d"), height: quantity(2, "m") },
    latitude: quantity(-23.7951, "deg"),
    elevation: quantity(546, "m"),
    date: "1980-07-20",
  });

const twice = <T>(rows: readonly T[], of: (row: T) => readonly [Answer, Answer]): readonly Answer[] =>
  rows.flatMap(of);

/** Published checks of turf coefficients, root zones, rain and air. */
export const waterTurfChecks: readonly PublishedCheck[] = [
  {
    entry: "site-069",
    formulas: ["turfUse", "turfCoefficient"],
    source: {
      title: "Phoenix area turf water use report",
      publisher: "University of Arizona, AZMET",
      year: 2024,
      where: "report of 18 March 2024",
      url: "http://www.ag.arizona.edu/azmet/data/00prptet.htm",
    },
    reached: "read",
    given: "reference evapotranspiration of three stations over 1, 3 and 7 days, winter rye",
    answers: twice(arizona, ([of, , acceptable, high]) => [
      { of: `in, ${of}, acceptable`, printed: acceptable, to: 0.01 },
      { of: `in, ${of}, high quality`, printed: high, to: 0.01 },
    ]),
    compute: () =>
      arizona.flatMap(([, et]) =>
        (["acceptable", "high"] as const).map((quality) =>
          turfUse({
            reference: quantity(et, "in/d"),
            coefficient: turfCoefficient({ season: "cool-season", list: "Arizona", quality }).value,
          }).in("in/d"),
        ),
      ),
    note: "The use of 3 and 7 days is that of a day of as much.",
  },
  {
    entry: "water-013",
    formulas: ["turfCoefficient"],
    source: {
      title: "Crop coefficients of FAO Irrigation and Drainage Paper 56",
      publisher: "FAO, as an open research program transcribes them",
      where: "table 12, turf grass, cool and warm season",
    },
    reached: "read",
    kind: "transcription",
    given: "turf grass at full cover",
    answers: [
      { of: "cool season", printed: 0.95, to: 0.01 },
      { of: "warm season", printed: 0.85, to: 0.01 },
    ],
    compute: () => [
      turfCoefficient({ season: "cool-season", list: "FAO-56" }).value,
      turfCoefficient({ season: "warm-season", list: "FAO-56" }).value,
    ],
  },
  {
    entry: "site-070",
    formulas: ["turfCoefficient"],
    source: newMexico,
    reached: "read",
    kind: "transcription",
    given: "cool-season and warm-season turf in the growing season",
    answers: [
      { of: "cool-season", printed: 0.85, to: 0.01 },
      { of: "warm-season", printed: 0.7, to: 0.01 },
    ],
    compute: () => [
      turfCoefficient({ season: "cool-season", list: "New Mexico" }).value,
      turfCoefficient({ season: "warm-season", list: "New Mexico" }).value,
    ],
  },
  {
    entry: "site-070",
    formulas: ["turfUse", "turfCoefficient"],
    source: newMexico,
    reached: "read",
    given: "how much more water the cool-season turf needed",
    answers: [
      {
        of: "% more",
        printed: 35,
        to: 1,
        wrong: { right: 21, why: "the coefficients of the same abstract, 0.85 and 0.70, are 21 % apart" },
      },
    ],
    compute: () => {
      const use = (season: "cool-season" | "warm-season") =>
        turfUse({
          reference: quantity(0.25, "in/d"),
          coefficient: turfCoefficient({ season, list: "New Mexico" }).value,
        }).in("in/d");
      return [100 * (use("cool-season") / use("warm-season") - 1)];
    },
  },
  {
    entry: "water-004",
    formulas: ["turfCoefficient"],
    source: {
      title: "Turfgrass crop coefficients (Kc), after Meyer et al. 1985",
      publisher: "University of California, Center for Landscape and Urban Horticulture",
      where: "Table 1",
      url: "http://ucanr.edu/sites/urbanhort/Water_Use_of_Turfgrass_and_Landscape_Plant_Materials/Turfgrass_Crop_Coefficients_Kc",
    },
    reached: "read",
    kind: "transcription",
    given: "cool-season and warm-season turf in California, by month",
    answers: [
      ...months.map((of, i) => ({
        of: `${of}, cool-season`,
        printed: californiaCool[i] as number,
        to: 0.01,
      })),
      ...months.map((of, i) => ({
        of: `${of}, warm-season`,
        printed: californiaWarm[i] as number,
        to: 0.01,
      })),
    ],
    compute: () =>
      (["cool-season", "warm-season"] as const).flatMap((season) =>
        months.map((_, i) => turfCoefficient({ season, list: "California, by month", month: i + 1 }).value),
      ),
  },
  {
    entry: "site-072",
    formulas: ["availableWater", "readilyAvailableWater"],
    source: {
      title: "Teaching organic farming and gardening, unit 2.1: soil physical properties",
      publisher: "University of California, Santa Cruz (attribution from memory)",
      where: "Example 1",
    },
    reached: "read",
    given:
      "8 in of sandy loam, 12 in of sandy clay loam, 28 in of loamy sand at 1.5, 1.9 and 0.9 in/ft; half of it used",
    answers: [
      { of: "in, first layer", printed: 1, to: 0.1 },
      { of: "in, second layer", printed: 1.9, to: 0.1 },
      { of: "in, third layer", printed: 2.1, to: 0.1 },
      { of: "in, together", printed: 5, to: 0.1 },
      { of: "in, to be watered", printed: 2.5, to: 0.1 },
    ],
    compute: () => {
      const { layers: each, total } = availableWater({ layers });
      const ready = readilyAvailableWater({ available: total, depletion: quantity(50, "%") });
      return [...each.map((layer) => layer.in("in")), total.in("in"), ready.in("in")];
    },
  },
  {
    entry: "site-073",
    formulas: ["waterHolding"],
    source: {
      title: "Soil characteristics (managing drought)",
      publisher: "University of California, Davis",
      where: "table",
      url: "http://ucmanagedrought.ucdavis.edu/Agriculture/Irrigation_Scheduling/Evapotranspiration_Scheduling_ET/Frequency_of_Irrigation/Soil_Characteristics",
    },
    reached: "read",
    kind: "transcription",
    given: "available water by texture",
    answers: twice(holding, ([texture, low, high]) => [
      { of: `in/ft, ${texture}, low`, printed: low, to: 0.01 },
      { of: `in/ft, ${texture}, high`, printed: high, to: 0.01 },
    ]),
    compute: () =>
      holding.flatMap(([texture]) => {
        const held = waterHolding({ texture });
        return [held.low.in("in/ft"), held.high.in("in/ft")];
      }),
  },
  {
    entry: "water-005",
    formulas: ["soilIntake"],
    source: {
      title:
        "Test procedure of the irrigation trade for controllers: intake and surface storage on level ground",
      publisher: "two public programs that carry its table",
      where: "by soil, 0 to 3 % slope",
    },
    reached: "read",
    kind: "transcription",
    given: "seven soils on level ground",
    answers: twice(intake, ([soil, rate, stored]) => [
      { of: `in/h, ${soil}`, printed: rate, to: 0.01 },
      { of: `in standing, ${soil}`, printed: stored, to: 0.01 },
    ]),
    compute: () =>
      intake.flatMap(([soil]) => {
        const found = soilIntake({ soil, slope: quantity(0, "% grade") });
        return [found.intake.in("in/h"), found.storage.in("in")];
      }),
  },
  {
    entry: "water-006",
    formulas: ["effectiveRain"],
    source: {
      title: "Effective rainfall",
      publisher: "Texas A&M AgriLife, evapotranspiration network",
      url: "https://texaset.tamu.edu/Content/effrain.html",
    },
    reached: "read",
    kind: "transcription",
    given:
      "the first 1/10 in is lost, full credit to 1 in, 2/3 of what falls between 1 and 2 in, none of what falls beyond",
    answers: [
      { of: "in of 0.1 in", printed: 0, to: 0.1 },
      { of: "in of the next 0.9 in", printed: 0.9, to: 0.1 },
      { of: "of the inch from 1 to 2 in, parts of three", printed: 2, to: 0.1 },
      { of: "in of the inch from 2 to 3 in", printed: 0, to: 0.1 },
    ],
    compute: () => {
      const of = (rain: number) => effectiveRain({ rain: inches(rain), method: "Texas, day" }).in("in");
      return [of(0.1), of(1) - of(0.1), 3 * (of(2) - of(1)), of(3) - of(2)];
    },
  },
  {
    entry: "site-075",
    formulas: ["saturationVaporPressure", "actualVaporPressure"],
    source: notes,
    reached: "read",
    given: "60 °F (printed 15.6 °C) and 47 %",
    answers: [
      { of: "mb, saturation", printed: 17.7, to: 0.1 },
      { of: "mb, actual", printed: 8.3, to: 0.1 },
      { of: "°C, dew point", printed: 4.3, to: 0.1 },
      { of: "°F, dew point", printed: 39.7, to: 0.1 },
    ],
    compute: () => {
      const humidity = quantity(47, "%");
      const td = dewPoint({ temperature: c(15.6), humidity });
      return [
        10 * saturationVaporPressure({ temperature: c(15.6) }).in("kPa"),
        10 * actualVaporPressure({ min: c(15.6), max: c(15.6), moisture: { rhMean: humidity } }).in("kPa"),
        td.in("°C"),
        (Math.round(td.in("°C") * 10) / 10) * 1.8 + 32,
      ];
    },
    note: "The source takes another curve of saturation, and °F from the rounded °C.",
  },
  {
    entry: "site-076",
    formulas: ["actualVaporPressure", "saturationVaporPressure"],
    source: lab,
    reached: "read",
    given: "dry bulb 20, wet bulb 12 °C; figures read off a chart",
    answers: [
      { of: "mb, actual", printed: 8.7, to: 0.1 },
      {
        of: "mb, saturation",
        printed: 23.2,
        to: 0.1,
        wrong: { right: 23.4, why: "read off a chart: it is 23.38 mb at 20 °C" },
      },
    ],
    compute: () => [
      10 *
        actualVaporPressure({
          min: c(12),
          max: c(20),
          moisture: { wet: c(12), dry: c(20), psychrometer: "ventilated" },
          elevation: quantity(0, "m"),
        }).in("kPa"),
      10 * saturationVaporPressure({ temperature: c(20) }).in("kPa"),
    ],
  },
  {
    entry: "water-007",
    formulas: ["dailyReferenceEvapotranspiration"],
    source: {
      title:
        "Estimating actual, potential, reference crop and pan evaporation: supplement, worked examples 1 and 2",
      publisher: "McMahon et al., Hydrology and Earth System Sciences 17, 1331-1363",
      year: 2013,
      where: "Alice Springs, 20 July 1980; figures read in the tests of a public program",
    },
    reached: "read",
    given: "21.0 and 2.0 °C, 71 and 25 %, 51 km a day of wind at 2 m, 17.1940 MJ/m2/d, 23.7951° S, 546 m",
    answers: [
      { of: "°C, mean", printed: 11.5, to: 0.1 },
      { of: "m/s", printed: 0.5903, to: 0.0001 },
      { of: "kPa, saturation", printed: 1.5963, to: 0.0001 },
      { of: "kPa, actual", printed: 0.5614, to: 0.0001 },
      { of: "kPa, deficit", printed: 1.0349, to: 0.0001 },
      { of: "MJ/m2/d, Ra", printed: 23.6182, to: 0.0001 },
      { of: "MJ/m2/d, Rso", printed: 17.9716, to: 0.0001 },
    ],
    compute: () => {
      const day = springs();
      return [
        day.meanTemperature.in("°C"),
        day.windAtTwoMeters.in("m/s"),
        day.saturationVaporPressure.in("kPa"),
        day.actualVaporPressure.in("kPa"),
        day.vaporPressureDeficit.in("kPa"),
        day.extraterrestrialRadiation.in("MJ/m2/d"),
        day.clearSkyRadiation.in("MJ/m2/d"),
      ];
    },
    note: "Its longwave radiation counts 0 °C as 273.2 K, FAO-56 as 273.16, and is left out.",
  },
  {
    entry: "water-008",
    formulas: ["frictionLoss", "pipeVelocity"],
    source: {
      title:
        "Pipe friction loss by Hazen and Williams: p = 4.52 Q^1.85 / (C^1.85 d^4.87), velocity = 0.4085 Q / d²",
      publisher: "reference page on pipe friction",
      where: "formulas",
    },
    reached: "read",
    given: "the constants: 100 gal/min, C of 100, one inch, one foot; and 1 gal/min in one inch",
    answers: [
      {
        of: "psi/ft",
        printed: 4.52,
        to: 0.01,
        wrong: {
          right: 4.53,
          why: "the source rounds the exponents 1.852 and 4.8704 to 1.85 and 4.87; the first form of the authors gives 4.53",
        },
      },
      { of: "ft/s", printed: 0.4085, to: 0.0001 },
    ],
    compute: () => {
      const gpm = (value: number) => quantity(value, "gal/min", "water");
      const foot = { flow: gpm(100), diameter: inches(1), length: quantity(1, "ft"), smoothness: 100 };
      return [
        frictionLoss(foot).in("psi"),
        pipeVelocity({ flow: gpm(1), diameter: inches(1) }).value.in("ft/s"),
      ];
    },
  },
  {
    entry: "water-009",
    formulas: ["pressureOfHeight", "waterVolume"],
    source: {
      title: "Irrigation formulas",
      publisher: "collection of farm references, stored copy",
      where: "pressure; water measurement",
    },
    reached: "read",
    given: "a column of water 2.31 ft high; an acre-inch; an acre-foot",
    answers: [
      { of: "psi", printed: 1, to: 0.01 },
      { of: "gal, acre-inch", printed: 27_000, to: 1000 },
      { of: "gal, acre-foot", printed: 325_900, to: 100 },
    ],
    compute: () => [
      pressureOfHeight({ height: quantity(2.31, "ft") }).in("psi"),
      waterVolume({ depth: inches(1), area: quantity(1, "acre") }).in("gal"),
      acreFoot().in("gal"),
    ],
  },
  {
    entry: "soil-045",
    formulas: ["waterVolume"],
    source: {
      title: "Salinity guide: plant nutrients in recycled water",
      publisher: "a guide to water reuse",
      where: "text",
    },
    reached: "read",
    given: "recycled water with 15 to 50 mg/L of nitrogen: an acre-foot of it",
    answers: [
      { of: "lb of N at 15 mg/L", printed: 41, to: 1 },
      { of: "lb of N at 50 mg/L", printed: 136, to: 1 },
    ],
    compute: () =>
      [15, 50].map((mg) =>
        acreFoot()
          .times(quantity(mg, "mg/L", "N/water"))
          .in("lb"),
      ),
  },
  {
    entry: "soil-046",
    formulas: ["waterVolume"],
    source: {
      title: "Nitrogen in irrigation water",
      publisher: "University of California Solution Center for Nutrient Management",
      where: "example",
    },
    reached: "read",
    given: "10 ppm of nitrate-nitrogen, as printed: an acre-foot of it",
    answers: [{ of: "lb of N", printed: 27, to: 1 }],
    compute: () => [
      acreFoot()
        .times(quantity(10, "mg/L", "NO3-N/water"))
        .in("lb"),
    ],
  },
  {
    entry: "soil-103",
    formulas: ["waterVolume"],
    source: {
      title: "Formulas for determining application rates",
      publisher: "Virginia Department of Wildlife Resources",
      where: "list",
      url: "https://dwr.virginia.gov/fishing/aquatic-plant-id-and-treatment/formulas-for-determining-application-rates/",
    },
    reached: "read",
    given: "an acre-foot",
    answers: [
      { of: "gal", printed: 326_000, to: 1000 },
      { of: "lb for 1 ppm", printed: 2.7, to: 0.1 },
    ],
    compute: () => [
      acreFoot().in("gal"),
      acreFoot()
        .times(quantity(1, "mg/L", "product/water"))
        .in("lb"),
    ],
  },
];

/** Examples of water that are left out, and why. */
export const waterTurfLeftOut: readonly LeftOut[] = [
  {
    entry: "site-078",
    reason: "Thresholds of Delta T for spraying: a rule without a figure to compute, and not one of water.",
  },
  {
    entry: "soil-031",
    reason:
      "Limits of dissolved salts in irrigation water by class: the conversion belongs to the room of soil.",
  },
];
