import { interpolate } from "../../numeric/index.js";
import { hasOwn } from "../../quantity/house.js";
import {
  allOf,
  type Citation,
  expectFields,
  expectNumber,
  expectQuantity,
  expectRecord,
  fail,
  outOfRange,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { expectShortText, expectSource } from "../label/expect-source.js";
import { eachOf, listOf } from "../label/under-path.js";

/** One row of an injector chart of a label: what its columns print for a concentration. */
export interface ChartRow {
  readonly ppm: number;
  /** Ounces per gallon of stock, by setting as the chart writes it. */
  readonly ouncesPerGallon: Readonly<Record<string, number>>;
  /** mS/cm, where the chart prints it. */
  readonly conductivity?: number;
}

/** An injector chart as a label prints it: figures of one product, not of others. */
export interface InjectorChart {
  readonly product: string;
  readonly nutrient: "N";
  readonly rows: readonly ChartRow[];
  readonly source: Citation;
}

const mostRows = 200;

/** The rows of a chart by rising concentration, or all that is wrong with them. */
const readRows = (
  chart: InjectorChart,
): readonly Pick<ChartRow, "ppm" | "conductivity" | "ouncesPerGallon">[] => {
  const given = expectFields(chart, ["product", "nutrient", "rows", "source"], "chart");
  expectSource(given.source, "chart.source");
  const list = listOf(given.rows, "chart.rows", "row", mostRows);
  let before = 0;
  return eachOf(list, "chart.rows", (item) => {
    const row = expectFields(item, ["ppm", "ouncesPerGallon", "conductivity"], "", "a row of the chart");
    const { ppm, ounces, conductivity } = allOf({
      ppm: () => expectNumber(row.ppm, "ppm", { above: before, max: 1e6 }),
      ounces: () => expectRecord(row.ouncesPerGallon, "ouncesPerGallon", "ounces by setting"),
      conductivity: () =>
        row.conductivity === undefined
          ? {}
          : { conductivity: expectNumber(row.conductivity, "conductivity", { min: 0, max: 1e6 }) },
    });
    before = ppm;
    return { ppm, ouncesPerGallon: ounces as ChartRow["ouncesPerGallon"], ...conductivity };
  });
};

const ppmOf = (concentration: Quantity<"mass/volume", "N">): number =>
  expectQuantity(
    concentration,
    { dimension: "mass/volume", of: "N", bound: "non-negative" },
    "concentration",
  ).in("mg/L");

/**
 * Fertilizer per volume of stock by a label's chart: between two rows by the straight line, and beyond the
 * last or before the first in proportion to it, as chart users are told to do.
 *
 * Equation: `o = o0 + (o1 - o0) (c - c0) / (c1 - c0)`; beyond the ends `o = o_end c / c_end`
 *
 * A chart runs 0 to 1.3 % above the exact figure ({@link productForConcentration}), because it is rounded up.
 *
 * @param input.setting - a column of the chart, as it writes it
 * @param input.concentration - `c`, wanted in the final solution
 * @throws RatewrightError `type` for a setting that the chart does not have; `range`, `missing`, `unit/mismatch`,
 *   `substance/mismatch`
 *
 * Source: "How to mix a concentrate for an injector", greenhouse supply newsletter: 225 ppm from 18 oz at
 * 200 ppm and 4.5 oz at 50 ppm is 20.25 oz.
 *
 * @example
 * ```ts
 * import { chartAmount, quantity } from "ratewright";
 * const chart = {
 *   product: "15-5-15", nutrient: "N", source: { title: "newsletter", publisher: "greenhouse supply" },
 *   rows: [{ ppm: 50, ouncesPerGallon: { "1:100": 4.5 } }, { ppm: 200, ouncesPerGallon: { "1:100": 18 } }],
 * } as const;
 * chartAmount({ chart, setting: "1:100", concentration: quantity(225, "mg/L", "N") }).in("oz/gal"); // => 20.25
 * ```
 */
export const chartAmount = (input: {
  readonly chart: InjectorChart;
  readonly setting: string;
  readonly concentration: Quantity<"mass/volume", "N">;
}): Quantity<"mass/volume", "product"> => {
  expectFields(input, ["chart", "setting", "concentration"], "input");
  const { rows, ppm, setting } = allOf({
    rows: () => readRows(input.chart),
    ppm: () => ppmOf(input.concentration),
    setting: () => expectShortText(input.setting, "setting", 'a column of the chart, such as "1:100"'),
  });
  if (!rows.some(({ ouncesPerGallon }) => hasOwn(ouncesPerGallon, setting))) {
    const columns = [...new Set(rows.flatMap(({ ouncesPerGallon }) => Object.keys(ouncesPerGallon)))];
    const named = columns.slice(0, 20).join(", ").slice(0, 200) || "it has none";
    fail("type", "setting", setting, `a column of the chart: ${named}`);
  }
  const ys = rows.map(({ ouncesPerGallon }, i) => {
    const at = `chart.rows[${i}].ouncesPerGallon.${setting}`;
    return hasOwn(ouncesPerGallon, setting)
      ? expectNumber(ouncesPerGallon[setting], at, { min: 0, max: 1e6 })
      : fail("missing", at, undefined, "the ounces at this setting, which other rows of the chart have");
  });
  const xs = rows.map((row) => row.ppm);
  const nearest = ppm < (xs[0] as number) ? 0 : ppm > (xs[xs.length - 1] as number) ? xs.length - 1 : -1;
  const ounces =
    nearest >= 0
      ? ((ys[nearest] as number) * ppm) / (xs[nearest] as number)
      : interpolate({ xs, ys, x: ppm });
  return quantity(ounces, "oz/gal", "product");
};

/**
 * The electrical conductivity that a label's chart prints for a concentration of its product in pure
 * water, between its rows by the straight line. Outside of its rows the chart says nothing: an error.
 *
 * The irrigation water's own conductivity comes on top. No other product may be read off the chart: two
 * salts with the same ppm of nitrogen conduct differently, and no formula here gives one from an analysis.
 *
 * @throws RatewrightError `range` outside of the chart; `missing` where a row prints none; `unit/mismatch`,
 *   `substance/mismatch`
 *
 * Source: label chart in Michigan State University Extension, "Ensuring proper fertilizer concentration
 * in greenhouse growing", table 1.
 *
 * @example
 * ```ts
 * import { chartConductivity, labelChart20, quantity } from "ratewright";
 * chartConductivity(labelChart20, quantity(150, "mg/L", "N")).in("mS/cm"); // => 0.96
 * ```
 */
export const chartConductivity = (
  chart: InjectorChart,
  concentration: Quantity<"mass/volume", "N">,
): Quantity<"conductivity", "none"> => {
  const { rows, ppm } = allOf({ rows: () => readRows(chart), ppm: () => ppmOf(concentration) });
  const ys = rows.map(
    ({ conductivity }, i) =>
      conductivity ?? fail("missing", `chart.rows[${i}].conductivity`, undefined, "a printed conductivity"),
  );
  const xs = rows.map((row) => row.ppm);
  const [first, last] = [xs[0] as number, xs[xs.length - 1] as number];
  if (ppm < first || ppm > last)
    outOfRange("concentration", concentration, { min: first, max: last, unit: "mg/L" });
  return quantity(interpolate({ xs, ys, x: ppm }), "mS/cm");
};
