// What is said of the other libraries; peers.ts tries it.

/** A library, and what it refuses: a mass for an area, and a typed text that is no weight to its end. */
export interface Peer {
  readonly name: string;
  readonly compileTime: boolean;
  readonly runTime: "yes" | "no";
  /** Whether it refuses `5 lb acre` where kilograms are wanted; a dash where it reads no text. */
  readonly text: "yes" | "no" | "-";
}

/** The libraries, those that the compiler checks first. */
export const peers: readonly Peer[] = [
  { name: "safe-units", compileTime: true, runTime: "no", text: "-" },
  { name: "@buge/ts-units", compileTime: true, runTime: "no", text: "-" },
  { name: "uom", compileTime: true, runTime: "no", text: "-" },
  { name: "convert", compileTime: true, runTime: "yes", text: "no" },
  { name: "unitmath", compileTime: false, runTime: "yes", text: "yes" },
  { name: "mathjs", compileTime: false, runTime: "yes", text: "yes" },
  { name: "js-quantities", compileTime: false, runTime: "yes", text: "yes" },
];
