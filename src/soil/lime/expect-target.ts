import { allOf, type Finding, fail } from "../../quantity/index.js";
import { expectSoilPH } from "../report/expect-ph.js";

/** The pH of a soil and the pH that it is limed to. */
export interface ReadPHs {
  readonly pH: number;
  readonly targetPH: number;
}

/** Takes soil and target pH: the target is not below the soil. */
export const expectTarget = (record: { readonly pH?: unknown; readonly targetPH?: unknown }): ReadPHs => {
  const read = allOf({
    pH: () => expectSoilPH(record.pH, "pH"),
    targetPH: () => expectSoilPH(record.targetPH, "targetPH"),
  });
  return read.targetPH < read.pH
    ? fail(
        "conflict",
        "targetPH",
        read.targetPH,
        `not below the soil pH, which is ${read.pH}: lime does not lower it, and sulfurApplications is for that`,
      )
    : read;
};

/** A soil at its target. */
export const noneNeeded = ({ pH }: ReadPHs): Finding => ({
  code: "lime/none-needed",
  severity: "note",
  path: "targetPH",
  params: { pH },
  text: `The soil is at its target of pH ${pH}: no lime is called for.`,
});
