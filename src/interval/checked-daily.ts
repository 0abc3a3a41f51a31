import { type DailySeries, dailySeries } from "../calendar/index.js";
import { checks, fail } from "../quantity/index.js";

/** Takes a daily series that may come from JSON, or throws all that is wrong with it. */
export const checkedDaily = (input: DailySeries, path: string): DailySeries => {
  if (input?.type !== "daily-series") return fail("type", path, input, "a daily series");
  const problems = checks();
  const series = problems.run(() => dailySeries(input), path);
  problems.done();
  return series as DailySeries;
};
