import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  addHours,
  compareInstants,
  dateOfInstant,
  hoursBetween,
  type Instant,
  instant,
  isInstant,
} from "../../src/calendar/index.js";
import { complaint } from "../errors.js";

describe("instant", () => {
  test.each([
    ["2026-05-01T14:30-05:00", "2026-05-01T14:30-05:00"],
    ["2026-05-01T14:30:00.000Z", "2026-05-01T14:30Z"],
    ["2026-05-01T14:30:05+05:30", "2026-05-01T14:30:05+05:30"],
    ["2026-05-01T14:30:05.250+00:00", "2026-05-01T14:30:05.250+00:00"],
    ["2026-05-01T14:30:00-05:00[America/Chicago]", "2026-05-01T14:30-05:00"],
    ["2024-02-29T00:00-03:30", "2024-02-29T00:00-03:30"],
  ])("%s is %s", (text, written) => {
    expect(instant(text)).toBe(written);
    expect(instant({ toString: () => text })).toBe(written);
    expect(isInstant(text)).toBe(true);
  });

  test.each([
    "2026-05-01",
    "2026-05-01T14:30",
    "2026-05-01 14:30Z",
    "2026-05-01T24:00Z",
    "2026-05-01T23:59:60Z",
    "2026-05-01T14:60Z",
    "2026-02-29T14:30Z",
    "2026-05-01T14:30-00:00",
    "2026-05-01T14:30+15:00",
    "2026-05-01T14:30+05:60",
    "2026-05-01T14:30:00.0001Z",
    "0000-05-01T14:30Z",
    null,
    12,
    {},
    new Date(0),
  ])("%s is none", (input) => {
    expect(complaint(() => instant(input as never, "end"))).toBe("date end");
    expect(isInstant(input)).toBe(false);
  });
});

const moments = fc
  .tuple(
    fc.integer({ min: Date.UTC(1950, 0), max: Date.UTC(2150, 0) }),
    fc.integer({ min: -14 * 4, max: 14 * 4 }),
  )
  .map(([epoch, quarters]) => {
    const size = Math.abs(quarters) * 15;
    const two = (n: number) => String(n).padStart(2, "0");
    const offset = `${quarters < 0 ? "-" : "+"}${two(Math.floor(size / 60))}:${two(size % 60)}`;
    const local = new Date(epoch + quarters * 15 * 60_000).toISOString().replace("Z", offset);
    return { epoch, text: local as Instant };
  });

describe("to the minute and to the second", () => {
  const two = (n: number): string => String(n).padStart(2, "0");
  const read = (text: string): string => {
    try {
      return `${instant(text)} ${hoursBetween("2000-01-01T00:00Z", text as never)}`;
    } catch (error) {
      return `refused: ${(error as Error).message.replace(text, "")}`;
    }
  };

  // Two ways lead to the parts of a moment: what is written to the minute goes the short one.
  test("a moment reads the same with its seconds, or is refused both ways", () => {
    const part = fc.integer({ min: 0, max: 70 });
    fc.assert(
      fc.property(
        fc.record({ year: fc.integer({ min: 1990, max: 2030 }), month: part, day: part }),
        fc.tuple(part, part, fc.constantFrom("+", "-", ":"), part, part),
        ({ year, month, day }, [h, m, sign, oh, om]) => {
          const start = `${year}-${two(month % 15)}-${two(day % 35)}T${two(h % 27)}:${two(m)}`;
          const offset = `${sign}${two(oh % 17)}:${two(om)}`;
          expect(read(`${start}${offset}`)).toBe(read(`${start}:00${offset}`));
        },
      ),
      { numRuns: 2000 },
    );
    for (const text of ["2026-05-01T14:30-00:00", "2026-05-01T14:30+14:00", "2026-05-01T14:30-14:01"])
      expect(read(text)).toBe(read(text.replace("14:30", "14:30:00")));
    expect(read("2026-05-01T1a:30-05:00")).toMatch(/^refused/);
  });
});

describe("hours", () => {
  test("agree with the runtime's own reading of the same texts", () => {
    fc.assert(
      fc.property(moments, moments, (a, b) => {
        expect(Date.parse(a.text)).toBe(a.epoch);
        expect(hoursBetween(a.text, b.text)).toBe((b.epoch - a.epoch) / 3_600_000 + 0);
        expect(compareInstants(a.text, b.text)).toBe(Math.sign(a.epoch - b.epoch) + 0);
        expect(dateOfInstant(a.text)).toBe(a.text.slice(0, 10));
      }),
    );
  });

  test("adding them leads to a moment that is so many hours away, with the same offset", () => {
    fc.assert(
      fc.property(moments, fc.integer({ min: -4000, max: 4000 }), ({ text, epoch }, quarters) => {
        const later = addHours(text, quarters / 4);
        expect(Date.parse(later)).toBe(epoch + quarters * 900_000);
        expect(later.slice(-6)).toBe(text.slice(-6));
      }),
    );
  });

  test("a third of an hour is twenty minutes, and an hour count that is none is refused", () => {
    expect(addHours("2026-05-01T14:30Z", 1 / 3)).toBe("2026-05-01T14:50Z");
    expect(complaint(() => addHours("2026-05-01T14:30Z", Number.NaN))).toBe("not-finite hours");
    expect(complaint(() => addHours("2026-05-01T14:30Z", 1e9))).toBe("range hours");
    expect(complaint(() => addHours("2026-05-01T14:30Z", 1e300))).toBe("range hours");
    expect(complaint(() => addHours("2026-05-01" as never, 1))).toBe("date from");
  });
});
