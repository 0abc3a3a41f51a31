// docs/runtimes.md, drawn from results.json.
import { type Compared, exactOperations } from "./compare.js";

/** What a run came to. */
export interface RuntimeResults {
  readonly ran: readonly Compared[];
  readonly missing: readonly { readonly name: string; readonly why: string }[];
}

const most = (ulps: Compared["ulps"], names: (operation: string) => boolean): number =>
  Math.max(...Object.entries(ulps).flatMap(([name, apart]) => (names(name) ? [apart] : [])));

const row = ({ name, version, engine, figures, equal, farthest, ulps, wrong }: Compared): string => {
  const exact = most(ulps, (operation) => exactOperations.includes(operation));
  const rest = most(ulps, (operation) => !exactOperations.includes(operation));
  return `| ${name} | ${version} | ${engine} | ${exact === 0 ? "equal" : exact} | ${rest === 0 ? "equal" : rest} | ${figures - wrong.length} of ${figures} | ${equal} | ${farthest === 0 ? "-" : farthest.toExponential(1)} |`;
};

const apart = ({ ran }: RuntimeResults): string => {
  const lines = ran.flatMap(({ name, ulps }) => {
    const off = Object.entries(ulps).filter(([, steps]) => steps > 0);
    return off.length === 0
      ? []
      : [`- ${name}: ${off.map(([what, steps]) => `${what} ${steps}`).join(", ")}.`];
  });
  return lines.length === 0 ? "No runtime differs from another in any of them." : lines.join("\n");
};

/** The page. */
export const runtimesPage = (
  results: RuntimeResults,
): string => `# Where it runs, and whether the figures are the same

| question | answer |
| --- | --- |
| Does it run in my runtime? | the table below; anything with ES2020 and no built-in module of Node is enough |
| Do I get the same figures on a phone and on a server? | the published ones, yes; the last digits may differ where an engine computes exp, log or a sine in its own way |
| What needs \`Intl\`? | \`format\` and the texts and sheets for people; the figures do not |

The packed package is installed in an empty folder, and the same set runs in each runtime: arithmetic and functions on
400 numbers each, and the ${(results.ran[0]?.figures ?? 0).toLocaleString("en-US")} published figures of [check-values.json](check-values.md), of every room. Every result is written down
bit by bit and compared with Node's (the first row).

| runtime | version | engine | + - x / and square root | exp, log, trigonometry: most units in the last place apart | published figures met | of them equal to the last bit | the farthest, in parts of the figure |
| --- | --- | --- | --- | --- | --- | ---: | ---: |
${results.ran.map(row).join("\n")}

The standard of JavaScript leaves the last digits of exp, log and the trigonometric functions to the engine. Where they are not
Node's, in units of the last place at most:

${apart(results)}

Hermes is the engine of React Native; it ran as an app has it: with classes turned into functions by the tools of the app, and
without \`Intl\`, which the app brings.

Not run:

${results.missing.map(({ name, why }) => `- ${name}: ${why}`).join("\n")}${results.missing.length > 0 ? "\n" : ""}- Safari and Firefox themselves: no package carries them. Bun has the engine of Safari.

\`npm run runtimes\` runs it again (it fetches the runtimes into a temporary folder), and \`npm run runtimes:page\` draws this page.
`;
