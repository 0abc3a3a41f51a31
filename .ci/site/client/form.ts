// The script of a formula's page: reads the boxes, works the formula out, and shows the result or the problems.
import { problemReason } from "../../../src/quantity/index.js";
import {
  type CatalogueEntry,
  catalogueEntry,
  type Derivation,
  type DerivationUnits,
  equationMathML,
} from "../../../src/teach/index.js";
import { addressOf, type FormState, stateOf } from "./address.js";
import { type FormInput, type Outcome, workOut } from "./work-out.js";

interface FormData {
  readonly id: string;
  readonly inputs: readonly FormInput[];
  readonly usualResult: Readonly<Record<DerivationUnits, string>>;
  readonly examples: Readonly<
    Record<DerivationUnits, Readonly<Record<string, { value: string; unit: string }>>>
  >;
}

const byId = <E extends HTMLElement>(id: string): E => document.getElementById(id) as E;

const form = byId<HTMLFormElement>("form");
const data = JSON.parse(form.dataset.formula ?? "{}") as FormData;
const entry: CatalogueEntry = catalogueEntry(data.id);
const names = data.inputs.map(({ name }) => name);
const boxNames = [...names.flatMap((name) => [name, `${name}.unit`]), "units", "result", "digits"];
/** The boxes that somebody has left, and whether the button was pressed: only then is a missing figure a problem. */
const left = new Set<string>();
let asked = false;
let later: ReturnType<typeof setTimeout> | undefined;

const box = (name: string): HTMLInputElement | HTMLSelectElement | RadioNodeList | null =>
  form.elements.namedItem(name) as HTMLInputElement | HTMLSelectElement | RadioNodeList | null;

const systemNow = (): DerivationUnits =>
  (box("units") as RadioNodeList).value === "metric" ? "metric" : "US";

const stateNow = (): FormState =>
  new Map(boxNames.map((name) => [name, box(name) === null ? "" : (box(name) as HTMLInputElement).value]));

/** Puts a value into a box; a unit that the list does not have is added to it, for any unit of the dimension may be named. */
const put = (name: string, value: string): void => {
  const target = box(name);
  if (target instanceof HTMLSelectElement && ![...target.options].some((option) => option.value === value)) {
    if (name === "digits") return;
    target.add(new Option(value, value));
  }
  if (target !== null) (target as HTMLInputElement).value = value;
};

/** The usual units of a system, in the boxes that hold no figure yet, and for the result. */
const usualUnits = (system: DerivationUnits): void => {
  for (const { name, usualUnits: usual } of data.inputs) {
    if ((box(name) as HTMLInputElement).value.trim() === "") put(`${name}.unit`, usual[system]);
  }
  put("result", data.usualResult[system]);
};

const showProblems = ({ problems }: Outcome): void => {
  for (const name of names) {
    const input = box(name) as HTMLInputElement;
    const own = problems.get(name) ?? [];
    const missing = own.some(({ code }) => code === "missing");
    const shown = missing && !asked ? [] : asked || left.has(name) ? own : [];
    byId(`problem-${name}`).textContent = shown.map((problem) => sentence(problemReason(problem))).join(" ");
    if (shown.length > 0) input.setAttribute("aria-invalid", "true");
    else input.removeAttribute("aria-invalid");
  }
  const others = problems.get("") ?? [];
  byId("problems").replaceChildren(
    ...others.map((problem) => {
      const line = document.createElement("p");
      line.textContent = `${problem.path.replace(/^inputs\./, "")}: ${problemReason(problem)}.`;
      return line;
    }),
  );
};

/** A message as a sentence: `expected more than 0` is `Expected more than 0.` */
const sentence = (text: string): string =>
  `${text.charAt(0).toUpperCase()}${text.slice(1)}${/[.?!)]$/.test(text) ? "" : "."}`;

const stepLine = ({ kind, text }: Derivation["steps"][number]): HTMLLIElement => {
  const line = document.createElement("li");
  line.className = kind;
  // The equation comes out of the catalogue, not out of the address.
  if (kind === "equation") {
    line.innerHTML = equationMathML(entry.equation);
    // A long one scrolls, also by keyboard.
    line.tabIndex = 0;
  } else line.textContent = text;
  return line;
};

const showResult = ({ derivation, problems }: Outcome): void => {
  const answer = byId("answer");
  if (derivation === undefined) {
    const missing = data.inputs.filter(({ name }) =>
      (problems.get(name) ?? []).some(({ code }) => code === "missing"),
    );
    answer.className = "";
    answer.textContent =
      missing.length === names.length
        ? "Fill in what is given."
        : missing.length > 0
          ? `Still needed: ${missing.map(({ label }) => label).join("; ")}.`
          : "No result: see the problem beside the field.";
    byId("working").replaceChildren();
    return;
  }
  answer.className = "there";
  const last = derivation.steps[derivation.steps.length - 1]?.text ?? "";
  answer.textContent = last.replace(/^.* ≈ /, "").replace(/(, rounded to .*| needs no rounding)$/, "");
  byId("working").replaceChildren(...derivation.steps.map(stepLine));
};

const show = (): void => {
  const state = stateNow();
  const outcome = workOut(data.id, data.inputs, state);
  showProblems(outcome);
  showResult(outcome);
  byId("copied").textContent = "";
  clearTimeout(later);
  later = setTimeout(() => {
    const hash = addressOf(state, names);
    // A link to a heading of the page stays as it is while nothing is typed.
    if (hash === "" && !location.hash.includes("=")) return;
    if (hash !== location.hash)
      history.replaceState(null, "", hash === "" ? location.pathname + location.search : hash);
  }, 200);
};

/** Fills the form from the address; a link of the page to a heading of its own is no state. */
const fromAddress = (): void => {
  const state = stateOf(location.hash, boxNames);
  if (state.size === 0) {
    show();
    return;
  }
  for (const name of names) put(name, state.get(name) ?? "");
  put("units", state.get("units") ?? "US");
  usualUnits(systemNow());
  for (const [name, value] of state) if (!names.includes(name)) put(name, value);
  for (const name of names) if ((state.get(name) ?? "") !== "") left.add(name);
  show();
};

const example = (): void => {
  usualUnits(systemNow());
  for (const [name, { value, unit }] of Object.entries(data.examples[systemNow()])) {
    put(name, value);
    put(`${name}.unit`, unit);
    left.add(name);
  }
  show();
};

const clear = (): void => {
  const system = systemNow();
  form.reset();
  put("units", system);
  left.clear();
  asked = false;
  usualUnits(system);
  show();
  (box(names[0] ?? "") as HTMLInputElement | null)?.focus();
};

const copy = async (): Promise<void> => {
  const address = `${location.href.split("#")[0]}${addressOf(stateNow(), names)}`;
  try {
    await navigator.clipboard.writeText(address);
    byId("copied").textContent = "Copied.";
  } catch {
    byId("copied").textContent = "Copy the address of this page: it holds the case.";
  }
};

form.addEventListener("submit", (event) => {
  event.preventDefault();
  asked = true;
  show();
  form.querySelector<HTMLInputElement>("[aria-invalid]")?.focus();
});
form.addEventListener("input", ({ target }) => {
  const name = (target as HTMLInputElement).name;
  if (name === "units") usualUnits(systemNow());
  if (name.endsWith(".unit")) left.add(name.slice(0, -5));
  show();
});
form.addEventListener("change", ({ target }) => {
  left.add((target as HTMLInputElement).name);
  show();
});
form.addEventListener("click", ({ target }) => {
  const what = (target as HTMLElement).dataset.do;
  if (what === "example") example();
  else if (what === "clear") clear();
  else if (what === "copy") void copy();
});
window.addEventListener("hashchange", fromAddress);
fromAddress();
