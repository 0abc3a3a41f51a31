export * from "./quantity/index.js";
