import { workOrder } from "../../../src/index.js";
import { explainWorkOrder } from "../../../src/teach/index.js";

/** 0.9 lb of N per 1,000 sq ft from a 24-0-11 is 0.9 / 0.24 = 3.75 lb of product; of 60,000 sq ft 225 lb. */
export const orderFaults = (): readonly string[] => {
  const order = workOrder({
    type: "job",
    version: 1,
    title: "Spring feed",
    date: "2026-05-04",
    site: {
      name: "Park",
      parts: [{ name: "north pitch", shape: "measured", area: { value: 60000, unit: "ft2" } }],
    },
    products: [{ id: "feed-a", name: "Feed A", form: "dry", analysis: "24-0-11" }],
    treatments: [
      {
        id: "feed",
        method: "spread",
        product: "feed-a",
        target: { value: 0.9, unit: "lb/1000 ft2", of: "N" },
        parts: ["north pitch"],
      },
    ],
  });
  const { derivations, notExplained } = explainWorkOrder(order);
  const found = (title: string, unit: string): number =>
    derivations.find((one) => one.title === title)?.exact.in(unit as "lb") ?? Number.NaN;
  const off = (title: string, unit: string, right: number): readonly string[] => {
    const here = found(title, unit);
    return Math.abs(here / right - 1) < 1e-9 ? [] : [`${title}: ${here} ${unit} for ${right}`];
  };
  return [
    ...off("Feed A: product per area", "lb/1000 ft2", 3.75),
    ...off("Feed A: in all", "lb", 225),
    ...notExplained,
  ];
};
