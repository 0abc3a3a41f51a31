// A server of files for the browser, on this machine alone.
import { readFileSync } from "node:fs";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join, normalize } from "node:path";

const types: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".svg": "image/svg+xml",
  ".json": "application/json",
};

/** A folder, served. */
export interface Served {
  /** `http://127.0.0.1:40123/`. */
  readonly address: string;
  readonly close: () => Promise<void>;
}

/** Serves the files of a folder. */
export const serve = async (folder: string): Promise<Served> => {
  const server: Server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? "/", "http://localhost");
    const path = normalize(decodeURIComponent(pathname)).replace(/\/$/, "/index.html");
    try {
      const body = readFileSync(join(folder, path));
      response.writeHead(200, { "content-type": types[extname(path)] ?? "application/octet-stream" });
      response.end(body);
    } catch {
      response.writeHead(404).end("no such file");
    }
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port } = server.address() as AddressInfo;
  return {
    address: `http://127.0.0.1:${port}/`,
    close: () =>
      new Promise((resolve, reject) => server.close((error) => (error ? reject(error) : resolve()))),
  };
};
