// Jobs in which nearly everything is wrong: what their writer reads, all of it at once, and nothing beside it. Each job stands in the file
// beside this one, with the code, the place and the words of each problem, what may have been meant, and what there is to choose from.
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { tryWorkOrder } from "../../../src/plan/index.js";

const rows: readonly { readonly name: string; readonly job: unknown; readonly told: readonly string[] }[] =
  JSON.parse(readFileSync(new URL("many-faults.json", import.meta.url), "utf8"));

const toldOf = (job: unknown): readonly string[] =>
  tryWorkOrder(job).problems.map(
    ({ code, path, expected, suggestion, choices }) =>
      `${code} ${path}: ${expected}${suggestion === undefined ? "" : `; ${suggestion}?`}${choices === undefined ? "" : ` [${choices.join(", ")}]`}`,
  );

describe("a job that is wrong in many places", () => {
  test.each(rows)("$name", ({ job, told }) => {
    expect(toldOf(job)).toEqual(told);
  });

  test("is told with no more rain, or names, than a visit has", () => {
    const { job } = rows.find(({ name }) => name === "nothing that is wrong") as { readonly job: object };
    const water = { events: Array.from({ length: 1001 }, () => 5), until: "2026-06-09T06:00-07:00" };
    expect(toldOf({ ...job, water })).toEqual(["range water.events: 1000 events or fewer"]);
  });
});
