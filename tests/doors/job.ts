import { all, type FirstThing, refused, works } from "./trial.js";

/** What people do first: the job. */
export const job: readonly FirstThing[] = [
  refused(
    "an empty job",
    () => all.workOrder?.({}),
    ["title", "date", "site", "products", "treatments"],
    () => all.tryWorkOrder?.({}).problems?.length !== undefined,
    true,
  ),
  works("a job that is not thrown but told", () => all.tryWorkOrder?.({}).order === null, true),
  refused(
    "a limit of a year",
    () =>
      all.limit?.({
        amount: { value: 4, unit: "lb/1000 ft2", of: "N" },
        source: "county code, read 2026-03-01",
        per: "year",
      }),
    ['"calendar year"'],
    () =>
      all.limit?.({
        amount: { value: 4, unit: "lb/1000 ft2", of: "N" },
        source: "county code, read 2026-03-01",
        per: "calendar year",
      }).per,
    "calendar year",
  ),
];
