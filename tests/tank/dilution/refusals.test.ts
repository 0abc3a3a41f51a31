import { quantity } from "../../../src/quantity/index.js";
import { concentrateFor, dilutionAmounts, finishedFrom, strengthOf } from "../../../src/tank/index.js";
import { describeRefused, type Refused } from "../../refused.js";

// What is refused of a dilution, where the refusal points, and what it says would have been right.

const finished = quantity(100, "gal", "spray");
const strength = quantity(1, "% v/v", "ai/spray");
const concentration = quantity(50, "% v/v", "ai/product");
const product = quantity(2, "gal", "product");
const take = (change: object) => () =>
  concentrateFor({ strength, concentration, finished, ...change } as never);
const make = (change: object) => () => finishedFrom({ strength, concentration, product, ...change } as never);
const made = (change: object) => () => strengthOf({ concentration, product, finished, ...change } as never);
const parts = (change: object) => () =>
  dilutionAmounts({ parts: 10, reading: "1 in x", finished, ...change } as never);

const rows: readonly Refused[] = [
  [take({ strength: undefined }), "missing", "strength", "the strength of the spray"],
  [take({ strength: null }), "missing", "strength", "the strength of the spray"],
  [take({ concentration: undefined }), "missing", "concentration", "the strength of the product"],
  [take({ strength: 2 }), "type", "strength", "a quantity, such as 2 % w/w"],
  [
    take({ strength: quantity(2, "%") }),
    "unit/mismatch",
    "strength",
    "a strength: % w/w, % w/v, % v/v or a weight per volume",
  ],
  [
    take({ strength: quantity(1, "% v/v", "ai/product") }),
    "substance/mismatch",
    "strength",
    "a strength in the spray, such as ai/spray",
  ],
  [take({ strength: quantity(1, "% v/v", "ai") }), "substance/mismatch", "strength", "such as ai/spray"],
  [
    take({ concentration: quantity(1, "% v/v", "ai/spray") }),
    "substance/mismatch",
    "concentration",
    "a strength in the product, such as ai/product",
  ],
  [
    take({ concentration: quantity(50, "% v/v", "ae/product") }),
    "substance/mismatch",
    "concentration",
    "the strength of ai in the product",
  ],
  [
    take({ concentration: quantity(50, "% w/w", "ai/product") }),
    "unit/mismatch",
    "concentration",
    "both strengths by volume, or both by weight",
  ],
  [
    take({ strength: quantity(1, "% w/w", "ai/spray") }),
    "unit/mismatch",
    "concentration",
    "both strengths by volume, or both by weight",
  ],
  [take({ strength: quantity(0, "% v/v", "ai/spray") }), "range", "strength", "more than zero"],
  [take({ strength: quantity(101, "% v/v", "ai/spray") }), "range", "strength", "100 % or less"],
  [take({ concentration: quantity(101, "% v/v", "ai/product") }), "range", "concentration", "100 % or less"],
  [
    take({ strength: quantity(51, "% v/v", "ai/spray") }),
    "infeasible",
    "strength",
    "a spray no stronger than the concentrate",
  ],
  [take({ finished: undefined }), "missing", "finished", "an amount of spray"],
  [take({ finished: null }), "missing", "finished", "an amount of spray"],
  [take({ finished: quantity(100, "gal") }), "substance/mismatch", "finished", "an amount of spray"],
  [take({ finished: quantity(0, "gal", "spray") }), "range", "finished", "more than zero"],
  [
    take({ finished: quantity(1, "gal/acre", "spray") }),
    "unit/mismatch",
    "finished",
    "a volume or a mass of spray",
  ],
  [
    take({ finished: quantity(1, "lb", "spray") }),
    "missing",
    "density",
    "the density of the finished spray, for a strength by volume of a weight",
  ],
  [
    take({ strength: quantity(1, "% w/w", "ai/spray"), concentration: quantity(50, "% w/w", "ai/product") }),
    "missing",
    "density",
    "for a strength by weight of a volume",
  ],
  [
    take({ finished: quantity(1, "lb", "spray"), density: quantity(0, "lb/gal") }),
    "range",
    "density",
    "more than zero",
  ],
  [
    take({ finished: quantity(1, "lb", "spray"), density: quantity(1, "lb/gal", "N") }),
    "substance/mismatch",
    "density",
    "no substance",
  ],
  [take({ volume: 1 }), "type", "input.volume", "finished"],
  // A powder of 50 % in a spray of 60 % by weight per volume that is weighed
  [
    take({
      strength: quantity(60, "% w/w", "ai/spray"),
      concentration: quantity(0.5, "kg/L", "ai/product"),
      density: quantity(1, "kg/L"),
    }),
    "infeasible",
    "strength",
    "a spray no stronger than the concentrate",
  ],
  // Back
  [make({ product: undefined }), "missing", "product", "an amount of product"],
  [make({ product: null }), "missing", "product", "an amount of product"],
  [make({ product: quantity(2, "lb", "product") }), "unit/mismatch", "product", "a volume of product"],
  [
    make({ product: quantity(2, "gal", "product:a") }),
    "substance/mismatch",
    "product",
    "an amount of product",
  ],
  [make({ product: quantity(-2, "gal", "product") }), "range", "product", "zero or more"],
  [
    make({ strength: quantity(1, "% w/w", "ai/spray"), concentration: quantity(50, "% w/w", "ai/product") }),
    "unit/mismatch",
    "product",
    "a mass of product",
  ],
  [
    make({
      strength: quantity(1, "% w/w", "ai/spray"),
      concentration: quantity(50, "% w/w", "ai/product"),
      product: quantity(2, "lb", "product"),
    }),
    "missing",
    "density",
    "for a strength by weight of a volume",
  ],
  [
    make({ strength: quantity(51, "% v/v", "ai/spray") }),
    "infeasible",
    "strength",
    "a spray no stronger than the concentrate",
  ],
  [make({ finished }), "type", "input.finished", "product"],
  // The strength of what was made
  [made({ concentration: undefined }), "missing", "concentration", "the strength of the product"],
  [made({ product: undefined }), "missing", "product", "an amount of product"],
  [made({ finished: undefined }), "missing", "finished", "a volume of spray"],
  [made({ finished: quantity(0, "gal", "spray") }), "range", "finished", "more than zero"],
  [made({ finished: quantity(1, "lb", "spray") }), "unit/mismatch", "finished", "a volume"],
  [
    made({ finished: quantity(1, "gal", "spray") }),
    "infeasible",
    "product",
    "no more than the spray that it went into",
  ],
  [made({ strength }), "type", "input.strength", "product"],
  // In parts
  [parts({ parts: 0.9 }), "range", "parts", "1 or more"],
  [parts({ parts: 0, reading: "1 plus x" }), "range", "parts", "more than 0"],
  [parts({ reading: undefined }), "missing", "reading", '"1 in x" or "1 plus x"'],
  [parts({ reading: "1:x" }), "type", "reading", '"1 in x" or "1 plus x"'],
  [parts({ finished: quantity(1, "gal") }), "substance/mismatch", "finished", "spray"],
  [parts({ product: "N" }), "substance/mismatch", "product", "product, or product with an id"],
  [parts({ product: "product:a/spray" }), "substance/mismatch", "product", "product with an id"],
  [parts({ product: "product:" }), "substance/mismatch", "product", "product with an id"],
  [parts({ product: "product: a" }), "substance/mismatch", "product", "product with an id"],
  [parts({ product: "my product" }), "substance/mismatch", "product", "product with an id"],
  [parts({ part: 1 }), "type", "input.part", "parts"],
];

describeRefused("what is refused of a dilution", rows);
