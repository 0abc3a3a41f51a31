// What the measurements are asked, and what they come to.

/** An array kernel beside a loop written by hand. */
export interface KernelRow {
  readonly name: string;
  /** What is counted: a day, an area. */
  readonly of: string;
  readonly items: number;
  readonly hand: () => unknown;
  readonly own: () => unknown;
  /** One figure of each, which must agree, or the comparison is worth nothing. */
  readonly results: readonly (() => number)[];
}

/** The quarters of several readings. */
export interface Reading {
  readonly low: number;
  readonly median: number;
  readonly high: number;
}

/** So many calls are made of a piece of work of a millisecond before it is measured. */
export const warmCalls = 10_000;

/** What the row is called that is not measured so. */
export const firstOrderName = "the first work order of a process, its package loaded";

/** How one library does one of the tasks. */
export interface Way {
  readonly library: string;
  /** What it is called with: the place in the lists of numbers. */
  readonly work: (i: number) => unknown;
}

/** A task that the libraries share. */
export interface Task {
  readonly name: string;
  readonly what: string;
  readonly ways: readonly Way[];
}

/** What one run came to, kept in results.json. Times in nanoseconds unless the name says otherwise. */
export interface Results {
  readonly machine: { readonly cpu: string; readonly cores: number; readonly memoryGiB: number };
  readonly system: string;
  readonly node: string;
  readonly v8: string;
  readonly versions: Readonly<Record<string, string>>;
  readonly tasks: readonly {
    readonly name: string;
    readonly what: string;
    readonly ways: readonly { readonly library: string; readonly ns: Reading }[];
  }[];
  readonly kernels: readonly {
    readonly name: string;
    readonly of: string;
    readonly hand: Reading;
    readonly own: Reading;
    /** The kernel's time over the loop's, of each round. */
    readonly ratio: Reading;
  }[];
  readonly memory: readonly {
    readonly name: string;
    readonly days: readonly number[];
    readonly bytes: readonly number[];
  }[];
  readonly jobs: readonly { readonly name: string; readonly aim?: number; readonly ms: Reading }[];
  readonly growth: readonly {
    readonly name: string;
    readonly of: string;
    readonly points: readonly { readonly size: number; readonly ms: number }[];
  }[];
  readonly opening: readonly { readonly name: string; readonly ms: Reading }[];
}
