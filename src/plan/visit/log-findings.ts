import { touches, wholeSite } from "../../ledger/house.js";
import type { Finding } from "../../quantity/index.js";
import type { ReadJob } from "../job/read-job.js";
import type { ReadLogEntry } from "../job/read-log.js";
import type { ReadTreatment } from "../job/treatments.js";

const productsOf = (treatment: ReadTreatment): readonly string[] =>
  treatment.method === "spread" ? [treatment.product.id] : treatment.mix.map(({ product }) => product.id);

/** What makes two entries of one day and treatment one that was written down twice. */
const writtenOf = ({ date, treatment, product, parts, rate, nutrients, row }: ReadLogEntry): string =>
  JSON.stringify([date, treatment, product?.id, [...(parts ?? [])].sort(), rate, nutrients, row?.().rates]);

/** An application that stands twice counts once where applications are counted, and twice in every amount. */
export const twiceLogged = ({ log }: ReadJob): readonly Finding[] => {
  const byKey = new Map<string, ReadLogEntry[]>();
  for (const entry of log) {
    const { date, treatment, product } = entry;
    if (treatment === undefined || product === undefined) continue;
    const key = `${date} ${product.id} ${treatment}`;
    byKey.set(key, [...(byKey.get(key) ?? []), entry]);
  }
  return [...byKey.values()].flatMap((same) =>
    same.flatMap((entry, i): Finding[] => {
      const first = same.slice(0, i).find((other) => writtenOf(other) === writtenOf(entry));
      if (first === undefined) return [];
      const { date, path, treatment = "", product } = entry;
      return [
        {
          code: "log/twice",
          severity: "caution",
          path,
          params: { treatment, date, first: first.path },
          text: `${treatment} of ${date} stands twice in the ${entry.row === undefined ? "log" : "ledger"} with the same amount of ${product?.name}: both are counted. If it was applied once, take one of them out.`,
        },
      ];
    }),
  );
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
