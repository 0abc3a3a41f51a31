import { addDays } from "../../../src/calendar/index.js";
import { type Ledger, ledger } from "../../../src/ledger/index.js";
import type { Limit } from "../../../src/limits/index.js";
import type { SeasonTreatment } from "../../../src/plan/index.js";

/** The first day of each case. */
export const start = "2026-06-26";
const source = "label (invented)";
const nitrogen = (value: number) => ({ supplies: [{ value, unit: "lb/1000 ft2", of: "N" }] });
const active = (name: string) => ({ supplies: [{ value: 0.1, unit: "lb/acre", of: `ai:${name}` }] });
const atMost = (value: number) => ({ amount: { value, unit: "lb/1000 ft2", of: "N" }, source });
const span = (from: number, to: number) => ({ from: addDays(start, from), to: addDays(start, to) });
/** Something that is done on that day of the season, whatever it is. */
const visit = (day: number): SeasonTreatment => ({
  id: `visit ${day}`,
  within: span(day, day),
});
/** Some applications that may lie on any day of the season. */
const often = (id: string, count: number, more: Partial<SeasonTreatment> = {}): SeasonTreatment => ({
  id,
  count,
  interval: { minimumDays: 1, source },
  ...more,
});

/** Treatments and limits of a few days, for which every choice of days can be tried. */
export interface Case {
  readonly days: number;
  readonly treatments: readonly SeasonTreatment[];
  readonly limits: readonly Limit[];
  readonly before?: Ledger;
}

const july = { season: { from: "07-01", to: "07-31" } } as const;
/** Each with its fewest visits. */
export const cases: readonly (readonly [string, number, Case])[] = [
  [
    "an amount in any five days: two feeds five days apart, one of them beside a visit",
    2 + 1,
    {
      days: 9,
      treatments: [often("feed", 2, { puts: nitrogen(0.8) }), visit(2), visit(4)],
      limits: [{ ...atMost(1), per: { days: 5 } }],
    },
  ],
  [
    "an amount exactly at its limit: both on one day",
    1,
    {
      days: 6,
      treatments: [often("a", 1, { puts: nitrogen(0.6) }), often("b", 1, { puts: nitrogen(0.4) })],
      limits: [{ ...atMost(1), per: { days: 30 } }],
    },
  ],
  [
    "an amount that is limited in July only, in any five days: June is free",
    4,
    {
      days: 10,
      treatments: [often("feed", 3, { puts: nitrogen(0.8) }), visit(0), visit(2), visit(5), visit(8)],
      limits: [{ ...atMost(1), per: { days: 5 }, scope: july }],
    },
  ],
  [
    "an amount of the year that is limited from July on: no more than one of the three may lie in June beside one in July",
    4,
    {
      days: 9,
      treatments: [often("feed", 2, { puts: nitrogen(0.8) }), visit(3), visit(6), visit(8)],
      limits: [{ ...atMost(1), per: "calendar year", scope: july }],
    },
  ],
  [
    "an amount of a window of the year: one in it, two before it, one of them on a visit of its own",
    4,
    {
      days: 9,
      treatments: [often("feed", 3, { puts: nitrogen(0.8) }), visit(3), visit(5), visit(7)],
      limits: [{ ...atMost(1), per: { from: "07-01", to: "08-31" } }],
    },
  ],
  [
    "the whole site and a part of it: the part has both",
    3,
    {
      days: 8,
      treatments: [
        { id: "green", parts: ["green"], puts: nitrogen(2) },
        { id: "all", puts: nitrogen(2) },
        visit(3),
        visit(4),
      ],
      limits: [{ ...atMost(3), per: { days: 4 } }],
    },
  ],
  [
    "two parts that have nothing to do with each other",
    1,
    {
      days: 6,
      treatments: [
        { id: "green", parts: ["green"], puts: nitrogen(2) },
        { id: "pitch", parts: ["pitch"], puts: nitrogen(2) },
      ],
      limits: [{ ...atMost(3), per: { days: 4 } }],
    },
  ],
  [
    "what the ledger holds counts until it is five days old",
    3,
    {
      days: 7,
      before: ledger([{ id: "x", date: "2026-06-25", ...nitrogen(0.5) }]),
      treatments: [
        often("a", 1, { puts: nitrogen(0.3) }),
        often("b", 1, { puts: nitrogen(0.4) }),
        visit(1),
        visit(2),
      ],
      limits: [{ ...atMost(1), per: { days: 5 } }],
    },
  ],
  [
    "days between applications: also of one treatment and another, and on one day",
    3,
    {
      days: 8,
      treatments: [
        often("a", 1, { puts: nitrogen(0.1) }),
        often("b", 1, { puts: nitrogen(0.1) }),
        visit(3),
        visit(5),
      ],
      limits: [{ kind: "interval", of: "N", atLeastDays: 3, source }],
    },
  ],
  [
    "days between applications that are asked for in July only",
    4,
    {
      days: 8,
      treatments: [often("a", 3, { puts: nitrogen(0.1) }), visit(0), visit(2), visit(5)],
      limits: [{ kind: "interval", of: "N", atLeastDays: 4, scope: july, source }],
    },
  ],
  [
    "a number of applications in any five days",
    4,
    {
      days: 8,
      treatments: [often("a", 3, { puts: nitrogen(0.1) }), visit(2), visit(3), visit(4)],
      limits: [{ kind: "count", of: "N", atMost: 2, per: { days: 5 }, source }],
    },
  ],
  [
    "no mode of action twice in a row: another lies between, on a visit of its own if it has to",
    3,
    {
      days: 7,
      treatments: [
        often("a", 2, { puts: active("propiconazole"), interval: { minimumDays: 2, source } }),
        often("b", 1, { puts: active("azoxystrobin"), within: span(1, 6) }),
        visit(1),
        visit(5),
      ],
      limits: [{ kind: "rotation", group: "3", of: ["ai:propiconazole"], atMostInARow: 1, source }],
    },
  ],
  [
    "a feed between is no other mode of action",
    4,
    {
      days: 7,
      treatments: [
        often("a", 2, { puts: active("propiconazole"), interval: { minimumDays: 4, source } }),
        often("b", 1, { puts: active("azoxystrobin"), within: span(3, 5) }),
        often("feed", 1, { puts: nitrogen(0.1) }),
        visit(1),
        visit(2),
        visit(6),
      ],
      limits: [{ kind: "rotation", group: "3", of: ["ai:propiconazole"], atMostInARow: 1, source }],
    },
  ],
  [
    "a mode of action once in any four days",
    3,
    {
      days: 8,
      treatments: [often("a", 2, { puts: active("propiconazole") }), visit(2), visit(4)],
      limits: [
        { kind: "rotation", group: "3", of: ["ai:propiconazole"], atMost: 1, per: { days: 4 }, source },
      ],
    },
  ],
  [
    "the ledger ends with a mode of action that may not come twice: another comes first, and then it may",
    2,
    {
      days: 7,
      before: ledger([{ id: "x", date: "2026-06-24", ...active("propiconazole") }]),
      treatments: [
        often("a", 1, { puts: active("propiconazole"), within: span(2, 6) }),
        often("b", 1, { puts: active("azoxystrobin") }),
        visit(1),
        visit(5),
      ],
      limits: [{ kind: "rotation", group: "3", of: ["ai:propiconazole"], atMostInARow: 1, source }],
    },
  ],
  [
    "between two of the ledger it takes another before and another behind",
    4,
    {
      days: 9,
      before: ledger([
        { id: "x", date: "2026-06-24", ...active("propiconazole") },
        { id: "y", date: "2026-06-30", ...active("propiconazole") },
      ]),
      treatments: [
        {
          id: "a",
          count: 1,
          applied: ["2026-06-24"],
          within: span(2, 8),
          interval: { minimumDays: 4, maximumDays: 10, source },
          puts: active("propiconazole"),
        },
        { id: "b", within: span(1, 1), puts: active("azoxystrobin") },
        { id: "c", within: span(3, 3), puts: active("azoxystrobin") },
        { id: "d", within: span(6, 6), puts: active("azoxystrobin") },
        visit(2),
      ],
      limits: [{ kind: "rotation", group: "3", of: ["ai:propiconazole"], atMostInARow: 1, source }],
    },
  ],
  [
    "two in a row of the ledger, and the season has two more beside one of another mode",
    3,
    {
      days: 7,
      before: ledger([
        { id: "x", date: "2026-06-10", ...active("propiconazole") },
        { id: "y", date: "2026-06-24", ...active("propiconazole") },
      ]),
      treatments: [
        often("a", 2, { puts: active("propiconazole"), within: span(3, 6) }),
        often("b", 1, { puts: active("azoxystrobin") }),
        visit(2),
        visit(3),
        visit(6),
      ],
      limits: [{ kind: "rotation", group: "3", of: ["ai:propiconazole"], atMostInARow: 2, source }],
    },
  ],
];
