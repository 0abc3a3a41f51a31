import { touches, wholeSite } from "../../ledger/house.js";
import type { Finding } from "../../quantity/index.js";
import type { ReadJob } from "../job/read-job.js";
import type { ReadTreatment } from "../job/treatments.js";

const productsOf = (treatment: ReadTreatment): readonly string[] =>
  treatment.method === "spread" ? [treatment.product.id] : treatment.mix.map(({ product }) => product.id);

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
