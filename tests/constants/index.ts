export { isAsPrinted } from "./check.js";

import type { ConstantCheck } from "./check.js";
import { imperialChecks } from "./imperial.js";
import { unitChecks } from "./units.js";

/** Every figure that is transcribed a second time, by room in a file of its own. */
export const constantChecks: readonly ConstantCheck[] = [...unitChecks, ...imperialChecks];
