// What is wrong with the answer to a spoilt call.
import { isQuantity } from "./spoil.js";

/** The codes that an error may carry: those of `ErrorCode`. */
const codes: ReadonlySet<unknown> = new Set([
  "unit/unknown",
  "unit/ambiguous",
  "unit/mismatch",
  "substance/unknown",
  "substance/ambiguous",
  "substance/mismatch",
  "not-finite",
  "range",
  "missing",
  "type",
  "infeasible",
  "date",
  "text",
  "duplicate",
  "conflict",
]);

/** What can be wrong with an answer. */
export type Wrong =
  | "foreign error"
  | "unknown code"
  | "no path"
  | "no words"
  | "long message"
  | "not finite"
  | "minus zero"
  | "NaN or undefined in a text"
  | "another answer"
  | "taken for something"
  | "issue without a message or a path"
  | "shared change";

/** What came out of a call. */
export type Outcome =
  | { readonly result: unknown; readonly error?: undefined }
  | { readonly error: unknown; readonly result?: undefined };

/** Calls, and waits where there is something to wait for. */
export const outcomeOf = (call: () => unknown): Outcome | Promise<Outcome> => {
  try {
    const result = call();
    if (!(result instanceof Promise)) return { result };
    return result.then(
      (value: unknown) => ({ result: value }),
      (error: unknown) => ({ error: error ?? "nothing" }),
    );
  } catch (error) {
    return { error: error ?? "nothing" };
  }
};

const longestMessage = 40_000;
const mostLooked = 20_000;

/** The first place in a result that is NaN or infinite, or tells of it in a text. What the caller put in is not looked into. */
const rot = (result: unknown, put: unknown): { readonly wrong: Wrong; readonly told: string } | undefined => {
  const seen = new Set<unknown>();
  const open: { readonly value: unknown; readonly at: string }[] = [{ value: result, at: "result" }];
  for (let n = 0; n < mostLooked; n += 1) {
    const next = open.pop();
    if (next === undefined) return undefined;
    const { value, at } = next;
    if (typeof value === "number" && !Number.isFinite(value)) {
      return { wrong: "not finite", told: `${at} is ${value}` };
    }
    // It is equal to 0, and yet "-0" on a sheet
    if (Object.is(value, -0)) return { wrong: "minus zero", told: `${at} is -0` };
    if (typeof value === "string" && value.length < 10_000) {
      const found = /(?<![A-Za-z])(NaN|-?Infinity|undefined|\[object Object\])(?![A-Za-z])/.exec(value);
      if (found !== null)
        return { wrong: "NaN or undefined in a text", told: `${at} is "${value.slice(0, 80)}"` };
    }
    if (typeof value !== "object" || value === null || value === put || seen.has(value)) continue;
    seen.add(value);
    if (ArrayBuffer.isView(value)) {
      const list = Array.from(value as Float64Array).slice(0, mostLooked);
      const bad = list.findIndex((entry) => !Number.isFinite(entry));
      if (bad >= 0) return { wrong: "not finite", told: `${at}[${bad}] is ${list[bad]}` };
      const minus = list.findIndex((entry) => Object.is(entry, -0));
      if (minus >= 0) return { wrong: "minus zero", told: `${at}[${minus}] is -0` };
      continue;
    }
    // A problem tells what was received
    if ("got" in value && "expected" in value) continue;
    const entries = value instanceof Map ? [...value] : Object.entries(value);
    for (const [key, inner] of entries.slice(0, 2000))
      open.push({ value: inner, at: `${at}.${String(key)}` });
  }
  return undefined;
};

/** What is wrong with an error, as far as its class, code, path and length go. */
const faultOf = (error: unknown): { readonly wrong: Wrong; readonly told: string } | undefined => {
  if (!(error instanceof Error) || error.name !== "RatewrightError") {
    return { wrong: "foreign error", told: String(error).slice(0, 100) };
  }
  const { code, path } = error as Error & { readonly code?: unknown; readonly path?: unknown };
  if (!codes.has(code)) return { wrong: "unknown code", told: String(code) };
  if (typeof path !== "string" || path === "") return { wrong: "no path", told: error.message.slice(0, 100) };
  const { problems } = error as Error & { readonly problems?: readonly { readonly expected?: unknown }[] };
  const mute = problems?.find(({ expected }) => typeof expected !== "string" || expected.trim() === "");
  if (mute !== undefined) return { wrong: "no words", told: `${path}: what would have been right?` };
  if (error.message.length > longestMessage)
    return { wrong: "long message", told: `${error.message.length} letters` };
  return undefined;
};

/** A problem as far as it is looked at here. */
interface Told {
  readonly code: string;
  readonly path: string;
  readonly expected: string;
  readonly suggestion?: string;
  readonly choices?: unknown;
  readonly params?: Readonly<Record<string, unknown>>;
}

/** The problems of an error that are out of range and tell no bound of it. */
export const boundless = (error: unknown): readonly Told[] => {
  const { problems } = Object(error) as { readonly problems?: readonly Told[] };
  const bounds = ["min", "max", "above", "below", "step"];
  return (problems ?? []).filter(
    ({ code, choices, params }) =>
      code === "range" && choices === undefined && !bounds.some((bound) => params?.[bound] !== undefined),
  );
};

type Fields = Readonly<Record<string | number, unknown>>;

/** The segments of a path: `treatments[0].rate` has `treatments`, `[0]` and `rate`. */
const segmentsOf = (path: string): readonly string[] => path.match(/\[[^\]]*\]|[^.[\]]+/g) ?? [];

const segmentOf = (key: string | number): string => (typeof key === "number" ? `[${key}]` : key);

/** Whether something is a quantity or what JSON left of one: its value, unit and substance have no path of their own. */
const isAmount = (value: unknown): boolean => {
  if (isQuantity(value)) return true;
  const names = Object.keys(Object(value) as object);
  return names.includes("value") && names.includes("unit") && names.every((name) => amountParts.has(name));
};
const amountParts: ReadonlySet<string> = new Set(["value", "unit", "of"]);

/** The place that a path has to name: that of the quantity for a part of one, that of the record for its type or version. */
const placeToName = (given: unknown, place: readonly (string | number)[]): readonly (string | number)[] => {
  const above = place.slice(0, -1);
  const last = place[place.length - 1];
  const parent = above.reduce<unknown>((value, key) => (Object(value) as Fields)[key], given);
  const ofItsRecord = isAmount(parent) || ((last === "type" || last === "version") && above.length > 0);
  return ofItsRecord ? above : place;
};

/** Whether a path begins with these segments, or has them behind the name of an argument. */
const names = (path: string, wanted: readonly string[]): boolean => {
  const segments = segmentsOf(path);
  return [0, 1].some((from) => wanted.every((segment, n) => segments[from + n] === segment));
};

/** Whether a problem of the same record, or of one that it stands in, says the name of a field that is not there. */
const asksFor = (problem: Told, wanted: readonly string[]): boolean => {
  const { path, expected, suggestion = "" } = problem;
  const words = `${expected} ${suggestion}`.split(/[^\w:-]+/);
  const near = wanted.length === 1 || names(path, wanted.slice(0, 1));
  return near && words.includes(wanted[wanted.length - 1] ?? "");
};

/** The problems of a refusal that does not name the place that is wrong, and that place. */
export interface Misplaced {
  readonly place: string;
  readonly told: readonly { readonly path: string; readonly code: string }[];
}

/**
 * The paths of a refusal where none of them names the place that is wrong, or nothing where one does. What is absent may be
 * told at another place of its record, if the words ask for it by name. An argument itself may have any path.
 */
export const misplaced = (
  error: unknown,
  given: unknown,
  place: readonly (string | number)[],
  missed: boolean,
): Misplaced | undefined => {
  const { problems } = Object(error) as { readonly problems?: readonly Told[] };
  const due = placeToName(given, place);
  const wanted = due.slice(1).map(segmentOf);
  if (problems === undefined || wanted.length === 0) return undefined;
  if (problems.some(({ path }) => names(path, wanted))) return undefined;
  if (missed && problems.some((problem) => asksFor(problem, wanted))) return undefined;
  return { place: due.join("."), told: problems };
};

/** What is wrong with the words of a refusal as a text: a gap where a word should be. */
const gaps: readonly RegExp[] = [
  /^\s*$|^\s|\s$| {2}/,
  /^[,.;:)]|[,;:(]$/,
  / [,;:)]| \.(?!\.)/,
  /(?<!\w)\(\s*\)|\[\s*\]|""|``|''/,
  /, ,|: ,|,,/,
  /^(?:of|and|or)\b|(?<![\w:-])(?:and|or|a|an|the)$|\b(?:quantity|fields|one|rate|amount|parts) of$/,
  /\bundefined\b|\bNaN\b|\bInfinity\b|\[object /,
];

/** The words of a refusal that have a gap in them, and a path that has one. */
export const gappy = (error: unknown): readonly string[] => {
  const { problems } = Object(error) as { readonly problems?: readonly Told[] };
  return (problems ?? []).flatMap(({ path, expected, suggestion }) => [
    ...(/\.\.|^\.|\.$|\.\[/.test(path) ? [path] : []),
    ...[expected, suggestion ?? "none"].filter((text) => gaps.some((gap) => gap.test(text))),
  ]);
};

/** A result as a text that two equal results share. */
export const textOf = (value: unknown): string => {
  const seen = new Set<unknown>();
  const plain = (inner: unknown): unknown => {
    if (typeof inner === "number")
      return Object.is(inner, -0) || !Number.isFinite(inner) ? String(inner) : inner;
    if (typeof inner === "function" || typeof inner === "symbol" || typeof inner === "bigint")
      return typeof inner;
    if (typeof inner !== "object" || inner === null) return inner;
    if (seen.has(inner)) return "again";
    seen.add(inner);
    const made = isQuantity(inner)
      ? inner.toJSON()
      : ArrayBuffer.isView(inner)
        ? Array.from(inner as Float64Array)
        : Array.isArray(inner)
          ? inner.map(plain)
          : inner instanceof Map
            ? [...inner].map(plain)
            : Object.fromEntries(Object.entries(inner).map(([key, field]) => [key, plain(field)]));
    seen.delete(inner);
    return made;
  };
  return JSON.stringify(plain(value)) ?? "undefined";
};

/** The issues of a Standard Schema each have a message and a path, a list of names. */
const issueFault = (result: unknown): { readonly wrong: Wrong; readonly told: string } | undefined => {
  const { issues } = Object(result) as { readonly issues?: unknown };
  if (!Array.isArray(issues)) return undefined;
  const bad =
    issues.length === 0 ||
    issues.some(
      (issue: { readonly message?: unknown; readonly path?: unknown }) =>
        typeof issue.message !== "string" || issue.message === "" || !Array.isArray(issue.path),
    );
  return bad
    ? { wrong: "issue without a message or a path", told: JSON.stringify(issues).slice(0, 100) }
    : undefined;
};

/** Whether a result is a list of problems, or carries one: the call was refused, though nothing was thrown. */
export const isRefusal = (result: unknown): boolean => {
  const { problems = result } = Object(result) as { readonly problems?: unknown };
  return Array.isArray(problems) && problems.length > 0 && "expected" in Object(problems[0]);
};

/** What is wrong with an outcome; `meant` is the answer of the valid call where the fault changes nothing about what is meant. */
export const wrongIn = (
  outcome: Outcome,
  put: unknown,
  meant: string | undefined,
): { readonly wrong: Wrong; readonly told: string } | undefined => {
  if (outcome.error !== undefined) return faultOf(outcome.error);
  const rotten = rot(outcome.result, put);
  if (rotten !== undefined) return rotten;
  const issue = issueFault(outcome.result);
  if (issue !== undefined) return issue;
  if (meant === undefined || isRefusal(outcome.result)) return undefined;
  const now = textOf(outcome.result);
  return now === meant
    ? undefined
    : { wrong: "another answer", told: `${now.slice(0, 60)} for ${meant.slice(0, 60)}` };
};

/** The places of a value where a text is empty. The head of a column and the cell of a sheet may be. */
export const emptyTexts = (value: unknown, at: string): readonly string[] => {
  const seen = new Set<unknown>();
  const open: { readonly value: unknown; readonly at: string }[] = [{ value, at }];
  const found: string[] = [];
  for (let n = 0; n < mostLooked && open.length > 0; n += 1) {
    const next = open.pop();
    if (next === undefined) break;
    if (next.value === "" && !/\.(heads|cells)\.\d+$/.test(next.at)) found.push(next.at);
    if (typeof next.value !== "object" || next.value === null || ArrayBuffer.isView(next.value)) continue;
    if (seen.has(next.value)) continue;
    seen.add(next.value);
    const entries = next.value instanceof Map ? [...next.value] : Object.entries(next.value);
    for (const [key, inner] of entries) open.push({ value: inner, at: `${next.at}.${String(key)}` });
  }
  return found;
};
