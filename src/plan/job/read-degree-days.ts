import { degreeDayAmount, degreeDayModel } from "../../interval/index.js";
import { expectFields, expectNumber, expectRecord, expectText, toldAt } from "../../quantity/index.js";
import type { JobDegreeDays } from "./job.js";
import type { ReadDegreeDays } from "./treatments.js";

/** Reads an growing-degree-day interval, or throws. */
export const readDegreeDays = (input: unknown, path: string): ReadDegreeDays => {
  const fields = ["method", "base", "upper", "cutoff", "interval", "source"];
  const degreeDays = expectFields(
    input,
    fields,
    path,
    "an growing-degree-day interval",
  ) as unknown as JobDegreeDays;
  const source = expectText(degreeDays.source, `${path}.source`, "who found this interval");
  const { method, base, upper, cutoff } = degreeDays;
  const model = toldAt(path, "model", () =>
    degreeDayModel({
      method,
      base,
      ...(upper && { upper }),
      ...(cutoff && { cutoff }),
      sensor: "air",
      source,
    }),
  );
  const { value, unit } = expectRecord(degreeDays.interval, `${path}.interval`, "degree-days") as Record<
    string,
    never
  >;
  expectNumber(value, `${path}.interval.value`, { above: 0 });
  return {
    model,
    interval: degreeDayAmount({ value: value as unknown as number, unit: unit as unknown as "°C d", model }),
    source,
  };
};
