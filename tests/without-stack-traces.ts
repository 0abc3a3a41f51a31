import { afterAll, beforeAll } from "vitest";

/**
 * For tests that have thousands of errors thrown of which nobody reads where they were made: to write that down takes longer
 * than most calls.
 */
export const withoutStackTraces = (): void => {
  const { stackTraceLimit } = Error;
  beforeAll(() => {
    Error.stackTraceLimit = 0;
  });
  afterAll(() => {
    Error.stackTraceLimit = stackTraceLimit;
  });
};
