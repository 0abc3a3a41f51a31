import { type DailySeries, dailySeries } from "../../calendar/index.js";
import { unitInWords } from "../../quantity/house.js";
import { checks, expectFields, expectNumber, fail, outOfRange, quantityOf } from "../../quantity/index.js";

const seriesFields = ["start", "unit", "what", "source", "values", "type", "version"] as const;

/** Takes a daily series that may come from JSON, and tells all its problems under `path`. */
export const checkedSeries = (input: unknown, path: string): DailySeries => {
  if (input === undefined) return fail("missing", path, input, "a daily series, made by dailySeries");
  const fields = expectFields(input, seriesFields, path);
  if (fields.type !== "daily-series") {
    return fail(
      "type",
      path,
      input,
      "a daily series, made by dailySeries; daily temperatures become one by dailyMeans",
    );
  }
  const problems = checks();
  const series = problems.run(() => dailySeries(input as DailySeries), path);
  problems.done();
  return series ?? fail("type", path, input, "a daily series");
};

/** Takes a daily series of temperatures. */
export const checkedTemperatureSeries = (input: unknown, path: string): DailySeries => {
  const series = checkedSeries(input, path);
  return quantityOf(0, series.unit, "none", `${path}.unit`).dimension === "temperature"
    ? series
    : fail("unit/mismatch", `${path}.unit`, series.unit, unitInWords("temperature"));
};

/** Takes a whole number of days. */
export const expectDays = (input: unknown, path: string, min: number, max: number): number => {
  if (input === undefined) return fail("missing", path, input, "a whole number of days");
  const days = expectNumber(input, path, { min, max });
  return Number.isInteger(days) ? days : outOfRange(path, days, { step: 1, count: "days" });
};
