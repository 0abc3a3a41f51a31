import { expect, test } from "vitest";
import { type LedgerEntry, ledger } from "../../../src/ledger/index.js";
import { complaints } from "../../errors.js";
import { expectRefusals, type Refusal } from "../../refusals.js";

const put = (change: object) => () =>
  ledger([{ id: "a", date: "2026-04-20" }, { id: "b", date: "2026-05-01", ...change } as LedgerEntry]);
const at = (place: string): string => `entries[1].${place}`;
/** A field of an entry, what stands in it, and what the refusal says. */
const field = (name: string, value: unknown, code: string, words: RegExp, place = name): Refusal => [
  put({ [name]: value }),
  code,
  at(place),
  words,
];

test("ids, dates and times", () => {
  expectRefusals([
    [() => ledger(3 as never), "type", "entries", /^a list of entries/],
    [() => ledger([3] as never), "type", "entries[0]", /^an application/],
    [() => ledger([null] as never), "type", "entries[0]", /^an application/],
    [() => ledger([[]] as never), "type", "entries[0]", /^an application/],
    [() => ledger(Array(1_000_001) as never), "range", "entries", /"max":1000000,"count":"entries"/],
    [() => ledger([{} as never]), "missing", "entries[0].id", /an id that no other entry has/],
    [() => ledger([{} as never]), "missing", "entries[0].date", /a date, YYYY-MM-DD/],
    field("id", 3, "type", /an id that no other entry has/),
    field(
      "id",
      "b\t",
      "type",
      /^an id on one line, without tabs, control characters or marks that nobody sees/,
    ),
    field("id", "a", "duplicate", /^an id that no other entry has/),
    field(
      "id",
      " a ",
      "duplicate",
      /^an id that differs from "a" by more than blanks or the way its letters are stored/,
    ),
    field("date", { day: 1 }, "type", /^a date as text, YYYY-MM-DD/),
    field("date", "2026-02-30", "date", /./),
  ]);
});

test("times of day", () => {
  expectRefusals([
    field("start", "7:30", "date", /^a time of day, HH:MM, with or without an offset such as -05:00/),
    field("start", "24:00", "date", /^a time of day/),
    field("start", "07:60", "date", /^a time of day/),
    field("start", "07:30-5", "date", /^a time of day/),
    field("start", "x07:30", "date", /^a time of day/),
    field("end", "07:30x", "date", /^a time of day/),
    field("end", 730, "date", /^a time of day/),
    field("fuss", 1, "type", /./),
  ]);
  for (const start of ["00:00", "09:59", "19:00", "23:59", "07:30Z", "07:30+05:30"]) put({ start })();
});

test("parts, product and label", () => {
  expectRefusals([
    field("parts", [], "missing", /name of a part/),
    field("parts", ["north", ""], "missing", /^the name of a part/, "parts[1]"),
    field("parts", ["north", "north"], "duplicate", /^each part once/, "parts[1]"),
    field("product", "", "type", /^a short name without slash or colon, such as feed-a/),
    field("product", "a/b", "type", /^a short name without slash or colon/),
    field("product", "a:b", "type", /^a short name without slash or colon/),
    field("product", 3, "type", /^a short name/),
    field("productName", 3, "type", /text/),
    field("form", "granular", "type", /dry.*liquid/),
    field("analysis", 24, "type", /^a grade such as 24-0-11, or an analysis/),
    field("slowNitrogen", 12, "type", /percent of product, of N:slow\/product/),
    field(
      "slowNitrogen",
      { value: 12, unit: "% w/w" },
      "conflict",
      /^the analysis that the slow nitrogen is part of/,
    ),
    field("density", { value: 0, unit: "lb/gal" }, "range", /more than zero/),
    field("restrictedUse", "yes", "type", /true or false/),
    field("reEntryHours", -1, "range", /"min":0,"max":8784/),
    field("reEntryHours", 8785, "range", /8784/),
    field("voids", true, "conflict", /^the id of the entry that never happened, in corrects/),
    field("corrects", "", "missing", /an id that no other entry has/),
    field("corrects", "z", "missing", /^the id of an earlier entry/),
  ]);
  put({ reEntryHours: 8784 })();
  put({ reEntryHours: 0, product: "feed-a", restrictedUse: false })();
  expect(complaints(put({ analysis: "24-0" }))[0]).toMatch(/analysis/);
});

test("amounts and rates", () => {
  const area = { value: 1000, unit: "ft2" };
  const lb = (of?: string) => ({ value: 3, unit: "lb", ...(of && { of }) });
  expectRefusals([
    field("area", { value: 0, unit: "ft2" }, "range", /more than zero/),
    field("area", { value: 3, unit: "lb" }, "unit/mismatch", /area/),
    field("area", 3, "type", /a quantity/),
    field("area", { value: 3, unit: "ft2", from: 1 }, "type", /./, "area.from"),
    field("amount", 3, "type", /^an amount of product/),
    field("amount", lb(), "conflict", /^the area over which the amount went/, "area"),
    [put({ amount: lb("N"), area }), "substance/mismatch", at("amount.of"), /^product/],
    [
      put({ amount: lb("product:x"), area }),
      "substance/mismatch",
      at("amount.of"),
      /^product, or product:\.\.\. with the id in the field product/,
    ],
    [
      put({ amount: lb("product:x"), area, product: "y" }),
      "substance/mismatch",
      at("amount.of"),
      /^product, or product:y/,
    ],
    [put({ amount: { value: -1, unit: "lb" }, area }), "range", at("amount.value"), /0/],
    [put({ amount: { value: 1, unit: 3 }, area }), "type", at("amount.unit"), /^a unit/],
    [
      put({ amount: { value: 1, unit: "lb/acre" }, area }),
      "unit/mismatch",
      at("amount"),
      /^a weight or a volume, such as/,
    ],
    field("rate", { value: 1, unit: "lb" }, "unit/mismatch", /^a weight over an area or a volume over/),
    field(
      "rate",
      { value: 1, unit: "lb/acre", of: "product:x" },
      "substance/mismatch",
      /^product, or product:\.\.\./,
      "rate.of",
    ),
    [
      put({ amount: lb(), area, rate: { value: 1, unit: "lb/acre" } }),
      "conflict",
      at("rate"),
      /^one of them; the rate follows from amount and area/,
    ],
    field("carrierVolume", { value: 0, unit: "gal" }, "range", /more than zero/),
  ]);
  put({ amount: lb("product:x"), area, product: "x" })();
  put({ amount: lb("product"), area: { ...area, of: "treated" } })();
  put({
    amount: lb("none"),
    area: { ...area, of: "gross" },
    carrierVolume: { value: 1, unit: "gal", of: "spray" },
  })();
  put({ area: { ...area, of: "plan" }, carrierVolume: { value: 1, unit: "gal" } })();
  put({ area: { ...area, of: "none" }, carrierVolume: { value: 1, unit: "gal", of: "none" } })();
});

test("weather", () => {
  const weather = (name: string, value: unknown) => put({ weather: { [name]: value } });
  const humid = (value: number) => weather("humidity", { value, unit: "%" });
  expectRefusals([
    [put({ weather: 3 }), "type", at("weather"), /./],
    [weather("wind", { value: -1, unit: "mi/h" }), "range", at("weather.wind"), /zero or more/],
    [weather("wind", { value: 1, unit: "ft" }), "unit/mismatch", at("weather.wind"), /./],
    [weather("windFrom", 225), "type", at("weather.windFrom"), /text/],
    [weather("temperature", { value: 68, unit: "%" }), "unit/mismatch", at("weather.temperature"), /./],
    [weather("humidity", 55), "type", at("weather.humidity"), /^a quantity/],
    [humid(101), "range", at("weather.humidity"), /"max":100,"unit":"%"/],
    [humid(-1), "range", at("weather.humidity"), /zero or more/],
    [weather("sky", 3), "type", at("weather.sky"), /text/],
    [weather("fog", 3), "type", at("weather.fog"), /./],
  ]);
  humid(100)();
  weather("wind", { value: 0, unit: "mi/h" })();
  weather("temperature", { value: -40, unit: "°F" })();
});
