import { expectTypeOf, test } from "vitest";
import type { DailyTemperatures } from "../../../src/calendar/index.js";
import {
  type DegreeDayModel,
  dateReached,
  degreeDayAmount,
  degreeDayModel,
  degreeDays,
} from "../../../src/interval/index.js";
import { type Quantity, quantity } from "../../../src/quantity/index.js";

const base0 = degreeDayModel({ method: "simple average", base: { value: 0, unit: "°C" }, sensor: "air" });
const base32 = degreeDayModel({ method: "simple average", base: { value: 32, unit: "°F" }, sensor: "air" });
const base50 = degreeDayModel({ method: "simple average", base: { value: 50, unit: "°F" }, sensor: "air" });
const day = { max: quantity(20, "°C"), min: quantity(10, "°C") };
declare const series: DailyTemperatures;

test("the compiler knows the id of a model that is written out", () => {
  expectTypeOf(base0).toEqualTypeOf<DegreeDayModel<"simple-average base 0C air">>();
  expectTypeOf(base32.id).toEqualTypeOf<"simple-average base 0C air">();
  expectTypeOf(base50.id).toEqualTypeOf<"simple-average base 10C air">();
  const soil = degreeDayModel({
    method: "simple average",
    base: { value: 53.6, unit: "°F" },
    sensor: "soil at 2.5 cm",
    start: "04-01",
  });
  expectTypeOf(soil.id).toEqualTypeOf<"simple-average base 12C soil at 2.5 cm from 04-01">();
  const red = degreeDayModel({ method: "simple average", base: { value: 53, unit: "°F" }, sensor: "air" });
  expectTypeOf(red.id).toEqualTypeOf<"simple-average base 53F air">();
});

test("a model that is read in has a plain id", () => {
  const value: number = 10;
  const read = degreeDayModel({ method: "simple average", base: { value, unit: "°C" }, sensor: "air" });
  expectTypeOf(read.id).toEqualTypeOf<string>();
});

test("degree-days are degree-days of a model", () => {
  const sum = degreeDays({ ...day, model: base0 });
  expectTypeOf(sum).toEqualTypeOf<Quantity<"degree-days", "degree-days:simple-average base 0C air">>();
  sum.plus(degreeDays({ ...day, model: base32 }));
  // @ts-expect-error degree-days of another base
  sum.plus(degreeDays({ ...day, model: base50 }));
  // @ts-expect-error degree-days of another base
  degreeDays({ ...day, model: base50 }).plus(sum);
});

test("a threshold is of the model that it is compared with", () => {
  const from = "2026-04-01";
  const threshold = degreeDayAmount({ value: 200, unit: "°C d", model: base0 });
  dateReached({ series, model: base32, from, threshold });
  // @ts-expect-error a threshold of another base
  dateReached({ series, model: base50, from, threshold });
  // @ts-expect-error a bare number
  dateReached({ series, model: base0, from, threshold: 200 });
});

test("a temperature is no difference, and a Date no calendar date", () => {
  // @ts-expect-error a difference
  degreeDays({ max: quantity(20, "°C diff"), min: quantity(10, "°C"), model: base0 });
  const threshold = degreeDayAmount({ value: 1, unit: "°C d", model: base0 });
  const from = new Date(0);
  // @ts-expect-error an instant
  dateReached({ series, model: base0, from, threshold });
});

test("method, upper threshold and cutoff are part of the type", () => {
  const base = { value: 50, unit: "°F" } as const;
  const upper = { value: 88, unit: "°F" } as const;
  const sine = degreeDayModel({ method: "single sine", base, sensor: "air" });
  expectTypeOf(sine.id).toEqualTypeOf<"single-sine base 10C air">();
  const cut = degreeDayModel({
    method: "double sine",
    base,
    upper,
    cutoff: "intermediate floored",
    sensor: "air",
    start: "01-01",
  });
  expectTypeOf(cut.id).toEqualTypeOf<"double-sine base 10C to 88F intermediate-floored air from 01-01">();
  const corn = degreeDayModel({
    method: "clamped average",
    base,
    upper: { value: 86, unit: "°F" },
    sensor: "air",
  });
  expectTypeOf(corn.id).toEqualTypeOf<"clamped-average base 10C to 30C air">();
  const threshold = degreeDayAmount({ value: 200, unit: "°F d", model: base50 });
  // @ts-expect-error degree-days of the simple average are none of the sine
  dateReached({ series, model: sine, from: "2026-05-01", threshold });
});
