import {
  programComparison,
  programFindings,
  quickRelease,
  remainingNitrogen,
  seasonProgram,
} from "../../../src/nutrient/index.js";
import { money, quantity } from "../../../src/quantity/index.js";
import { describeRefused, type Refused } from "../../refused.js";

// What is refused of a season of nitrogen, where the refusal points, and what it says would have been right.

const n = (value: number) => quantity(value, "lb/1000 ft2", "N");
const cap = (value: number) => ({ amount: n(value), source: "a code" });
const left = (change: object) => () =>
  remainingNitrogen({ on: "2026-06-01", applied: [], caps: { perYear: cap(4) }, ...change } as never);
const plan = (change: object) => () =>
  seasonProgram({
    months: [
      { month: "2026-05", target: n(1) },
      { month: "2026-06", target: n(1) },
    ],
    plan: { kind: "fewest applications" },
    caps: {},
    ...change,
  } as never);
const months = (list: unknown, more: object = {}) => plan({ months: list, ...more });
const portion = { name: "quick", nitrogen: n(1), model: quickRelease };
const application = { date: "2026-05-04", portions: [portion] };
const compare = (change: object) => () =>
  programComparison({
    from: "2026-05-01",
    weeks: 4,
    placement: "surface or thatch",
    temperature: { mean: quantity(20, "°C") },
    programs: [{ name: "a", applications: [application] }],
    ...change,
  } as never);
const program = (change: object) =>
  compare({ programs: [{ name: "a", applications: [application], ...change }] });
const one = (change: object) => program({ applications: [{ ...application, ...change }] });
const findings = (input: unknown) => () => programFindings(input as never);

const rows: readonly Refused[] = [
  // What is left under caps
  [left({ on: "June" }), "date", "on", "written YYYY-MM-DD"],
  [left({ caps: {} }), "missing", "caps", "at least one cap"],
  [left({ caps: 7 }), "type", "caps", "a record of caps"],
  [left({ caps: { perMonth: cap(1) } }), "type", "caps.perMonth", "per30Days"],
  [left({ caps: { perYear: 7 } }), "type", "caps.perYear", "{ amount, source }"],
  [
    left({ caps: { perYear: { amount: n(4) } } }),
    "missing",
    "caps.perYear.source",
    "where the cap is stated",
  ],
  [
    left({ caps: { perYear: { amount: n(-1), source: "s" } } }),
    "range",
    "caps.perYear.amount",
    "zero or more",
  ],
  [
    left({ caps: { perYear: { amount: quantity(1, "lb/1000 ft2", "P2O5"), source: "s" } } }),
    "substance/mismatch",
    "caps.perYear.amount",
    "N",
  ],
  [
    left({ caps: { perApplication: cap(5), perYear: cap(4) } }),
    "conflict",
    "caps.perApplication.amount",
    "not more than the cap per calendar year, which is 4",
  ],
  [
    left({ caps: { perApplication: cap(2), per30Days: cap(1) } }),
    "conflict",
    "caps.perApplication.amount",
    "not more than the cap in any 30 days, which is 1",
  ],
  [
    left({ caps: { per30Days: cap(5), perYear: cap(4) } }),
    "conflict",
    "caps.per30Days.amount",
    "not more than the cap per calendar year",
  ],
  [left({ applied: 7 }), "type", "applied", "a list of dates with nitrogen"],
  [left({ applied: [7] }), "type", "applied[0]", "a date with nitrogen"],
  [left({ applied: [{ date: "May", nitrogen: n(1) }] }), "date", "applied[0].date", "written YYYY-MM-DD"],
  [
    left({ applied: [{ date: "2026-05-01", nitrogen: n(-1) }] }),
    "range",
    "applied[0].nitrogen",
    "zero or more",
  ],
  [
    left({ applied: [{ date: "2026-05-01", nitrogen: n(1), area: 1 }] }),
    "type",
    "applied[0].area",
    "nitrogen",
  ],
  [
    left({ applied: Array(10_001).fill({ date: "2026-05-01", nitrogen: n(1) }) }),
    "range",
    "applied",
    "10000 entries or fewer",
  ],
  [left({ year: 2026 }), "type", "input.year", "caps"],
  // A program
  [plan({ plan: 7 }), "type", "plan", '{ kind: "even split" }'],
  [plan({ plan: { kind: "weekly" } }), "type", "plan.kind", '"even split"'],
  [
    plan({ plan: { kind: "fewest applications", applications: 3 } }),
    "conflict",
    "plan.applications",
    'no number of applications but in an "even split"',
  ],
  [plan({ plan: { kind: "even split", applications: 0 } }), "range", "plan.applications", "1 or more"],
  [plan({ plan: { kind: "even split", applications: 367 } }), "range", "plan.applications", "366 or less"],
  [plan({ plan: { kind: "even split", applications: 1.5 } }), "range", "plan.applications", "whole"],
  [plan({ plan: { kind: "even split", applications: 62 } }), "range", "plan.applications", "one a day"],
  [plan({ total: n(-1) }), "range", "total", "zero or more"],
  [plan({ total: n(3) }), "conflict", "total", "the sum of the targets, which is 2, or no total"],
  [plan({ caps: 7 }), "type", "caps", "a record of caps"],
  [plan({ applied: 7 }), "type", "applied", "a list of dates with nitrogen"],
  [plan({ closed: 7 }), "type", "closed", "a list of closed seasons"],
  [plan({ closed: [7] }), "type", "closed[0]", "{ window, source }"],
  [plan({ closed: [{ window: 7, source: "s" }] }), "type", "closed[0].window", "{ from, to }"],
  [
    plan({ closed: [{ window: { from: "13-01", to: "03-01" }, source: "s" }] }),
    "date",
    "closed[0].window.from",
    "written MM-DD",
  ],
  [
    plan({ closed: [{ window: { from: "12-01", to: "x" }, source: "s" }] }),
    "date",
    "closed[0].window.to",
    "written MM-DD",
  ],
  [
    plan({ closed: [{ window: { from: "12-01", to: "03-01" }, source: "" }] }),
    "missing",
    "closed[0].source",
    "a source",
  ],
  [plan({ closed: Array(101).fill({}) }), "range", "closed", "100 closed seasons or fewer"],
  [plan({ leastInterval: "weekly" }), "type", "leastInterval", '"two weeks"'],
  [
    plan({ leastInterval: 7 }),
    "type",
    "leastInterval",
    "{ days, source }, or the name of a practice: two weeks, thirty days",
  ],
  [plan({ leastInterval: { days: -1, source: "s" } }), "range", "leastInterval.days", "0 or more"],
  [plan({ leastInterval: { days: 367, source: "s" } }), "range", "leastInterval.days", "366 or less"],
  [plan({ leastInterval: { days: 1.5, source: "s" } }), "range", "leastInterval.days", "days"],
  [plan({ leastInterval: { days: 14, source: "" } }), "missing", "leastInterval.source", "a source"],
  [plan({ leastAmount: { amount: n(-1), source: "s" } }), "range", "leastAmount.amount", "zero or more"],
  [plan({ leastAmount: { amount: n(1), source: "" } }), "missing", "leastAmount.source", "a source"],
  [plan({ year: 2026 }), "type", "program.year", "months"],
  [months([]), "missing", "months", "month"],
  [months([7]), "type", "months[0]", "a month"],
  [months([{ month: "May" }]), "date", "months[0].month", "a month written YYYY-MM"],
  [months([{ month: "2026-13" }]), "date", "months[0].month", "YYYY-MM"],
  [
    months([
      { month: "2026-05", target: n(1) },
      { month: "2026-05", target: n(1) },
    ]),
    "conflict",
    "months[1].month",
    "a month after 2026-05",
  ],
  [months([{ month: "2026-05", target: n(-1) }]), "range", "months[0].target", "zero or more"],
  [months([{ month: "2026-05", rate: 1 }]), "type", "months[0].rate", "target"],
  [months([{ month: "2026-05" }]), "missing", "total", "a total, or a target for each month"],
  [
    months([{ month: "2026-05", target: n(1) }, { month: "2026-06" }]),
    "missing",
    "months[1].target",
    "a target for every month (zero is one), or for none",
  ],
  [
    months([{ month: "2026-05", target: n(1), weight: 1 }], { plan: { kind: "growth curve" } }),
    "conflict",
    "months[0].target",
    "no target: a growth curve sets them from the total and the weights",
  ],
  [
    months([{ month: "2026-05" }], { plan: { kind: "growth curve" }, total: n(1) }),
    "missing",
    "months[0].weight",
    "a weight for every month",
  ],
  [
    months([{ month: "2026-05", weight: -1 }], { plan: { kind: "growth curve" }, total: n(1) }),
    "range",
    "months[0].weight",
    "0 or more",
  ],
  [
    months([{ month: "2026-05", weight: 0 }], { plan: { kind: "growth curve" }, total: n(1) }),
    "range",
    "months",
    "weights that add up to more than zero",
  ],
  // A comparison
  [compare({ from: "May" }), "date", "from", "written YYYY-MM-DD"],
  [compare({ weeks: 0 }), "range", "weeks", "1 or more"],
  [compare({ weeks: 105 }), "range", "weeks", "104 or less"],
  [compare({ weeks: 1.5 }), "range", "weeks", "weeks"],
  [compare({ placement: "air" }), "type", "placement", '"surface or thatch" or "incorporated"'],
  [compare({ temperature: 7 }), "type", "temperature", "daily temperatures, or { mean }"],
  [compare({ programs: [] }), "missing", "programs", "program"],
  [compare({ programs: [7] }), "type", "programs[0]", "{ name, applications }"],
  [
    compare({
      programs: [
        { name: "a", applications: [application] },
        { name: "a", applications: [application] },
      ],
    }),
    "duplicate",
    "programs[1].name",
    "a name of its own",
  ],
  [compare({ days: 1 }), "type", "input.days", "weeks"],
  [program({ name: "" }), "missing", "programs[0].name", "a name"],
  [program({ applications: [] }), "missing", "programs[0].applications", "application"],
  [program({ applications: [7] }), "type", "programs[0].applications[0]", "{ date, portions }"],
  [
    one({ date: "2026-04-30" }),
    "date",
    "programs[0].applications[0].date",
    "a date from 2026-05-01 to 2026-05-28",
  ],
  [
    one({ date: "2026-05-29" }),
    "date",
    "programs[0].applications[0].date",
    "a date from 2026-05-01 to 2026-05-28",
  ],
  [one({ date: "May" }), "date", "programs[0].applications[0].date", "written YYYY-MM-DD"],
  [one({ portions: [] }), "missing", "programs[0].applications[0].portions", "portion"],
  [
    one({ portions: [{ ...portion, name: "" }] }),
    "missing",
    "programs[0].applications[0].portions[0].name",
    "a name",
  ],
  [one({ cost: 7 }), "unit/mismatch", "programs[0].applications[0].cost", "money per area"],
  [
    one({ cost: money(-1, "USD").per(quantity(1, "acre")) }),
    "range",
    "programs[0].applications[0].cost",
    "zero or more",
  ],
  [
    program({
      applications: [
        { ...application, cost: money(1, "USD").per(quantity(1, "acre")) },
        { ...application, cost: money(1, "EUR").per(quantity(1, "acre")) },
      ],
    }),
    "unit/mismatch",
    "programs[0].applications[1].cost",
    "a cost over an area",
  ],
  // Findings alone
  [findings(undefined), "missing", "programs", "a list of programs"],
  [findings(7), "type", "programs", "a list of programs"],
  [findings(Array(101).fill({})), "range", "programs", "100 programs or fewer"],
  [findings([{ name: "a" }]), "missing", "programs[0].applications", "a list of applications"],
  [
    findings([{ name: "a", applications: [{}] }]),
    "missing",
    "programs[0].applications[0].portions",
    "a list of portions",
  ],
  [
    findings([{ name: "a", applications: [{ portions: [7] }] }]),
    "type",
    "programs[0].applications[0].portions[0]",
    "a portion",
  ],
];

describeRefused("what is refused of a season", rows);
