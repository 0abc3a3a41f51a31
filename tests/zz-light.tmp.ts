const suite = { collected: [] as { name: string; run: () => unknown }[] };
(globalThis as any).__suite = suite;
const files = process.argv.slice(2);
for (const f of files) await import(f.startsWith("/") ? f : process.cwd() + "/" + f);
let bad = 0;
for (const t of suite.collected) {
  try { await t.run(); } catch (e) { bad++; const m = String((e as Error).message ?? e); console.log("✗", t.name, "\n     ", m.slice(0, 700), (e as any).actual !== undefined ? "\n      actual " + JSON.stringify((e as any).actual)?.slice(0,900) + "\n      expected " + JSON.stringify((e as any).expected)?.slice(0,900) : ""); }
}
console.log(`${suite.collected.length - bad} of ${suite.collected.length} hold`);
