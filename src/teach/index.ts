// The formulas as data for a lesson: the catalogue, and the working line by line.

// derivation: what the working of a formula is made of, and how it is written.
export type {
  Derivation,
  DerivationStep,
  DerivationStepKind,
  DerivationUnits,
  DerivedQuantity,
} from "./derivation/derivation.js";
