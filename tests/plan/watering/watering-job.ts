// A spray of two products whose labels state rules about water, and what is told of it.
import { type Job, workOrderText } from "../../../src/plan/index.js";
import { found, smallJob, soundOrder } from "../helpers.js";
import { flat } from "../sheet/read-paper.js";

export const inch = (value: number) => ({ value, unit: "in" });
export const hours = (value: number) => ({ value, unit: "h" });
export const rate = { value: 0.4, unit: "fl oz/1000 ft2", of: "product" };
export const label = (rule: object) => ({ ...rule, source: "label (invented)" });

export const tank = (a: object, b: object, more: object = {}, treatment: object = {}): Job =>
  smallJob({
    products: [
      { id: "a", name: "A", form: "liquid", formulation: "EC", wateringIn: a as never },
      { id: "b", name: "B", form: "liquid", formulation: "EC", wateringIn: b as never },
    ],
    sprayer: {
      tank: { value: 20, unit: "gal" },
      applicationVolume: { value: 1, unit: "gal/1000 ft2", of: "spray" },
    },
    treatments: [
      {
        id: "s",
        method: "spray",
        end: "2026-05-04T09:00-05:00",
        mix: [
          { product: "a", rate },
          { product: "b", rate },
        ],
        ...treatment,
      },
    ],
    ...more,
  } as Partial<Job>);
export const water = (...list: readonly (readonly [string, number, string, string])[]) => ({
  water: {
    until: "2026-05-06T09:00-05:00",
    events: list.map(([at, depth, by, known]) => ({
      at: `2026-05-${at}-05:00`,
      depth: inch(depth),
      by,
      known,
    })),
  },
});
export const calm = label({ most: inch(5) });
export const wet = label({ least: inch(0.25), within: hours(24) });
export const told = (job: Job) =>
  found(job, "watering-in/").map(({ code, severity, path, params, text }) => [
    `${severity} ${code.slice(12)}`,
    path,
    params,
    text,
  ]);
export const paper = (job: Job, options: object = {}): string =>
  flat(workOrderText(soundOrder(job), { width: 400, ...options }));
