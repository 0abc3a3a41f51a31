import { clockMeant } from "../../calendar/house.js";
import { isCivilDate } from "../../calendar/index.js";
import { expectWithin } from "../../numeric/house.js";
import { described, dimensionDue } from "../../quantity/house.js";
import {
  expectFlag,
  expectList,
  expectName,
  expectNumber,
  expectOneOf,
  expectQuantity,
  expectText,
  fail,
  isSubstance,
  numberIn,
  outOfRange,
  quantityOf,
  type Reader,
  unreadable,
} from "../../quantity/index.js";
import { civilDateAt } from "../civil-date-at.js";
import { expectStated } from "../stated.js";
import { expectId } from "./entry-id.js";
import type { LedgerEntry, LedgerWeather } from "./ledger-entry.js";
import { readContents } from "./read-supplies.js";

/** The last id of a product that was found sound: a ledger names the same few over and over. */
let latestProduct: string | undefined;

const isProductId = (text: string): boolean => {
  if (text === latestProduct) return true;
  const known = !text.includes("/") && isSubstance(`product:${text}`);
  if (known) latestProduct = text;
  return known;
};

const text: Reader = (input, path) => expectText(input, path, "text");
const flag: Reader = expectFlag;
const quantityIn =
  (dimension: string, bound: "positive" | "non-negative" | "any", of = "none"): Reader =>
  (input, path) =>
    expectQuantity(withSubstance(input, of, path), { dimension, of, bound }, path);

/** A measure that lies where wind, air and products were ever found. */
const within =
  (read: Reader, bounds: { readonly min?: number; readonly max: number; readonly unit: string }): Reader =>
  (input, path) => {
    const q = read(input, path);
    return expectWithin(q, numberIn(q, bounds.unit), path, bounds);
  };

/** A volume of spray or an area reads the same with and without its substance. */
const withSubstance = (input: unknown, of: string, path: string): unknown => {
  const { value, unit, of: stated } = expectStated(input, path, "a quantity");
  const neutral = stated === "treated" || stated === "gross" || stated === "plan";
  return stated === undefined || stated === "none" || (of === "none" && neutral)
    ? { value, unit, of }
    : input;
};

const timeOfDay = /^([01]\d|2[0-3]):[0-5]\d(Z|[+-]\d{2}:\d{2})?$/;

/** `2026-06-08T07:30-05:00`, `7:30`, `7 pm` as the time of day that they say. */
const timeIn = (text: string): string | undefined => {
  const said = clockMeant(text.trim().replace(/^\d{4}-\d{2}-\d{2}T/, ""));
  const time = said && `${said.time}${said.offset}`;
  return time !== undefined && timeOfDay.test(time) ? time : undefined;
};

const time: Reader = (input, path) => {
  if (typeof input === "string" && timeOfDay.test(input)) return input;
  const suggestion = typeof input === "string" ? timeIn(input) : undefined;
  const expected = "a time of day, HH:MM, with or without an offset such as -05:00";
  const code = typeof input === "string" && input.trim() === "" ? "missing" : "date";
  return fail(code, path, input, expected, suggestion === undefined ? undefined : { suggestion });
};

/** Product in all or per area: `product`, `product:<id>`, or without a substance. */
const productAmount =
  (dimensions: readonly string[]): Reader =>
  (input, path) => {
    const { value, unit, of } = expectStated(input, path, "an amount of product");
    if (of !== undefined && of !== "none" && !/^product(:[^/:]+)?$/.test(String(of)))
      fail("substance/mismatch", `${path}.of`, of, "product");
    expectNumber(value, `${path}.value`, { min: 0 });
    if (typeof unit !== "string") fail("type", `${path}.unit`, unit, "a unit");
    const q = quantityOf(value as number, unit as string, "none", path);
    return dimensions.includes(q.dimension) ? q : dimensionDue("unit/mismatch", path, q, dimensions);
  };

const weatherReaders: { readonly [K in keyof Required<LedgerWeather>]: Reader } = {
  wind: within(quantityIn("length/time", "non-negative"), { max: 85, unit: "m/s" }),
  windFrom: text,
  temperature: within(quantityIn("temperature", "any"), { min: -90, max: 60, unit: "°C" }),
  humidity: (input, path) => {
    expectStated(input, path, "a quantity");
    const q = expectQuantity(input, { dimension: "1", of: "none", bound: "non-negative" }, path);
    return numberIn(q, "%") <= 100 ? q : outOfRange(path, q, { max: 100, unit: "%" });
  },
  sky: text,
};

const readers: { readonly [K in keyof Required<LedgerEntry>]: Reader } = {
  id: expectId,
  // An entry is plain JSON: a date object has to be turned into its text first.
  date: (input, path) =>
    typeof input === "object" && input !== null
      ? fail("type", path, described("a date object"), "a date as text, YYYY-MM-DD")
      : isCivilDate(input)
        ? input
        : civilDateAt(input, path),
  start: time,
  end: time,
  parts: (input, path) => {
    const parts = expectList(input, path, "name of a part");
    for (let i = 0; i < parts.length; i++) {
      const part = parts[i];
      expectName(part, `${path}[${i}]`, "the name of a part");
      if (parts.indexOf(part) !== i) fail("duplicate", `${path}[${i}]`, part, "each part once");
    }
    return parts;
  },
  area: quantityIn("area", "positive"),
  product: (input, path) =>
    typeof input === "string" && isProductId(input)
      ? input
      : fail("type", path, input, "a short name without slash or colon, such as feed-a"),
  productName: text,
  form: (input, path) => expectOneOf(input, ["dry", "liquid"], path),
  // Grade and slow nitrogen are read with the rest of the label, below; here only that they can be.
  analysis: (input, path) =>
    typeof input === "string" || (typeof input === "object" && unreadable(input, path).length === 0)
      ? input
      : fail("type", path, typeof input, "a grade such as 24-0-11, or an analysis"),
  slowNitrogen: (input, path) =>
    unreadable(input, path).length === 0
      ? expectStated(input, path, "percent of product, of N:slow/product")
      : fail(
          "type",
          path,
          described("a record that cannot be read"),
          "percent of product, of N:slow/product",
        ),
  density: within(quantityIn("mass/volume", "positive"), { min: 0.03, max: 3, unit: "kg/L" }),
  contents: readContents,
  amount: productAmount(["mass", "volume"]),
  rate: productAmount(["mass/area", "volume/area"]),
  supplies: (input, path) => {
    if (Array.isArray(input) && input.length === 0)
      fail(
        "missing",
        path,
        described("an empty list"),
        'at least one nutrient or active ingredient; what adds none says so: { value: 0, unit: "lb/1000 ft2", of: "N" }',
      );
    const list = expectList(input, path, "nutrient or active ingredient");
    for (let i = 0; i < list.length; i++) {
      const { of } = expectStated(list[i], `${path}[${i}]`, "an amount per area");
      if (of !== undefined && typeof of !== "string")
        fail("type", `${path}[${i}].of`, described("no text"), "a substance, such as N");
    }
    return list;
  },
  treatment: text,
  target: text,
  method: text,
  site: text,
  location: text,
  registrationNumber: text,
  activeIngredient: text,
  restrictedUse: flag,
  lot: text,
  applicator: text,
  certificate: text,
  carrierVolume: quantityIn("volume", "positive", "spray"),
  reEntryHours: (input, path) => expectNumber(input, path, { min: 0, max: 8784 }),
  weather: (input) => input,
  note: text,
  corrects: expectId,
  voids: (input, path) =>
    typeof input === "string"
      ? fail("type", path, input, "true, and in corrects the id of the entry that never happened")
      : flag(input, path),
};

/** The fields of an entry, in the order in which they are written. */
export const entryFields: readonly (keyof LedgerEntry)[] = Object.keys(readers) as (keyof LedgerEntry)[];

/** The places at which an entry holds something: its fields, and those of its weather as `weather.wind`. */
export const entryPlaces: readonly string[] = entryFields.flatMap((name) =>
  name === "weather" ? Object.keys(weatherReaders).map((field) => `weather.${field}`) : [name],
);

/** The readers of some fields by name. */
export type Readers = ReadonlyMap<string, Reader>;

/** The readers of the fields of an entry, and of its weather. */
export const entryReaders: Readers = /* @__PURE__ */ new Map(Object.entries(readers));
export const airReaders: Readers = /* @__PURE__ */ new Map(Object.entries(weatherReaders));
