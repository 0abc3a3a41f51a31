import { RatewrightError } from "../../src/quantity/index.js";

/** What a call complains about: every problem as `code path`, or "nothing". */
export const failures = (run: () => unknown): string[] => {
  try {
    run();
  } catch (error) {
    if (error instanceof RatewrightError) return error.problems.map(({ code, path }) => `${code} ${path}`);
    throw error;
  }
  return ["nothing"];
};
