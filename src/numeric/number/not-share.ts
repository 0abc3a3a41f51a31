import { RatewrightError, rangeProblem } from "../../quantity/index.js";

/** From where to where a percent lies, and how it is written. */
export interface PercentBounds {
  /** At or below this a percent above zero is a share: 1 where it is left out. */
  readonly least?: number;
  /** The most that is taken: 100 where it is left out. */
  readonly most?: number;
  /** Nothing where the percent is a bare number. */
  readonly unit?: "%" | "";
}

/**
 * Gives a percent back, or throws where it is a share: 0.75 % where 75 % was meant, which the refusal suggests. Whether
 * zero will do, and what is too much, is for the caller to say.
 */
export const notShare = (percent: number, path: string, bounds: PercentBounds = {}): number => {
  const { least = 1, most = 100, unit = "%" } = bounds;
  if (percent <= 0 || percent > least) return percent;
  const after = unit === "" ? "" : ` ${unit}`;
  const told = rangeProblem(
    path,
    `${percent}${after}`,
    { above: least, max: most, ...(unit !== "" && { unit }) },
    unit === "" ? "a percent of {}" : "{}",
  );
  throw new RatewrightError({ ...told, suggestion: `${Number((100 * percent).toPrecision(12))}${after}` });
};

/** The same for a column of percents: where none is above 1, all of them are shares. */
export const notShares = (percents: readonly (number | null)[], path: string): void => {
  let most = 0;
  for (const percent of percents) if (percent !== null && percent > most) most = percent;
  notShare(most, path);
};
