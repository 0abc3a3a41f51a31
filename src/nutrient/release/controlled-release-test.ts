import { exceeds } from "../../numeric/index.js";
import { allOf, type Citation, expectFields, expectNumber, fail, frozen } from "../../quantity/index.js";

/** One limit of the test, and how the material stands to it. */
export interface ReleaseLimit {
  readonly after: string;
  readonly limit: "at most" | "at least";
  readonly percent: number;
  readonly got: number;
  readonly met: boolean;
}

/** What {@link controlledReleaseTest} gives. It speaks of the material only, not of an application. */
export interface ControlledReleaseTest {
  readonly type: "controlled-release-test";
  readonly version: 1;
  /** Whether all three limits are met. */
  readonly qualifies: boolean;
  readonly limits: readonly ReleaseLimit[];
  readonly source: Citation;
}

const source: Citation = /* @__PURE__ */ frozen({
  title: "About controlled release fertilizer (repeats the European working definition)",
  publisher: "fertilizer company page",
  where: "appraising standard",
});

/**
 * Whether a material counts as controlled-release by the European working definition: at 25 °C in water
 * not more than 15 % of the nutrient out in 24 hours, not more than 75 % in 28 days, and at least 75 % at
 * the stated time.
 *
 * A limit that is met exactly is met. The stated time has to be later than 28 days to mean anything;
 * a shorter one is refused.
 *
 * @param input - `percentAt24Hours`, `percentAt28Days` and `percentAtStatedTime`, percent of the nutrient that is out
 *   by then; `statedDays`; `temperatureC` of the test, which has to be 25 °C
 * @throws RatewrightError `range`, `conflict` (release that falls over time, another temperature),
 *   `not-finite`
 *
 * Source: limits as a fertilizer company repeats them from the European working definition.
 *
 * @example
 * ```ts
 * import { controlledReleaseTest } from "ratewright";
 * const test = controlledReleaseTest({
 *   percentAt24Hours: 8, percentAt28Days: 60, percentAtStatedTime: 80, statedDays: 90, temperatureC: 25,
 * });
 * test.qualifies; // => true
 * test.limits.map(({ met }) => met); // => [true, true, true]
 * ```
 */
export const controlledReleaseTest = (input: {
  readonly percentAt24Hours: number;
  readonly percentAt28Days: number;
  readonly percentAtStatedTime: number;
  readonly statedDays: number;
  readonly temperatureC: number;
}): ControlledReleaseTest => {
  expectFields(input, fields, "input");
  const percent = (name: (typeof fields)[number]) => (): number =>
    expectNumber(input[name], name, { min: 0, max: 100 });
  const { day, month, end, stated } = allOf({
    day: percent("percentAt24Hours"),
    month: percent("percentAt28Days"),
    end: percent("percentAtStatedTime"),
    stated: () => expectNumber(input.statedDays, "statedDays", { above: 28, max: 3660 }),
    temperature: () => {
      const t = expectNumber(input.temperatureC, "temperatureC");
      return t === 25 || fail("conflict", "temperatureC", t, "25, the temperature of the definition");
    },
  });
  if (month < day) fail("conflict", "percentAt28Days", month, `at least the ${day} % of 24 hours`);
  if (end < month) fail("conflict", "percentAtStatedTime", end, `at least the ${month} % of 28 days`);
  const most = (after: string, limit: number, got: number): ReleaseLimit => ({
    after,
    limit: "at most",
    percent: limit,
    got,
    met: !exceeds(got, limit),
  });
  const limits: readonly ReleaseLimit[] = [
    most("24 hours", 15, day),
    most("28 days", 75, month),
    { after: `${stated} days`, limit: "at least", percent: 75, got: end, met: !exceeds(75, end) },
  ];
  return {
    type: "controlled-release-test",
    version: 1,
    qualifies: limits.every(({ met }) => met),
    limits,
    source,
  };
};

const fields = [
  "percentAt24Hours",
  "percentAt28Days",
  "percentAtStatedTime",
  "statedDays",
  "temperatureC",
] as const;
