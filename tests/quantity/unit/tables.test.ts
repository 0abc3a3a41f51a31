import { expect, test } from "vitest";
import {
  commonQuotients,
  format,
  fromUcum,
  nearName,
  oneWayProducts,
  productTable,
  quantity,
  RatewrightError,
  rateQuotients,
  simpleQuotients,
  substances,
  suggestUnit,
  unitName,
  unitSymbol,
  unitTable,
} from "../../../src/quantity/index.js";

test.each([
  ["unitTable", unitTable],
  ["commonQuotients", commonQuotients],
  ["simpleQuotients", simpleQuotients],
  ["rateQuotients", rateQuotients],
  ["productTable", productTable],
  ["oneWayProducts", oneWayProducts],
  ["substances", substances],
] as const)("%s cannot be changed", (_name, table) => {
  expect(Object.isFrozen(table)).toBe(true);
  for (const part of Object.values(table)) expect(Object.isFrozen(part)).toBe(true);
});

test("what is no name of a unit is shown, and nothing foreign is thrown", () => {
  for (const input of [undefined, null, 3, {}, [], Symbol("x"), Object.create(null)]) {
    expect(typeof unitName(input as never)).toBe("string");
    expect(typeof unitSymbol(input as never)).toBe("string");
    expect(suggestUnit("lbs", input as never)).toBe(input === undefined ? "lb" : undefined);
    if (input === undefined || (typeof input === "object" && input !== null && !Array.isArray(input)))
      continue;
    expect(() => fromUcum("kg", input as never)).toThrow(RatewrightError);
    expect(() => format(quantity(3, "lb"), input as never)).toThrow(RatewrightError);
  }
});

test("misspelt options are refused", () => {
  expect(() => fromUcum("kg", { surwey: "refuse" } as never)).toThrow(/survey/);
  expect(() => format(quantity(3, "lb"), { locales: "de" } as never)).toThrow(/locale/);
});

test("the near name is the near thing", () => {
  expect(nearName("bag", ["analysis", "basis", "package"])).toBe("package");
  expect(nearName("bag", ["basis"])).toBeUndefined();
  expect(nearName("pakage", ["package"])).toBe("package");
});
