// What is said of the other libraries; peers.ts tries it.

/** A library, and what it refuses where a mass stands for an area. */
export interface Peer {
  readonly name: string;
  readonly compileTime: boolean;
  readonly runTime: "yes" | "no";
}

/** The libraries, those that the compiler checks first. */
export const peers: readonly Peer[] = [
  { name: "safe-units", compileTime: true, runTime: "no" },
  { name: "@buge/ts-units", compileTime: true, runTime: "no" },
  { name: "uom", compileTime: true, runTime: "no" },
  { name: "convert", compileTime: true, runTime: "yes" },
  { name: "unitmath", compileTime: false, runTime: "yes" },
  { name: "mathjs", compileTime: false, runTime: "yes" },
  { name: "js-quantities", compileTime: false, runTime: "yes" },
];
