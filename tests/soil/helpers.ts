import { RatewrightError } from "../../src/index.js";

/** The code and the path of every problem that a call throws. */
export const failures = (run: () => unknown): readonly string[] => {
  try {
    run();
  } catch (error) {
    if (error instanceof RatewrightError) return error.problems.map(({ code, path }) => `${code} ${path}`);
    throw error;
  }
  return [];
};
