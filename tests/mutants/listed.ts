// Numbers that no figure of a source can depend on to one part in ten thousand, each with the reason.
import { reasons, roomRows } from "./listed-rooms.js";

/** Some numbers of a file, met by a part of their line, and why nothing outside this library can notice them. */
export interface ListedConstants {
  readonly file: string;
  readonly line: RegExp;
  readonly why: string;
}

const whole =
  "held against whole numbers or cut to one: one part in ten thousand off, no whole number changes sides";
const shown = "how many places a person is shown: a choice of this library";
const ours = "a limit of this library, documented as such; no source prints it";
const spelling = "how near two spellings are: a choice of this library, whole letters only";
const sole = "the only unit of its kind: there is nothing that its size could disagree with";

const message = "part of the sentence of an error, which the tests of texts hold";
const practice = "marked as common practice without a source where it stands";
const working = "the size of a list to work in: more room than is needed changes nothing";
const assumed = "an assumption of the model, told among its assumptions; no source prints it";
const slip = "held against what no feed reaches, or no number, to tell a slip; not a figure of a source";
const noise = "how much of a difference is taken for the noise of rounding: a choice of this library";
const handover = "where one way of computing takes over from another that gives the same";

/** The list, by file. */
export const listedConstants: readonly ListedConstants[] = [
  ...roomRows.map(([file, line, why]) => ({ file, line, why: reasons[why] })),
  { file: "src/numeric/estimate/coverage-factor.ts", line: /normalFrom = |at < 200/, why: handover },
  {
    file: "src/numeric/estimate/coverage-factor.ts",
    line: /const series = /,
    why: "a term of a series whose ten-thousandth part lies below the last digits of the result",
  },
  { file: "src/numeric/estimate/coverage-factor.ts", line: /20_000|high \*= 2|i < 60/, why: reasons.split },
  { file: "src/numeric/estimate/coverage-factor.ts", line: /p \+ q \+ 2/, why: reasons.joint },
  { file: "src/numeric/estimate/coverage-factor.ts", line: /share < 0\.01/, why: ours },
  { file: "src/numeric/estimate/error-of-product.ts", line: /compensatedSum/, why: whole },
  { file: "src/numeric/estimate/readings-for.ts", line: /let low = high \/ 2/, why: reasons.split },
  { file: "src/numeric/number/round-to.ts", line: /2 \*\* 52|1e13|1e15/, why: noise },
  { file: "src/numeric/number/standard-deviation.ts", line: /compensatedSum/, why: whole },
  { file: "src/calendar/day-number.ts", line: /153|1460|daysOfMonth|: 29/, why: whole },
  { file: "src/calendar/day-number.ts", line: /dayOfMarchYear/, why: whole },
  { file: "src/calendar/day-number.ts", line: /isLeap/, why: whole },
  { file: "src/calendar/instant.ts", line: /> 23|> 59|14 \* 60/, why: whole },
  { file: "src/calendar/window.ts", line: /./, why: `month and day as one whole number; ${whole}` },
  { file: "src/quantity/errors/plain-copy.ts", line: /const few = /, why: handover },
  { file: "src/quantity/errors/near-name.ts", line: /./, why: spelling },
  { file: "src/quantity/text/suggest.ts", line: /./, why: spelling },
  { file: "src/quantity/substance/substances.ts", line: /place < 2/, why: whole },
  {
    file: "src/quantity/text/aliases.ts",
    line: /square === undefined/,
    why: "an exponent in the name of a unit, which is text",
  },
  { file: "src/quantity/text/clean-text.ts", line: /textLimit/, why: ours },
  { file: "src/quantity/text/format.ts", line: /./, why: shown },
  { file: "src/quantity/text/number-text.ts", line: /denominators/, why: whole },
  { file: "src/quantity/text/plain-reading.ts", line: /digits/, why: whole },
  { file: "src/quantity/unit/base-units.ts", line: /radiant exposure/, why: sole },
  { file: "src/quantity/unit/unit-facts.ts", line: /length/, why: whole },
  { file: "src/quantity/unit/unit-names.ts", line: /unitName/, why: "one or more than one, for the plural" },
  { file: "src/tank/amount-text.ts", line: /digits/, why: shown },
  { file: "src/tank/jar/jar-test.ts", line: /toPrecision|amountText/, why: shown },
  { file: "src/tank/load/load-amounts.ts", line: /amountText/, why: shown },
  { file: "src/tank/load/load-limits.ts", line: /amountText/, why: shown },
  { file: "src/tank/load/load-strength.ts", line: /muchDry|muchLiquid/, why: ours },
  { file: "src/tank/load/load-volumes.ts", line: /count|2 \* least/, why: whole },
  { file: "src/tank/load/read-load-products.ts", line: /textOf/, why: ours },
  { file: "src/tank/load/tank-loads.ts", line: /capacity\.value \/ 10/, why: ours },
  { file: "src/tank/order/loading-steps.ts", line: /percent = /, why: shown },
  { file: "src/tank/order/order-findings.ts", line: /few = /, why: whole },
  { file: "src/tank/published-orders/mixing-orders.ts", line: /afterStep/, why: whole },
  { file: "src/tank/published-orders/best-orders.ts", line: /2 \*\* size/, why: whole },
  {
    file: "src/tank/published-orders/pair-order.ts",
    line: /firm = /,
    why: "counts of published orders; the limits of firm are a rule of this library",
  },
  {
    file: "src/tank/formulation/jug-code.ts",
    line: /value >=? ?> ?100|value > 100|value >= 100/,
    why: whole,
  },
  { file: "src/tank/water/hydrolysis.ts", line: /outward|oneDigit|place = /, why: shown },
  { file: "src/tank/water/water-findings.ts", line: /digits = /, why: shown },
  { file: "src/tank/water/water-findings.ts", line: /leeway/, why: ours },
  { file: "src/tank/water/water-findings.ts", line: /figuresApart\(|roundedApart\(/, why: shown },
  { file: "src/tank/water/water-findings.ts", line: /g per 100 L/, why: shown },
  { file: "src/spray/nozzle/pulse-width.ts", line: /const beyond = |roundedApart\(/, why: shown },
  { file: "src/interval/rule/past-findings.ts", line: /roundedApart\(/, why: shown },
  { file: "src/nutrient/injection/stock-findings.ts", line: /roundedApart\(/, why: shown },
  { file: "src/nutrient/label/small-figures.ts", line: /wholeBag = 100/, why: ours },
  { file: "src/tank/water/hardness.ts", line: /upTo/, why: whole },
  { file: "src/interval/rule/next-dates.ts", line: /horizon/, why: ours },
  { file: "src/interval/regulator/degree-day-chain.ts", line: /horizon/, why: ours },
  { file: "src/interval/rule/period-use.ts", line: /addMonths/, why: whole },
  {
    file: "src/interval/spray-window/wet-bulb.ts",
    line: /-60|< 60/,
    why: "where a search by halving begins and how often it halves",
  },
  {
    file: "src/interval/spray-window/spray-hour.ts",
    line: /fromNoon/,
    why: "the day whose noon is nearest: half a day either way, and no sunrise lies there",
  },
  { file: "src/tank/water/hydrolysis.ts", line: /y < 1e-4/, why: handover },
  { file: "src/tank/water/water-findings.ts", line: /const acidify/, why: whole },
  { file: "src/spray/inputs.ts", line: /most \* 100/, why: message },
  { file: "src/spray/calibration/rate-controller.ts", line: /tolerance: /, why: practice },
  { file: "src/spray/nozzle/tip-stamp.ts", line: /\[2, 3\]\.map/, why: whole },
  {
    file: "src/spray/nozzle/pulse-width.ts",
    line: /const off = /,
    why: "the middle of the usual duty, by which tips are ranked: a rule of this library, documented as such",
  },
  { file: "src/spread/calibration/gate-setting.ts", line: /const near = /, why: handover },
  { file: "src/spread/calibration/gate-setting.ts", line: /2 \* noise/, why: practice },
  { file: "src/spread/inputs.ts", line: /1e200/, why: ours },
  { file: "src/spread/ice/deicing.ts", line: /-60|<= 40|"step", 50/, why: ours },
  {
    file: "src/spread/overlap/overlap-deposits.ts",
    line: /const passes = /,
    why: "how many passes are laid side by side: one more reaches nothing",
  },
  { file: "src/spread/overlap/overlap-deposits.ts", line: /const bins = /, why: working },
  { file: "src/spread/overlap/overlap-kernel.ts", line: /const bins = /, why: working },
  { file: "src/spread/overlap/swath-search.ts", line: /const bins = /, why: working },
  { file: "src/nutrient/acidity/acidity-table.ts", line: /1000/, why: ours },
  { file: "src/nutrient/blend/blend-limits.ts", line: /value < 0 \|\| value > 100/, why: reasons.percents },
  { file: "src/nutrient/blend/blend-to-grade.ts", line: /const most = /, why: message },
  { file: "src/nutrient/blend/blend-to-grade.ts", line: /1e-9 \* Math\.max\(100/, why: noise },
  { file: "src/nutrient/salt/salt-table.ts", line: /1000/, why: ours },
  { file: "src/nutrient/salt/salt-index.ts", line: /> 1000/, why: ours },
  { file: "src/nutrient/rate/rate-arrays.ts", line: /"cap", 1000/, why: ours },
  { file: "src/nutrient/blend/read-material.ts", line: /200\)/, why: ours },
  {
    file: "src/nutrient/blend/entering-price.ts",
    line: /1e-4|k < 100/,
    why: "where a search begins and how often it steps: its end is the same",
  },
  {
    file: "src/nutrient/blend/shadow-prices.ts",
    line: /1e-3/,
    why: "how far a limit is relaxed to see what that saves: the price by unit is the same",
  },
  { file: "src/nutrient/label/liquid-fertilizer.ts", line: /heaviest/, why: practice },
  { file: "src/nutrient/label/liquid-fertilizer.ts", line: /solidUrea/, why: slip },
  { file: "src/nutrient/label/nitrogen-breakdown.ts", line: /const shares = /, why: message },
  { file: "src/nutrient/label/oxide-factor.ts", line: /noOxygen/, why: "endless, as far as numbers go" },
  {
    file: "src/nutrient/rate/rates-in-turn.ts",
    line: /\? 3|: 2;/,
    why: "ranks, compared with one another only",
  },
  {
    file: "src/nutrient/release/isobutylidene-diurea.ts",
    line: /finest, coarsest|fitErrorPercent|q10/,
    why: assumed,
  },
  {
    file: "src/nutrient/release/coated-urea.ts",
    line: /high: 20|days: 150|q10/,
    why: assumed,
  },
  {
    file: "src/nutrient/release/release-models.ts",
    line: /mostPercent: \{ low: 35|q10: |fromC: 10/,
    why: assumed,
  },
  { file: "src/nutrient/release/release-model.ts", line: /36_600|-60/, why: ours },
  { file: "src/nutrient/release/release-temperature.ts", line: /coldest, hottest/, why: ours },
  { file: "src/nutrient/release/release-weather.ts", line: /-60/, why: ours },
  { file: "src/nutrient/release/release-ends.ts", line: /-100/, why: "colder and warmer than any day" },
  { file: "src/nutrient/season/nitrogen-caps.ts", line: /30/, why: whole },
  { file: "src/nutrient/season/program-spacing.ts", line: /two weeks|0\.1/, why: practice },
  { file: "src/nutrient/season/program-sums.ts", line: /last - 6/, why: whole },
  {
    file: "src/nutrient/season/read-comparison.ts",
    line: /20, "°C"/,
    why: "any temperature, to read the rest of a comparison whose own was refused",
  },
  { file: "src/nutrient/season/program-comparison.ts", line: /"(low|mid|high)", 7 \* weeks/, why: whole },
  { file: "src/nutrient/season/read-comparison.ts", line: /7 \* weeks/, why: whole },
];

/** Why a number is listed, or nothing. */
export const whyListed = (file: string, line: string): string | undefined =>
  listedConstants.find((one) => one.file === file && one.line.test(line))?.why;
