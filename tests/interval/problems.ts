import { RatewrightError } from "../../src/quantity/index.js";

/** Code and path of everything that a call complains about. */
export const problems = (run: () => unknown): string[] => {
  try {
    run();
  } catch (error) {
    if (error instanceof RatewrightError) return error.problems.map(({ code, path }) => `${code} ${path}`);
    throw error;
  }
  return [];
};
