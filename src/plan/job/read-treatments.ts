import { type IntervalRule, intervalRule } from "../../interval/index.js";
import { readFacts } from "../../limits/house.js";
import { withoutUndefined } from "../../quantity/house.js";
import {
  type Checks,
  expectFields,
  expectList,
  expectOneOf,
  expectRecord,
  expectText,
  shown,
  toldAt,
} from "../../quantity/index.js";
import type { JobSpray, JobSpread } from "./job.js";
import { readDegreeDays } from "./read-degree-days.js";
import { expectParts, type ReadSite, treatedArea, treatedParts } from "./read-site.js";
import { readSpray } from "./read-spray.js";
import { readSpread } from "./read-spread.js";
import { irrigationRateAt, momentAt } from "./read-water.js";
import type { JobProducts, ReadTreatment } from "./treatments.js";

const common = [
  "id",
  "method",
  "parts",
  "area",
  "interval",
  "degreeDays",
  "facts",
  "end",
  "irrigationRate",
] as const;
const spreadFields: readonly (keyof JobSpread)[] = [
  ...common,
  "product",
  "target",
  "rate",
  "passes",
  "setting",
];
const sprayFields: readonly (keyof JobSpray)[] = [...common, "mix"];

/** Reads what every treatment may state; nothing where its area cannot be told, or the site is itself at fault. */
const readBase = (
  record: Readonly<Record<string, unknown>>,
  at: string,
  site: ReadSite | undefined,
  problems: Checks,
) => {
  const read = <T>(name: (typeof common)[number], by: (path: string) => T): T | undefined =>
    record[name] === undefined ? undefined : problems.run(() => by(`${at}.${name}`));
  const id = problems.run(() => expectText(record.id, `${at}.id`, "a name for this treatment")) ?? "";
  const parts = read("parts", (path) => expectParts(record.parts, site, path));
  const area =
    record.parts !== undefined && parts === undefined
      ? undefined
      : problems.run(() => treatedArea({ area: record.area, parts }, site, `${at}.area`));
  const intervals = {
    interval: read("interval", (path) =>
      toldAt(path, "rule", () => intervalRule(record.interval as IntervalRule)),
    ),
    degreeDays: read("degreeDays", (path) => readDegreeDays(record.degreeDays, path)),
    end: read("end", (path) => momentAt(record.end, path)),
    irrigationRate: read("irrigationRate", (path) => irrigationRateAt(record.irrigationRate, path)),
  };
  const facts = readFacts(record.facts, `${at}.facts`, problems);
  if (area === undefined || site === undefined) return undefined;
  const byPart = treatedParts({ area: record.area, parts }, site);
  return {
    id,
    path: at,
    area,
    byPart,
    facts,
    parts,
    interval: intervals.interval,
    degreeDays: intervals.degreeDays,
    end: intervals.end,
    irrigationRate: intervals.irrigationRate,
  };
};

const readTreatment = (
  input: unknown,
  at: string,
  site: ReadSite | undefined,
  products: JobProducts,
  problems: Checks,
): ReadTreatment | undefined => {
  const before = problems.count();
  const record = problems.run(() => expectRecord(input, at, "a treatment"));
  const method =
    record && problems.run(() => expectOneOf(record.method, ["spread", "spray"], `${at}.method`));
  if (record === undefined || method === undefined) return undefined;
  problems.run(() =>
    expectFields(record, method === "spread" ? spreadFields : sprayFields, at, "a treatment"),
  );
  const base = readBase(record, at, site, problems);
  if (method === "spread") {
    // Each field is read there before it is used.
    const own = readSpread(record as unknown as JobSpread, at, products, problems);
    if (problems.count() > before || base === undefined || own === undefined) return undefined;
    const { product, wanted, passes, setting } = own;
    return withoutUndefined({ ...base, method: own.method, product, wanted, passes, setting });
  }
  const own = readSpray(record.mix, at, products, problems);
  if (problems.count() > before || base === undefined || own === undefined) return undefined;
  return withoutUndefined({ ...base, method: own.method, mix: own.mix });
};

/** Reads the treatments of a job; what is wrong goes to `problems`. */
export const readTreatments = (
  input: unknown,
  site: ReadSite | undefined,
  products: JobProducts,
  problems: Checks,
): readonly ReadTreatment[] => {
  const list = problems.run(() => expectList(input, "treatments", "treatment")) ?? [];
  const ids = new Set<unknown>();
  return list.flatMap((item, i) => {
    const at = `treatments[${i}]`;
    const treatment = readTreatment(item, at, site, products, problems);
    const id = (item as { id?: unknown } | null)?.id;
    if (id !== undefined && ids.has(id)) {
      problems.add({
        code: "duplicate",
        path: `${at}.id`,
        got: shown(id),
        expected: "an id that no other treatment has",
      });
    }
    ids.add(id);
    return treatment === undefined ? [] : [treatment];
  });
};
