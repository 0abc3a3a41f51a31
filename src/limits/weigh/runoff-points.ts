import {
  checks,
  expectFields,
  expectRecord,
  type FactSource,
  type Finding,
  fail,
  plainCopy,
} from "../../quantity/index.js";
import { mostFacts, type RunoffFact, readRunoff } from "../limit/edge-facts.js";
import type { RunoffMeasure } from "../limit/limit.js";
import { plainWord } from "../limit/limit-condition.js";
import { readMenu } from "../limit/read-buffer.js";
import { runoffMenu } from "../published/runoff-menu.js";

/** The points of measures against runoff. */
export interface RunoffPoints {
  readonly type: "runoff-points";
  readonly version: 1;
  /** The sum of the points that are known. */
  readonly points: number;
  readonly measures: readonly {
    readonly measure: string;
    readonly points: number;
    /** Where the points come from. */
    readonly by: "stated" | "menu";
  }[];
  /** Measures whose points nobody states. */
  readonly unknown: readonly string[];
  readonly source?: FactSource;
  readonly findings: readonly Finding[];
}

type Menu = "US EPA" | readonly RunoffMeasure[];

/** The sum of points; everything has been read. */
export const pointsOf = (facts: readonly RunoffFact[], menu: Menu | undefined): RunoffPoints => {
  const list: readonly RunoffMeasure[] = menu === "US EPA" ? runoffMenu.measures : (menu ?? []);
  const byName = new Map(list.map((one) => [plainWord(one.measure), one]));
  // A measure that is stated of one part and of the whole site earns its points once: those of the part.
  const ofSite = facts.filter(({ part }) => part === undefined);
  const ofPart = facts.filter(({ part }) => part !== undefined);
  const once = new Map([...ofSite, ...ofPart].map((fact) => [plainWord(fact.measure), fact]));
  const unknown: string[] = [];
  const measures = [...once].flatMap(([word, { measure, points }]): RunoffPoints["measures"][number][] => {
    if (points !== undefined) return [{ measure, points, by: "stated" }];
    const row = byName.get(word);
    if (row !== undefined) return [{ measure, points: row.points, by: "menu" }];
    unknown.push(measure);
    return [];
  });
  return {
    type: "runoff-points",
    version: 1,
    points: measures.reduce((sum, { points }) => sum + points, 0),
    measures,
    unknown,
    ...(menu === "US EPA" && { source: runoffMenu.source }),
    findings:
      unknown.length === 0
        ? []
        : [
            {
              code: "runoff/points-not-stated",
              severity: "caution",
              params: { measures: unknown },
              text: `Nobody states the points of ${unknown.map((measure) => `"${measure}"`).join(", ")}: state them from the current menu.`,
            },
          ],
  };
};

/**
 * The points of the measures against runoff that are in place, by a menu.
 *
 * `points = sum of the points of the measures`, each measure once. The points that a measure states itself win; then those
 * of `menu`. A measure that neither knows is listed in `unknown`, told in a finding, and adds nothing. How many points a product asks for
 * stands on its label or in its bulletin; nothing here says that they are enough. Each from 0 to 50.
 *
 * @param input.measures - what is in place, by the words of the menu, or with `points` of your own
 * @param input.menu - a list of your own, or `"US EPA"` for {@link runoffMenu}; none where every measure states its points
 * @throws RatewrightError `missing`, `type`, `range`; `duplicate` for a measure named twice
 *
 * Source: Pesticide Environmental Stewardship, runoff and the ESA: "points are cumulative", 1 + 2 + 3 = 6.
 *
 * @example
 * ```ts
 * import { runoffPoints } from "ratewright";
 * const site = runoffPoints({
 *   menu: "US EPA",
 *   measures: [
 *     { measure: "county of medium runoff vulnerability" },
 *     { measure: "record of the measures" },
 *     { measure: "rain garden at the outlet", points: 3 },
 *   ],
 * });
 * site.points; // => 6
 * site.unknown; // => []
 * ```
 */
export const runoffPoints = (input: {
  readonly measures: readonly RunoffFact[];
  readonly menu?: "US EPA" | readonly RunoffMeasure[];
}): RunoffPoints => {
  const problems = checks();
  const given = plainCopy(expectRecord(input, "input", "measures and a menu"));
  problems.run(() => expectFields(given, ["measures", "menu"], "input"));
  problems.run(() => readRunoff(given.measures, "measures"));
  const facts = given.measures;
  // A list that is too long has been refused, and is not walked.
  if (Array.isArray(facts) && facts.length <= mostFacts)
    facts.forEach((fact, i) => {
      if (fact?.part !== undefined)
        problems.run(() =>
          fail("type", `measures[${i}].part`, fact.part, "no part: give the measures of one part"),
        );
    });
  const menu = given.menu === undefined ? undefined : problems.run(() => readMenu(given.menu, "menu"));
  problems.done();
  return pointsOf(facts as readonly RunoffFact[], menu);
};
