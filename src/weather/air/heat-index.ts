import { exceeds } from "../../numeric/index.js";
import {
  allOf,
  type Citation,
  expectFields,
  expectOneOf,
  type Finding,
  fail,
  frozen,
  inUnit,
  quantity,
} from "../../quantity/index.js";
import { expectAir, expectHumidity, type Humidity, type Temperature } from "./expect-air.js";

/** How hot moist air feels in the shade, with the words of the weather service. No medical advice. */
export interface HeatIndex {
  readonly type: "heat-index";
  readonly version: 1;
  readonly value: Temperature;
  /** Which equation gave it; `"none"` up to 40 °F, where the index is the temperature. */
  readonly equation: "none" | "simple" | "regression";
  /** What was added to the regression for very dry or very humid air. */
  readonly adjustment: "none" | "dry air" | "humid air";
  readonly category: HeatCategory["name"] | null;
  /** The table that the category is from; `heatTables` has its source. */
  readonly table: HeatTableName;
  readonly findings: readonly Finding[];
}

/** A band of the heat index with what the weather service writes beside it. */
export interface HeatCategory {
  readonly name: "caution" | "extreme caution" | "danger" | "extreme danger";
  /** From this heat index on, °F. */
  readonly fromF: number;
  readonly effect: string;
}

const chart: Citation = /* @__PURE__ */ frozen({
  title: "Heat index information",
  publisher: "National Weather Service, Tulsa",
  where: "heat index chart and categories",
  url: "http://www.srh.noaa.gov/tsa/?n=heatindex",
});
const equationPage: Citation = /* @__PURE__ */ frozen({
  title: "The heat index equation",
  publisher: "National Weather Service, Weather Prediction Center",
  url: "https://www.wpc.ncep.noaa.gov/html/heatindex_equation.shtml",
});
const fullSun: Citation = /* @__PURE__ */ frozen({
  title: "Survey manual, appendix 45-B: heat index chart",
  publisher: "U.S. Geological Survey, after the National Weather Service",
  where: "note above the bands",
  url: "https://docest.com/doc/277516/u-s-geological-survey-manual-s2",
});

/** The tables of the weather service, by where danger and extreme danger begin. */
export type HeatTableName = "from 103 and 125 °F" | "from 105 and 130 °F";

/** The bands of the heat index in one table of the weather service. */
export interface HeatTable {
  readonly source: Citation;
  readonly categories: readonly HeatCategory[];
}

const tiring = "work and exercise are more tiring than usual";
const likely = "heat cramps or heat exhaustion likely, heat stroke possible";

/**
 * The bands of the heat index in the two tables of the weather service. The one that begins danger at 103 °F is the default:
 * it warns sooner.
 */
export const heatTables: Readonly<Record<HeatTableName, HeatTable>> = /* @__PURE__ */ frozen({
  "from 103 and 125 °F": {
    source: {
      title: "What is the heat index?",
      publisher: "a safety page that repeats a table of the National Weather Service",
      year: 2015,
      where: "table of classifications: 80, 90, 103 and 125 °F",
      url: "https://w12thrd.blogspot.com/2015/07/what-is-heat-index.html",
    },
    categories: [
      { name: "caution", fromF: 80, effect: tiring },
      { name: "extreme caution", fromF: 90, effect: "heat cramps, heat exhaustion and heat stroke possible" },
      { name: "danger", fromF: 103, effect: likely },
      { name: "extreme danger", fromF: 125, effect: "heat stroke highly likely" },
    ],
  },
  "from 105 and 130 °F": {
    source: chart,
    categories: [
      { name: "caution", fromF: 80, effect: tiring },
      { name: "extreme caution", fromF: 90, effect: "heat cramps and heat exhaustion possible" },
      { name: "danger", fromF: 105, effect: likely },
      { name: "extreme danger", fromF: 130, effect: "heat stroke likely" },
    ],
  },
});
const tableNames = ["from 103 and 125 °F", "from 105 and 130 °F"] as const;
const [sooner] = tableNames;

/** The highest figure that the chart prints, °F. */
const highestPrinted = 137;

/** Up to this temperature the script of the service gives the temperature itself, °F. */
const coldF = 40;
/** Above this simple form the script takes the regression, °F; the words of the page say 80. */
const simpleUpToF = 79;

/** The average of the temperature and of `61 + 1.2 (T - 68) + 0.094 RH`. */
const simpleF = (t: number, rh: number): number => (t + 61 + (t - 68) * 1.2 + rh * 0.094) / 2;

const regressionF = (t: number, rh: number): number =>
  -42.379 +
  2.04901523 * t +
  10.14333127 * rh -
  0.22475541 * t * rh -
  0.00683783 * t * t -
  0.05481717 * rh * rh +
  0.00122874 * t * t * rh +
  0.00085282 * t * rh * rh -
  0.00000199 * t * t * rh * rh;

const adjustmentF = (
  t: number,
  rh: number,
): { readonly add: number; readonly name: HeatIndex["adjustment"] } => {
  if (rh < 13 && t >= 80 && t <= 112) {
    return { add: -((13 - rh) / 4) * Math.sqrt((17 - Math.abs(t - 95)) / 17), name: "dry air" };
  }
  if (rh > 85 && t >= 80 && t <= 87) return { add: ((rh - 85) / 10) * ((87 - t) / 5), name: "humid air" };
  return { add: 0, name: "none" };
};

const feltF = (
  t: number,
  rh: number,
): { readonly f: number } & Pick<HeatIndex, "equation" | "adjustment"> => {
  if (t <= coldF) return { f: t, equation: "none", adjustment: "none" };
  const simple = simpleF(t, rh);
  if (!exceeds(simple, simpleUpToF)) return { f: simple, equation: "simple", adjustment: "none" };
  const { add, name } = adjustmentF(t, rh);
  return { f: regressionF(t, rh) + add, equation: "regression", adjustment: name };
};

/** The band of a table that a heat index lies in; none below the first. */
const bandOf = (f: number, table: HeatTableName): HeatCategory | undefined =>
  [...heatTables[table].categories].reverse().find(({ fromF }) => !exceeds(fromF, f));

const findingsOf = (
  f: number,
  category: HeatCategory | undefined,
  table: HeatTableName,
  unit: string,
): Finding[] => {
  const told = (degrees: number): string =>
    unit === "°F" ? `${degrees} °F` : `${quantity(degrees, "°F").in("°C").toFixed(1)} °C`;
  const found: Finding[] = [
    {
      code: "heat-index/shade",
      severity: category === undefined ? "note" : "caution",
      params: { addF: 15 },
      text: `The heat index is for shade and light wind. Full sun can add up to ${unit === "°F" ? "15 °F (8 °C)" : "8 °C"}. Impermeable protective clothing adds more.`,
      source: fullSun,
    },
  ];
  if (category !== undefined) {
    found.push({
      code: "heat-index/category",
      severity: /danger/.test(category.name) ? "warning" : "caution",
      params: { category: category.name, effect: category.effect, table },
      text: `Heat index: ${category.name}. With long exposure or hard work: ${category.effect}. Water, shade, rest and someone to watch the crew; heat stroke is an emergency.`,
      source: heatTables[table].source,
    });
  }
  const other = bandOf(f, sooner);
  if (other !== undefined && other.name !== category?.name) {
    found.push({
      code: "heat-index/higher-in-other-table",
      severity: "warning",
      params: { category: other.name, fromF: other.fromF },
      text: `Another table of the weather service calls this ${other.name}: there it begins at ${told(other.fromF)}.`,
      source: heatTables[sooner].source,
    });
  }
  if (f > highestPrinted) {
    found.push({
      code: "heat-index/beyond-chart",
      severity: "warning",
      params: { highestF: highestPrinted },
      text: `Above ${told(highestPrinted)}, the highest figure of the chart. The equation is not valid for air that hot and humid.`,
      source: equationPage,
    });
  }
  return found;
};

/**
 * The heat index: how hot moist air feels to people in the shade, by the equation of the National Weather Service.
 *
 * First the simple form `0.5 (T + 61 + 1.2 (T - 68) + 0.094 RH)`. Where that is above 79 °F, the regression of nine
 * terms in `T` (°F) and `RH` (%) takes its place, less `(13 - RH)/4 sqrt((17 - |T - 95|)/17)` for `RH` below 13 % and
 * `T` of 80 to 112 °F, plus `(RH - 85)/10 (87 - T)/5` for `RH` above 85 % and `T` of 80 to 87 °F. Up to 40 °F the index
 * is the temperature.
 *
 * The page of the service says that the simple form is averaged with `T`, and that the regression begins at 80 °F. In the
 * script of its own page the factor 0.5 is that average, taken once, and the regression begins above 79 °F, which warns
 * sooner. The script is followed here.
 *
 * Two tables of the service set its bands: danger from 103 °F and extreme danger from 125 °F (the default, which warns
 * sooner), or from 105 and 130 °F. With the latter a finding says where the former is ahead.
 *
 * The index is no limit for work. It leaves out sun, clothing, workload and what a person is used to. A crew in hot
 * weather needs water, shade, rest and someone who watches; heat stroke is an emergency.
 *
 * @param input.temperature - air in the shade, up to 60 °C (140 °F)
 * @param input.table - one of {@link heatTables}
 * @param input.humidity - relative humidity of that air
 * @returns `value` in the unit of `temperature`
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`, `type`
 * Source: National Weather Service, Weather Prediction Center, "The heat index equation" (L. P. Rothfusz, 1990, with the
 * adjustments), and the script of its page "Heat index calculation", as NCAR's GeoCAT quotes it (2026); MetPy, a public
 * library, has the same. The bands as in {@link heatTables}.
 *
 * @example
 * ```ts
 * import { heatIndex, quantity } from "ratewright";
 * const noon = heatIndex({ temperature: quantity(90, "°F"), humidity: quantity(70, "%") });
 * Number(noon.value.in("°F").toFixed(1)); // => 105.9
 * noon.category; // => "danger"
 * heatIndex({ temperature: quantity(70, "°F"), humidity: quantity(50, "%") }).category; // => null
 * ```
 */
export const heatIndex = (input: {
  readonly temperature: Temperature;
  readonly humidity: Humidity;
  readonly table?: HeatTableName;
}): HeatIndex => {
  const { dewPoint } = Object(input) as { readonly dewPoint?: unknown };
  if (dewPoint !== undefined) fail("type", "dewPoint", dewPoint, "humidity: humidityFromDewPoint gives it");
  const fields = expectFields(input, ["temperature", "humidity", "table"]);
  const { temperature, humidity, table } = allOf({
    temperature: () => expectAir(fields.temperature, "temperature", -40, 60),
    humidity: () => expectHumidity(fields.humidity, "humidity"),
    table: () => (fields.table === undefined ? sooner : expectOneOf(fields.table, tableNames, "table")),
  });
  const [t, rh] = [temperature.in("°F"), humidity.in("%")];
  const { f, equation, adjustment } = feltF(t, rh);
  const category = bandOf(f, table);
  return {
    type: "heat-index",
    version: 1,
    value: inUnit(quantity(f, "°F"), temperature.unit),
    equation,
    adjustment,
    category: category?.name ?? null,
    table,
    findings: findingsOf(f, category, table, temperature.unit),
  };
};
