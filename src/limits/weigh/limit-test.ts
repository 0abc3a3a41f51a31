import {
  addDays,
  type CivilDate,
  isWithinWindow,
  type MonthDayWindow,
  windowAround,
} from "../../calendar/index.js";
import { roundedApart } from "../../numeric/house.js";
import { exceeds } from "../../numeric/index.js";
import { counted } from "../../quantity/house.js";
import type { FactSource } from "../../quantity/index.js";
import { reaches } from "../limit/limit-condition.js";
import type { ReadAmountLimit, ReadCountLimit, ReadLimit } from "../limit/read-types.js";
import { bufferTest, runoffTest } from "./buffer-test.js";
import { dayAmounts, isOf, type Proposed, slowShareOfRow } from "./counted-days.js";
import { lengthText } from "./length-text.js";
import { lastYear } from "./period-use.js";
import { rotationTest } from "./rotation-test.js";
import { isOfAny, judged, notKnown, ofText, type TestResult } from "./test-result.js";

/** What a limit that does not add up says of an application: slow share, content, interval, dates, distance, ground. */
export interface LimitTest {
  readonly part: string;
  readonly limit: {
    readonly id?: string;
    readonly kind:
      | "interval"
      | "slow share"
      | "content"
      | "blackout dates"
      | "setback"
      | "buffer"
      | "runoff points"
      | "ground"
      | "rotation";
    readonly of: string;
    /** What it states, in words: `"at least 20 % of N"`. */
    readonly states: string;
    readonly source: FactSource;
  };
  readonly path: string;
  /** What was found, in words; `null` where it is not known. */
  readonly found: string | null;
  /** `true` where the limit is violated: it is NOT kept. `null` where it could not be told. */
  readonly violated: boolean | null;
  readonly earliestByStatedLimit: CivilDate | null;
  readonly appliesIf: readonly string[];
}

/** A percentage, in as many figures as it takes to read apart from the stated one. */
const shownPercent = (percent: number, stated: number): string =>
  `${roundedApart(percent, stated)(percent)} %`;

/** The first day after a blackout period: next year's again where it runs into itself. */
const opensAfter = (date: CivilDate, blackout: MonthDayWindow): CivilDate | undefined => {
  let day = date;
  // A part of the year that leaves out 29 February alone opens at the latest after eight years.
  for (let year = 0; year < 10 && day <= lastYear; year++) {
    const span = windowAround(day, blackout);
    if (span === undefined) return day;
    day = addDays(span.to, 1);
  }
  return undefined;
};

type TestOf<K extends ReadLimit["kind"]> = (
  limit: Extract<ReadLimit, { readonly kind: K }>,
  proposed: Proposed,
) => TestResult;

const slowShareTest: TestOf<"slow share"> = (limit, { date, row }) => {
  const states = `at least ${limit.atLeastPercentOfN} % of N slow`;
  const judge = judged(date);
  const nitrogen = isOf(row, "N");
  if (nitrogen === false) return judge("N:slow", states, "no N", false);
  const share = slowShareOfRow(row);
  return share === undefined
    ? notKnown("N:slow", states)
    : judge(
        "N:slow",
        states,
        `${shownPercent(share, limit.atLeastPercentOfN)} of N`,
        exceeds(limit.atLeastPercentOfN, share),
      );
};

const contentTest: TestOf<"content"> = (limit, { date, content }) => {
  const states = `at most ${limit.atMostPercent} % of ${limit.of} in the product`;
  const found = content(limit.of);
  const over = found !== undefined && exceeds(found.percent, limit.atMostPercent);
  // One product over the limit is enough; that all are within it only all of them can tell.
  return found === undefined || !(over || found.all)
    ? notKnown(limit.of, states)
    : judged(date)(limit.of, states, shownPercent(found.percent, limit.atMostPercent), over);
};

const intervalTest: TestOf<"interval"> = (limit, proposed) => {
  const { date, row } = proposed;
  const { of, atLeastDays } = limit;
  const states = `at least ${counted(atLeastDays, "day")} between applications`;
  const judge = judged(date);
  const mine = isOf(row, of);
  if (mine === false) return judge(of, states, `no ${of}`, false);
  const { days, notCountedOn } = dayAmounts(limit, proposed);
  /** The days that lie too near to another, before it and after. */
  const nearTo = (there: CivilDate, list: readonly CivilDate[]): readonly CivilDate[] => {
    const [before, after] = [addDays(there, -atLeastDays), addDays(there, atLeastDays)];
    return list.filter((day) => day > before && day < after);
  };
  const near = nearTo(date, days.dates);
  if (mine === undefined || (near.length === 0 && nearTo(date, notCountedOn).length > 0))
    return notKnown(of, states);
  if (near.length === 0) return judge(of, states, "none within that time", false);
  // On and on, until no application lies too near on either side.
  let free = date;
  for (const day of days.dates) if (nearTo(free, [day]).length > 0) free = addDays(day, atLeastDays);
  const told = nearTo(free, notCountedOn).length === 0 ? free : undefined;
  return judge(of, states, `applied on ${near.join(", ")}`, true, told);
};

const blackoutTest: TestOf<"blackout dates"> = (limit, { date, row }) => {
  const { from, to } = limit.blackout;
  const of = ofText(limit.of);
  const states = `none from ${from} to ${to}`;
  const mine = isOfAny(row, limit.of);
  if (mine === undefined) return notKnown(of, states);
  const shut = mine && isWithinWindow(date, limit.blackout);
  const open = shut ? opensAfter(date, limit.blackout) : undefined;
  return judged(date)(of, states, mine ? `the day ${date}` : `no ${of}`, shut, open);
};

const setbackTest: TestOf<"setback"> = (limit, { date, row, known }) => {
  const of = ofText(limit.of);
  const { toWater } = known.facts;
  const states = `at least ${lengthText(limit.atLeast, toWater)} from water`;
  const judge = judged(date);
  const mine = isOfAny(row, limit.of);
  if (mine === false) return judge(of, states, `no ${of}`, false);
  if (mine === undefined || toWater === undefined) return notKnown(of, states);
  return judge(of, states, `${toWater.value} ${toWater.unit}`, !reaches(toWater, limit.atLeast));
};

const groundTest: TestOf<"ground"> = (limit, { date, row, known }) => {
  const of = ofText(limit.of);
  const states = `none on ${limit.not.join(" or ")} ground`;
  const judge = judged(date);
  const mine = isOfAny(row, limit.of);
  if (mine === false) return judge(of, states, `no ${of}`, false);
  const { ground } = known.facts;
  if (mine === undefined || ground === undefined) return notKnown(of, states);
  const bad = ground.filter((state) => limit.not.includes(state));
  return judge(of, states, bad.length > 0 ? bad.join(", ") : "none of these", bad.length > 0);
};

/** What a limit that does not add up gives for a proposal. */
export const testOf = (
  limit: Exclude<ReadLimit, ReadAmountLimit | ReadCountLimit>,
  proposed: Proposed,
): TestResult => {
  switch (limit.kind) {
    case "slow share":
      return slowShareTest(limit, proposed);
    case "content":
      return contentTest(limit, proposed);
    case "interval":
      return intervalTest(limit, proposed);
    case "blackout dates":
      return blackoutTest(limit, proposed);
    case "setback":
      return setbackTest(limit, proposed);
    case "ground":
      return groundTest(limit, proposed);
    case "buffer":
      return bufferTest(limit, proposed);
    case "runoff points":
      return runoffTest(limit, proposed);
    case "rotation":
      return rotationTest(limit, proposed);
  }
};
