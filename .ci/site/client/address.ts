// The state of a form in the address of its page, behind the #, so that a case can be sent to somebody.

/** What stands in a form: texts by the names of its boxes. */
export type FormState = ReadonlyMap<string, string>;

/** The longest text of one box that is read from an address. */
const longest = 60;

/** The state behind the `#` of an address, of the boxes that the form has. */
export const stateOf = (hash: string, names: readonly string[]): FormState => {
  const given = new URLSearchParams(hash.replace(/^#/, ""));
  return new Map(
    names.flatMap((name) => {
      const value = given.get(name);
      return value === null ? [] : [[name, value.slice(0, longest)] as const];
    }),
  );
};

/** What goes behind the `#`; nothing where nothing was typed. */
export const addressOf = (state: FormState, inputs: readonly string[]): string => {
  if (!inputs.some((name) => (state.get(name) ?? "") !== "")) return "";
  const kept = [...state].filter(([name, value]) => {
    if (value === "") return false;
    // The unit of an empty box says nothing.
    const box = name.endsWith(".unit") ? name.slice(0, -5) : name;
    return !inputs.includes(box) || (state.get(box) ?? "") !== "";
  });
  return `#${new URLSearchParams(kept.map(([name, value]): [string, string] => [name, value])).toString()}`;
};
