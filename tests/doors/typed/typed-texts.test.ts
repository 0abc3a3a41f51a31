import { describe, expect, test } from "vitest";
import {
  correctedTexts,
  type ExpectedQuantity,
  parseQuantity,
  quantityOf,
  RatewrightError,
  readQuantity,
} from "../../../src/quantity/index.js";
import { fields } from "./fields.js";
import { offeredTexts } from "./offered.js";
import { readTexts } from "./read.js";
import { refusedTexts } from "./refused.js";

// What people of the trade type into the fields of a form, each with what they mean: it is read right, or refused with the
// text that was meant, or refused. A wrong number read in silence is the worst that can happen here.

type Plain = ExpectedQuantity & { readonly of?: undefined };

type Row = readonly [field: string, text: string, meaning: string];

/** `1 lb/1000 ft2 = 1 lb/M | 1#/1000`: the meaning in front, where there is one, and the texts that have it. */
const rowsOf = (table: Readonly<Record<string, string>>): readonly Row[] =>
  Object.entries(table).flatMap(([field, lines]) =>
    lines
      .trim()
      .split("\n")
      .flatMap((line): readonly Row[] => {
        const [, meaning = "", texts = line] = /^(\S+ .+?) = (.*)$/.exec(line) ?? [];
        return texts.split(" | ").map((text) => [field, text, meaning]);
      }),
  );

/** `2/3 acre` as a number of a unit. */
const amountOf = (meaning: string): readonly [value: number, unit: string] => {
  const at = meaning.indexOf(" ");
  const [top, below = "1"] = meaning.slice(0, at).split("/");
  return [Number(top) / Number(below), meaning.slice(at + 1)];
};

/** Whether a text reads as what was meant, to the last digits of an arithmetic with decimals. */
const means = (text: string, wanted: ExpectedQuantity | undefined, meaning: string): boolean => {
  const read = wanted === undefined ? parseQuantity(text) : readQuantity(text, wanted as Plain).value;
  if (read === null) return false;
  const [value, unit] = amountOf(meaning);
  const lot = /^(.+)\/(\d+) (lb|m2)$/.exec(unit);
  const [plain, factor] =
    lot === null || lot[2] === "100" ? [unit, 1] : [`${lot[1]}/${lot[3]}`, Number(lot[2])];
  const due = quantityOf(value / factor, plain, "none", "meaning").in(read.unit as never) as number;
  return Math.abs(due - read.value) <= 1e-9 * Math.max(1, Math.abs(due));
};

describe("is read as it was meant", () => {
  test.each(rowsOf(readTexts))("%s: %s is %s", (field, text, meaning) => {
    expect(means(text, fields[field], meaning)).toBe(true);
  });
});

describe("is refused, and what was meant is offered", () => {
  test.each(rowsOf(offeredTexts))("%s: %s is %s", (field, text, meaning) => {
    const wanted = fields[field] as ExpectedQuantity;
    expect(readQuantity(text, wanted as Plain).value).toBeNull();
    const texts = correctedTexts(text, wanted);
    const meanings = meaning.split(" ; ");
    expect(meanings.map((one) => texts.some((offer) => means(offer, wanted, one)))).not.toContain(false);
    // nothing else is offered
    expect(texts.map((offer) => meanings.some((one) => means(offer, wanted, one)))).not.toContain(false);
  });
});

describe("is refused", () => {
  test.each(rowsOf(refusedTexts))("%s: %s", (field, text) => {
    const wanted = fields[field];
    if (wanted === undefined) return expect(() => parseQuantity(text)).toThrow(RatewrightError);
    expect(readQuantity(text, wanted as Plain).value).toBeNull();
    // what is offered can be typed
    for (const offer of correctedTexts(text, wanted))
      expect([offer, readQuantity(offer, wanted as Plain).problems]).toEqual([offer, []]);
  });
});
