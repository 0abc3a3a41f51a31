import { quantity } from "../../../src/quantity/index.js";
import { deicingRate, deicingTables } from "../../../src/spread/index.js";
import { type Refusal, refusalsOf } from "../../told.js";

const pavement = quantity(22, "°F");
const table = { ...deicingTables[0], steps: [{ fromF: 20, lbPer1000Ft2: 3 }] };
const step = (fromF: unknown, lbPer1000Ft2: unknown) => ({ fromF, lbPer1000Ft2 });

const rows: readonly Refusal[] = [
  ["nothing of ice", deicingRate, [{}], ["missing pavement: the temperature of the pavement [undefined]"]],
  [
    "a pavement above frost",
    deicingRate,
    [{ pavement: quantity(41, "°F") }],
    ["range pavement: -60 to 40 °F: above that nothing freezes to it [41 °F]"],
  ],
  [
    "a pavement colder than any",
    deicingRate,
    [{ pavement: quantity(-61, "°F") }],
    ["range pavement: -60 to 40 °F: above that nothing freezes to it [-61 °F]"],
  ],
  [
    "a pavement that is a length",
    deicingRate,
    [{ pavement: quantity(3, "ft") }],
    ["unit/mismatch pavement: a temperature, such as 72 °F or 22 °C [3 ft]"],
  ],
  [
    "other words",
    deicingRate,
    [{ pavement, prewet: "half" }],
    ['type prewet: one of "none", "a third less" ["half"]'],
  ],
  [
    "a table that is none",
    deicingRate,
    [{ pavement, table: 7 }],
    ["type table: a record with id, material, steps, read, note, source [7]"],
  ],
  [
    "a table without a name",
    deicingRate,
    [{ pavement, table: { ...table, id: "" } }],
    ['missing table.id: a name [""]'],
  ],
  [
    "a table without a name in words",
    deicingRate,
    [{ pavement, table: { ...table, id: 7 } }],
    ["type table.id: a name [7]"],
  ],
  [
    "a table without steps",
    deicingRate,
    [{ pavement, table: { ...table, steps: [] } }],
    ["missing table.steps: at least one step [an empty list]"],
  ],
  [
    "steps that are none",
    deicingRate,
    [{ pavement, table: { ...table, steps: [7, step("a", "b"), step(41, 101), step(-61, -1)] } }],
    [
      "type table.steps[0]: a record with fromF, lbPer1000Ft2 [7]",
      'not-finite table.steps[1].fromF: a finite number ["a"]',
      'not-finite table.steps[1].lbPer1000Ft2: a finite number ["b"]',
      "range table.steps[2].fromF: 40 or less [41]",
      "range table.steps[2].lbPer1000Ft2: 100 or less [101]",
      "range table.steps[3].fromF: -60 or more [-61]",
      "range table.steps[3].lbPer1000Ft2: 0 or more [-1]",
    ],
  ],
  [
    "steps from cold to warm",
    deicingRate,
    [{ pavement, table: { ...table, steps: [step(20, 3), step(25, 2)] } }],
    ["conflict table.steps[1].fromF: a temperature below that of the step before: warm to cold [25]"],
  ],
  [
    "a step twice",
    deicingRate,
    [{ pavement, table: { ...table, steps: [step(20, 3), step(20, 2)] } }],
    ["conflict table.steps[1].fromF: a temperature below that of the step before: warm to cold [20]"],
  ],
  [
    "a step below the last",
    deicingRate,
    [{ pavement, table: { ...table, steps: [step(20, 3), step(null, 2), step(10, 1)] } }],
    ["conflict table.steps[2].fromF: a temperature below that of the step before: warm to cold [10]"],
  ],
  [
    "very many steps",
    deicingRate,
    [{ pavement, table: { ...table, steps: Array.from({ length: 51 }, (_, i) => step(39 - i, 1)) } }],
    ["range table.steps: at most 50 items [a list of 51]"],
  ],
  [
    "a pavement below the table",
    deicingRate,
    [{ pavement: quantity(19, "°F"), table }],
    ["range pavement: 20 °F or more, which the table covers: its last step can end with null [19 °F]"],
  ],
];

refusalsOf("what is refused of ice", rows);
