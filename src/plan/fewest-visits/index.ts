export {
  type FewestVisits,
  type FewestVisitsFound,
  type FewestVisitsNotSettled,
  fewestVisits,
} from "./fewest-visits.js";
