import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  format,
  isUnit,
  parseQuantity,
  parseRange,
  quantityFrom,
  quantityOf,
  quantitySchema,
  RatewrightError,
  readQuantity,
  suggestSubstance,
  suggestUnit,
} from "../../../src/quantity/index.js";
import { runs } from "../../properties.js";
import { baseUnitSample, commonQuotientList, inputParts } from "../samples.js";

const onlyOurErrors = (run: () => unknown): void => {
  try {
    run();
  } catch (error) {
    expect(error).toBeInstanceOf(RatewrightError);
  }
};

/** A text made of what the parser looks at: the worst that a random text can be. */
const nearly = fc.array(fc.constantFrom(...inputParts), { maxLength: 30 }).map((parts) => parts.join(""));
const text = fc.oneof(nearly, fc.string({ unit: "binary", maxLength: 250 }), fc.string({ unit: "grapheme" }));

describe("any input", () => {
  test("a text is read or refused with our error", () => {
    fc.assert(
      fc.property(
        text,
        fc.constantFrom(undefined, "mass/area", "volume", "1", "money:USD/mass"),
        (input, dimension) => {
          const options = dimension === undefined ? {} : ({ dimension } as { dimension: "volume" });
          for (const read of [parseQuantity, parseRange]) onlyOurErrors(() => read(input, options));
          onlyOurErrors(() => parseQuantity(input, { decimal: ",", of: "N" }));
          suggestUnit(input);
          suggestSubstance(input);
        },
      ),
      runs(1500),
    );
  });

  test("what is read is a finite number in a unit, and reads the same again", () => {
    fc.assert(
      fc.property(nearly, (input) => {
        let read: ReturnType<typeof parseQuantity>;
        try {
          read = parseQuantity(input);
        } catch {
          return;
        }
        expect(Number.isFinite(read.value)).toBe(true);
        expect(isUnit(read.unit)).toBe(true);
        expect(quantityFrom(JSON.parse(JSON.stringify(read)))).toEqual(read);
      }),
      runs(1500),
    );
  });

  test("a value of any kind is read or told, never thrown", () => {
    const schema = quantitySchema({ dimension: "mass", of: "N" })["~standard"];
    const part = fc.anything({ withNullPrototype: true, withBigInt: true, withDate: true });
    const record = fc.record({ value: part, unit: part, of: part }, { requiredKeys: [] });
    fc.assert(
      fc.property(fc.oneof(part, record, text), (input) => {
        const read = readQuantity(input, { dimension: "mass", of: "N" });
        if (read.value === null) expect(read.problems.length).toBeGreaterThan(0);
        expect(schema.validate(input).issues === undefined).toBe(read.value !== null);
        onlyOurErrors(() => quantityFrom(input));
        onlyOurErrors(() => parseQuantity(input as string));
        onlyOurErrors(() => format(input as never));
      }),
      runs(1500),
    );
  });

  test("an object that throws when it is touched", () => {
    const { proxy, revoke } = Proxy.revocable({}, {});
    revoke();
    const hostile = {
      get value(): never {
        throw new Error("touched");
      },
    };
    for (const input of [proxy, hostile]) {
      expect(readQuantity(input, { dimension: "mass" }).value).toBe(null);
      onlyOurErrors(() => quantityFrom(input));
      onlyOurErrors(() => parseQuantity(input as string));
    }
  });
});

describe("round trips", () => {
  const unit = fc.constantFrom(...baseUnitSample, ...commonQuotientList);
  const value = fc
    .tuple(fc.integer({ min: -999_999, max: 999_999 }), fc.integer({ min: 0, max: 3 }))
    .map(([digits, places]) => Number(`${digits}e-${places}`) + 0);

  test.each(["symbol", "name", "unit"] as const)(
    "format as %s, then parse with the dimension",
    (unitDisplay) => {
      fc.assert(
        fc.property(unit, value, (name, number) => {
          const q = quantityOf(number, name, "none", "q");
          const written = format(q, { unitDisplay, maximumFractionDigits: 3 });
          const dimension = q.dimension as "mass";
          if (/^(?:mass|volume)\/(?:mass|volume)$/.test(dimension) && q.unit === "%") return;
          expect(parseQuantity(written, { dimension }).toJSON()).toEqual(q.toJSON());
        }),
        runs(600),
      );
    },
  );

  test.each([
    ["lb/1000 ft2", "N"],
    ["lb/acre", "product:feed-a"],
    ["lb/acre", "product:one per acre mix"],
    ["lb/gal", "ai:2,4-D"],
    ["lb", "other:sand per bag"],
    ["money:USD/acre", "none/N"],
    ["money:USD/lb", "none/product:feed-a"],
    ["% w/w", "N:slow/product"],
    ["fl oz/gal", "product/spray"],
    ["lb", "pure live seed"],
    ["lb", "hardness as CaCO3"],
    ["money:USD/lb", "none/N"],
    ["money:CAD/acre", "none"],
    ["ft2", "treated"],
    ["g/kg", "CaCO3 equivalent/soil"],
    ["°F d", "degree-days:base 50"],
  ])("%s of %s", (name, of) => {
    const q = quantityOf(2.5, name, of, "q");
    // an id with the word "per" in it is read where the caller names it
    const wanted = { dimension: q.dimension as "mass", ...(/ per /.test(of) && { of: of as "N" }) };
    const read = (text: string) => parseQuantity(text, wanted as { dimension: "mass"; of: "N" });
    for (const unitDisplay of ["symbol", "name", "unit"] as const) {
      expect(read(format(q, { unitDisplay })).toJSON()).toEqual(q.toJSON());
    }
    expect(read(q.toString()).toJSON()).toEqual(q.toJSON());
  });
});
