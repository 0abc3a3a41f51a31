import { isOfAny, type ReadLimit } from "../../limits/house.js";
import type { ReadSeasonTreatment } from "../season/read-season.js";

/** A limit on a mode of action. */
export type RotationLimit = Extract<ReadLimit, { kind: "rotation" }>;

/** The treatments that may end a run: what they put down is not known to be of the group. */
export const enders = (
  limit: RotationLimit,
  treatments: readonly Pick<ReadSeasonTreatment, "proposal">[],
): readonly number[] =>
  limit.atMostInARow === undefined
    ? []
    : treatments.flatMap(({ proposal }, i) =>
        proposal !== undefined && isOfAny(proposal.row, limit.of) !== true ? [i] : [],
      );
