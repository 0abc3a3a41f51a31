import { quantity } from "../../src/quantity/index.js";
import {
  actualVaporPressure,
  atmosphericPressure,
  clearSkyRadiation,
  dailyReferenceEvapotranspiration,
  extraterrestrialRadiation,
  hargreavesEvapotranspiration,
  hargreavesEvapotranspirationsMmPerD,
  hourlyExtraterrestrialRadiation,
  hourlyReferenceEvapotranspiration,
  inverseSunDistance,
  meanSaturationVaporPressure,
  monthlyReferenceEvapotranspiration,
  monthlySoilHeatFlux,
  netLongwaveRadiation,
  netShortwaveRadiation,
  psychrometricConstantKPaPerC,
  referenceEvapotranspirationsMmPerD,
  saturationVaporPressure,
  solarDeclination,
  solarRadiationFromSunshine,
  solarRadiationFromTemperatures,
  sunsetHourAngle,
  vaporPressureSlopeKPaPerC,
} from "../../src/water/index.js";
import { dayLength } from "../../src/weather/index.js";
import type { Answer, PublishedCheck, Source } from "./check.js";

const c = (value: number) => quantity(value, "°C");
const pct = (value: number) => quantity(value, "%");
const deg = (value: number) => quantity(value, "deg");
const meters = (value: number) => quantity(value, "m");
const mj = (value: number) => quantity(value, "MJ/m2/d");
const kPa = (value: number) => quantity(value, "kPa");

/** The paper; its figures were read where others have copied them out, not in the paper itself. */
const paper = (example: string, read: string): Source => ({
  title: "Crop evapotranspiration (FAO Irrigation and Drainage Paper 56)",
  publisher: "FAO",
  year: 1998,
  where: `${example}; figures read in ${read}`,
  url: "https://www.fao.org/docrep/x0490e/x0490e00.htm",
});
const copied = "the tests of a public program that repeats the examples of chapter 3";
const copiedMonth = "the tests of a public program that repeats example 17 step by step";
const copiedDays = "the tests of a public program that repeats examples 18 and 20";
const copiedHours = "the test data of a public program that repeats example 19 step by step";

/** So many MJ/m2 as mm of water, as the paper turns them. */
const asWater = 0.408;

const september = { latitude: deg(-20), dayOfYear: 246 };
const rio = { latitude: deg(-22.9), dayOfYear: 135 };
const rioTop = extraterrestrialRadiation(rio);
const rioDay = dayLength({ latitude: rio.latitude, date: "2001-05-15", method: "FAO-56" });
const rioSun = solarRadiationFromSunshine({
  extraterrestrial: rioTop,
  sunshine: quantity(220 / 31, "h"),
  daylight: rioDay,
});
const rioClear = clearSkyRadiation({ extraterrestrial: rioTop, elevation: meters(0) });
const rioLong = netLongwaveRadiation({
  min: c(19.1),
  max: c(25.1),
  vaporPressure: kPa(2.1),
  solar: rioSun,
  clearSky: rioClear,
});
const rioShort = netShortwaveRadiation({ solar: rioSun });

const bangkok = () =>
  monthlyReferenceEvapotranspiration({
    min: c(25.6),
    max: c(34.8),
    before: c(29.2),
    moisture: { vaporPressure: kPa(2.85) },
    sunlight: { sunshine: quantity(8.5, "h") },
    wind: { speed: quantity(2, "m/s"), height: meters(2) },
    latitude: deg(13 + 44 / 60),
    elevation: meters(2),
    month: 4,
  });

const uccle = () =>
  dailyReferenceEvapotranspiration({
    min: c(12.3),
    max: c(21.5),
    moisture: { rhMax: pct(84), rhMin: pct(63) },
    sunlight: { sunshine: quantity(9.25, "h") },
    wind: { speed: quantity(10, "km/h"), height: meters(10) },
    latitude: deg(50.8),
    elevation: meters(100),
    date: "1998-07-06",
  });

const lyon = () =>
  dailyReferenceEvapotranspiration({
    min: c(14.8),
    max: c(26.6),
    moisture: { saturatedAtMinimum: true },
    sunlight: { temperatures: "interior" },
    wind: { speed: quantity(2, "m/s"), height: meters(2) },
    latitude: deg(45 + 43 / 60),
    elevation: meters(200),
    date: "1998-07-15",
  });

const station = {
  latitude: deg(16 + 13 / 60),
  longitude: deg(-16.25),
  elevation: meters(8),
  length: quantity(1, "h"),
};
const night = () =>
  hourlyReferenceEvapotranspiration({
    ...station,
    temperature: c(28),
    humidity: pct(90),
    solar: quantity(0, "MJ/m2"),
    wind: { speed: quantity(1.9, "m/s"), height: meters(2) },
    start: "1998-10-01T02:00-01:00",
    clearnessBefore: pct(80),
  });
const afternoon = () =>
  hourlyReferenceEvapotranspiration({
    ...station,
    temperature: c(38),
    humidity: pct(52),
    solar: quantity(2.45, "MJ/m2"),
    wind: { speed: quantity(3.3, "m/s"), height: meters(2) },
    start: "1998-10-01T14:00-01:00",
  });
const stepsOfHour = (hour: ReturnType<typeof night>): readonly number[] => [
  hour.slope,
  hour.psychrometricConstant,
  hour.saturationVaporPressure.in("kPa"),
  hour.actualVaporPressure.in("kPa"),
  hour.hourAngle.in("rad"),
  hour.extraterrestrialRadiation.in("MJ/m2"),
  hour.clearSkyRadiation.in("MJ/m2"),
  hour.netShortwave.in("MJ/m2"),
  hour.clearness.in("1"),
  hour.netLongwave.in("MJ/m2"),
  hour.netRadiation.in("MJ/m2"),
  hour.soilHeatFlux.in("MJ/m2"),
  hour.radiationTerm.in("mm/h"),
  hour.windTerm.in("mm/h"),
  hour.value.in("mm/h"),
];
const hourNames = [
  "kPa/°C, slope",
  "kPa/°C, psychrometric constant",
  "kPa, saturation",
  "kPa, actual",
  "rad, hour angle",
  "MJ/m2, Ra",
  "MJ/m2, Rso",
  "MJ/m2, Rns",
  "Rs/Rso",
  "MJ/m2, Rnl",
  "MJ/m2, Rn",
  "MJ/m2, G",
  "mm/h, radiation term",
  "mm/h, wind term",
  "mm/h, ETo",
];
/** The printed steps of an hour with their places; `"cut"` where the source cuts a figure off. */
const hourSteps = (printed: readonly (readonly [number, number, "cut"?])[]): readonly Answer[] =>
  printed.map(([figure, to, printing], i) => ({
    of: hourNames[i] as string,
    printed: figure,
    to,
    ...(printing === undefined ? {} : { printing }),
  }));

/** The numbered examples of FAO-56, step by step. */
export const waterFao56Checks: readonly PublishedCheck[] = [
  {
    entry: "site-083",
    formulas: ["atmosphericPressure", "psychrometricConstantKPaPerC"],
    source: paper("example 2", copied),
    reached: "read",
    given: "1800 m above the sea; the second from the printed first",
    answers: [
      { of: "kPa", printed: 81.8, to: 0.1 },
      { of: "kPa/°C", printed: 0.054, to: 0.001 },
    ],
    compute: () => [
      atmosphericPressure({ elevation: meters(1800) }).in("kPa"),
      psychrometricConstantKPaPerC({ pressure: kPa(81.8) }),
    ],
  },
  {
    entry: "site-084",
    formulas: ["saturationVaporPressure", "meanSaturationVaporPressure"],
    source: paper("example 3", copied),
    reached: "read",
    given: "24.5 and 15 °C",
    answers: [
      { of: "kPa, 24.5 °C", printed: 3.075, to: 0.001 },
      { of: "kPa, 15 °C", printed: 1.705, to: 0.001 },
      { of: "kPa, mean of the two", printed: 2.39, to: 0.01 },
    ],
    compute: () => [
      saturationVaporPressure({ temperature: c(24.5) }).in("kPa"),
      saturationVaporPressure({ temperature: c(15) }).in("kPa"),
      meanSaturationVaporPressure({ min: c(15), max: c(24.5) }).in("kPa"),
    ],
  },
  {
    entry: "site-085",
    formulas: ["atmosphericPressure", "saturationVaporPressure", "actualVaporPressure"],
    source: paper("example 4", "no copy: remembered"),
    reached: "from memory",
    given: "dry bulb 25.6, wet bulb 19.5 °C, ventilated, at 1200 m",
    answers: [
      { of: "kPa, pressure", printed: 87.9, to: 0.1 },
      { of: "kPa, saturation at the wet bulb", printed: 2.267, to: 0.001 },
      { of: "kPa, actual", printed: 1.91, to: 0.01 },
    ],
    compute: () => [
      atmosphericPressure({ elevation: meters(1200) }).in("kPa"),
      saturationVaporPressure({ temperature: c(19.5) }).in("kPa"),
      actualVaporPressure({
        min: c(15),
        max: c(30),
        moisture: { wet: c(19.5), dry: c(25.6), psychrometer: "ventilated" },
        elevation: meters(1200),
      }).in("kPa"),
    ],
  },
  {
    entry: "site-086",
    formulas: ["actualVaporPressure", "saturationVaporPressure", "meanSaturationVaporPressure"],
    source: paper("examples 5 and 6", copied),
    reached: "read",
    given: "18 °C with 82 %, 25 °C with 54 %; mean humidity 68 %",
    answers: [
      { of: "kPa, saturation at 18 °C", printed: 2.064, to: 0.001 },
      { of: "kPa, saturation at 25 °C", printed: 3.168, to: 0.001 },
      { of: "kPa, from both humidities", printed: 1.7, to: 0.01 },
      { of: "kPa, from the mean humidity", printed: 1.78, to: 0.01 },
      { of: "kPa, deficit", printed: 0.91, to: 0.01 },
    ],
    compute: () => {
      const day = { min: c(18), max: c(25) };
      const ea = actualVaporPressure({ ...day, moisture: { rhMax: pct(82), rhMin: pct(54) } }).in("kPa");
      return [
        saturationVaporPressure({ temperature: c(18) }).in("kPa"),
        saturationVaporPressure({ temperature: c(25) }).in("kPa"),
        ea,
        actualVaporPressure({ ...day, moisture: { rhMean: pct(68) } }).in("kPa"),
        meanSaturationVaporPressure(day).in("kPa") - ea,
      ];
    },
  },
  {
    entry: "site-087",
    formulas: ["extraterrestrialRadiation", "inverseSunDistance", "solarDeclination", "sunsetHourAngle"],
    source: paper("examples 8 and 9", copied),
    reached: "read",
    given: "20° S on 3 September, day 246",
    answers: [
      { of: "inverse distance", printed: 0.985, to: 0.001 },
      { of: "rad, declination", printed: 0.12, to: 0.001 },
      { of: "rad, sunset hour angle", printed: 1.527, to: 0.001 },
      { of: "MJ/m2/d", printed: 32.2, to: 0.1 },
      { of: "mm/d", printed: 13.1, to: 0.1 },
      { of: "h of daylight", printed: 11.7, to: 0.1 },
    ],
    compute: () => {
      const ra = extraterrestrialRadiation(september).in("MJ/m2/d");
      return [
        inverseSunDistance({ dayOfYear: 246 }),
        solarDeclination({ dayOfYear: 246 }).in("rad"),
        sunsetHourAngle(september).in("rad"),
        ra,
        ra * asWater,
        (24 / Math.PI) * sunsetHourAngle(september).in("rad"),
      ];
    },
  },
  {
    entry: "site-088",
    formulas: ["solarRadiationFromSunshine", "extraterrestrialRadiation"],
    source: paper("example 10", copied),
    reached: "read",
    given: "22°54' S in May, 220 h of sunshine in the month",
    answers: [
      { of: "MJ/m2/d, Ra", printed: 25.1, to: 0.1 },
      { of: "h of daylight", printed: 10.9, to: 0.1 },
      { of: "MJ/m2/d, Rs", printed: 14.5, to: 0.1 },
      { of: "mm/d", printed: 5.9, to: 0.1 },
    ],
    compute: () => [
      rioTop.in("MJ/m2/d"),
      rioDay.in("h"),
      rioSun.in("MJ/m2/d"),
      rioSun.in("MJ/m2/d") * asWater,
    ],
  },
  {
    entry: "site-089",
    formulas: ["netLongwaveRadiation", "netShortwaveRadiation", "clearSkyRadiation"],
    source: paper("examples 11 and 12", copied),
    reached: "read",
    given: "the same place, 25.1 and 19.1 °C, 2.1 kPa",
    answers: [
      { of: "MJ/m2/d, Rso", printed: 18.8, to: 0.1 },
      { of: "Rs/Rso", printed: 0.77, to: 0.01 },
      { of: "MJ/m2/d, Rnl", printed: 3.5, to: 0.1 },
      { of: "MJ/m2/d, Rns", printed: 11.1, to: 0.1 },
      { of: "MJ/m2/d, Rn", printed: 7.6, to: 0.1 },
      { of: "mm/d", printed: 3.1, to: 0.1 },
    ],
    compute: () => {
      const [rns, rnl] = [rioShort.in("MJ/m2/d"), rioLong.in("MJ/m2/d")];
      return [
        rioClear.in("MJ/m2/d"),
        rioSun.in("MJ/m2/d") / rioClear.in("MJ/m2/d"),
        rnl,
        rns,
        rns - rnl,
        (rns - rnl) * asWater,
      ];
    },
  },
  {
    entry: "site-090",
    formulas: ["monthlySoilHeatFlux"],
    source: paper("example 13", copied),
    reached: "read",
    given: "14.1, 16.1 and 18.8 °C in March, April and May",
    answers: [
      { of: "MJ/m2/d, from March and May", printed: 0.33, to: 0.01 },
      { of: "MJ/m2/d, from March and April", printed: 0.28, to: 0.01 },
    ],
    compute: () => [
      monthlySoilHeatFlux({ before: c(14.1), after: c(18.8) }).in("MJ/m2/d"),
      monthlySoilHeatFlux({ before: c(14.1), month: c(16.1) }).in("MJ/m2/d"),
    ],
  },
  {
    entry: "site-091",
    formulas: ["monthlyReferenceEvapotranspiration", "vaporPressureSlopeKPaPerC"],
    source: paper("example 17, page 70 (Bangkok, April)", copiedMonth),
    reached: "read",
    given: "34.8 and 25.6 °C, 2.85 kPa, 2 m/s, 8.5 h of sun, 13°44' N, 2 m; 29.2 °C in March",
    answers: [
      { of: "°C, mean", printed: 30.2, to: 0.1 },
      { of: "kPa/°C, slope", printed: 0.246, to: 0.001 },
      { of: "kPa, pressure", printed: 101.3, to: 0.1 },
      { of: "kPa/°C, psychrometric constant of the printed pressure", printed: 0.0674, to: 0.0001 },
      { of: "kPa, saturation", printed: 4.42, to: 0.01 },
      { of: "h of daylight", printed: 12.31, to: 0.01 },
      { of: "MJ/m2/d, Ra", printed: 38.06, to: 0.01 },
      { of: "MJ/m2/d, Rs", printed: 22.65, to: 0.01 },
      { of: "MJ/m2/d, Rso", printed: 28.54, to: 0.01 },
      { of: "MJ/m2/d, Rns", printed: 17.44, to: 0.01 },
      { of: "MJ/m2/d, Rnl", printed: 3.11, to: 0.01 },
      { of: "MJ/m2/d, Rn", printed: 14.33, to: 0.01 },
      { of: "MJ/m2/d, G", printed: 0.14, to: 0.01 },
      { of: "mm/d, ETo", printed: 5.72, to: 0.01 },
      { of: "kPa/°C, slope by its own function", printed: 0.246, to: 0.001 },
    ],
    compute: () => {
      const april = bangkok();
      return [
        april.meanTemperature.in("°C"),
        april.slope,
        april.pressure.in("kPa"),
        psychrometricConstantKPaPerC({ pressure: kPa(101.3) }),
        april.saturationVaporPressure.in("kPa"),
        april.daylight.in("h"),
        april.extraterrestrialRadiation.in("MJ/m2/d"),
        april.solarRadiation.in("MJ/m2/d"),
        april.clearSkyRadiation.in("MJ/m2/d"),
        april.netShortwave.in("MJ/m2/d"),
        april.netLongwave.in("MJ/m2/d"),
        april.netRadiation.in("MJ/m2/d"),
        april.soilHeatFlux.in("MJ/m2/d"),
        april.value.in("mm/d"),
        vaporPressureSlopeKPaPerC({ temperature: c(30.2) }),
      ];
    },
  },
  {
    entry: "site-091",
    formulas: ["monthlyReferenceEvapotranspiration"],
    source: paper("example 17, its deficit and its two terms", "no copy: remembered"),
    reached: "from memory",
    given: "as above",
    answers: [
      { of: "kPa, deficit", printed: 1.57, to: 0.01 },
      { of: "mm/d, radiation term", printed: 3.97, to: 0.01 },
      { of: "mm/d, wind term", printed: 1.75, to: 0.01 },
    ],
    compute: () => {
      const april = bangkok();
      return [
        april.vaporPressureDeficit.in("kPa"),
        april.radiationTerm.in("mm/d"),
        april.windTerm.in("mm/d"),
      ];
    },
  },
  {
    entry: "site-092",
    formulas: ["dailyReferenceEvapotranspiration", "referenceEvapotranspirationsMmPerD"],
    source: paper("example 18, page 72 (Uccle, 6 July)", copiedDays),
    reached: "read",
    given: "21.5 and 12.3 °C, 84 and 63 %, 10 km/h at 10 m, 9.25 h of sun, 50°48' N, 100 m",
    answers: [
      { of: "m/s at 2 m", printed: 2.078, to: 0.001 },
      { of: "kPa, saturation", printed: 1.997, to: 0.001 },
      { of: "kPa, actual", printed: 1.409, to: 0.001 },
      { of: "kPa, deficit", printed: 0.589, to: 0.001 },
      { of: "MJ/m2/d, Ra", printed: 41.09, to: 0.01 },
      { of: "h of daylight", printed: 16.1, to: 0.1 },
      { of: "MJ/m2/d, Rs", printed: 22.07, to: 0.01 },
      { of: "MJ/m2/d, Rn", printed: 13.28, to: 0.01 },
      { of: "mm/d, ETo", printed: 3.88, to: 0.01 },
      { of: "mm/d, ETo, rounded", printed: 3.9, to: 0.1 },
      { of: "mm/d, ETo by the array form from the printed steps", printed: 3.88, to: 0.01 },
    ],
    compute: () => {
      const day = uccle();
      const of = (value: number) => Float64Array.of(value);
      const array = referenceEvapotranspirationsMmPerD({
        tMinC: of(12.3),
        tMaxC: of(21.5),
        vaporPressureKPa: of(1.409),
        windAtTwoMetersMPerS: of(2.078),
        solarMJPerM2D: of(22.07),
        elevationM: of(100),
        latitudeDeg: of(50.8),
        dayOfYear: of(187),
      });
      const eto = day.value.in("mm/d");
      return [
        day.windAtTwoMeters.in("m/s"),
        day.saturationVaporPressure.in("kPa"),
        day.actualVaporPressure.in("kPa"),
        day.vaporPressureDeficit.in("kPa"),
        day.extraterrestrialRadiation.in("MJ/m2/d"),
        day.daylight.in("h"),
        day.solarRadiation.in("MJ/m2/d"),
        day.netRadiation.in("MJ/m2/d"),
        eto,
        eto,
        array[0] as number,
      ];
    },
  },
  {
    entry: "site-092",
    formulas: ["dailyReferenceEvapotranspiration"],
    source: paper("example 18, the steps that no copy repeats", "no copy: remembered"),
    reached: "from memory",
    given: "as above",
    answers: [
      { of: "kPa, pressure", printed: 100.1, to: 0.1 },
      { of: "kPa/°C, slope", printed: 0.122, to: 0.001 },
      { of: "kPa/°C, psychrometric constant", printed: 0.0666, to: 0.0001 },
      { of: "MJ/m2/d, Rso", printed: 30.9, to: 0.01 },
      { of: "MJ/m2/d, Rns", printed: 17, to: 0.01 },
      { of: "MJ/m2/d, Rnl", printed: 3.71, to: 0.01 },
    ],
    compute: () => {
      const day = uccle();
      return [
        day.pressure.in("kPa"),
        day.slope,
        day.psychrometricConstant,
        day.clearSkyRadiation.in("MJ/m2/d"),
        day.netShortwave.in("MJ/m2/d"),
        day.netLongwave.in("MJ/m2/d"),
      ];
    },
  },
  {
    entry: "site-093",
    formulas: ["hourlyReferenceEvapotranspiration", "hourlyExtraterrestrialRadiation"],
    source: paper("example 19 (N'Diaye, 1 October), 14 to 15 h", copiedHours),
    reached: "read",
    given: "38 °C, 52 %, 3.3 m/s, 2.450 MJ/m2, 16°13' N, 16°15' W, 8 m",
    answers: [
      ...hourSteps([
        [0.358, 0.001],
        [0.0673, 0.0001],
        [6.625, 0.001],
        [3.445, 0.001],
        [0.682, 0.001],
        [3.543, 0.001],
        [2.658, 0.001],
        [1.887, 0.001],
        [0.922, 0.001],
        [0.137, 0.001],
        [1.749, 0.001],
        [0.175, 0.001],
        [0.46, 0.01],
        [0.17, 0.01],
        [0.63, 0.01],
      ]),
      { of: "MJ/m2, Ra by its own function", printed: 3.543, to: 0.001 },
    ],
    compute: () => [
      ...stepsOfHour(afternoon()),
      hourlyExtraterrestrialRadiation({
        latitude: station.latitude,
        longitude: station.longitude,
        start: "1998-10-01T14:00-01:00",
        length: station.length,
      }).in("MJ/m2"),
    ],
  },
  {
    entry: "site-093",
    formulas: ["hourlyReferenceEvapotranspiration"],
    source: paper("example 19 (N'Diaye, 1 October), 2 to 3 h", copiedHours),
    reached: "read",
    given: "28 °C, 90 %, 1.9 m/s, no sun, Rs/Rso 0.8 before sunset, the same place",
    answers: hourSteps([
      [0.22, 0.001],
      [0.0673, 0.0001],
      [3.78, 0.001],
      [3.402, 0.001],
      [-2.46, 0.01],
      [0, 0.001],
      [0, 0.001],
      [0, 0.001],
      [0.8, 0.1],
      [0.1, 0.001],
      [-0.1, 0.001],
      [-0.05, 0.001],
      [-0.01, 0.01],
      [0.01, 0.01, "cut"],
      [0, 0.01],
    ]),
    compute: () => stepsOfHour(night()),
  },
  {
    entry: "site-094",
    formulas: ["dailyReferenceEvapotranspiration", "solarRadiationFromTemperatures"],
    source: paper("example 20 (Lyon, July, temperatures only)", copiedDays),
    reached: "read",
    given: "26.6 and 14.8 °C, 45°43' N, 200 m, dew point at the lowest temperature, 2 m/s",
    answers: [
      { of: "MJ/m2/d, Rs", printed: 22.29, to: 0.01 },
      { of: "kPa, saturation", printed: 2.583, to: 0.001 },
      { of: "kPa, actual", printed: 1.68, to: 0.01 },
      { of: "kPa, deficit", printed: 0.9, to: 0.01 },
      { of: "mm/d, ETo", printed: 4.56, to: 0.01 },
      { of: "mm/d, ETo, rounded", printed: 4.6, to: 0.1 },
      { of: "MJ/m2/d, Rs from the printed Ra of example 15", printed: 22.3, to: 0.1 },
    ],
    compute: () => {
      const day = lyon();
      const eto = day.value.in("mm/d");
      return [
        day.solarRadiation.in("MJ/m2/d"),
        day.saturationVaporPressure.in("kPa"),
        day.actualVaporPressure.in("kPa"),
        day.vaporPressureDeficit.in("kPa"),
        eto,
        eto,
        solarRadiationFromTemperatures({
          extraterrestrial: mj(40.6),
          min: c(14.8),
          max: c(26.6),
          location: "interior",
        }).in("MJ/m2/d"),
      ];
    },
  },
  {
    entry: "site-094",
    formulas: ["hargreavesEvapotranspiration", "hargreavesEvapotranspirationsMmPerD"],
    source: paper("example 20, the same day by Hargreaves", "the tests of five public programs"),
    reached: "read",
    given: "26.6 and 14.8 °C on 15 July at 45°43' N",
    answers: [
      { of: "mm/d", printed: 5, to: 0.1 },
      { of: "mm/d, array form", printed: 5.03, to: 0.01 },
    ],
    compute: () => {
      const of = (value: number) => Float64Array.of(value);
      return [
        hargreavesEvapotranspiration({
          min: c(14.8),
          max: c(26.6),
          latitude: deg(45 + 43 / 60),
          date: "1998-07-15",
        }).in("mm/d"),
        hargreavesEvapotranspirationsMmPerD({
          tMinC: of(14.8),
          tMaxC: of(26.6),
          latitudeDeg: of(45.72),
          dayOfYear: of(196),
        })[0] as number,
      ];
    },
  },
];
