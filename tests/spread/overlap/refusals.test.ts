import { quantity } from "../../../src/quantity/index.js";
import {
  overlapDeposits,
  overlappedRate,
  overlappedRateEstimate,
  overlappedVolume,
  spreadPattern,
  swathCvPercent,
  swathSearch,
  swathUniformity,
  uniformityLimit,
} from "../../../src/spread/index.js";
import { type Refusal, refusalsOf } from "../../told.js";
import { ft, m, percent, row } from "../helpers.js";

const catches = [0, 2, 4, 2, 0];
const pattern = row(catches);
const weighed = spreadPattern({
  catches,
  unit: "g",
  pans: { spacing: m(1), left: 2 },
  panArea: quantity(0.1, "m2"),
});
const poured = spreadPattern({
  catches,
  unit: "mL",
  pans: { spacing: m(1), left: 2 },
  panArea: quantity(0.1, "m2"),
});
const uneven = spreadPattern({ catches: [0, 2, 4, 0], unit: "g", pans: { offsets: [-3, -1, 0, 2].map(m) } });
const aside = spreadPattern({ catches: [0, 2, 4, 2, 0], unit: "g", pans: { spacing: m(1), left: 1.25 } });
const swath = m(3);
const how = { driving: "one direction", positions: "pans", divisor: "n" };
const options = { ...how, swath };
const search = { ...how, limit: percent(15) };
const kernel = {
  depositsKgPerM2: Float64Array.of(0, 1, 2, 1, 0),
  spacingM: 1,
  swathsM: Float64Array.of(3),
  driving: "one direction",
  divisor: "n",
};

const rows: readonly Refusal[] = [
  [
    "no options of deposits",
    overlapDeposits,
    [pattern, undefined],
    ["missing options: a record with swath, driving, positions [undefined]"],
  ],
  [
    "nothing of deposits",
    overlapDeposits,
    [pattern, {}],
    [
      "missing swath: a length, such as 10 ft or 3 m [undefined]",
      "missing driving: the choice one direction or back and forth [undefined]",
      "missing positions: pans, or a number of strips [undefined]",
    ],
  ],
  [
    "other words of deposits",
    overlapDeposits,
    [pattern, { swath: m(0), driving: "round", positions: "strips" }],
    [
      "range swath: more than zero [0 m]",
      'type driving: the choice one direction or back and forth ["round"]',
      'not-finite positions: a finite number ["strips"]',
    ],
  ],
  [
    "one strip",
    overlapDeposits,
    [pattern, { swath, driving: "one direction", positions: 1 }],
    ["range positions: 2 or more [1]"],
  ],
  [
    "very many strips",
    overlapDeposits,
    [pattern, { swath, driving: "one direction", positions: 1001 }],
    ["range positions: 1000 or less [1001]"],
  ],
  [
    "part of a strip",
    overlapDeposits,
    [pattern, { swath, driving: "one direction", positions: 2.5 }],
    ["range positions: a whole number [2.5]"],
  ],
  [
    "a swath between the pans",
    overlapDeposits,
    [pattern, { swath: m(2.5), driving: "one direction", positions: "pans" }],
    ["conflict swath: a whole multiple of the distance of the pans, which is 1 [2.5]"],
  ],
  [
    "pans at several distances",
    overlapDeposits,
    [uneven, { swath, driving: "one direction", positions: "pans" }],
    ["conflict positions: a number of strips, because the pans are not evenly spaced [pans]"],
  ],
  [
    "a line of travel beside the pans",
    overlapDeposits,
    [aside, { swath, driving: "back and forth", positions: "pans" }],
    [
      "conflict positions: a number of strips, because the line of travel runs neither through a pan nor half-way between two [pans]",
    ],
  ],
  [
    "a swath like a hair",
    overlapDeposits,
    [pattern, { swath: m(9e-5), driving: "one direction", positions: 2 }],
    ["range swath: 0.0000999975 or more, a swath that 20000 passes overlap [0.00009]"],
  ],
  [
    "a swath of a country",
    overlapDeposits,
    [pattern, { swath: m(2e6), driving: "one direction", positions: "pans" }],
    ["range swath: 1000000 or less, 1000000 times the distance of the pans [2000000]"],
  ],
  [
    "no options of evenness",
    swathUniformity,
    [pattern, undefined],
    ["missing options: a record with swath, driving, positions, divisor [undefined]"],
  ],
  [
    "nothing of evenness",
    swathUniformity,
    [pattern, {}],
    [
      "missing swath: a length, such as 10 ft or 3 m [undefined]",
      "missing driving: the choice one direction or back and forth [undefined]",
      "missing positions: pans, or a number of strips [undefined]",
      "missing divisor: the choice n or n-1 [undefined]",
    ],
  ],
  [
    "another divisor",
    swathUniformity,
    [pattern, { ...options, divisor: "n-2" }],
    ['type divisor: the choice n or n-1 ["n-2"]'],
  ],
  [
    "one position by n - 1",
    swathUniformity,
    [pattern, { ...options, swath: m(1), divisor: "n-1" }],
    ["range swath: two positions or more for the divisor n-1 [1 m]"],
  ],
  [
    "an option of evenness that is not known",
    swathUniformity,
    [pattern, { ...options, passes: 2 }],
    ['type options.passes: one of the fields driving, positions, divisor, swath [a field "passes"]'],
  ],
  [
    "nothing of a search",
    swathSearch,
    [pattern, {}],
    [
      "missing driving: the choice one direction or back and forth [undefined]",
      "missing positions: pans, or a number of strips [undefined]",
      "missing divisor: the choice n or n-1 [undefined]",
      "missing limit: a CV, such as 15 % [undefined]",
    ],
  ],
  [
    "a search within no limit",
    swathSearch,
    [pattern, { ...search, limit: percent(0), from: m(0), to: m(0), step: m(0) }],
    [
      "range limit: more than zero [0 %]",
      "range from: more than zero [0 m]",
      "range to: more than zero [0 m]",
      "range step: more than zero [0 m]",
    ],
  ],
  [
    "a search that ends before it begins",
    swathSearch,
    [pattern, { ...search, from: m(4), to: m(3) }],
    ["conflict to: a swath of 4 m or more [3 m]"],
  ],
  [
    "a search that ends before the throw",
    swathSearch,
    [pattern, { ...search, from: m(9) }],
    ["conflict to: a swath of 9 m or more [4]"],
  ],
  [
    "a search between the pans",
    swathSearch,
    [pattern, { ...search, from: m(2.5), step: m(0.5) }],
    [
      "conflict step: a whole multiple of the distance of the pans, which is 1 [0.5]",
      "conflict from: a whole multiple of the distance of the pans, which is 1 [2.5]",
    ],
  ],
  [
    "a search of very many swaths",
    swathSearch,
    [pattern, { ...search, positions: 2, from: m(1), to: m(101), step: m(0.01) }],
    ["range step: 10000 swaths or fewer [0.01 m]"],
  ],
  [
    "a search past very many pans",
    swathSearch,
    [pattern, { ...search, to: m(1_000_001), step: m(1000), from: m(1) }],
    ["range to: 1000000 m or less, 1000000 times the distance of the pans [1000001 m]"],
  ],
  [
    "a search without a step of pans at several distances",
    swathSearch,
    [uneven, { ...search, positions: 20 }],
    ["missing step: the distance of the swaths to try, because the pans are not evenly spaced [undefined]"],
  ],
  [
    "a search by pans at several distances",
    swathSearch,
    [uneven, { ...search, step: m(1) }],
    ["conflict positions: a number of strips, because the pans are not evenly spaced [pans]"],
  ],
  [
    "a search from one position by n - 1",
    swathSearch,
    [pattern, { ...search, divisor: "n-1", from: m(1) }],
    ["range from: 2 or more, two positions, for the divisor n-1 [1]"],
  ],
  [
    "a search by the pans beside the line",
    swathSearch,
    [aside, { ...search, driving: "back and forth" }],
    [
      "conflict positions: a number of strips, because the line of travel runs neither through a pan nor half-way between two [pans]",
    ],
  ],
  [
    "nothing of a kernel",
    swathCvPercent,
    [{}],
    ["missing depositsKgPerM2: a Float64Array; Float64Array.from(list) makes one of a list [undefined]"],
  ],
  [
    "lists in a kernel",
    swathCvPercent,
    [{ ...kernel, depositsKgPerM2: [1] }],
    ["type depositsKgPerM2: a Float64Array; Float64Array.from(list) makes one of a list [a list of 1]"],
  ],
  [
    "swaths as a list",
    swathCvPercent,
    [{ ...kernel, swathsM: [3] }],
    ["type swathsM: a Float64Array; Float64Array.from(list) makes one of a list [a list of 1]"],
  ],
  [
    "a result as a list",
    swathCvPercent,
    [{ ...kernel, outPercent: [3] }],
    ["type outPercent: a Float64Array; Float64Array.from(list) makes one of a list [a list of 1]"],
  ],
  ["a spacing of none", swathCvPercent, [{ ...kernel, spacingM: 0 }], ["range spacingM: more than 0 [0]"]],
  [
    "a kernel driven round",
    swathCvPercent,
    [{ ...kernel, driving: "round" }],
    ['type driving: the choice one direction or back and forth ["round"]'],
  ],
  [
    "a kernel by another divisor",
    swathCvPercent,
    [{ ...kernel, divisor: 1 }],
    ["type divisor: the choice n or n-1 [1]"],
  ],
  [
    "a result of another length",
    swathCvPercent,
    [{ ...kernel, outPercent: new Float64Array(2) }],
    ["conflict outPercent: as many as swathsM has, which is 1 [2 places]"],
  ],
  [
    "a result in the swaths",
    swathCvPercent,
    [{ ...kernel, outPercent: kernel.swathsM }],
    ["conflict outPercent: a separate list: no memory shared with inputs [an input]"],
  ],
  [
    "deposits that are no number",
    swathCvPercent,
    [{ ...kernel, depositsKgPerM2: Float64Array.of(1, Number.NaN) }],
    ["not-finite depositsKgPerM2[1]: a finite number [not a number]"],
  ],
  [
    "deposits below nothing",
    swathCvPercent,
    [{ ...kernel, depositsKgPerM2: Float64Array.of(1, -1) }],
    ["range depositsKgPerM2[1]: zero or more [-1]"],
  ],
  [
    "deposits without end",
    swathCvPercent,
    [{ ...kernel, depositsKgPerM2: Float64Array.of(1, Number.POSITIVE_INFINITY) }],
    ["not-finite depositsKgPerM2[1]: a finite number [infinity]"],
  ],
  [
    "deposits past all numbers",
    swathCvPercent,
    [{ ...kernel, depositsKgPerM2: Float64Array.of(1.7e308, 1.7e308) }],
    ["range depositsKgPerM2: catches with a finite sum [infinity]"],
  ],
  [
    "no deposits",
    swathCvPercent,
    [{ ...kernel, depositsKgPerM2: Float64Array.of(0, 0) }],
    ["range depositsKgPerM2: catches of more than 1e-300 in all [0]"],
  ],
  [
    "a swath of none in a kernel",
    swathCvPercent,
    [{ ...kernel, swathsM: Float64Array.of(3, 0) }],
    ["range swathsM[1]: more than 0 [0]"],
  ],
  [
    "a swath between the pans in a kernel",
    swathCvPercent,
    [{ ...kernel, swathsM: Float64Array.of(3, 2.5) }],
    ["conflict swathsM[1]: a whole multiple of the distance of the pans, which is 1 [2.5]"],
  ],
  [
    "a swath of a country in a kernel",
    swathCvPercent,
    [{ ...kernel, swathsM: Float64Array.of(2e6) }],
    ["range swathsM[0]: 1000000 or less, 1000000 times the distance of the pans [2000000]"],
  ],
  [
    "one position by n - 1 in a kernel",
    swathCvPercent,
    [{ ...kernel, divisor: "n-1", swathsM: Float64Array.of(3, 1) }],
    ["range swathsM[1]: 2 m or more, two positions, for the divisor n-1 [1]"],
  ],
  [
    "back and forth without a first pan",
    swathCvPercent,
    [{ ...kernel, driving: "back and forth" }],
    ["missing firstPanM: the place of the first pan, for back and forth [undefined]"],
  ],
  [
    "back and forth beside the pans",
    swathCvPercent,
    [{ ...kernel, driving: "back and forth", firstPanM: -1.75 }],
    ["conflict firstPanM: a line of travel through a pan or half-way between two [-1.75]"],
  ],
  [
    "a first pan that is no number",
    swathCvPercent,
    [{ ...kernel, driving: "back and forth", firstPanM: "a" }],
    ['not-finite firstPanM: a finite number ["a"]'],
  ],
  [
    "nothing of a rate",
    overlappedRate,
    [weighed, {}],
    ["missing swath: a length, such as 10 ft or 3 m [undefined]"],
  ],
  ["a rate on no swath", overlappedRate, [weighed, { swath: m(0) }], ["range swath: more than zero [0 m]"]],
  [
    "a rate without the area of a pan",
    overlappedRate,
    [pattern, { swath }],
    ["missing pattern.panArea: the area of one pan [undefined]"],
  ],
  [
    "a rate by weight of catches by volume",
    overlappedRate,
    [poured, { swath }],
    ['unit/mismatch pattern.unit: catches by mass; overlappedVolume takes catches by volume ["mL"]'],
  ],
  [
    "nothing of a volume",
    overlappedVolume,
    [poured, {}],
    ["missing swath: a length, such as 10 ft or 3 m [undefined]"],
  ],
  [
    "a volume of catches by weight",
    overlappedVolume,
    [weighed, { swath }],
    [
      'unit/mismatch pattern.unit: catches by volume, or by volume per area; overlappedRate takes catches by mass ["g"]',
    ],
  ],
  [
    "nothing of an estimate",
    overlappedRateEstimate,
    [weighed, {}],
    [
      "missing swath: a length, such as 10 ft or 3 m [undefined]",
      "missing panAreaError: a relative standard error, 0 % where there is none [undefined]",
      "missing pattern.runs: two weighings or more: one has no spread [a list of 1]",
    ],
  ],
  [
    "an estimate of one weighing without a pan",
    overlappedRateEstimate,
    [pattern, { swath: ft(0), panAreaError: percent(-1) }],
    [
      "range swath: more than zero [0 ft]",
      "range panAreaError: zero or more [-1 %]",
      "missing pattern.panArea: the area of one pan [undefined]",
      "missing pattern.runs: two weighings or more: one has no spread [a list of 1]",
    ],
  ],
  [
    "an estimate without an error",
    overlappedRateEstimate,
    [weighed, { swath, panAreaError: null }],
    [
      "missing panAreaError: a relative standard error, 0 % where there is none [null]",
      "missing pattern.runs: two weighings or more: one has no spread [a list of 1]",
    ],
  ],
  [
    "a limit that is none",
    uniformityLimit,
    ["mine"],
    [
      'type id: one of nz-nitrogen, nz-low-analysis, australia, ireland-test-hall, ireland-field, ireland-loss, brazil-lime, en-13739 ["mine"]',
    ],
  ],
];

refusalsOf("what is refused of overlap", rows);
