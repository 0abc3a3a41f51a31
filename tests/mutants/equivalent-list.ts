// Changes of programs that no test can notice, because what comes out is the same for every input, each with the reason.
import { equivalentsInLessons } from "./equivalent-in-lessons.js";
import { equivalentsInQuantity } from "./equivalent-in-quantity.js";
import { equivalentsInTank } from "./equivalent-in-tank.js";

/** One change, by what stood there and what was put in its place. */
export interface Equivalent {
  readonly file: string;
  /** As it stands in the file. */
  readonly was: string;
  /** What is put in its place; any where it is left out. */
  readonly is?: string;
  readonly why: string;
}

/** The list, by file. */
export const equivalents: readonly Equivalent[] = [
  ...equivalentsInQuantity,
  ...equivalentsInLessons,
  ...equivalentsInTank,
  {
    file: "src/calendar/daily-temperatures.ts",
    was: "list.length > lastDay - firstDay",
    is: "list.length >= lastDay - firstDay",
    why: "a list of 3.6 million days, refused elsewhere",
  },
  {
    file: "src/calendar/day-number.ts",
    was: "{ min: firstDay, max: lastDay }",
    is: "{}",
    why: "a guard behind those of addDays and its like, which no call reaches",
  },
  {
    file: "src/numeric/estimate/coverage-factor.ts",
    was: "at < 200",
    is: "at <= 200",
    why: "one more step of a recurrence that holds at every step",
  },
  ...(
    [
      ["x < (p + 1) / (p + q + 2)", "false"],
      ["x < (p + 1) / (p + q + 2)", "x <= (p + 1) / (p + q + 2)"],
      ["p + 1", "p - 1"],
    ] as const
  ).map(([was, is]) => ({
    file: "src/numeric/estimate/coverage-factor.ts",
    was,
    is,
    why: "two forms of the same function; which is taken decides only how soon the fraction settles",
  })),
  ...(
    [
      ["m < 20_000", "m <= 20_000"],
      ["Math.abs(d * c - 1) < Number.EPSILON", "Math.abs(d * c - 1) <= Number.EPSILON"],
      ["term > sum * Number.EPSILON", "term >= sum * Number.EPSILON"],
    ] as const
  ).map(([was, is]) => ({
    file: "src/numeric/estimate/coverage-factor.ts",
    was,
    is,
    why: "one step more of a series that has settled",
  })),
  ...(
    [
      ["at(high) < share", "at(high) <= share"],
      ["at(middle) < share", "at(middle) <= share"],
    ] as const
  ).map(([was, is]) => ({
    file: "src/numeric/estimate/coverage-factor.ts",
    was,
    is,
    why: "where a bound is the very root, the halving comes to it from the other side",
  })),
  {
    file: "src/numeric/estimate/check-against-target.ts",
    was: "deviation < 0",
    is: "deviation <= 0",
    why: "no deviation is told before",
  },
  {
    file: "src/numeric/estimate/error-of-product.ts",
    was: "value < 0",
    is: "value <= 0",
    why: "a value of 0 is refused before",
  },
  {
    file: "src/numeric/number/accurate-sum.ts",
    was: "Math.abs(sum) >= Math.abs(x)",
    is: "Math.abs(sum) > Math.abs(x)",
    why: "of two numbers of one size either may be taken for the larger",
  },
  {
    file: "src/numeric/estimate/coverage-factor.ts",
    was: "nu > normalFrom",
    is: "nu >= normalFrom",
    why: "at ten million degrees of freedom both distributions give the same seven digits",
  },
  {
    file: "src/numeric/estimate/coverage-factor.ts",
    was: "i < 60",
    is: "i <= 60",
    why: "one halving more than a number has bits",
  },
  {
    file: "src/numeric/number/numbers.ts",
    was: "input.length > mostItems",
    is: "input.length >= mostItems",
    why: "a list of exactly a million items: the limit is a choice of this library",
  },
  {
    file: "src/water/evapotranspiration/hargreaves.ts",
    was: "j >= 365",
    is: "true",
    why: "the calendar is asked on each day instead of at the end of a year: the same day of the year comes out",
  },
  {
    file: "src/water/soil-water/depletion.ts",
    was: "depleted <= ready",
    is: "depleted < ready",
    why: "at the joint both ways give 1",
  },
  {
    file: "src/water/soil-water/effective-rain.ts",
    was: "rain <= 0.1",
    is: "rain < 0.1",
    why: "at the joint both ways give nothing",
  },
  {
    file: "src/water/soil-water/effective-rain.ts",
    was: "rain <= 1",
    is: "rain < 1",
    why: "at the joint both ways give nine tenths of an inch",
  },
  {
    file: "src/water/soil-water/effective-rain.ts",
    was: "mm <= 250",
    is: "mm < 250",
    why: "at the joint both ways give 150 mm",
  },
  {
    file: "src/water/soil-water/effective-rain.ts",
    was: "mm > 75",
    is: "mm >= 75",
    why: "at the joint both ways give 35 mm",
  },
  {
    file: "src/weather/days/frost-dates.ts",
    was: "value <= limit",
    is: "value < limit",
    why: "the limit carries a slack of a billionth of a degree, which no reading meets",
  },
  {
    file: "src/weather/days/summer-frosts.ts",
    was: "value <= limit",
    is: "value < limit",
    why: "the limit carries a slack of a billionth of a degree, which no reading meets",
  },
  ...(
    [
      ["i < 200", "i <= 200"],
      ["i++", "i--"],
      ["middle <= low || middle >= high", "false"],
      ["middle <= low || middle >= high", "middle <= low && middle >= high"],
      ["middle <= low", "false"],
      ["middle <= low", "middle < low"],
      ["middle >= high", "false"],
      ["middle >= high", "middle > high"],
    ] as const
  ).map(([was, is]) => ({
    file: "src/stand/cover/lattice-cover.ts",
    was,
    is,
    why: "where nothing is left to halve, further rounds leave both bounds where they are",
  })),
  {
    file: "src/stand/cover/patch-map.ts",
    was: "y < high",
    is: "y <= high",
    why: "one cell more of a line, past the end of the map: written where nobody reads, or nowhere",
  },
  {
    file: "src/stand/cover/patch-map.ts",
    was: "i < distances.length",
    is: "i <= distances.length",
    why: "a place past the end of a typed array takes nothing",
  },
  {
    file: "src/limits/weigh/counted-days.ts",
    was: "known !== undefined && known.from <= from",
    is: "false",
    why: "what was counted before is counted again, to the same sums",
  },
  {
    file: "src/limits/weigh/counted-days.ts",
    was: "open.length === 0",
    is: "false",
    why: "a history is gone through for nothing",
  },
  {
    file: "src/ledger/book/ledger-history.ts",
    was: "days.has(date)",
    is: "false",
    why: "a day that was looked at is looked at again",
  },
  {
    file: "src/ledger/book/ledger-history.ts",
    was: "reader.places.length > 10_000",
    why: "whether rows are kept or read again decides only how soon they are there",
  },
  {
    file: "src/plan/watering/watering-grounds.ts",
    was: "of(b).compare(of(a)) > 0",
    is: "of(b).compare(of(a)) >= 0",
    why: "of grounds with the same depth the depth is told, and the rule and the end are those of all",
  },
  {
    file: "src/plan/watering/watering-findings.ts",
    was: "b.compare(a) > 0",
    is: "b.compare(a) >= 0",
    why: "the same depth, in the unit of the rule",
  },
  {
    file: "src/spread/overlap/overlap-deposits.ts",
    was: "(edge / n - 0.5) * swath - at",
    is: "(edge / n - 0.5) * swath + at",
    why: "the passes lie alike on both sides, and are gone through from the other end",
  },
  ...["/^[!-~](?: [!-~]+)*$/", "/^[!-~]+(?: [!-~]+)$/", "/^[!-~]+(?: [!-~])*$/"].map((is) => ({
    file: "src/quantity/text/clean-text.ts",
    was: "/^[!-~]+(?: [!-~]+)*$/",
    is,
    why: "a text that is clean comes out of the longer way as it went in",
  })),
  {
    file: "src/quantity/text/clean-text.ts",
    was: "alreadyClean.test(text)",
    is: "false",
    why: "a text that is clean comes out of the longer way as it went in",
  },
  {
    file: "src/quantity/text/plain-reading.ts",
    was: '","',
    is: '""',
    why: "a text without a comma is the same without its commas",
  },
  {
    file: "src/quantity/text/unit-reading.ts",
    was: "of !== undefined && / per /i.test(of)",
    is: "true",
    why: "an id without the word per is read alike in both ways",
  },
  {
    file: "src/quantity/text/unit-reading.ts",
    was: "/^(.*) of (.*)/i",
    is: "/(.*) of (.*)/i",
    why: "a text of one line, of which the first part takes all that it can",
  },
  {
    file: "src/quantity/text/aliases.ts",
    was: "parts.length < 2",
    is: "false",
    why: "a name without a slash is none of the names that have one",
  },
  {
    file: "src/quantity/text/format.ts",
    was: "Math.abs(value) < 1",
    is: "Math.abs(value) <= 1",
    why: "1 has one digit, with four digits as with three decimals",
  },
  ...["1", "0.1", "0.01"].map((least) => ({
    file: "src/quantity/text/format.ts",
    was: `size >= ${least}`,
    is: `size > ${least}`,
    why: "a power of ten has one digit, whichever scale it is rounded with",
  })),
  ...["value <= 0", "true"].map((is) => ({
    file: "src/quantity/text/format.ts",
    was: "value < 0",
    is,
    why: "no other number is written as a negative zero is, and an everyday number is never 0",
  })),
];
