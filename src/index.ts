export * from "./calendar/index.js";
export * from "./interval/index.js";
export * from "./numeric/index.js";
export * from "./nutrient/index.js";
export * from "./plan/index.js";
export * from "./quantity/index.js";
export * from "./site/index.js";
export * from "./tank/index.js";
