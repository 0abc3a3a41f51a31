import { type Problem, RatewrightError } from "../src/quantity/index.js";

// What the tests ask of a call that has to be refused. An error that is not ours is thrown on, and fails the test.

/** Fails for a refusal that does not say what would have been right: the next step is half of its worth. */
const told = (error: RatewrightError): RatewrightError => {
  for (const { expected, got, path } of error.problems) {
    if (expected.trim() === "" || got.trim() === "")
      throw new Error(`the refusal at "${path}" says "${expected}" and "${got}"`, { cause: error });
  }
  return error;
};

/** The error that a call throws; fails where it throws none. */
export const errorOf = (call: () => unknown): RatewrightError => {
  try {
    call();
  } catch (error) {
    if (error instanceof RatewrightError) return told(error);
    throw error;
  }
  throw new Error("nothing was thrown");
};

/** Every problem that a call throws; none where it goes through. */
export const problemsOf = (call: () => unknown): readonly Problem[] => {
  try {
    call();
  } catch (error) {
    if (error instanceof RatewrightError) return told(error).problems;
    throw error;
  }
  return [];
};

/** Every problem that a call throws as `code path`; none where it goes through. */
export const complaints = (call: () => unknown): readonly string[] =>
  problemsOf(call).map(({ code, path }) => `${code} ${path}`);

/** Every problem that a promise is rejected with as `code path`; fails where it is kept. */
export const rejections = async (promise: Promise<unknown>): Promise<readonly string[]> => {
  const error: unknown = await promise.then(
    () => new Error("nothing was rejected"),
    (reason: unknown) => reason,
  );
  if (error instanceof RatewrightError) return error.problems.map(({ code, path }) => `${code} ${path}`);
  throw error;
};

/** The first problem that a call throws as `code path`; "nothing thrown" where it goes through. */
export const complaint = (call: () => unknown): string => complaints(call)[0] ?? "nothing thrown";

/** What a call returns, or its first problem as `code path`, or an error that is not ours. */
export const answerOf = (call: () => unknown): unknown => {
  try {
    return call();
  } catch (error) {
    return error instanceof RatewrightError ? `${error.code} ${error.path}` : error;
  }
};
