// A label counts hours; the clock on the wall may have moved by one of them. In 2026 the clocks of the United States change on
// Sunday, 8 March, and Sunday, 1 November.
import { describe, expect, test } from "vitest";
import { workOrder, workOrderText } from "../../../src/plan/index.js";

const old = "Clocks changed on Sunday? Count the hours: these times are by the old clock.";
const lines = (end: string, hours: { readonly notBefore?: number; readonly within?: number }) => {
  const hour = (value: number) => ({ value, unit: "h" });
  const { notBefore, within } = hours;
  const order = workOrder({
    type: "job",
    version: 1,
    title: "Regulator",
    date: end.slice(0, 10) as `${number}-${number}-${number}`,
    site: {
      name: "Park",
      parts: [{ name: "green", shape: "measured", area: { value: 14400, unit: "ft2" } }],
    },
    products: [
      {
        id: "a",
        form: "liquid",
        formulation: "EC",
        wateringIn: {
          ...(notBefore !== undefined && { notBefore: hour(notBefore) }),
          ...(within !== undefined && { within: hour(within), least: { value: 0.1, unit: "in" } }),
          source: "label (invented)",
        },
      },
    ],
    treatments: [
      {
        id: "t",
        method: "spray",
        mix: [{ product: "a", rate: { value: 0.5, unit: "fl oz/1000 ft2", of: "product" } }],
        end: end as `${number}-${number}-${number}T${string}`,
      },
    ],
    sprayer: {
      tank: { value: 50, unit: "gal" },
      applicationVolume: { value: 1, unit: "gal/1000 ft2", of: "spray" },
    },
  });
  return workOrderText(order).replace(/\s+/g, " ");
};

describe("the clocks change between the end and the time on the sheet", () => {
  test("on a Sunday of spring or fall, and the sheet says to count the hours", () => {
    // 24 h after Saturday 3:30 pm by the old clock are 4:30 pm by the new one.
    const spring = lines("2026-03-07T15:30-05:00", { notBefore: 24 });
    expect(spring).toContain("(until Sun Mar 8, 3:30 pm)");
    expect(spring).toContain(old);
    expect(lines("2026-10-31T15:30-04:00", { within: 24 })).toContain(old);
  });

  // What the time zone database says for 2026, read from the runtime, hour by hour.
  test.each(["Australia/Sydney", "Pacific/Auckland", "America/Santiago", "Europe/Paris", "America/New_York"])(
    "on each Sunday on which they do in %s",
    (timeZone) => {
      const clock = new Intl.DateTimeFormat("en-US", { timeZone, hour: "numeric", hourCycle: "h23" });
      const start = Date.UTC(2026, 0, 1);
      const hourOf = (n: number) => Number(clock.format(start + n * 3_600_000));
      const changes = Array.from({ length: 8759 }, (_, n) => n + 1).filter(
        (n) => (hourOf(n) - hourOf(n - 1) + 24) % 24 !== 1,
      );
      expect(changes).toHaveLength(2);
      for (const n of changes) {
        const zoned = new Intl.DateTimeFormat("en-CA", { timeZone, dateStyle: "short" });
        const saturday = zoned.format(start + (n - 12) * 3_600_000);
        expect(new Date(saturday).getUTCDay(), saturday).toBe(6);
        expect(lines(`${saturday}T15:30+00:00`, { notBefore: 24 }), saturday).toContain(old);
      }
    },
  );

  test.each([
    ["the time is over before the Sunday begins", "2026-03-07T15:30-05:00", { notBefore: 6 }],
    ["no Sunday lies between", "2026-03-09T15:30-04:00", { within: 24 }],
    ["the clocks stay as they are in summer", "2026-06-06T15:30-04:00", { within: 24 }],
  ])("not where %s", (_, end, hours) => {
    expect(lines(end, hours)).not.toContain(old);
  });
});
