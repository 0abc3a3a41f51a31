import type { Quantity } from "./quantity.js";

/** A length of ground, of a row, of a boom: `Quantity<"length", "none">`. */
export type Length = Quantity<"length", "none">;
/** An area of ground as it is measured: `Quantity<"area", "none">`. */
export type Area = Quantity<"area", "none">;
/** The room that something takes up or holds, whatever fills it: `Quantity<"volume", "none">`. */
export type Volume = Quantity<"volume", "none">;
/** How long something lasts: `Quantity<"time", "none">`. */
export type Time = Quantity<"time", "none">;
/** How fast something moves: `Quantity<"length/time", "none">`. */
export type Speed = Quantity<"length/time", "none">;
/** The pressure of a liquid or of the air: `Quantity<"pressure", "none">`. */
export type Pressure = Quantity<"pressure", "none">;
/** How warm something is: `Quantity<"temperature", "none">`. */
export type Temperature = Quantity<"temperature", "none">;
/** A share of a whole, such as 75 %: `Quantity<"1", "none">`. */
export type Share = Quantity<"1", "none">;
