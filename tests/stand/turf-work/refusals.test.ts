import { quantity } from "../../../src/quantity/index.js";
import {
  coringImpact,
  coringProgram,
  passesForShare,
  sandForOrganicMatter,
  topdressing,
  verticuttingImpact,
} from "../../../src/stand/index.js";
import { type Refusal, refusalsOf } from "../../told.js";

const inches = (value: number) => quantity(value, "in");
const percent = (value: number) => quantity(value, "%");
const spacing = { along: inches(2), across: inches(2) };
const pass = { spacing, diameter: inches(0.5), measured: "outside" };
const area = quantity(1000, "ft2");

const rows: readonly Refusal[] = [
  [
    "nothing of coring",
    coringImpact,
    [{}],
    [
      "missing spacing: spacing along and across, or holesPerArea [undefined]",
      "missing diameter: a length, such as 10 ft or 3 m [undefined]",
      'missing measured: one of "inside", "outside" [undefined]',
    ],
  ],
  [
    "holes told twice",
    coringImpact,
    [{ ...pass, holesPerArea: quantity(36, "count/ft2") }],
    ["conflict spacing: spacing along and across, or holesPerArea [a record]"],
  ],
  [
    "a spacing without its parts",
    coringImpact,
    [{ ...pass, spacing: {} }],
    [
      "missing spacing.along: a length, such as 10 ft or 3 m [undefined]",
      "missing spacing.across: a length, such as 10 ft or 3 m [undefined]",
    ],
  ],
  [
    "holes that are none",
    coringImpact,
    [{ ...pass, spacing: undefined, holesPerArea: quantity(0, "count/ft2") }],
    ["range holesPerArea: more than zero [0 count/ft2]"],
  ],
  [
    "a diameter that is not said to be inside or outside",
    coringImpact,
    [{ ...pass, measured: undefined }],
    ['missing measured: one of "inside", "outside" [undefined]'],
  ],
  [
    "another word for a diameter",
    coringImpact,
    [{ ...pass, measured: "middle" }],
    ['type measured: one of "inside", "outside" ["middle"]'],
  ],
  [
    "holes with no ground between them",
    coringImpact,
    [{ ...pass, diameter: inches(2.3) }],
    ["range diameter: holes that leave ground between them: less than 100 % in a pass [2.3 in]"],
  ],
  [
    "no depth and no ground",
    coringImpact,
    [{ ...pass, depth: inches(0), area: quantity(0, "ft2") }],
    ["range depth: more than zero [0 in]", "range area: more than zero [0 ft2]"],
  ],
  [
    "nothing of a year",
    coringProgram,
    [{}],
    [
      "missing passes: a list with at least one pass [undefined]",
      "missing target: a share, such as 85 % [undefined]",
    ],
  ],
  [
    "a year without a pass",
    coringProgram,
    [{ passes: [], target: percent(0) }],
    [
      "missing passes: at least one pass [an empty list]",
      "range target: more than 0 % and at most 100 % [0 %]",
    ],
  ],
  ["no target", coringProgram, [{ passes: [pass] }], ["missing target: a share, such as 85 % [undefined]"]],
  [
    "passes of many a year",
    coringProgram,
    [{ passes: Array.from({ length: 101 }, () => pass), target: percent(20) }],
    ["range passes: at most 100 items [a list of 101]"],
  ],
  [
    "passes that are wrong in their parts",
    coringProgram,
    [
      {
        passes: [{ ...pass, times: 0 }, {}, { ...pass, spacing: { along: inches(0) } }],
        target: percent(20),
      },
    ],
    [
      "range passes[0].times: a whole number, 1 or more [0]",
      "missing passes[1].spacing: spacing along and across, or holesPerArea [undefined]",
      "missing passes[1].diameter: a length, such as 10 ft or 3 m [undefined]",
      'missing passes[1].measured: one of "inside", "outside" [undefined]',
      "range passes[2].spacing.along: more than zero [0 in]",
      "missing passes[2].spacing.across: a length, such as 10 ft or 3 m [undefined]",
    ],
  ],
  [
    "a pass with a field that is not known",
    coringProgram,
    [{ passes: [{ ...pass, time: 2 }], target: percent(20) }],
    [
      'type passes[0].time: one of the fields spacing, holesPerArea, diameter, measured, depth, times [a field "time"] times?',
    ],
  ],
  [
    "holes of the second pass with no ground between them",
    coringProgram,
    [{ passes: [pass, { ...pass, diameter: inches(2.3) }], target: percent(20) }],
    ["range passes[1].diameter: holes that leave ground between them: less than 100 % in a pass [2.3 in]"],
  ],
  [
    "inside and outside in one year",
    coringProgram,
    [{ passes: [pass, { ...pass, measured: "inside" }], target: percent(20) }],
    ['conflict passes[1].measured: outside, as in the first pass ["inside"]'],
  ],
  [
    "nothing for passes",
    passesForShare,
    [{}],
    ["missing target: a share, such as 85 % [undefined]", "missing share: a share, such as 85 % [undefined]"],
  ],
  [
    "no target and no share",
    passesForShare,
    [{ target: percent(0), share: percent(0) }],
    [
      "range target: more than 0 % and at most 100 % [0 %]",
      "range share: more than 0 % and at most 100 % [0 %]",
    ],
  ],
  [
    "a share past all",
    passesForShare,
    [{ target: percent(20), share: percent(101) }],
    ["range share: more than 0 % and at most 100 % [101 %]"],
  ],
  [
    "nothing of sand",
    topdressing,
    [{}],
    [
      "missing area: an area, such as 5000 ft2 or 500 m2 [undefined]",
      "missing depth: the depth of the layer, or perArea [undefined]",
    ],
  ],
  [
    "a layer told twice",
    topdressing,
    [{ area, depth: inches(0.1), perArea: quantity(8, "ft3/1000 ft2") }],
    ["conflict depth: the depth of the layer, or perArea [0.1 in]"],
  ],
  [
    "a layer of nothing by depth",
    topdressing,
    [{ area, depth: inches(0) }],
    ["range depth: more than zero [0 in]"],
  ],
  [
    "a layer of nothing by volume",
    topdressing,
    [{ area, perArea: quantity(0, "ft3/1000 ft2") }],
    ["range perArea: more than zero [0 ft3/1000 ft2]"],
  ],
  [
    "sand without weight",
    topdressing,
    [{ area, depth: inches(0.1), density: quantity(0, "lb/ft3") }],
    ["range density: more than zero [0 lb/ft3]"],
  ],
  [
    "nothing of organic matter",
    sandForOrganicMatter,
    [{}],
    [
      "missing clippings: a volume over an area, such as 1 gal/1000 ft2 or 400 L/ha [undefined]",
      "missing organicMatter: a share, such as 85 % [undefined]",
    ],
  ],
  [
    "less than no clippings, and nothing but organic matter",
    sandForOrganicMatter,
    [{ clippings: quantity(-1, "L/m2"), organicMatter: percent(100) }],
    [
      "range clippings: zero or more [-1 L/m2]",
      "range organicMatter: more than 0 % and less than 100 % [100 %]",
    ],
  ],
  [
    "a coefficient of nobody",
    sandForOrganicMatter,
    [{ clippings: quantity(1, "L/m2"), organicMatter: percent(5), coefficient: { value: 0 } }],
    [
      "range coefficient.value: more than 0 [0]",
      "missing coefficient.source: who states it, in up to 400 letters [undefined]",
    ],
  ],
  [
    "a coefficient with a source that is no text",
    sandForOrganicMatter,
    [{ clippings: quantity(1, "L/m2"), organicMatter: percent(5), coefficient: { value: 0.1, source: 7 } }],
    ["type coefficient.source: who states it, in up to 400 letters [7]"],
  ],
  [
    "a coefficient with a field that is not known",
    sandForOrganicMatter,
    [
      {
        clippings: quantity(1, "L/m2"),
        organicMatter: percent(5),
        coefficient: { value: 0.1, source: "the crew", k: 1 },
      },
    ],
    ['type coefficient.k: one of the fields value, source [a field "k"]'],
  ],
  [
    "nothing of verticutting",
    verticuttingImpact,
    [{}],
    [
      "missing blade: a length, such as 10 ft or 3 m [undefined]",
      "missing spacing: a length, such as 10 ft or 3 m [undefined]",
    ],
  ],
  [
    "blades that touch",
    verticuttingImpact,
    [{ blade: inches(1), spacing: inches(1) }],
    ["conflict blade: less than the spacing of the blades [1 in]"],
  ],
  [
    "no depth and no ground to verticut",
    verticuttingImpact,
    [{ blade: inches(0.1), spacing: inches(1), depth: inches(0), area: quantity(0, "ft2") }],
    ["range depth: more than zero [0 in]", "range area: more than zero [0 ft2]"],
  ],
];

refusalsOf("what is refused of work on turf", rows);
