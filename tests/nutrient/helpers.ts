import { RatewrightError } from "../../src/quantity/index.js";

/** Code and path of every problem that a call reports, joined by a space; empty where it throws nothing. */
export const faultsOf = (call: () => unknown): readonly string[] => {
  try {
    call();
    return [];
  } catch (error) {
    if (!(error instanceof RatewrightError)) throw error;
    return error.problems.map(({ code, path }) => `${code} ${path}`);
  }
};
