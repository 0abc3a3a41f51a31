import { describe, expect, test } from "vitest";
import {
  checks,
  expectList,
  expectQuantity,
  expectText,
  fail,
  format,
  Quantity,
  quantity,
  quantityReviver,
  quantitySchema,
  RatewrightError,
  readFields,
  readQuantity,
  shown,
  substanceChoices,
  unitName,
  unitSystem,
  unreadable,
} from "../../../src/quantity/index.js";
import { complaint, complaints, errorOf } from "../../errors.js";

const hostile: readonly unknown[] = [
  undefined,
  null,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  "",
  "abc",
  [],
  {},
  Object.create(null),
  Symbol("s"),
  1n,
  () => 1,
  { toString: 1 },
];

describe("whatever is put in, only our error comes out", () => {
  test.each(hostile.map((bad) => [typeof bad, bad] as const))("of a %s", (_, bad) => {
    complaints(() => expectQuantity(quantity(1, "lb"), bad as never, "q"));
    complaints(() => expectQuantity(quantity(1, "lb"), { dimension: bad } as never, "q"));
    complaints(() => readFields({ a: 1 }, bad as never, [], "input", "a run", checks()));
    complaints(() => readFields({ a: 1 }, { a: bad } as never, [], bad as never, "a run", bad as never));
    complaints(() => new Quantity(1, bad as never, bad as never, bad as never));
    expect(unitSystem(bad as never)).toBe("both");
    expect(unreadable({ rate: { toString: 1 } }, bad as never)[0]?.code).toBe("type");
    expect(errorOf(() => fail(bad as never, "width", 0, "more")).code).toBe("type");
  });

  test("no text tells of NaN or Infinity", () => {
    for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
      const part = bad as unknown as string;
      const texts = [
        shown(bad),
        unitName(part),
        new RatewrightError({ code: part as "type", path: part, got: part, expected: part }).message,
        ...readQuantity({ value: bad, unit: bad, of: bad }, { dimension: "mass", of: "N" }).problems.map(
          ({ got }) => got,
        ),
        ...(quantitySchema({ dimension: "mass" })["~standard"].validate(bad).issues ?? []).map(
          ({ message }) => message,
        ),
      ];
      expect(texts.filter((text) => /NaN|Infinity/.test(text))).toEqual([]);
    }
  });

  test("a quantity whose number was written over is refused", () => {
    const q = quantity(3, "lb");
    (q as { value: number }).value = Number.NaN;
    expect(complaint(() => format(q))).toBe("not-finite quantity");
    expect(complaint(() => quantity(1, "lb").compare(q))).toBe("not-finite other");
    expect(complaint(() => JSON.parse('{"lawn":1e999}', quantityReviver))).toBe("not-finite lawn");
  });
});

describe("the doors of lists and texts", () => {
  test("a list has a most, and a huge sparse one is refused before it is copied", () => {
    const huge: unknown[] = [];
    huge.length = 4_000_000_000;
    expect(complaint(() => expectList(huge, "items", "item"))).toBe("range items");
    expect(complaint(() => expectList([1, 2, 3], "items", "item", 2))).toBe("range items");
    expect(expectList([1, 2], "items", "item", 2)).toEqual([1, 2]);
  });

  test("a blank text is missing, as an empty one is", () => {
    for (const blank of [undefined, "", "  \t"]) {
      expect(complaint(() => expectText(blank, "part", "a name"))).toBe("missing part");
    }
    expect(complaint(() => expectText(null, "part", "a name"))).toBe("type part");
  });
});

describe("the doors of quantities", () => {
  test("a record with a misspelt field is refused with the one that is meant", () => {
    const read = readQuantity({ value: 3, unit: "lb", fo: "N" }, { dimension: "mass", path: "bag" });
    expect(read.problems.map(({ code, path, suggestion }) => [code, path, suggestion])).toEqual([
      ["type", "bag.fo", "of"],
    ]);
    // what structuredClone leaves of a quantity
    expect(readQuantity({ ...quantity(3, "lb", "N") }, { dimension: "mass", of: "N" }).value?.value).toBe(3);
  });

  test("a schema reads imperial measures and decimal commas where it is told to", () => {
    const of = (more: object, text: string): unknown => {
      const result = quantitySchema({ dimension: "volume", ...more })["~standard"].validate(text);
      return result.issues === undefined
        ? result.value.toString()
        : result.issues.map(({ message }) => message);
    };
    expect(of({ measures: "imperial" }, "8 pt")).toBe("1 imp gal");
    expect(of({}, "8 pt")).toBe("8 pt");
    expect(of({ decimal: "," }, "2,5 L")).toBe("2.5 L");
    expect(complaint(() => quantitySchema({ dimension: "volume", measurse: "imperial" } as never))).toBe(
      "type expected.measurse",
    );
  });

  test("every substance for a select box has a name, and no two the same", () => {
    const names = substanceChoices().map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
    for (const { substance } of substanceChoices()) expect(quantity(1, "lb", substance).of).toBe(substance);
  });
});
