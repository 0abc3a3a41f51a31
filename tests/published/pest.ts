import {
  brownPatchIndex,
  dollarSpotProbability,
  hourlyWeather,
  insectTargets,
  pythiumOutlook,
  quantity,
} from "../../src/index.js";
import type { PublishedCheck } from "./check.js";

/** Whether a day from noon to noon is favorable: its highest and lowest temperature, and humid hours after the heat. */
const favors = (
  unit: "°C" | "°F",
  highest: number,
  lowest: number,
  hours: number,
  percent: number,
): boolean => {
  const at = Array.from({ length: 24 }, (_, i) => i);
  const weather = hourlyWeather({
    start: "2026-07-14T12:00-05:00",
    source: "made up around the bounds",
    temperature: { unit, values: at.map((i) => (i === 0 ? highest : lowest)) },
    humidity: { unit: "%", values: at.map((i) => (i > 0 && i <= hours ? percent : 50)) },
  });
  return pythiumOutlook({ weather }).days[0]?.favorable === true;
};

/** The last of the numbers from 0 on, in steps, at which a test still fails: the bound of "higher than" it. */
const boundOf = (step: number, test: (value: number) => boolean): number =>
  Array.from({ length: 120 / step }, (_, i) => i * step).find((value) => test(value + step)) ?? Number.NaN;

/** Published checks of the room of pests: few sources print a computed figure. */
export const pestChecks: readonly PublishedCheck[] = [
  {
    entry: "pest-001",
    formulas: ["brownPatchIndex"],
    source: {
      title: "Predictive models for turf grass diseases",
      publisher: "University of Kentucky, agricultural weather center",
      where: "brown patch model 1",
      url: "http://weather.uky.edu/turf_forecasting.htm",
    },
    reached: "read",
    kind: "transcription",
    given:
      "the coefficients: 0 % and 0 °C; 100 % and 0 °C less that; 0 % and 1 °C less that, and 0 % and -1 °C less that",
    answers: [
      { of: "constant", printed: -21.5, to: 0.1 },
      { of: "per 100 % of humidity", printed: 15, to: 1 },
      { of: "1.4 - 0.033", printed: 1.367, to: 0.001 },
      { of: "-1.4 - 0.033", printed: -1.433, to: 0.001 },
    ],
    compute: () => {
      const e = (rh: number, t: number) =>
        brownPatchIndex({ meanHumidity: quantity(rh, "%"), minimumTemperature: quantity(t, "°C") });
      return [e(0, 0), e(100, 0) - e(0, 0), e(0, 1) - e(0, 0), e(0, -1) - e(0, 0)];
    },
  },
  {
    entry: "pest-002",
    formulas: ["insectTargetsFor"],
    source: {
      title: "Kill billbug: improving a predictive model to time management in the Intermountain West",
      publisher: "ASA, CSSA and SSSA annual meeting, paper 217-2",
      year: 2015,
      where: "abstract",
      url: "https://scisoc.confex.com/scisoc/2015am/webprogram/Paper92769.html",
    },
    reached: "read",
    kind: "transcription",
    given: "degree-days above 5 °C from 13 January: first adults, 30 %, peak",
    answers: [39, 111, 459, 484, 768, 838].map((printed) => ({ of: "°C d", printed, to: 1 })),
    compute: () =>
      insectTargets
        .filter(({ id }) => id.endsWith("Utah"))
        .flatMap(({ from, to }) => [from, to ?? Number.NaN]),
  },
  {
    entry: "pest-003",
    formulas: ["dollarSpotProbability"],
    source: {
      title: "Dollar spot by forecast weather",
      publisher: "public notebook that repeats the equation of PLOS ONE 13(3), e0194216",
      year: 2018,
      where: "equation of the logit; read as an excerpt, title paraphrased",
    },
    reached: "read",
    kind: "transcription",
    given:
      "the coefficients: the logit at 0 % and 0 °C; at 100 % and 0 °C less that; at 0 % and 10 °C less that",
    answers: [
      { of: "constant", printed: -11.4041, to: 0.0001 },
      { of: "per 100 % of humidity", printed: 8.94, to: 0.01 },
      { of: "per 10 °C", printed: 1.932, to: 0.001 },
    ],
    compute: () => {
      const logit = (rh: number, t: number) => {
        const p = dollarSpotProbability({
          meanHumidity: quantity(rh, "%"),
          meanTemperature: quantity(t, "°C"),
        });
        return Math.log(p.value / (100 - p.value));
      };
      return [logit(0, 0), logit(100, 0) - logit(0, 0), logit(0, 10) - logit(0, 0)];
    },
  },
  {
    entry: "pest-004",
    formulas: ["pythiumOutlook"],
    source: {
      title: "Disease forecasting system for warm weather Pythium blight of turfgrass",
      publisher: "Plant Disease 67, 1126-1128 (Nutter, Cole and Schein)",
      year: 1983,
      where: "abstract",
      url: "https://www.apsnet.org/publications/plantdisease/backissues/Documents/1983Abstracts/PD_67_1126.htm",
    },
    reached: "read",
    kind: "transcription",
    given: "the bounds, found by trying: maximum, hours, humidity, minimum, one at a time",
    answers: [
      { of: "°C, maximum higher than", printed: 30, to: 1 },
      { of: "h at least", printed: 14, to: 1 },
      { of: "% greater than", printed: 90, to: 1 },
      { of: "°C, minimum higher than", printed: 20, to: 1 },
    ],
    compute: () => [
      boundOf(1, (value) => favors("°C", value, 24, 23, 99)),
      boundOf(1, (value) => favors("°C", 35, 24, value, 99)) + 1,
      // 1 % of humidity is refused: it would be a share
      boundOf(1, (value) => value > 1 && favors("°C", 35, 24, 23, value)),
      boundOf(1, (value) => favors("°C", 35, value, 23, 99)),
    ],
  },
  {
    entry: "pest-005",
    formulas: ["pythiumOutlook"],
    source: {
      title: "Turf grass diseases evaluation",
      publisher: "University of Kentucky, agricultural weather center",
      where: "Pythium model 2",
      url: "http://weather.uky.edu/cgi-bin/kyc_grass_PCB1.pl",
    },
    reached: "read",
    kind: "transcription",
    given: "the same criteria on the other scale, found by trying",
    answers: [
      { of: "°F, maximum higher than", printed: 86, to: 1 },
      { of: "°F, minimum higher than", printed: 68, to: 1 },
    ],
    compute: () => [
      boundOf(1, (value) => favors("°F", value, 75, 23, 99)),
      boundOf(1, (value) => favors("°F", 95, value, 23, 99)),
    ],
  },
];
