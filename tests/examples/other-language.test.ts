import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, describe, expect, it } from "vitest";

const root = fileURLToPath(new URL("../..", import.meta.url));
const values = join(root, "docs/check-values.json");
const folder = mkdtempSync(join(tmpdir(), "check-values-"));
const python = spawnSync("python3", ["--version"]).status === 0;

const run = (file: string) => {
  const { status, stdout, stderr } = spawnSync(
    "python3",
    [join(root, "examples/other-language/check_values.py"), file],
    { encoding: "utf8" },
  );
  return { status, text: stdout + stderr };
};

afterAll(() => rmSync(folder, { recursive: true }));

// Where the whole suite has to pass, a missing Python is a failure.
describe.skipIf(!python && process.env.CI === undefined)("the runner in another language", () => {
  it("finds that its own formulas give the published figures", () => {
    const { status, text } = run(values);
    expect(text).toMatch(/^\d+ figures agree, 0 are off, \d+ are of formulas/);
    expect(Number(text.split(" ")[0])).toBeGreaterThan(400);
    expect(status).toBe(0);
  });

  it("tells a figure that is off, and fails", () => {
    const spoilt = join(folder, "spoilt.json");
    const text = readFileSync(values, "utf8");
    const at = text.indexOf('"function":"rectangleArea"');
    writeFileSync(
      spoilt,
      text.slice(0, at) +
        text.slice(at).replace(/"printed":([\d.]+)/, (_, printed) => `"printed":${Number(printed) * 1.5}`),
    );
    const told = run(spoilt);
    expect(told.text).toMatch(/, 1 are off,/);
    expect(told.status).toBe(1);
  });
});
