import { fieldsOf, nearSpelling } from "../../quantity/house.js";

/** What people call the package of a fertilizer. */
const packages = /^(?:bag|sack|jug)$/i;

/** Takes a record whose fields all have known names; of the names that people use for others it knows those of a label alone. */
export const labelFields = <const F extends string>(
  input: unknown,
  known: readonly F[],
  path: string,
  expected: string,
): { readonly [K in F]?: unknown } =>
  fieldsOf(
    input,
    known,
    path,
    expected,
    (name, names) =>
      names.find((one) => one === "package" && packages.test(name)) ?? nearSpelling(name, names),
  );
