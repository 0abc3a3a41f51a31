// Limits of laws and labels: every figure as its source prints it. Which applications they bind, and which not, stands in
// tests/limits/published/.
import {
  australianTurfFungicideLimits,
  connecticutLimits,
  floridaLimits,
  illinoisLimits,
  type LimitSet,
  manitobaLimits,
  marionCountyLimits,
  marylandProductLimits,
  marylandUseLimits,
  michiganLimits,
  minnesotaLimits,
  newJerseySummaryLimits,
  newYorkLimits,
  pennsylvaniaLimits,
  runoffMenu,
  vermontLimits,
  wisconsinLimits,
} from "../../src/limits/index.js";
import { type Cell, type ConstantCheck, cells } from "./check.js";

/** What stands at a place of a record, `exemptIf.0.soilTest.months`. */
const valueAt = (record: unknown, place: string): unknown =>
  place
    .split(".")
    .reduce<unknown>(
      (found, name) => (found as Readonly<Record<string, unknown>> | undefined)?.[name],
      record,
    );

/** A limit, a place in it and the figure, line by line. */
const figures = (set: LimitSet, text: string): readonly Cell[] =>
  text
    .trim()
    .split("\n")
    .map((line): Cell => {
      const [limit = "", place = "", printed = ""] = line.trim().split(/ +/);
      const id = `${set.id}/${limit}`;
      return [
        `${id} ${place}`,
        Number(printed),
        () =>
          Number(
            valueAt(
              set.limits.find((one) => one.id === id),
              place,
            ),
          ),
      ];
    });

const law = (
  set: LimitSet,
  reached: ConstantCheck["reached"],
  source: string,
  text: string,
): readonly ConstantCheck[] => cells({ room: "limits", reached, source }, figures(set, text));

const points = (
  reached: ConstantCheck["reached"],
  source: string,
  list: readonly (readonly [string, number])[],
) =>
  cells(
    { room: "limits", reached, source },
    list.map(
      ([measure, printed]): Cell => [
        measure,
        printed,
        () => runoffMenu.measures.find((row) => row.measure === measure)?.points ?? Number.NaN,
      ],
    ),
  );

const midAtlantic: readonly ConstantCheck[] = [
  ...law(
    marylandProductLimits,
    "read",
    "Md. AG 6-224 (a), (b): 0.7 and 0.9 lb, 20 %, 3 years; 2.5 lb a year",
    `soluble-n amount.value 0.7
    total-n amount.value 0.9
    slow-share atLeastPercentOfN 20
    eef-per-year amount.value 2.5
    p exemptIf.0.soilTest.months 36`,
  ),
  ...law(
    marylandUseLimits,
    "read",
    "Md. AG 8-803.5 (d): 15 ft, 10 ft; notices of the department: 0.5 lb",
    `late-n-professional amount.value 0.5
    setback atLeast.value 15
    setback-with-guard atLeast.value 10`,
  ),
  ...law(
    newJerseySummaryLimits,
    "read",
    "Jersey-Yards: 0.9 lb, 20 %, three years, 25 ft, 10 ft; landscape trade magazine: 1, 3.2 and 4.25 lb; section 11 a: 0.7 lb",
    `soluble-n amount.value 0.7
    total-n-homeowner amount.value 0.9
    total-n-professional amount.value 1
    n-per-year-homeowner amount.value 3.2
    n-per-year-professional amount.value 4.25
    slow-share-homeowner atLeastPercentOfN 20
    p exemptIf.0.soilTest.months 36
    setback atLeast.value 25
    setback-with-guard atLeast.value 10`,
  ),
  ...law(
    pennsylvaniaLimits,
    "read",
    "3 Pa.C.S. 6813: 0.7 and 0.9 lb; 0.25 lb of phosphorus, 0.5 lb a year; 0.5 lb in winter; Act 83: 15 ft",
    `soluble-n amount.value 0.7
    total-n amount.value 0.9
    p-excepted-per-application amount.value 0.25
    p-excepted-per-year amount.value 0.5
    winter-n amount.value 0.5
    setback atLeast.value 15`,
  ),
];

const greatLakes: readonly ConstantCheck[] = [
  ...law(
    minnesotaLimits,
    "read",
    "Minn. Stat. 18C.60 subd. 2: three years, first growing season",
    `p exemptIf.0.soilTest.months 36
    p exemptIf.1.growingSeasonAtMost 1`,
  ),
  ...law(
    wisconsinLimits,
    "read",
    "Wis. Stat. 94.643 (2): 36 months, the growing season in which the grass is begun",
    `p exemptIf.0.soilTest.months 36
    p exemptIf.1.growingSeasonAtMost 1`,
  ),
  ...law(
    michiganLimits,
    "read",
    "Michigan State University, Part 85: 15 ft, a buffer of 10 ft, 3 ft; a test of three years",
    `p exemptIf.0.soilTest.months 36
    setback atLeast.value 15
    setback exemptIf.0.bufferAtLeast.value 10
    setback-with-guard atLeast.value 3
    setback-with-guard exemptIf.0.bufferAtLeast.value 10`,
  ),
  ...law(
    illinoisLimits,
    "read",
    "415 ILCS 65/5a (a): 36 months, 2 growing seasons, 3 ft, 15 ft",
    `p exemptIf.0.soilTest.months 36
    p exemptIf.1.growingSeasonAtMost 2
    setback atLeast.value 15
    setback-with-guard atLeast.value 3`,
  ),
];

const north: readonly ConstantCheck[] = [
  ...law(
    newYorkLimits,
    "read",
    "N.Y. ECL 17-2101, 17-2103: 0.67 percent, first growing season, 20 ft, 10 ft, 3 ft",
    `p atMostPercent 0.67
    p exemptIf.1.growingSeasonAtMost 1
    setback atLeast.value 20
    setback exemptIf.0.bufferAtLeast.value 10
    setback exemptIf.2.growingSeasonAtMost 1
    setback-with-guard atLeast.value 3
    setback-with-guard exemptIf.0.bufferAtLeast.value 10
    setback-with-guard exemptIf.1.growingSeasonAtMost 1`,
  ),
  ...law(
    vermontLimits,
    "read",
    "10 V.S.A. 1266b (a): 15 percent, 0.67 percent; summary of Act 37: 25 ft, first season; regional summary: 18 months",
    `slow-share atLeastPercentOfN 15
    p atMostPercent 0.67
    p exemptIf.1.soilTest.months 18
    p exemptIf.2.growingSeasonAtMost 1
    setback atLeast.value 25`,
  ),
  ...law(
    connecticutLimits,
    "read",
    "Connecticut General Statutes 22-111yy: 0.67 per cent, two years, twenty feet, fifteen feet",
    `p atMostPercent 0.67
    p exemptIf.0.soilTest.months 24
    setback atLeast.value 20
    setback-targeted atLeast.value 15`,
  ),
  ...law(
    manitobaLimits,
    "read",
    "Manitoba, zone N5: 1 per cent, the year of establishment and the next",
    `p atMostPercent 1
    p exemptIf.0.growingSeasonAtMost 2`,
  ),
];

const southeast: readonly ConstantCheck[] = [
  ...law(
    floridaLimits,
    "read",
    "EP353: 0.7 lb, 2 lb at 65 %, 0.25 lb of P2O5, 0.50 lb a year; the earlier rule, as Marion County copies it: 1 lb",
    `soluble-n amount.value 0.7
    total-n-spring-summer amount.value 2
    total-n-spring-summer scope.slowShareAtLeast 65
    total-n-autumn-winter amount.value 1
    p2o5-per-application amount.value 0.25
    p2o5-per-year amount.value 0.5`,
  ),
  ...law(
    marionCountyLimits,
    "read",
    "Marion County 19-247: 0.7 lb, one pound, 3, 4, 2, 3 and 4 lb a year; 0.25, 0.50 and 1.0 lb of P2O5",
    `soluble-n amount.value 0.7
    total-n amount.value 1
    n-bahiagrass amount.value 3
    n-bermudagrass amount.value 4
    n-centipedegrass amount.value 2
    n-st-augustinegrass amount.value 3
    n-zoysiagrass amount.value 4
    p2o5-per-application amount.value 0.25
    p2o5-per-year amount.value 0.5
    p2o5-starter amount.value 1`,
  ),
];

const remembered: readonly ConstantCheck[] = [
  ...law(
    australianTurfFungicideLimits,
    "read",
    "CropLife Australia, turf, 24 June 2026: no consecutive sprays",
    ["1", "2", "4", "7", "11", "21"].map((group) => `${group} atMostInARow 1`).join("\n"),
  ),
];

const menu: readonly ConstantCheck[] = [
  ...points("read", "Illinois Soybean Association, field guide to the runoff points", [
    ["county of high runoff vulnerability", 0],
    ["county of medium runoff vulnerability", 2],
    ["county of low runoff vulnerability", 3],
  ]),
  ...points("read", "University of Georgia, 2025 cotton weed control update, slide 39", [
    ["advice of a runoff and erosion specialist", 1],
    ["conservation program", 2],
    ["measures of more than one category", 1],
  ]),
  ...points("read", "Pesticide Environmental Stewardship, runoff and the ESA", [
    ["record of the measures", 1],
  ]),
];

/** Laws and labels, from the sources and from memory. */
export const limitConstants: readonly ConstantCheck[] = [
  ...midAtlantic,
  ...greatLakes,
  ...north,
  ...southeast,
  ...remembered,
  ...menu,
];
