import { brownPatchIndex, dollarSpotProbability, insectTargets, quantity } from "../../src/index.js";
import type { PublishedCheck } from "./check.js";

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
];
