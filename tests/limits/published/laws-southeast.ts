import { floridaLimits, marionCountyLimits } from "../../../src/limits/index.js";
import { days, type Law, nitrogen, phosphate } from "./law.js";

const lawn = { place: "home lawn" } as const;
const park = { place: "park" } as const;
const old = { turf: "established" } as const;
const sown = { turf: "being established" } as const;

/** So much nitrogen in a year on one grass and no more. */
const grass = (limit: string, name: string, pounds: number) => ({
  limit,
  over: [
    { ...nitrogen(0.51), facts: { grass: name }, before: [{ on: "2026-01-01", ...nitrogen(pounds - 0.5) }] },
  ] as const,
  within: [
    {
      ...nitrogen(0.5),
      facts: { grass: name.toUpperCase() },
      before: [
        { on: "2026-01-01", ...nitrogen(pounds - 0.5) },
        { on: "2025-12-31", ...nitrogen(5) },
      ],
    },
  ] as const,
  free: [{ ...nitrogen(9), facts: { grass: "tall fescue" } }],
});

export const southeastLaws: readonly Law[] = [
  {
    set: floridaLimits,
    source:
      "University of Florida EP353 on Rule 5E-1.003(2): up to 2 lb of nitrogen in spring or summer with at least 65 % controlled release; at most 0.7 lb of soluble nitrogen; 0.25 lb of P2O5, 0.50 lb a year. That spring and summer are March through August, and that 1 lb binds in autumn and winter, are readings of this library",
    reached: "read again",
    rows: [
      {
        limit: "soluble-n",
        over: [{ ...nitrogen(2, 1.29), facts: lawn }],
        within: [{ ...nitrogen(2, 1.3), facts: lawn }],
        free: [{ ...nitrogen(2, 0), facts: park }],
      },
      {
        limit: "total-n-spring-summer",
        over: days(["2026-03-01", "2026-08-31"], { ...nitrogen(2.01, 1.5), facts: lawn }),
        within: days(["2026-03-01", "2026-08-31"], { ...nitrogen(2, 1.3), facts: lawn }),
        free: [
          ...days(["2026-02-28", "2026-09-01"], { ...nitrogen(2.01, 1.5), facts: lawn }),
          { ...nitrogen(2.5, 1.6), facts: lawn },
          { ...nitrogen(2.5, 2), facts: park },
        ],
      },
      {
        limit: "total-n-autumn-winter",
        over: days(["2026-09-01", "2026-12-31", "2027-02-28", "2028-02-29"], {
          ...nitrogen(1.01, 1),
          facts: lawn,
        }),
        within: days(["2026-09-01", "2028-02-29"], { ...nitrogen(1, 1), facts: lawn }),
        free: [
          ...days(["2026-08-31", "2026-03-01"], { ...nitrogen(1.01, 1), facts: lawn }),
          { on: "2026-12-01", ...nitrogen(2), facts: park },
        ],
      },
      {
        limit: "p2o5-per-application",
        over: [{ ...phosphate(0.251), facts: lawn }],
        within: [{ ...phosphate(0.25), facts: lawn }],
        free: [{ ...phosphate(2), facts: park }],
      },
      {
        limit: "p2o5-per-year",
        over: [{ ...phosphate(0.251), facts: lawn, before: [{ on: "2026-01-01", ...phosphate(0.25) }] }],
        within: [
          {
            ...phosphate(0.25),
            facts: lawn,
            before: [
              { on: "2026-01-01", ...phosphate(0.25) },
              { on: "2025-12-31", ...phosphate(0.25) },
            ],
          },
        ],
        free: [{ ...phosphate(2), facts: park }],
      },
    ],
  },
  {
    set: marionCountyLimits,
    source:
      "Marion County 19-247: 0.7 lb of readily available and one pound of total nitrogen at any one time; by the year bahiagrass 3, bermudagrass 4, centipedegrass 2, St. Augustinegrass 3, zoysiagrass 4 lb; for new turf 1.0 lb of P2O5; on existing turf 0.25 lb, 0.50 lb a year",
    reached: "read again",
    rows: [
      { limit: "soluble-n", over: [nitrogen(1, 0.299)], within: [nitrogen(1, 0.3)] },
      { limit: "total-n", over: [nitrogen(1.01, 1)], within: [nitrogen(1, 1)] },
      grass("n-bahiagrass", "bahiagrass", 3),
      grass("n-bermudagrass", "bermudagrass", 4),
      grass("n-centipedegrass", "centipedegrass", 2),
      grass("n-st-augustinegrass", "St. Augustinegrass", 3),
      grass("n-zoysiagrass", "zoysiagrass", 4),
      {
        limit: "p2o5-per-application",
        over: [phosphate(0.251), { ...phosphate(0.251), facts: old }],
        within: [phosphate(0.25)],
        free: [{ ...phosphate(1), facts: sown }],
      },
      {
        limit: "p2o5-per-year",
        over: [{ ...phosphate(0.251), facts: old, before: [{ on: "2026-01-01", ...phosphate(0.25) }] }],
        within: [
          {
            ...phosphate(0.25),
            before: [
              { on: "2026-01-01", ...phosphate(0.25) },
              { on: "2025-12-31", ...phosphate(0.25) },
            ],
          },
        ],
        free: [{ ...phosphate(1), facts: sown }],
      },
      {
        limit: "p2o5-starter",
        over: [{ ...phosphate(1.01), facts: sown }],
        within: [{ ...phosphate(1), facts: sown }],
        free: [{ ...phosphate(2), facts: old }],
      },
    ],
  },
];
