import { readFileSync } from "node:fs";
import { type Job, tryWorkOrder, type WorkOrder, workOrder } from "../../src/plan/index.js";
import { problemText } from "../../src/quantity/index.js";

/** The job of the park visit, without temperatures. */
export const parkJob = (): Job =>
  JSON.parse(readFileSync(new URL("../../examples/park-visit/job.json", import.meta.url), "utf8")) as Job;

/** A small job that is sound, with parts of it put in place. */
export const smallJob = (more: Partial<Job> = {}): Job => ({
  type: "job",
  version: 1,
  title: "First feed",
  date: "2026-05-04",
  site: { name: "Pitch", parts: [{ shape: "measured", area: { value: 12_400, unit: "ft2" } }] },
  products: [{ id: "feed-a", form: "dry", analysis: "24-0-11" }],
  treatments: [
    {
      id: "feed",
      method: "spread",
      product: "feed-a",
      target: { value: 0.9, unit: "lb/1000 ft2", of: "N" },
    },
  ],
  ...more,
});

/** Code and path of each problem of a job; an empty list where it is sound. */
export const problemsOf = (job: unknown): readonly string[] =>
  tryWorkOrder(job).problems.map(({ code, path }) => `${code} ${path}`);

/** The order of a job as JSON leaves it. */
export const asJson = (job: Job): WorkOrder => JSON.parse(JSON.stringify(workOrder(job))) as WorkOrder;

/** The order of a job that has to be sound. */
export const soundOrder = (job: unknown): WorkOrder => {
  const { order, problems } = tryWorkOrder(job);
  if (order === null) throw new Error(problems.map(problemText).join("\n"));
  return order;
};

/** The findings of a job whose codes begin so, without their sources. */
export const found = (job: unknown, prefix: string) =>
  soundOrder(job)
    .findings.filter(({ code }) => code.startsWith(prefix))
    .map(({ code, severity, path, params, text }) => ({ code, severity, path, params, text }));

/** The same as code and severity. */
export const codes = (job: unknown, prefix: string): readonly string[] =>
  found(job, prefix).map(({ code, severity }) => `${code} ${severity}`);
