import { BaseSequencer, type TestSpecification } from "vitest/node";

/** The test files that take three seconds or more: small files, some of them, that size would put last. */
const longest: readonly string[] = [
  "walls/matrix",
  "published/values/check-values",
  "teach/problems/fairness",
  "examples/batch",
  "plan/job/fuzz",
  "teach/explain/explain",
  "plan/fewest-visits/search",
  "house/docs",
  "teach/grade/grade",
  "house/length",
  "quantity/text/parse.fuzz",
];

/** Starts the longest files first, so that no core waits at the end for one that began late. */
export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const place = ({ moduleId }: TestSpecification): number => {
      const at = longest.findIndex((name) => moduleId.endsWith(`/tests/${name}.test.ts`));
      return at === -1 ? longest.length : at;
    };
    return (await super.sort(files)).sort((a, b) => place(a) - place(b));
  }
}
