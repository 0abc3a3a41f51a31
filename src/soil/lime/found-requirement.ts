import type { Finding, Quantity } from "../../quantity/index.js";

/** What a lime rate is a rate of. */
export type LimeSubstance = "CaCO3 equivalent" | "product:standard-lime";

/** What a method finds; the rest of the record is known by its name. */
export interface FoundRequirement {
  readonly value: number;
  readonly unit: string;
  readonly of: LimeSubstance;
  readonly depth?: Quantity<"length", "none">;
  readonly targetPH?: number;
  readonly findings: readonly Finding[];
}
