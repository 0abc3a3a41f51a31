import { touches, wholeSite } from "../../ledger/house.js";
import type { Finding } from "../../quantity/index.js";
import type { ReadJob } from "../job/read-job.js";
import type { ReadLogEntry } from "../job/read-log.js";
import type { ReadTreatment } from "../job/treatments.js";

const productsOf = (treatment: ReadTreatment): readonly string[] =>
  treatment.method === "spread" ? [treatment.product.id] : treatment.mix.map(({ product }) => product.id);

/** What makes two entries of one day one that was written down twice. */
const writtenOf = ({ treatment, parts, rate, nutrients, row }: ReadLogEntry): string =>
  JSON.stringify([treatment, [...(parts ?? [])].sort(), rate, nutrients, row?.().rates]);

const twice = (entry: ReadLogEntry, first: ReadLogEntry): Finding => {
  const { date, path, treatment, product, row } = entry;
  return {
    code: "log/twice",
    severity: "caution",
    path,
    params: { ...(treatment !== undefined && { treatment }), date, first: first.path },
    text: `${treatment ?? product?.name} of ${date} stands twice in the ${row === undefined ? "log" : "ledger"} with the same amount${treatment === undefined ? "" : ` of ${product?.name}`}: both are counted. If it was applied once, take one of them out.`,
  };
};

/** An application that stands twice counts once where applications are counted, and twice in every amount. */
export const twiceLogged = ({ log }: ReadJob): readonly Finding[] => {
  // a ledger can be large, so what stands alone on its day is read no further
  const byDay = new Map<string, ReadLogEntry[]>();
  for (const entry of log) {
    if (entry.product === undefined) continue;
    const key = `${entry.date} ${entry.product.id}`;
    const same = byDay.get(key);
    if (same === undefined) byDay.set(key, [entry]);
    else same.push(entry);
  }
  return [...byDay.values()].flatMap((same) => {
    if (same.length === 1) return [];
    const firsts = new Map<string, ReadLogEntry>();
    return same.flatMap((entry): Finding[] => {
      const written = writtenOf(entry);
      const first = firsts.get(written);
      if (first !== undefined) return [twice(entry, first)];
      firsts.set(written, entry);
      return [];
    });
  });
};

/** What the log may hold of the visit itself: it would count twice. */
export const logFindings = ({ date, log, treatments, site }: ReadJob): readonly Finding[] =>
  log.flatMap((entry): Finding[] => {
    if (entry.date !== date) return [];
    const twice = treatments.find(
      (treatment) =>
        (treatment.id === entry.treatment ||
          (entry.product !== undefined && productsOf(treatment).includes(entry.product.id))) &&
        [...site.parts.keys(), wholeSite].some(
          (part) => touches(treatment.parts ?? [], part) && touches(entry.parts ?? [], part),
        ),
    );
    if (twice === undefined) return [];
    const book = entry.row === undefined ? "log" : "ledger";
    return [
      {
        code: "log/day-of-visit",
        severity: "caution",
        path: entry.path,
        params: { treatment: twice.id, date },
        text: `The ${book} has ${entry.product?.name ?? `"${entry.treatment}"`} on ${date}, the day of this visit: limits count it and ${twice.id}. If it is the same application, take it out of the ${book}.`,
      },
    ];
  });
