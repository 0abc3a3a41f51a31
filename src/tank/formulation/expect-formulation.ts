import { fail } from "../../quantity/index.js";
import { type Formulation, isFormulation } from "./formulation.js";

/** Takes an argument as a kind of formulation, or throws with its path. */
export const expectFormulation = (input: unknown, path: string): Formulation =>
  isFormulation(input)
    ? input
    : fail(
        "type",
        path,
        input,
        "a kind of formulation, such as WP, SC or surfactant; formulationOf reads codes",
      );
