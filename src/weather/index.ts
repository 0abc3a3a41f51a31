// What is the wind where the label means it, and what does the air do to the spray, the leaf and the crew?
export { type WindReading, windAtHeight, windReading, windReadingAt } from "./air/wind-at-height.js";
