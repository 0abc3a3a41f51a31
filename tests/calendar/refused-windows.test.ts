import { describe, expect, test } from "vitest";
import {
  type CivilDate,
  firstDateWithin,
  isWithinWindow,
  monthDay,
  windowAround,
} from "../../src/calendar/index.js";
import { problemsOf } from "../errors.js";
import { expectRefusals, type Refusal } from "../refusals.js";

describe("a part of the year", () => {
  const leapDay = { from: "02-29", to: "02-29" } as const;
  const winter = { from: "11-15", to: "02-29" } as const;

  test("says what it should be", () => {
    const wanted = /^a day of the year written MM-DD, such as 03-01/;
    expectRefusals([
      ...["3-1", "02-30", "00-10", "13-01", "04-31", "01-00", "x03-01", "03-01x", 301].map(
        (text): Refusal => [() => monthDay(text), "date", "monthDay", wanted],
      ),
      [() => monthDay("x", "start"), "date", "start", wanted],
      [() => isWithinWindow("2026-05-01", 3 as never), "type", "window", /^a record with from and to/],
      [() => isWithinWindow("2026-05-01", { from: "03-01" } as never), "missing", "window.to", wanted],
      [() => isWithinWindow("2026-05-01", { ...winter, by: 1 } as never), "type", "window.by", /./],
      [
        () => windowAround("9999-12-01", winter),
        "range",
        "date",
        /a window within .*"min":"0001-01-01","max":"9999-12-31"/,
      ],
      [() => windowAround("soon" as never, winter), "date", "date", /./],
      [
        () => firstDateWithin("9999-12-31", { from: "01-01", to: "01-31" }),
        "range",
        "date",
        /a window that opens at .*"max":"9999-12-31"/,
      ],
    ]);
    expect(["02-29", "01-31", "12-31"].map((day) => monthDay(day))).toEqual(["02-29", "01-31", "12-31"]);
    expect(
      problemsOf(() => isWithinWindow("2026-05-01", { from: "x", to: "y" } as never)).map(({ path }) => path),
    ).toEqual(["window.from", "window.to"]);
  });

  test("holds both of its ends, and wraps the year end", () => {
    const within = (date: string) => isWithinWindow(date as CivilDate, winter);
    expect(
      ["2026-11-14", "2026-11-15", "2026-12-31", "2027-01-01", "2027-02-28", "2028-02-29", "2027-03-01"].map(
        within,
      ),
    ).toEqual([false, true, true, true, true, true, false]);
    expect(isWithinWindow("2026-05-01", { from: "05-01", to: "05-01" })).toBe(true);
    expect(isWithinWindow("2026-05-02", { from: "05-01", to: "05-01" })).toBe(false);
  });

  test("around a day has its ends on days that exist", () => {
    expect(windowAround("2027-01-10", winter)).toEqual({ from: "2026-11-15", to: "2027-02-28" });
    expect(windowAround("2027-12-01", winter)).toEqual({ from: "2027-11-15", to: "2028-02-29" });
    expect(windowAround("2028-02-29", winter)).toEqual({ from: "2027-11-15", to: "2028-02-29" });
    expect(windowAround("2027-03-05", { from: "02-29", to: "04-30" })).toEqual({
      from: "2027-03-01",
      to: "2027-04-30",
    });
    expect(windowAround("2028-03-05", { from: "02-29", to: "04-30" })).toEqual({
      from: "2028-02-29",
      to: "2028-04-30",
    });
    expect(windowAround("2026-05-01", winter)).toBeUndefined();
    expect(windowAround("9998-12-01", winter)).toEqual({ from: "9998-11-15", to: "9999-02-28" });
    expect(windowAround("9999-01-10", winter)).toEqual({ from: "9998-11-15", to: "9999-02-28" });
    expect(windowAround("9999-12-31", { from: "12-01", to: "12-31" })).toEqual({
      from: "9999-12-01",
      to: "9999-12-31",
    });
  });

  test("opens first on the day itself, this year or the next one that has it", () => {
    expect(firstDateWithin("2027-01-10", winter)).toBe("2027-01-10");
    expect(firstDateWithin("2027-03-01", winter)).toBe("2027-11-15");
    expect(firstDateWithin("2026-04-01", { from: "03-01", to: "03-31" })).toBe("2027-03-01");
    expect(firstDateWithin("2026-02-28", { from: "03-01", to: "03-31" })).toBe("2026-03-01");
    expect(firstDateWithin("2096-03-01", leapDay)).toBe("2104-02-29");
    expect(firstDateWithin("2028-02-29", leapDay)).toBe("2028-02-29");
    expect(firstDateWithin("9999-03-01", { from: "12-31", to: "12-31" })).toBe("9999-12-31");
  });
});
