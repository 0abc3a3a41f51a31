import {
  accumulateEquivalentDaysC,
  activityIndex,
  controlledReleaseTest,
  firstOrderRate,
  isobutylideneDiurea,
  methyleneUrea,
  releaseByWeek,
  releasedNitrogen,
  releasedShares,
  statedDuration,
  sulfurCoatedUrea,
  ureaform,
} from "../../../src/nutrient/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { describeRefused, type Refused } from "../../refused.js";
import { job, released, right } from "./coating.js";

// What is refused where a model of release is used, and of what a label says of a material.

const portion = (change: object) => released({ portions: [{ ...job.portions[0], ...change }] });
const weeks =
  (change: object, cumulative: object = {}) =>
  () => {
    const found = releasedNitrogen(job);
    return releaseByWeek({
      ...found,
      cumulative: { ...found.cumulative, ...cumulative },
      ...change,
    } as never);
  };
const mm = (low: number, high: number) => () =>
  isobutylideneDiurea({ particleSize: { low: quantity(low, "mm"), high: quantity(high, "mm") } });
const percent = (value: number) => quantity(value, "% w/w", "other:WIN/N");
const coated = (change: object) => () =>
  sulfurCoatedUrea({
    sevenDayDissolution: quantity(30, "%"),
    sealed: false,
    source: "a label",
    ...change,
  } as never);
const tested = (change: object) => () =>
  controlledReleaseTest({
    percentAt24Hours: 10,
    percentAt28Days: 50,
    percentAtStatedTime: 80,
    statedDays: 90,
    temperatureC: 25,
    ...change,
  } as never);
const one = Float64Array.of(1);

const rows: readonly Refused[] = [
  [released({ applied: "May" }), "date", "applied", ""],
  [released({ days: 0 }), "range", "days", "1 or more"],
  [released({ days: 3661 }), "range", "days", "3660 or less"],
  [released({ days: 1.5 }), "range", "days", "days"],
  [released({ placement: undefined }), "missing", "placement", '"surface or thatch" or "incorporated"'],
  [released({ temperature: 7 }), "type", "temperature", "daily temperatures, or { mean }"],
  [released({ temperature: { mean: quantity(101, "°C") } }), "range", "temperature.mean", "-60 to 100"],
  [released({ temperature: { mean: quantity(-61, "°C") } }), "range", "temperature.mean", "-60 to 100"],
  [
    released({ temperature: { mean: quantity(1, "ft") } }),
    "unit/mismatch",
    "temperature.mean",
    "a temperature",
  ],
  [released({ temperature: { mean: quantity(1, "°C"), max: 2 } }), "type", "temperature.max", "mean"],
  [released({ portions: [] }), "missing", "portions", "portion"],
  [released({ portions: [7] }), "type", "portions[0]", "a portion"],
  [released({ rain: 1 }), "type", "input.rain", "temperature"],
  [portion({ name: "" }), "missing", "portions[0].name", "a name"],
  [
    portion({ nitrogen: quantity(1, "lb/1000 ft2", "P2O5") }),
    "substance/mismatch",
    "portions[0].nitrogen",
    "a quantity of N, N:quick or N:slow",
  ],
  [portion({ nitrogen: quantity(-1, "lb/1000 ft2", "N") }), "range", "portions[0].nitrogen", "zero or more"],
  [portion({ model: undefined }), "missing", "portions[0].model", "a release model"],
  [portion({ weeks: 1 }), "type", "portions[0].weeks", "model"],
  [() => releaseByWeek(7 as never), "type", "release", "a nitrogen release"],
  [weeks({ cumulative: 7 }), "type", "release.cumulative", "{ low, mid, high }"],
  [weeks({}, { low: [] }), "missing", "release.cumulative.low", "day"],
  [weeks({}, { high: ["x"] }), "not-finite", "release.cumulative.high[0]", "a finite number"],
  [weeks({}, { high: [1] }), "conflict", "release.cumulative.high", "as many days as the middle, which is 3"],
  [weeks({ unit: "" }), "missing", "release.unit", "a unit, such as lb/1000 ft2"],
  [weeks({ unit: "lb" }), "unit/mismatch", "release.unit", "a weight over an area"],
  [() => firstOrderRate({ percent: 100, days: 1 }), "range", "percent", "less than 100"],
  [() => firstOrderRate({ percent: 50, days: 0 }), "range", "days", "more than 0"],
  [
    () => firstOrderRate({ percent: 50, days: 5e-324 }),
    "range",
    "days",
    "days over which a rate is a finite number",
  ],
  [
    () => statedDuration({ days: { low: 2, high: 1 }, source: "x" }),
    "conflict",
    "days.low",
    "not more than the high end",
  ],
  [mm(0.39, 1), "range", "particleSize.low", "0.4 to 3 mm"],
  [mm(1, 3.1), "range", "particleSize.high", "0.4 to 3 mm"],
  [mm(2, 1), "conflict", "particleSize.low", "not more than the coarsest"],
  [
    () => isobutylideneDiurea({ particleSize: 7 } as never),
    "type",
    "particleSize",
    "{ low, high }, two diameters",
  ],
  [coated({ sevenDayDissolution: quantity(100, "%") }), "range", "sevenDayDissolution", "less than 100 %"],
  [coated({ sevenDayDissolution: quantity(0, "%") }), "range", "sevenDayDissolution", "more than zero"],
  [coated({ sealed: "yes" }), "type", "sealed", "true"],
  [coated({ lagDays: { low: -1, high: 1 } }), "range", "sulfurCoatedUrea.curve.lagDays.low", "0 or more"],
  [coated({ source: "" }), "missing", "sulfurCoatedUrea.source", "a source"],
  [
    () => ureaform({ waterInsolubleShare: percent(59) }),
    "conflict",
    "waterInsolubleShare",
    "for less, methyleneUrea(...)",
  ],
  [() => ureaform({ waterInsolubleShare: percent(101) }), "range", "waterInsolubleShare", "100 % or less"],
  [() => ureaform({ activityIndex: quantity(101, "%") }), "range", "activityIndex", "100 % or less"],
  [
    () => ureaform({ waterInsolubleShare: percent(100), activityIndex: quantity(0, "%") }),
    "range",
    "activityIndex",
    "an index that leaves some nitrogen to come",
  ],
  [
    () => methyleneUrea({ activityIndex: quantity(40, "%") }),
    "missing",
    "waterInsolubleShare",
    "the insoluble share beside the activity index",
  ],
  [
    () => methyleneUrea({ waterInsolubleShare: percent(40) }),
    "missing",
    "activityIndex",
    "the activity index beside the insoluble share",
  ],
  [
    () => methyleneUrea({ waterInsolubleShare: percent(100), activityIndex: quantity(0, "%") }),
    "range",
    "activityIndex",
    "some nitrogen to come",
  ],
  [
    () => activityIndex({ coldInsoluble: percent(0), hotInsoluble: percent(0) }),
    "range",
    "coldInsoluble",
    "more than zero",
  ],
  [
    () => activityIndex({ coldInsoluble: percent(101), hotInsoluble: percent(1) }),
    "range",
    "coldInsoluble",
    "100 % or less",
  ],
  [
    () => activityIndex({ coldInsoluble: percent(20), hotInsoluble: percent(21) }),
    "conflict",
    "hotInsoluble",
    "at most what cold water leaves, 20 %",
  ],
  [
    () =>
      activityIndex({ coldInsoluble: percent(20), hotInsoluble: quantity(1, "% w/w", "N/product") as never }),
    "substance/mismatch",
    "hotInsoluble",
    "other:WIN/N",
  ],
  [tested({ percentAt24Hours: 101 }), "range", "percentAt24Hours", "100 or less"],
  [tested({ percentAt28Days: 9 }), "conflict", "percentAt28Days", "at least the 10 % of 24 hours"],
  [tested({ percentAtStatedTime: 49 }), "conflict", "percentAtStatedTime", "at least the 50 % of 28 days"],
  [tested({ statedDays: 28 }), "range", "statedDays", "more than 28"],
  [tested({ temperatureC: 20 }), "conflict", "temperatureC", "25, the temperature of the definition"],
  [() => releasedShares([1] as never, right.curve), "type", "equivalentDays", "Float64Array"],
  [() => releasedShares(one, right.curve, "most" as never), "type", "bound", '"low", "mid" or "high"'],
  [() => releasedShares(one, right.curve, "mid", new Float64Array(2)), "conflict", "outShares", "1 days"],
  [() => releasedShares(Float64Array.of(1, -1), right.curve), "range", "equivalentDays[1]", "0 d or more"],
  [
    () => releasedShares(Float64Array.of(Number.NaN), right.curve),
    "not-finite",
    "equivalentDays[0]",
    "a finite number",
  ],
  [() => releasedShares(one, { kind: "x" } as never), "type", "curve.kind", "Richards"],
  [
    () => accumulateEquivalentDaysC(one, Float64Array.of(2), right.temperature),
    "conflict",
    "minC[0]",
    "not more than maxC[0], which is 1",
  ],
  [
    () => accumulateEquivalentDaysC(one, new Float64Array(2), right.temperature),
    "conflict",
    "minC",
    "as many days as maxC has, which is 1",
  ],
  [
    () => accumulateEquivalentDaysC(one, one, right.temperature, "mid", new Float64Array(2)),
    "conflict",
    "outDays",
    "as many days as maxC has",
  ],
  [
    () => accumulateEquivalentDaysC(Float64Array.of(101), one, right.temperature),
    "range",
    "maxC[0]",
    "-60 to 100",
  ],
  [
    () => accumulateEquivalentDaysC(one, Float64Array.of(-61), right.temperature),
    "range",
    "minC[0]",
    "-60 to 100",
  ],
  [
    () => accumulateEquivalentDaysC(Float64Array.of(Number.NaN), one, right.temperature),
    "not-finite",
    "maxC[0]",
    "a finite number",
  ],
  [
    () => accumulateEquivalentDaysC(one, Float64Array.of(Number.NaN), right.temperature),
    "not-finite",
    "minC[0]",
    "a finite number",
  ],
  [
    () => accumulateEquivalentDaysC(one, one, right.temperature, "most" as never),
    "type",
    "bound",
    '"low", "mid" or "high"',
  ],
  [() => accumulateEquivalentDaysC(one, one, { kind: "x" } as never), "type", "response.kind", "Arrhenius"],
];

describeRefused("what is refused of the use of a model", rows);
