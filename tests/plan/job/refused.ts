// A job that is spoilt at one place, and what its writer reads.
import { expect } from "vitest";
import { tryWorkOrder } from "../../../src/plan/index.js";
import { parkJob } from "../helpers.js";

type Loose = Record<string, unknown>;
/** What is told, where something was put, what, and what the refusal says. */
export type Row = readonly [
  told: string,
  place: string,
  put: unknown,
  expected: unknown,
  got?: string | undefined,
];

/** The job of the park with something put at a place; taken away where nothing is put. */
export const withAt = (place: string, put: unknown, job: unknown = parkJob()): unknown => {
  const names = place.split(/[.[\]]+/).filter((name) => name !== "");
  const last = names.pop() as string;
  const holder = names.reduce<Loose>((at, name) => {
    at[name] ??= {};
    return at[name] as Loose;
  }, job as Loose);
  if (put === undefined) delete holder[last];
  else holder[last] = put;
  return job;
};

/** Every problem of a job, with what was expected. */
export const problemsAt = (job: unknown) =>
  tryWorkOrder(job).problems.map(({ code, path, expected, got }) => ({
    told: `${code} ${path}`,
    expected,
    got,
  }));

/** Whether a job that is spoilt at one place says so. */
export const check = ([told, place, put, expected, got]: Row, job?: unknown): void => {
  const found = problemsAt(withAt(place, put, job ?? parkJob()));
  expect(found, place).toContainEqual({
    told,
    expected,
    got: got ?? expect.stringMatching(/./),
  });
};
