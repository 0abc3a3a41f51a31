import { expect, test } from "vitest";
import * as library from "../../src/index.js";

/** Kernels of the type algebra and of texts: they take plain words and are called with nothing else. */
const ofWords = ["expectAmount", "problemText", "timesSubstance", "perSubstance", "unitName", "unitSymbol"];

test("a call without its argument gets the library's own error, from every function", () => {
  const foreign: string[] = [];
  for (const [name, value] of Object.entries(library)) {
    if (typeof value !== "function" || /^[A-Z]/.test(name) || ofWords.includes(name)) continue;
    for (const nothing of [undefined, null]) {
      try {
        (value as (input: unknown) => unknown)(nothing);
      } catch (error) {
        if (!(error instanceof library.RatewrightError))
          foreign.push(`${name}(${nothing}): ${String(error)}`);
      }
    }
  }
  expect(foreign).toEqual([]);
});
