// One file, for the calls that work are listened to once, which takes seconds; of what is built, the spoilt calls alone.
import process from "node:process";

await import("./matrix.js");
if (process.env.WALLS_PACKAGE === undefined) {
  await import("./missing.js");
  await import("./unknown-fields.js");
}
