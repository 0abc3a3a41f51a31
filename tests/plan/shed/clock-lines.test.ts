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

  test.each([
    ["the time is over before the Sunday begins", "2026-03-07T15:30-05:00", { notBefore: 6 }],
    ["no Sunday lies between", "2026-03-09T15:30-04:00", { within: 24 }],
    ["the clocks stay as they are in summer", "2026-06-06T15:30-04:00", { within: 24 }],
  ])("not where %s", (_, end, hours) => {
    expect(lines(end, hours)).not.toContain(old);
  });
});
