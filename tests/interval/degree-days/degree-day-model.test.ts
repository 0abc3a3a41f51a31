import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type DegreeDayModelInput, degreeDayModel, degreeDays } from "../../../src/interval/index.js";
import { isSubstance, quantity } from "../../../src/quantity/index.js";
import { complaints } from "../../errors.js";

const air = { method: "simple average", sensor: "air" } as const;

describe("the id of a model", () => {
  test.each([
    [{ value: 32, unit: "°F" }, { value: 0, unit: "°C" }, "0C"],
    [{ value: 50, unit: "°F" }, { value: 10, unit: "°C" }, "10C"],
    [{ value: 53.6, unit: "°F" }, { value: 12, unit: "°C" }, "12C"],
    [{ value: 23, unit: "°F" }, { value: -5, unit: "°C" }, "-5C"],
    [{ value: 33.8, unit: "°F" }, { value: 1, unit: "°C" }, "1C"],
    [{ value: 52.7, unit: "°F" }, { value: 11.5, unit: "°C" }, "11.5C"],
  ] as const)("%j and %j are one", (f, c, text) => {
    expect(degreeDayModel({ ...air, base: f }).id).toBe(`simple-average base ${text} air`);
    expect(degreeDayModel({ ...air, base: c }).id).toBe(`simple-average base ${text} air`);
  });

  test("a base that is no short number of °C keeps its scale", () => {
    expect(degreeDayModel({ ...air, base: { value: 53, unit: "°F" } }).id).toBe(
      "simple-average base 53F air",
    );
    expect(degreeDayModel({ ...air, base: { value: 22, unit: "°F" } }).id).toBe(
      "simple-average base 22F air",
    );
  });

  test("every base of a thousandth of °C has one id, from either scale, and it makes a substance", () => {
    fc.assert(
      fc.property(fc.integer({ min: -40_000, max: 50_000 }), (thousandths) => {
        fc.pre((thousandths * 9) % 5 === 0);
        const c: DegreeDayModelInput = { ...air, base: { value: thousandths / 1000, unit: "°C" } };
        const f: DegreeDayModelInput = {
          ...air,
          base: { value: ((thousandths * 9) / 5 + 32_000) / 1000, unit: "°F" },
        };
        const id = degreeDayModel(c).id;
        expect(degreeDayModel(f).id).toBe(id);
        expect(id).not.toMatch(/[/:]/);
        expect(isSubstance(`degree-days:${id}`)).toBe(true);
      }),
    );
  });

  test("sensor, depth and start are part of it", () => {
    const base = { value: 0, unit: "°C" } as const;
    const inputs: DegreeDayModelInput[] = [
      { ...air, base },
      { ...air, base, sensor: "soil at 2.5 cm" },
      { ...air, base, sensor: "soil at 5 cm" },
      { ...air, base, start: "02-15" },
      { ...air, base, start: "01-01" },
    ];
    expect(new Set(inputs.map((input) => degreeDayModel(input).id)).size).toBe(inputs.length);
  });

  test("the source is not", () => {
    const base = { value: 0, unit: "°C" } as const;
    expect(degreeDayModel({ ...air, base, source: "a" }).id).toBe(degreeDayModel({ ...air, base }).id);
  });
});

describe("degreeDayModel", () => {
  test("reports everything that is wrong at once", () => {
    const wrong = { method: "sine", base: { value: 120, unit: "°C" }, sensor: "roof", start: "2-15" };
    expect(complaints(() => degreeDayModel(wrong as never))).toEqual([
      "type model.method",
      "range model.base.value",
      "type model.sensor",
      "date model.start",
    ]);
  });

  test("wants the base as its source prints it, and a start that every year has", () => {
    const of = (value: number): readonly string[] =>
      complaints(() => degreeDayModel({ ...air, base: { value, unit: "°C" } }));
    expect(of(11.666666)).toEqual(["range model.base.value"]);
    expect(of(11.667)).toEqual([]);
    expect(of(Number.NaN)).toEqual(["not-finite model.base.value"]);
    const base = { value: 0, unit: "°C" } as const;
    expect(complaints(() => degreeDayModel({ ...air, base, start: "02-29" }))).toEqual(["date model.start"]);
    expect(complaints(() => degreeDayModel({ ...air } as never))).toEqual(["missing model.base"]);
    expect(complaints(() => degreeDayModel({ ...air, base: { value: 0, unit: "K" } } as never))).toEqual([
      "unit/unknown model.base.unit",
    ]);
  });

  test("goes through JSON, and a changed copy is noticed", () => {
    const model = degreeDayModel({ ...air, base: { value: 10, unit: "°C" } });
    const copy = JSON.parse(JSON.stringify(model));
    const day = { max: quantity(20, "°C"), min: quantity(10, "°C") };
    expect(degreeDays({ ...day, model: copy }).in("°C d")).toBe(5);
    const changed = { ...copy, base: { value: 5, unit: "°C" } };
    expect(complaints(() => degreeDays({ ...day, model: changed }))).toEqual(["conflict model.id"]);
    expect(complaints(() => degreeDays({ ...day, model: {} as never }))).toEqual(["type model"]);
  });
});
