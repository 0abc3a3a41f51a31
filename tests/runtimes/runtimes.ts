// The runtimes, and how each is started.
import { spawn, spawnSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { createServer } from "node:net";
import { basename, join } from "node:path";
import { chromium } from "playwright-core";
import ts from "typescript";

/** The set as programs. */
export interface Bundles {
  readonly folder: string;
  /** Imports the installed package and prints the answer. */
  readonly importing: string;
  /** An ES module with everything in it, which exports `answer`. */
  readonly module: string;
  /** A script with everything in it, which sets `ratewrightAnswer`. */
  readonly script: string;
}

/** A runtime that may be had. */
export interface Runtime {
  readonly name: string;
  readonly engine: string;
  /** What is installed for it, from the registry. */
  readonly packages: readonly string[];
  /** Runs the set; `folder` is where its packages lie. */
  readonly run: (
    parts: Bundles,
    folder: string,
  ) => Promise<{ readonly answer: string; readonly version: string }>;
}

const run = (folder: string, program: string, ...args: readonly string[]): string => {
  const { status, stdout, stderr, error } = spawnSync(program, args, {
    cwd: folder,
    encoding: "utf8",
    maxBuffer: 2 ** 28,
    timeout: 120_000,
  });
  if (status !== 0)
    throw new Error(error?.message ?? `${basename(program)} stopped: ${stderr.trim().slice(-300)}`);
  return stdout.trim();
};

const program = (folder: string, path: string): string => join(folder, "node_modules", path);

/** A program that runs `importing.mjs` beside the installed package. */
const direct =
  (find: (folder: string) => string, args: readonly string[] = [], version = ["--version"]): Runtime["run"] =>
  async (parts, folder) => {
    const at = find(folder);
    return {
      answer: run(parts.folder, at, ...args, parts.importing),
      version: /\d+\.\d+\.\d+/.exec(run(parts.folder, at, ...version))?.[0] ?? "",
    };
  };

const nodeOf = (major: number): Runtime => ({
  name: `Node ${major}`,
  engine: "V8",
  packages: [`node@${major}`],
  run: direct((folder) => program(folder, "node/bin/node")),
});

const inChromium =
  (inWorker: boolean): Runtime["run"] =>
  async ({ script }) => {
    const browser = await chromium.launch({ executablePath: "/usr/bin/chromium", args: ["--no-sandbox"] });
    try {
      const page = await browser.newPage();
      const code = readFileSync(script, "utf8");
      const answer = await page.evaluate(
        async ([text, worker]) => {
          if (!worker) return (new Function(`${text}; return ratewrightAnswer();`) as () => string)();
          const body = `${text}; postMessage(ratewrightAnswer());`;
          const start = new Function(
            "code",
            "done",
            "failed",
            "const thread = new Worker(URL.createObjectURL(new Blob([code], { type: 'text/javascript' }))); thread.onmessage = ({ data }) => done(data); thread.onerror = ({ message }) => failed(new Error(message));",
          ) as (code: string, done: (answer: string) => void, failed: (error: Error) => void) => void;
          return await new Promise<string>((done, failed) => {
            start(body, done, failed);
          });
        },
        [code, inWorker] as const,
      );
      return { answer, version: browser.version() };
    } finally {
      await browser.close();
    }
  };

const freePort = (): Promise<number> =>
  new Promise((done, failed) => {
    const server = createServer();
    server.once("error", failed);
    server.listen(0, "127.0.0.1", () => {
      const address = server.address();
      server.close(() => done(typeof address === "object" && address !== null ? address.port : 0));
    });
  });

const inWorkerd: Runtime["run"] = async (parts, folder) => {
  const port = await freePort();
  writeFileSync(
    join(parts.folder, "worker.mjs"),
    'import { answer } from "./whole.mjs";\nexport default { fetch: () => new Response(answer()) };\n',
  );
  writeFileSync(
    join(parts.folder, "workerd.capnp"),
    `using Workerd = import "/workerd/workerd.capnp";
const config :Workerd.Config = (
  services = [(name = "main", worker = (
    modules = [(name = "worker.mjs", esModule = embed "worker.mjs"), (name = "./whole.mjs", esModule = embed "whole.mjs")],
    compatibilityDate = "2025-01-01",
  ))],
  sockets = [(name = "http", address = "127.0.0.1:${port}", http = (), service = "main")],
);
`,
  );
  const at = program(folder, "workerd/bin/workerd");
  const version = /\d{4}-\d\d-\d\d|\d+\.\d+\.\d+/.exec(run(parts.folder, at, "--version"))?.[0] ?? "";
  const server = spawn(at, ["serve", "workerd.capnp"], {
    cwd: parts.folder,
    stdio: ["ignore", "ignore", "pipe"],
  });
  let said = "";
  server.stderr.on("data", (text: Buffer) => {
    said += text.toString();
  });
  try {
    for (let i = 0; i < 100; i++) {
      const response = await fetch(`http://127.0.0.1:${port}/`).catch(() => undefined);
      if (response?.ok) return { answer: await response.text(), version };
      if (response !== undefined || server.exitCode !== null) break;
      await new Promise((later) => setTimeout(later, 100));
    }
    throw new Error(`workerd gave no answer: ${said.slice(-300)}`);
  } finally {
    server.kill();
  }
};

interface QuickJsValue {
  readonly error?: unknown;
  readonly value?: unknown;
}
interface QuickJs {
  readonly newContext: () => {
    evalCode(code: string): QuickJsValue;
    dump(handle: unknown): unknown;
  };
}

const inQuickJs: Runtime["run"] = async ({ script }, folder) => {
  const load = createRequire(join(folder, "package.json"));
  const { getQuickJS } = load("quickjs-emscripten") as { getQuickJS: () => Promise<QuickJs> };
  const context = (await getQuickJS()).newContext();
  const code = `${readFileSync(script, "utf8")}; ratewrightAnswer()`;
  const { error, value } = context.evalCode(code);
  if (error !== undefined) throw new Error(JSON.stringify(context.dump(error)));
  const { version } = load("quickjs-emscripten/package.json") as { version: string };
  return { answer: String(context.dump(value)), version };
};

/** The set as the tools of an app for phones, or of an old browser, make it: classes are functions. */
const inEs5 = ({ script }: Bundles): string =>
  ts.transpileModule(readFileSync(script, "utf8"), {
    compilerOptions: { target: ts.ScriptTarget.ES5, downlevelIteration: true, module: ts.ModuleKind.None },
  }).outputText;

const inHermes: Runtime["run"] = async (parts, folder) => {
  writeFileSync(join(folder, "whole.js"), `${inEs5(parts)}\nprint(ratewrightAnswer());\n`);
  const at = program(folder, "hermes-engine-cli/linux64-bin/hermes");
  return {
    answer: run(folder, at, "-w", "whole.js"),
    version: /release version: ([\d.]+)/.exec(run(folder, at, "--version"))?.[1] ?? "",
  };
};

const compiledDown: Runtime["run"] = async (parts) => {
  const file = join(parts.folder, "whole-es5.cjs");
  writeFileSync(file, `${inEs5(parts)}\nconsole.log(ratewrightAnswer());\n`);
  return { answer: run(parts.folder, process.execPath, file), version: process.versions.node };
};

/** What is here anyway: the first is what the others are compared with. */
export const hereRuntimes: readonly Runtime[] = [
  {
    name: `Node ${process.versions.node.split(".")[0]}`,
    engine: "V8",
    packages: [],
    run: direct(() => process.execPath),
  },
  {
    name: `Node ${process.versions.node.split(".")[0]}, compiled to ES5`,
    engine: "V8",
    packages: [],
    run: compiledDown,
  },
  { name: "Chromium, a page", engine: "V8", packages: [], run: inChromium(false) },
  { name: "Chromium, a worker", engine: "V8", packages: [], run: inChromium(true) },
];

/** What the registry carries as packages. */
export const registryRuntimes: readonly Runtime[] = [
  ...[20, 22, 24].filter((major) => !process.versions.node.startsWith(`${major}.`)).map(nodeOf),
  {
    name: "Deno",
    engine: "V8",
    packages: ["deno"],
    run: direct(
      (folder) => program(folder, "@deno/linux-x64-glibc/deno"),
      ["run", "--node-modules-dir=manual", "--allow-read"],
    ),
  },
  { name: "workerd", engine: "V8", packages: ["workerd"], run: inWorkerd },
  {
    name: "Bun",
    engine: "JavaScriptCore",
    packages: ["bun"],
    run: direct((folder) => program(folder, "bun/bin/bun.exe")),
  },
  { name: "QuickJS", engine: "QuickJS", packages: ["quickjs-emscripten"], run: inQuickJs },
  { name: "Hermes", engine: "Hermes", packages: ["hermes-engine-cli"], run: inHermes },
];
