import { describe, expect, it } from "vitest";
import {
  hourlyWeather,
  publishedSprayRules,
  quantity,
  type SprayRules,
  sprayWindow,
} from "../../../src/index.js";

const of = "none";
const mph = (value: number) => ({ value, unit: "mi/h", of });
const metres = (value: number) => ({ value, unit: "m", of });
const weatherOf = (speed: number, height?: number, gust?: number) =>
  hourlyWeather({
    start: "2026-06-03T06:00-05:00",
    source: "forecast of the weather service",
    wind: { unit: "m/s", values: [speed], ...(height === undefined ? {} : { height: metres(height) }) },
    ...(gust === undefined ? {} : { gust: { unit: "m/s", values: [gust], height: metres(10) } }),
  });
const hourOf = (
  speed: number,
  recorded: number | undefined,
  rule: Omit<SprayRules, "source">,
  more: object = {},
) => {
  const weather = weatherOf(speed, recorded);
  return sprayWindow({ weather, rules: [{ ...rule, source: "label" }], ...more }).hours[0];
};
const limit = { max: { value: 2.5, unit: "m/s", of } };

describe("the height of a wind in a spray window", () => {
  it("is brought to that of the rule: 3.2 m/s at 10 m is 2.4 m/s at 2 m", () => {
    expect(hourOf(3.2, 10, { wind: { ...limit, height: metres(2) } })?.statement).toBe(
      "no stated rule objects",
    );
    expect(hourOf(3.2, 2, { wind: { ...limit, height: metres(2) } })?.objections[0]?.code).toBe(
      "spray/wind-above",
    );
    const at = { max: { value: 2.3, unit: "m/s", of }, height: metres(2) };
    expect(hourOf(3.2, 10, { wind: at })?.objections[0]?.text).toBe(
      "Wind of 2.393 m/s at 2 m (3.2 m/s at 10 m) is above the stated 2.3 m/s.",
    );
  });
  it("that the record does not state leaves the rule unchecked, and says why", () => {
    const hour = hourOf(20, undefined, { wind: { ...limit, height: metres(2) } });
    expect(hour?.statement).toBe("no stated rule objects, but not all could be checked");
    expect(hour?.notChecked).toEqual([
      "Wind: the record does not state its height: give wind.height, usually 10 m.",
    ]);
  });
  it("that the rule does not state leaves it unchecked, and says why", () => {
    expect(hourOf(20, 10, { wind: limit })?.notChecked).toEqual([
      "Wind: the rule does not state the height that it means: give its height, or windHeight.",
    ]);
  });
  it("can be stated once for all rules, and the result tells it", () => {
    const weather = weatherOf(20, 10);
    const found = sprayWindow({
      weather,
      rules: publishedSprayRules.slice(0, 1),
      windHeight: quantity(20, "in"),
    });
    expect(found.hours[0]?.objections.map(({ code }) => code)).toEqual(["spray/wind-above"]);
    expect(found.assumed).toEqual(["Wind rules with no stated height are taken at 20 in above the ground."]);
  });
  it("counts for calm as a sign of inversion", () => {
    const rule = { inversion: { calmBelow: mph(3), height: metres(2) } };
    expect(hourOf(1.6, 10, rule)?.objections[0]?.code).toBe("spray/inversion-calm");
    expect(hourOf(1.6, 2, rule)?.objections).toEqual([]);
    expect(hourOf(1.6, undefined, rule)?.notChecked[0]).toMatch(
      /Calm as a sign of inversion: wind the record/,
    );
  });
  it("of gusts is not brought anywhere, for nothing published does", () => {
    const rules = [{ gust: { max: mph(15), height: metres(2) }, source: "label" }];
    const found = sprayWindow({ weather: weatherOf(1, 10, 20), rules });
    expect(found.hours[0]?.notChecked[0]).toMatch(/no published way to bring gusts from 10 m to 2 m/);
  });
  it("beyond what the profile reaches leaves the rule unchecked", () => {
    expect(hourOf(3, 80, { wind: { ...limit, height: metres(2) } })?.notChecked[0]).toMatch(
      /from 80 m to 2 m/,
    );
  });
  it("is a length above zero, with its path", () => {
    expect(() => weatherOf(3, 0)).toThrow(/wind.height: expected more than zero/);
    expect(() => hourOf(3, 10, { wind: { ...limit, height: mph(3) } })).toThrow(/rules\[0\].wind.height/);
  });
});
