// What the tests use of oracles that come without types.

declare module "js-quantities" {
  interface Quantities {
    readonly scalar: number;
    to(unit: string): Quantities;
    mul(other: Quantities): Quantities;
    toBase(): Quantities;
    isCompatible(other: Quantities | string): boolean;
  }
  const Qty: (value: number | string, unit?: string) => Quantities;
  export default Qty;
}

declare module "@lhncbc/ucum-lhc" {
  interface Converted {
    readonly status: "succeeded" | "failed" | "error";
    readonly toVal: number | null;
    readonly msg: readonly string[];
  }
  interface Validated {
    readonly status: "valid" | "invalid" | "error";
    readonly ucumCode: string | null;
    readonly msg: readonly string[];
  }
  interface Utilities {
    convertUnitTo(from: string, value: number, to: string): Converted;
    validateUnitString(code: string): Validated;
  }
  const ucum: { readonly UcumLhcUtils: { getInstance(): Utilities } };
  export default ucum;
}

declare module "unitmath" {
  interface UnitMath {
    to(unit: string): UnitMath;
    mul(other: UnitMath): UnitMath;
    getValue(): number;
    toString(): string;
  }
  const unit: (value: number | string, unit?: string) => UnitMath;
  export default unit;
}
