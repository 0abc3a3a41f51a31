import { australianTurfFungicideLimits } from "../../../src/limits/index.js";
import type { Application, Law } from "./law.js";

const acre = (value: number, of: string) => ({ supplies: [{ value, unit: "lb/acre", of }] });

/** Two sprays in a row of one group, and two of different ones. */
const group = (limit: string, names: readonly string[], other: string) => {
  const spray = (name: string): Application => acre(0.2, `ai:${name}`);
  const after = (name: string, of: Application): Application => ({
    ...of,
    before: [{ on: "2026-05-25", supplies: spray(name).supplies ?? [] }],
  });
  return {
    limit,
    over: names.map((name, n) => after(names[(n + 1) % names.length] ?? name, spray(name))),
    within: [
      ...names.map((name) => after(other, spray(name))),
      ...names.map((name) => after(name, spray(other))),
    ],
  };
};

export const rememberedLaws: readonly Law[] = [
  {
    set: australianTurfFungicideLimits,
    source:
      "CropLife Australia, turf, of 24 June 2026, read again: no consecutive sprays of groups 1, 2, 4, 7, 11 and 21. Which active ingredients are in a group: the list of FRAC, remembered",
    reached: "from memory",
    rows: [
      group("1", ["thiophanate-methyl"], "iprodione"),
      group("2", ["iprodione", "vinclozolin"], "cyazofamid"),
      group("4", ["mefenoxam", "metalaxyl", "metalaxyl-M"], "cyazofamid"),
      group(
        "7",
        [
          "boscalid",
          "fluopyram",
          "flutolanil",
          "fluxapyroxad",
          "isofetamid",
          "penthiopyrad",
          "pydiflumetofen",
        ],
        "iprodione",
      ),
      group(
        "11",
        ["azoxystrobin", "fluoxastrobin", "mandestrobin", "pyraclostrobin", "trifloxystrobin"],
        "iprodione",
      ),
      group("21", ["cyazofamid"], "mefenoxam"),
    ],
  },
];
