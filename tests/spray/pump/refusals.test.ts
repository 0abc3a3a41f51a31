import { quantity } from "../../../src/quantity/index.js";
import { pumpCapacity } from "../../../src/spray/index.js";
import { type Refusal, refusalsOf } from "../../told.js";
import { gpm, mph, percent } from "../helpers.js";

const job = { boom: gpm(10), tank: quantity(300, "gal"), agitation: percent(5), reserve: percent(20) };
const ft = (value: number) => quantity(value, "ft");

const rows: readonly Refusal[] = [
  [
    "nothing of a pump",
    pumpCapacity,
    [{}],
    [
      "missing applicationVolume: a volume over an area, such as 1 gal/1000 ft2 or 400 L/ha; or give boom, the flow itself [undefined]",
      "missing speed: a speed or a depth per time, such as 3 mi/h or 5 mm/h; or give boom, the flow itself [undefined]",
      "missing swath: a length, such as 10 ft or 3 m; or give boom, the flow itself [undefined]",
      "missing tank: the volume of the tank [undefined]",
      "missing agitation: the share of the tank that is moved in a minute [undefined]",
      "missing reserve: a share for wear, 0 % for none [undefined]",
    ],
  ],
  [
    "a boom told twice",
    pumpCapacity,
    [{ ...job, speed: mph(4) }],
    ["conflict speed: nothing besides boom: the flow is given [4 mi/h]"],
  ],
  [
    "a boom of none, a tank of none, a pump of none",
    pumpCapacity,
    [{ ...job, boom: gpm(0), tank: quantity(0, "gal"), pump: gpm(0) }],
    [
      "range boom: more than zero [0 gal/min of spray]",
      "range tank: more than zero [0 gal]",
      "range pump: more than zero [0 gal/min of spray]",
    ],
  ],
  [
    "a boom by parts of none",
    pumpCapacity,
    [{ ...job, boom: undefined, applicationVolume: quantity(0, "gal/acre"), speed: mph(0), swath: ft(0) }],
    [
      "range applicationVolume: more than zero [0 gal/acre]",
      "range speed: more than zero [0 mi/h]",
      "range swath: more than zero [0 ft]",
    ],
  ],
  [
    "less than no agitation, more than all in reserve",
    pumpCapacity,
    [{ ...job, agitation: percent(-1), reserve: percent(101) }],
    ["range agitation: zero or more [-1 %]", "range reserve: 100 % or less [101 %]"],
  ],
  [
    "no agitation and no reserve",
    pumpCapacity,
    [{ ...job, agitation: undefined, reserve: undefined }],
    [
      "missing agitation: the share of the tank that is moved in a minute [undefined]",
      "missing reserve: a share for wear, 0 % for none [undefined]",
    ],
  ],
  [
    "a boom that is a volume",
    pumpCapacity,
    [{ ...job, boom: quantity(10, "gal") }],
    ["unit/mismatch boom: a flow, such as 0.4 gal/min or 1.5 L/min [10 gal]"],
  ],
];

refusalsOf("what is refused of pumps", rows);
