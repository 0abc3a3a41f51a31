// What the neighbors and the floors above use of this room, and the world does not.
export { fertilizerFields } from "./label/fertilizer.js";
