// An entry as a browser sends it: numbers between quotes, a humidity as a share, weather as a text.
import { expect, test } from "vitest";
import { hourlyWeather } from "../../src/interval/index.js";
import { ledger } from "../../src/ledger/index.js";
import { expectQuantity } from "../../src/quantity/index.js";
import { problemsOf } from "../errors.js";

const told = (more: object): readonly unknown[] =>
  problemsOf(() => ledger([{ id: "a", date: "2026-06-08", ...more }])).map(
    ({ code, path, got, expected, suggestion }) => [code, path, got, expected, suggestion],
  );
const quoted = "a finite number; parseQuantity and readQuantity read text";

test("a number between quotes is told at its place", () => {
  expect(told({ area: { value: "60000", unit: "ft2" } })).toEqual([
    ["not-finite", "entries[0].area.value", '"60000"', quoted, undefined],
  ]);
  expect(told({ weather: { wind: { value: "5", unit: "mi/h" } } })).toEqual([
    ["not-finite", "entries[0].weather.wind.value", '"5"', quoted, undefined],
  ]);
  const [problem] = problemsOf(() =>
    expectQuantity({ value: "12", unit: "lb" }, { dimension: "mass" }, "bag"),
  );
  expect([problem?.code, problem?.path, problem?.got]).toEqual(["not-finite", "bag.value", '"12"']);
});

test("a humidity is 100 % or less in whatever unit", () => {
  const humidity = (value: number, unit: string) => told({ weather: { humidity: { value, unit } } });
  expect(humidity(65, "%")).toEqual([]);
  expect(humidity(0.65, "1")).toEqual([]);
  expect(humidity(0, "%")).toEqual([]);
  expect(humidity(100, "%")).toEqual([]);
  // 65 as a bare number is 6500 %
  expect(humidity(65, "1")).toEqual([
    ["range", "entries[0].weather.humidity", "65 1", "100 % or less", undefined],
  ]);
});

test("the hours of a forecast, too", () => {
  const hours = (unit: string, values: readonly (number | null)[]) =>
    problemsOf(() =>
      hourlyWeather({ start: "2026-06-03T06:00-05:00", source: "forecast", humidity: { unit, values } }),
    ).map(({ code, path, suggestion }) => [code, path, suggestion]);
  expect(hours("%", [60, null, 0, 100])).toEqual([]);
  expect(hours("1", [0.6, 0.7])).toEqual([]);
  expect(hours("%", [0.5, 70])).toEqual([]);
  expect(hours("%", [0.6, null, 0.5])).toEqual([["range", "humidity.values", "60 %"]]);
});

test("weather that is none is told as weather", () => {
  expect(told({ weather: "clear" })).toEqual([
    ["type", "entries[0].weather", '"clear"', "the weather", undefined],
  ]);
});
