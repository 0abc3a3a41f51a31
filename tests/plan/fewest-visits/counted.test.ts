// A rule that counts applications, and a limit on an amount, in the program of the fewest visits.
import { describe, expect, it } from "vitest";
import { fewestVisits } from "../../../src/plan/fewest-visits/index.js";
import type { SeasonPlan } from "../../../src/plan/index.js";
import { rejections } from "../../errors.js";
import { found as foundVisits } from "./found.js";

const label = "label (invented)";
const season = { from: "2026-04-01", to: "2026-06-30" } as const;

describe("the fewest visits", () => {
  it("keep the number of applications that a rule counts in a year", async () => {
    const plan: SeasonPlan = {
      season,
      treatments: [
        {
          id: "a",
          count: 2,
          interval: {
            minimumDays: 14,
            maximumApplications: { count: 2, per: "calendar year" },
            source: label,
          },
        },
        { id: "b", interval: { minimumDays: 20, maximumDays: 30, source: label } },
      ],
    };
    const found = await foundVisits(plan);
    const times = found.schedule.visits.filter(({ applications }) =>
      applications.some(({ treatment }) => treatment === "a"),
    );
    expect([found.type, found.version, times.length, found.proven, found.atLeast]).toEqual([
      "fewest-visits",
      1,
      2,
      true,
      found.visits,
    ]);
    // 91 days at 30 days apart take b four times, or three where the first comes late; a lies on two of them.
    expect(found.visits).toBeLessThanOrEqual(found.visitsOfPlainSchedule);
    const reasons = found.schedule.visits[0]?.applications[0]?.reasons.at(-1);
    expect(reasons).toEqual({
      code: "schedule/fewest-visits",
      text: `${found.schedule.visits[0]?.date} is from the schedule with the fewest visits.`,
    });
  });

  it("say where no days keep every interval, and what a season and a search may be", async () => {
    const avoid = { times: [{ from: "2026-04-10", to: "2026-06-10", why: "closed" }] } as const;
    const closed: SeasonPlan = {
      season,
      avoid,
      treatments: [{ id: "a", count: 2, interval: { minimumDays: 10, maximumDays: 20, source: label } }],
    };
    expect(await rejections(fewestVisits(closed))).toEqual(["infeasible treatments"]);
    const plan: SeasonPlan = { season, treatments: [{ id: "a" }] };
    expect(
      await rejections(fewestVisits({ ...plan, season: { from: "2026-01-01", to: "2027-02-05" } })),
    ).toEqual(["range season"]);
    expect((await fewestVisits({ ...plan, season: { from: "2026-01-01", to: "2027-02-04" } })).visits).toBe(
      1,
    );
    expect(await rejections(fewestVisits(plan, { nodes: 0 }))).toEqual(["range options.nodes"]);
    expect(await rejections(fewestVisits(plan, { node: 5 } as never))).toEqual(["type options.node"]);
  });
});
