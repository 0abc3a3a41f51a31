import { quantity } from "../../../src/quantity/index.js";
import {
  acidEquivalentOf,
  acidShare,
  activeInProduct,
  activeOfAcid,
  asApplied,
  productForActive,
} from "../../../src/spray/index.js";
import { type Refusal, refusalsOf } from "../../told.js";

const ai = quantity(1, "lb/acre", "ai");
const ae = quantity(1, "lb/acre", "ae");
const share = quantity(80, "% w/w", "ae/ai");
const content = quantity(4, "lb/gal", "ai/product");
const byWeight = quantity(50, "% w/w", "ai/product");
const used = quantity(10, "gal", "product");
const area = quantity(5, "acre");
const limit = {
  limit: quantity(4, "gal/acre", "product"),
  before: quantity(0, "gal/acre", "product"),
  period: "calendar year 2026",
  source: "the label",
};
const long = "x".repeat(1001);

const rows: readonly Refusal[] = [
  [
    "no acid and no partner",
    acidShare,
    [undefined, undefined],
    [
      "missing acid: one of 2,4-D, 2,4-DB, dichlorprop-P, MCPA, mecoprop-P, dicamba, triclopyr, clopyralid, aminopyralid, fluroxypyr, quinclorac, glyphosate [undefined]",
      "missing partner: one of sodium, potassium, ammonium, diammonium, dimethylammonium, isopropylammonium, triethylammonium, diglycolammonium, olamine, diolamine, choline, 2-ethylhexyl, meptyl, butotyl [undefined]",
    ],
  ],
  [
    "an acid that is not known",
    acidShare,
    ["acetic", "vinegar"],
    [
      'type acid: one of 2,4-D, 2,4-DB, dichlorprop-P, MCPA, mecoprop-P, dicamba, triclopyr, clopyralid, aminopyralid, fluroxypyr, quinclorac, glyphosate ["acetic"]',
      'type partner: one of sodium, potassium, ammonium, diammonium, dimethylammonium, isopropylammonium, triethylammonium, diglycolammonium, olamine, diolamine, choline, 2-ethylhexyl, meptyl, butotyl ["vinegar"]',
    ],
  ],
  [
    "a name that every object has",
    acidShare,
    ["toString", 7],
    [
      'type acid: one of 2,4-D, 2,4-DB, dichlorprop-P, MCPA, mecoprop-P, dicamba, triclopyr, clopyralid, aminopyralid, fluroxypyr, quinclorac, glyphosate ["toString"]',
      "type partner: one of sodium, potassium, ammonium, diammonium, dimethylammonium, isopropylammonium, triethylammonium, diglycolammonium, olamine, diolamine, choline, 2-ethylhexyl, meptyl, butotyl [7]",
    ],
  ],
  [
    "a form in which the acid does not come",
    acidShare,
    ["aminopyralid", "sodium"],
    ['conflict partner: a known form of aminopyralid: potassium ["sodium"]'],
  ],
  [
    "nothing of active ingredient",
    acidEquivalentOf,
    [undefined, undefined],
    [
      "missing active: a quantity of ai [undefined]",
      "missing share: the acid in the active ingredient [undefined]",
    ],
  ],
  [
    "nothing that is null",
    acidEquivalentOf,
    [null, null],
    ["missing active: a quantity of ai [null]", "missing share: the acid in the active ingredient [null]"],
  ],
  [
    "acid for active ingredient",
    acidEquivalentOf,
    [ae, share],
    ["substance/mismatch active: a quantity of ai [1 lb/acre of ae]"],
  ],
  [
    "a length of active ingredient",
    acidEquivalentOf,
    [quantity(1, "ft", "ai"), share],
    ["unit/mismatch active: a mass, a mass per area or a mass per volume [1 ft of ai]"],
  ],
  [
    "less than no active ingredient",
    acidEquivalentOf,
    [quantity(-1, "lb", "ai"), share],
    ["range active: zero or more [-1 lb of ai]"],
  ],
  [
    "no share of acid",
    acidEquivalentOf,
    [ai, quantity(0, "% w/w", "ae/ai")],
    ["range share: more than zero [0 % w/w of ae/ai]"],
  ],
  [
    "more acid than there is of active ingredient",
    acidEquivalentOf,
    [ai, quantity(101, "% w/w", "ae/ai")],
    ["range share: 100 % or less [101 % w/w of ae/ai]"],
  ],
  ["nothing of acid", activeOfAcid, [undefined, share], ["missing acid: a quantity of ae [undefined]"]],
  [
    "active ingredient for acid",
    activeOfAcid,
    [ai, share],
    ["substance/mismatch acid: a quantity of ae [1 lb/acre of ai]"],
  ],
  [
    "acid without a substance",
    activeOfAcid,
    [{ value: 1, unit: "lb" }, share],
    ["substance/mismatch acid: a quantity of ae [1 lb]"],
  ],
  [
    "nothing for a product",
    productForActive,
    [{}],
    [
      "missing content: a content: % w/w, or a weight per volume [undefined]",
      "missing active: a mass of active ingredient, or a rate of it [undefined]",
    ],
  ],
  [
    "nothing that is null for a product",
    productForActive,
    [{ active: null, content: null }],
    [
      "missing content: a content: % w/w, or a weight per volume [null]",
      "missing active: a mass of active ingredient, or a rate of it [null]",
    ],
  ],
  [
    "a volume of active ingredient",
    productForActive,
    [{ active: quantity(1, "gal", "ai"), content }],
    ["unit/mismatch active: a weight or a weight over an area, such as 50 lb or 1 lb/1000 ft2 [1 gal of ai]"],
  ],
  [
    "less than no active ingredient for a product",
    productForActive,
    [{ active: quantity(-1, "lb", "ai"), content }],
    ["range active: zero or more [-1 lb of ai]"],
  ],
  [
    "acid by a content of active ingredient",
    productForActive,
    [{ active: ae, content }],
    [
      "substance/mismatch active: a quantity of ai [1 lb/acre of ae] activeOfAcid, which turns acid equivalent into active ingredient?",
    ],
  ],
  [
    "active ingredient by a content of acid",
    productForActive,
    [{ active: ai, content: quantity(4, "lb/gal", "ae/product") }],
    [
      "substance/mismatch active: a quantity of ae [1 lb/acre of ai] acidEquivalentOf, which turns active ingredient into acid equivalent?",
    ],
  ],
  [
    "nitrogen by a content of active ingredient",
    productForActive,
    [{ active: quantity(1, "lb", "N"), content }],
    ["substance/mismatch active: a quantity of ai [1 lb of N]"],
  ],
  [
    "a content of nothing",
    productForActive,
    [{ active: ai, content: quantity(0, "lb/gal", "ai/product") }],
    ["range content: more than zero [0 lb/gal of ai/product]"],
  ],
  [
    "a content past all",
    productForActive,
    [{ active: ai, content: quantity(101, "% w/w", "ai/product") }],
    ["range content: 100 % or less [101 % w/w of ai/product]"],
  ],
  [
    "a content of nitrogen",
    productForActive,
    [{ active: ai, content: quantity(4, "lb/gal", "N/product") }],
    ["substance/mismatch content: ai/product or ae/product [4 lb/gal of N/product]"],
  ],
  [
    "a content of spray",
    productForActive,
    [{ active: ai, content: quantity(4, "lb/gal", "ai/spray") }],
    ["substance/mismatch content: ai/product or ae/product [4 lb/gal of ai/spray]"],
  ],
  [
    "a content of no substance",
    productForActive,
    [{ active: ai, content: quantity(4, "lb/gal") }],
    ["substance/mismatch content: ai/product or ae/product [4 lb/gal]"],
  ],
  [
    "nothing in a product",
    activeInProduct,
    [{}],
    [
      "missing content: a content: % w/w, or a weight per volume [undefined]",
      "missing product: an amount of product, or a rate of it [undefined]",
    ],
  ],
  [
    "a length of product",
    activeInProduct,
    [{ product: quantity(1, "ft", "product"), content }],
    [
      "unit/mismatch product: a weight, a weight over an area, a volume or a volume over an area, such as 50 lb, 1 lb/1000 ft2, 2 gal or 1 gal/1000 ft2 [1 ft of product]",
    ],
  ],
  [
    "a weight of product by a content per volume",
    activeInProduct,
    [{ product: quantity(1, "lb", "product"), content }],
    ["unit/mismatch product: a volume of product, because its content is per volume [1 lb of product]"],
  ],
  [
    "a volume of product by a content by weight",
    activeInProduct,
    [{ product: quantity(1, "gal", "product"), content: byWeight }],
    ["unit/mismatch product: a mass of product, because its content is by weight [1 gal of product]"],
  ],
  [
    "another product",
    activeInProduct,
    [{ product: quantity(1, "gal", "product:a"), content: quantity(4, "lb/gal", "ai/product:b") }],
    ["substance/mismatch product: a quantity of product:b [1 gal of product:a]"],
  ],
  [
    "nothing of what was applied",
    asApplied,
    [{}],
    ["missing used: the product used [undefined]", "missing area: an area [undefined]"],
  ],
  [
    "what is null of what was applied",
    asApplied,
    [{ used: null, area: null }],
    ["missing used: the product used [null]", "missing area: an area [null]"],
  ],
  [
    "spray in place of product",
    asApplied,
    [{ used: quantity(10, "gal", "spray"), area }],
    ["substance/mismatch used: an amount of product [10 gal of spray]"],
  ],
  [
    "less than no product",
    asApplied,
    [{ used: quantity(-1, "gal", "product"), area: quantity(0, "acre") }],
    ["range used: zero or more [-1 gal of product]", "range area: more than zero [0 acre]"],
  ],
  [
    "a plan of nothing, a tolerance past all",
    asApplied,
    [{ used, area, planned: quantity(0, "gal/acre", "product"), tolerance: quantity(101, "%") }],
    ["range tolerance: 100 % or less [101 %]"],
  ],
  [
    "a plan of nothing",
    asApplied,
    [{ used, area, planned: quantity(0, "gal/acre", "product") }],
    ["range planned: more than zero [0 gal/acre of product]"],
  ],
  [
    "a plan of another product",
    asApplied,
    [{ used, area, planned: quantity(1, "gal/acre", "product:b") }],
    ["substance/mismatch planned: a quantity of product [1 gal/acre of product:b]"],
  ],
  [
    "a fertilizer that is none",
    asApplied,
    [{ used, area, fertilizer: 7 }],
    ["type fertilizer: a fertilizer, as fertilizer makes it [7]"],
  ],
  [
    "a fertilizer by volume without a density",
    asApplied,
    [{ used, area, fertilizer: { analysis: {} } }],
    ["missing fertilizer.density: a density, because the product was measured by volume [undefined]"],
  ],
  [
    "a fertilizer of no density",
    asApplied,
    [{ used, area, fertilizer: { density: quantity(0, "lb/gal") } }],
    ["range fertilizer.density: more than zero [0 lb/gal]"],
  ],
  [
    "a content by weight of what was used by volume",
    asApplied,
    [{ used, area, active: byWeight }],
    ["unit/mismatch used: a mass of product, because its content is by weight [2 gal/acre of product]"],
  ],
  [
    "a content of nothing of what was used",
    asApplied,
    [{ used, area, active: quantity(0, "lb/gal", "ai/product") }],
    ["range active: more than zero [0 lb/gal of ai/product]"],
  ],
  [
    "limits that are no list",
    asApplied,
    [{ used, area, limits: limit }],
    ["type limits: a list of limits [a record]"],
  ],
  [
    "very many limits",
    asApplied,
    [{ used, area, limits: Array.from({ length: 1001 }, () => limit) }],
    ["range limits: 1000 or less [a list of 1001]"],
  ],
  [
    "limits that are not there",
    asApplied,
    [{ used, area, limits: [undefined, null, {}] }],
    [
      "missing limits[0]: a stated limit [undefined]",
      "type limits[1]: a stated limit [null]",
      "missing limits[2].period: the period, in words [undefined]",
      "missing limits[2].source: who states the limit [undefined]",
      "missing limits[2].limit: a limit per area [undefined]",
      "missing limits[2].before: what was put down before in the period, zero where none [undefined]",
    ],
  ],
  [
    "limits by wrong words",
    asApplied,
    [{ used, area, limits: [{ limit: null, before: null, period: 7, source: "" }] }],
    [
      "type limits[0].period: the period, in words [7]",
      'missing limits[0].source: who states the limit [""]',
      "missing limits[0].limit: a limit per area [null]",
      "missing limits[0].before: what was put down before in the period, zero where none [null]",
    ],
  ],
  [
    "limits by long words",
    asApplied,
    [{ used, area, limits: [{ ...limit, period: long, source: long }] }],
    [
      "range limits[0].period: 1000 characters or fewer [a text of 1001 characters]",
      "range limits[0].source: 1000 characters or fewer [a text of 1001 characters]",
    ],
  ],
  [
    "less than no limit",
    asApplied,
    [
      {
        used,
        area,
        limits: [
          {
            ...limit,
            limit: quantity(-1, "gal/acre", "product"),
            before: quantity(-1, "gal/acre", "product"),
          },
        ],
      },
    ],
    [
      "range limits[0].limit: zero or more [-1 gal/acre of product]",
      "range limits[0].before: zero or more [-1 gal/acre of product]",
    ],
  ],
  [
    "what was put down before of another measure",
    asApplied,
    [{ used, area, limits: [{ ...limit, before: quantity(0, "lb/acre", "product") }] }],
    [
      "unit/mismatch limits[0].before: a volume over an area, such as 1 gal/1000 ft2 or 400 L/ha [0 lb/acre of product]",
    ],
  ],
  [
    "a limit by weight of what was used by volume",
    asApplied,
    [
      {
        used,
        area,
        limits: [
          { ...limit, limit: quantity(9, "lb/acre", "product"), before: quantity(0, "lb/acre", "product") },
        ],
      },
    ],
    [
      "unit/mismatch limits[0].limit: a limit in the measure of the product, volume/area [9 lb/acre of product]",
    ],
  ],
  [
    "active ingredient past all numbers",
    activeOfAcid,
    [quantity(1e307, "lb", "ae"), quantity(1, "% w/w", "ae/ai")],
    ["not-finite acid: a finite number [infinity]"],
  ],
  [
    "what is in a product, for the product",
    asApplied,
    [{ used: quantity(10, "gal", "N/product"), area }],
    ["substance/mismatch used: an amount of product [10 gal of N/product]"],
  ],
  [
    "product to water, for the product",
    asApplied,
    [{ used: quantity(10, "gal", "product/water"), area }],
    ["substance/mismatch used: an amount of product [10 gal of product/water]"],
  ],
];

refusalsOf("what is refused of active ingredients", rows);
