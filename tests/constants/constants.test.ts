import { describe, expect, test } from "vitest";
import { isAsPrinted } from "./check.js";
import { constantChecks } from "./index.js";

describe("constants, against a second transcription", () => {
  test.each(constantChecks.map((check) => [`${check.room}: ${check.what}`, check] as const))(
    "%s",
    (_, { here: compute, ...rest }) => {
      const computed = compute();
      const check = { ...rest, here: () => computed };
      expect(isAsPrinted(check), `printed ${check.printed}, here ${computed}`).toBe(true);
      expect(isAsPrinted({ ...check, printed: check.printed === 0 ? 1 : check.printed * 1.0001 })).toBe(
        false,
      );
    },
  );
});
