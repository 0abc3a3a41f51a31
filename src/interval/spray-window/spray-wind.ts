import { checks, expectQuantity, type Quantity, type QuantityJson } from "../../quantity/index.js";
import { windAtHeight } from "../../weather/index.js";
import { figureAt, type HourlyWeather } from "./hourly-weather.js";
import type { SunTimes } from "./spray-rules.js";

const round = (x: number): number => Number(x.toPrecision(4));

/** What an hour is held against beside its rules. */
export interface SprayContext {
  readonly weather: HourlyWeather;
  readonly sun: readonly SunTimes[];
  /** The height that a rule on wind means where it states none. */
  readonly windHeight?: QuantityJson;
}

/** An hour with what it is held against. */
export interface At extends SprayContext {
  readonly hour: number;
}

/** The figure of an hour as a band: from and to. */
export interface Band {
  readonly low: QuantityJson;
  readonly high: QuantityJson;
  /** What was done to it, for the text: `", brought from 10 m to 2 m"`. */
  readonly how?: string;
}

const shownHeight = ({ value, unit }: QuantityJson): string => `${value} ${unit}`;

/** A wind or gust at the height that a rule means, or why it cannot be told. */
export const windFor = (
  name: "wind" | "gust",
  meant: QuantityJson | undefined,
  at: At,
): { readonly band: Band } | { readonly why: string } => {
  const figure = figureAt(at.weather, name, at.hour);
  if (figure === undefined) return { why: "not in the record" };
  const from = at.weather[name]?.height;
  if (from === undefined) {
    return { why: `the record does not state its height: give ${name}.height, usually 10 m` };
  }
  const to = meant ?? at.windHeight;
  if (to === undefined) {
    return { why: "the rule does not state the height that it means: give its height, or windHeight" };
  }
  const [high, low] = [from, to].map((height, i) =>
    expectQuantity(
      height,
      { dimension: "length", of: "none" },
      i === 0 ? `weather.${name}.height` : "height",
    ),
  ) as [Quantity<"length", "none">, Quantity<"length", "none">];
  if (Math.abs(high.in("m") - low.in("m")) < 1e-9) return { band: { low: figure, high: figure } };
  if (name === "gust") {
    return {
      why: `there is no published way to bring gusts from ${shownHeight(from)} to ${shownHeight(to)}`,
    };
  }
  const wind = expectQuantity(figure, { dimension: "length/time", of: "none" }, "weather.wind");
  const problems = checks();
  const moved = problems.run(() => windAtHeight({ wind, from: high, to: low }));
  if (moved === undefined) {
    return {
      why: `it cannot be brought from ${shownHeight(from)} to ${shownHeight(to)}: heights of 0.3 to 30 m can`,
    };
  }
  const how = ` at ${shownHeight(to)} (${round(wind.value)} ${wind.unit} at ${shownHeight(from)})`;
  return { band: { low: moved, high: moved, how } };
};
