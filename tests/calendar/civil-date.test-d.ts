import { expectTypeOf, test } from "vitest";
import { addDays, type CivilDate, civilDate, isCivilDate } from "../../src/calendar/index.js";

test("a date literal is a date, another text is not", () => {
  expectTypeOf(addDays("2026-05-01", 1)).toEqualTypeOf<CivilDate>();
  // @ts-expect-error no date
  addDays("1 May 2026", 1);
  const text: string = "2026-05-01";
  // @ts-expect-error a text that nobody has looked at
  addDays(text, 1);
  addDays(civilDate(text), 1);
  if (isCivilDate(text)) addDays(text, 1);
});

test("a Date is an instant", () => {
  // @ts-expect-error no calendar date
  civilDate(new Date(0));
  civilDate({ year: 2026, month: 5, day: 1, toString: () => "2026-05-01" });
});
