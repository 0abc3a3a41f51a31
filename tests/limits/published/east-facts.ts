import { nitrogen, phosphate, phosphorus } from "./law.js";

// Facts and days that the laws of the eastern states share.

export const efficientN = { productKind: "enhanced-efficiency nitrogen" } as const;
export const efficientP = { productKind: "enhanced-efficiency phosphorus" } as const;
export const organic = { productKind: "organic" } as const;
export const conventional = { productKind: "conventional" } as const;
export const professional = { applicator: "professional" } as const;
export const homeowner = { applicator: "homeowner" } as const;
export const old = { turf: "established" } as const;
export const sown = { turf: "being established" } as const;
export const repair = { turf: "repair" } as const;
export const wide = { equipment: "rotary spreader" } as const;
export const narrow = [
  { equipment: "drop spreader" },
  { equipment: "rotary spreader with deflector" },
  { equipment: "targeted spray" },
] as const;
export const both = [nitrogen(0.3), phosphorus(0.1), phosphate(0.1)];

/** Before 1 March or after 15 November; leap years have one winter day more. */
export const winter = ["2026-11-16", "2026-12-31", "2027-01-01", "2027-02-28", "2028-02-29"] as const;
export const summer = ["2027-03-01", "2026-06-08", "2026-11-15"] as const;
/** Before 1 March or after 1 December. */
export const lateWinter = ["2026-12-02", "2027-01-01", "2027-02-28", "2028-02-29"] as const;
export const longSummer = ["2027-03-01", "2026-11-16", "2026-12-01"] as const;
