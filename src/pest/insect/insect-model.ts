import type { MonthDay, TemperatureSensor } from "../../calendar/index.js";
import {
  type BaseTemperature,
  type DegreeDayMethod,
  type DegreeDayModel,
  type DegreeDaysOf,
  degreeDayAmount,
  degreeDayModel,
  type UpperCutoff,
} from "../../interval/index.js";
import {
  allOf,
  checks,
  expectFields,
  expectNumber,
  expectText,
  type Finding,
  fail,
  type Quantity,
  toldBy,
} from "../../quantity/index.js";
import type { InsectTarget } from "./insect-targets.js";

/** What a caller takes for the parts of a model that the source of a target does not state. */
export interface InsectAssumptions {
  readonly unit?: "°C d" | "°F d";
  readonly method?: DegreeDayMethod;
  readonly base?: BaseTemperature;
  /** `"none"` counts without an upper threshold. */
  readonly upper?: BaseTemperature | "none";
  readonly cutoff?: UpperCutoff;
  readonly sensor?: TemperatureSensor;
  readonly start?: MonthDay;
}

/** A target ready to be counted: the model, and its sums as degree-days of that model. */
export interface InsectModel {
  readonly type: "insect-model";
  readonly version: 1;
  readonly model: DegreeDayModel;
  readonly from: Quantity<"degree-days", DegreeDaysOf<string>>;
  readonly to: Quantity<"degree-days", DegreeDaysOf<string>> | null;
  /** The parts that the source does not state and the caller assumed. */
  readonly assumed: readonly (keyof InsectAssumptions)[];
  readonly findings: readonly Finding[];
}

const parts = ["unit", "method", "base", "upper", "sensor", "start"] as const;
const hints: Readonly<Record<(typeof parts)[number], string>> = {
  unit: '"°C d" or "°F d"',
  method: 'a method of counting, such as "simple average"',
  base: "a base temperature with its unit",
  upper: 'an upper threshold, or "none"',
  sensor: '"air", or soil at a depth',
  start: "the day of the year from which degree days count, MM-DD",
};
const targetFields = [
  "id",
  "insect",
  "event",
  "from",
  "to",
  "unit",
  "method",
  "base",
  "upper",
  "cutoff",
  "sensor",
  "start",
  "region",
  "note",
  "source",
] as const;

const findingsOf = (insect: string, region: string, assumed: readonly string[]): Finding[] => [
  {
    code: "insect/scout",
    severity: "caution",
    params: { insect, region },
    text: `Degree-days say when to scout for ${insect}, as found in ${region}. Count insects before you treat, and follow the label.`,
  },
  ...(assumed.length === 0
    ? []
    : [
        {
          code: "insect/assumed",
          severity: "warning",
          params: { assumed: [...assumed] },
          text: `Not stated by the source and assumed here: ${assumed.join(", ")}. Another assumption gives other dates.`,
        } as const,
      ]),
];

type Parts = Readonly<Record<string, unknown>>;

/** Each part of the model, as the source states it or as the caller assumes it, and which were assumed. */
const chosenParts = (target: Parts, assume: Parts) => {
  const problems = checks();
  const assumed: (keyof InsectAssumptions)[] = [];
  const values: Record<string, unknown> = {};
  for (const part of parts) {
    const stated = target[part];
    const own = assume[part];
    values[part] = stated ?? own;
    if (stated === null || stated === undefined) {
      if (own === undefined)
        problems.run(() =>
          fail("missing", `assume.${part}`, own, `${hints[part]}: the source does not state it`),
        );
      else assumed.push(part);
    } else if (own !== undefined) {
      problems.run(() =>
        fail("conflict", `assume.${part}`, own, "nothing: the source of the target states it"),
      );
    }
  }
  problems.done();
  if (target.cutoff === null && assume.cutoff !== undefined) assumed.push("cutoff");
  return { values, assumed };
};

/**
 * The degree-day model of a target, ready for `accumulatedDegreeDays`, `dateReached` and `degreeDayWindowState`. Every part that
 * the source does not state has to be assumed openly, and stands in the result; a part that it does state cannot be replaced.
 *
 * @param input.target - one of {@link insectTargets}, or one of your own with the same fields
 * @param input.assume - the parts that the target has as `null`
 * @throws RatewrightError `missing` with one problem for each part that is neither stated nor assumed; `conflict` for a part
 * that is both; what `degreeDayModel` throws
 *
 * @example
 * ```ts
 * import { insectModel, insectTargetsFor } from "ratewright";
 * const [beetle] = insectTargetsFor("Japanese beetle");
 * const counted = insectModel({
 *   target: beetle!, assume: { method: "simple average", upper: "none", sensor: "air", start: "01-01" },
 * });
 * counted.model.id; // => "simple-average base 10C air from 01-01"
 * counted.from.in("°F d"); // => 1030
 * counted.assumed; // => ["method", "upper", "sensor", "start"]
 * insectModel({ target: beetle! }); // => throws missing
 * ```
 */
export const insectModel = (input: {
  readonly target: InsectTarget;
  readonly assume?: InsectAssumptions;
}): InsectModel => {
  const fields = expectFields(input, ["target", "assume"]);
  const target = expectFields(fields.target, targetFields, "target");
  const assume = expectFields(
    fields.assume === undefined ? {} : fields.assume,
    ["unit", "method", "base", "upper", "cutoff", "sensor", "start"],
    "assume",
  );
  const read = allOf({
    chosen: () => chosenParts(target, assume),
    source: () =>
      typeof target.source === "object" &&
      expectFields(target.source, ["title", "publisher", "year", "where", "url"], "target.source"),
    insect: () => expectText(target.insect, "target.insect", "the name of an insect"),
    region: () => expectText(target.region, "target.region", "where the figure was found"),
    from: () => expectNumber(target.from, "target.from", { min: 0 }),
    to: () => (target.to === null ? null : expectNumber(target.to, "target.to", { min: 0 })),
  });
  const { values: chosen, assumed } = read.chosen;
  const cutoff = target.cutoff ?? assume.cutoff;
  const placeOf = (part: string): string =>
    `${(target[part as "unit"] ?? undefined) === undefined ? "assume" : "target"}.${part}`;
  const places = Object.fromEntries([...parts, "cutoff"].map((part) => [`model.${part}`, placeOf(part)]));
  const model = toldBy(
    places,
    () =>
      degreeDayModel({
        method: chosen.method as DegreeDayMethod,
        base: chosen.base as BaseTemperature,
        ...(chosen.upper === "none" ? {} : { upper: chosen.upper as BaseTemperature }),
        ...(cutoff === undefined || cutoff === null ? {} : { cutoff: cutoff as UpperCutoff }),
        sensor: chosen.sensor as TemperatureSensor,
        start: chosen.start as MonthDay,
      }) as DegreeDayModel,
  );
  const unit = chosen.unit as "°C d" | "°F d";
  const { insect, region, from, to } = read;
  if (to !== null && to < from) fail("conflict", "target.to", to, `not less than from, which is ${from}`);
  return {
    type: "insect-model",
    version: 1,
    model,
    from: toldBy({ unit: placeOf("unit") }, () => degreeDayAmount({ value: from, unit, model })),
    to: to === null ? null : degreeDayAmount({ value: to, unit, model }),
    assumed,
    findings: findingsOf(insect, region, assumed),
  };
};
