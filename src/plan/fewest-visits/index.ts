export { type FewestVisits, fewestVisits } from "./fewest-visits.js";
