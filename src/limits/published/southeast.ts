import type { LimitSet } from "../limit/limit.js";
import { lb, limitSet } from "./common.js";

const springSummer = { from: "03-01", to: "08-31" } as const;
const autumnWinter = { from: "09-01", to: "02-29" } as const;

/** Florida: the urban turf rule for home lawns. Its phosphorus figures are P2O5. */
export const floridaLimits: LimitSet = /* @__PURE__ */ limitSet({
  id: "us-fl",
  name: "Florida urban turf rule",
  source: {
    title: "Urban turf fertilizer rule for home lawn fertilization (EP353)",
    publisher: "University of Florida IFAS Extension",
    where: "summary of Rule 5E-1.003(2) F.A.C., updated 2015",
    url: "https://edis.ifas.ufl.edu/publication/ep353",
  },
  limits: {
    "soluble-n": { amount: lb(0.7, "N:quick"), per: "application", scope: { place: ["home lawn"] } },
    "total-n-spring-summer": {
      amount: lb(2, "N"),
      per: "application",
      scope: { place: ["home lawn"], slowShareAtLeast: 65, season: springSummer },
    },
    "total-n-autumn-winter": {
      amount: lb(1, "N"),
      per: "application",
      scope: { place: ["home lawn"], season: autumnWinter },
    },
    "p2o5-per-application": {
      amount: lb(0.25, "P2O5"),
      per: "application",
      scope: { place: ["home lawn"] },
    },
    "p2o5-per-year": { amount: lb(0.5, "P2O5"), per: "calendar year", scope: { place: ["home lawn"] } },
  },
  notHeld: [
    "The total of a product with less than 65 % controlled-release nitrogen: the summary states its soluble nitrogen only, so that one without slow nitrogen goes down at 0.7 lb at most.",
    "The 2 lb are stated for spring and summer, which is read here as March through August. What holds in autumn and winter was not read: the 1 lb in all at any one time of the rule before 2015, as the code of Marion County of 2008 repeats it, is held there.",
    "Annual nitrogen by grass and region, and closed seasons, which counties set.",
  ],
});

const marionGrass = (grass: string, pounds: number) =>
  ({ amount: lb(pounds, "N"), per: "calendar year", scope: { grass: [grass] } }) as const;

/** Marion County, Florida. */
export const marionCountyLimits: LimitSet = /* @__PURE__ */ limitSet({
  id: "us-fl-marion",
  name: "Marion County, Florida",
  source: {
    title: "Code of ordinances, 19-247",
    publisher: "Marion County, Florida",
    year: 2008,
    where: "19-247, Ord. 08-35",
    url: "http://marioncounty-fl.elaws.us/code/coor_ch19_artv_sec19-247",
  },
  limits: {
    "soluble-n": { amount: lb(0.7, "N:quick"), per: "application" },
    "total-n": { amount: lb(1, "N"), per: "application" },
    "n-bahiagrass": marionGrass("bahiagrass", 3),
    "n-bermudagrass": marionGrass("bermudagrass", 4),
    "n-centipedegrass": marionGrass("centipedegrass", 2),
    "n-st-augustinegrass": marionGrass("St. Augustinegrass", 3),
    "n-zoysiagrass": marionGrass("zoysiagrass", 4),
    "p2o5-per-application": {
      amount: lb(0.25, "P2O5"),
      per: "application",
      exemptIf: [{ turf: ["being established"] }],
    },
    "p2o5-per-year": {
      amount: lb(0.5, "P2O5"),
      per: "calendar year",
      exemptIf: [{ turf: ["being established"] }],
    },
    "p2o5-starter": {
      amount: lb(1, "P2O5"),
      per: "application",
      scope: { turf: ["being established"] },
    },
  },
  notHeld: [
    "The starter application is made only once.",
    "The code prints phosphorus for turf that is established and P2O5 for the starter; the state rule it goes back to is P2O5, and so it is held here.",
  ],
});
