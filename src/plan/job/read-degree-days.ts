import { degreeDayAmount, degreeDayModel } from "../../interval/index.js";
import { expectFields, expectNumber, expectRecord, expectText, toldAt } from "../../quantity/index.js";
import type { JobDegreeDays } from "./job.js";
import type { ReadDegreeDays } from "./treatments.js";

/** Reads a growing-degree-day interval, or throws. */
export const readDegreeDays = (input: unknown, path: string): ReadDegreeDays => {
  const fields = ["method", "base", "upper", "cutoff", "interval", "source"];
  const record = expectFields(input, fields, path, "a growing-degree-day interval");
  const degreeDays = record as unknown as JobDegreeDays; // Each field is read below before it is used.
  const source = expectText(degreeDays.source, `${path}.source`, "the source of this interval");
  const { method, base, upper, cutoff } = degreeDays;
  const model = toldAt(path, "model", () =>
    degreeDayModel({
      method,
      base,
      ...(upper !== undefined && { upper }),
      ...(cutoff !== undefined && { cutoff }),
      sensor: "air",
      source,
    }),
  );
  const { value, unit } = expectRecord(degreeDays.interval, `${path}.interval`, "degree-days");
  const heat = expectNumber(value, `${path}.interval.value`, { above: 0 });
  return {
    model,
    interval: toldAt(`${path}.interval`, "input", () =>
      degreeDayAmount({ value: heat, unit: unit as "°C d", model }),
    ),
    source,
  };
};
