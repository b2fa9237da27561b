// Debian's Chromium for the tests that look at pages, and a server for the folder that they stand in.
import { createReadStream, existsSync, statSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join, normalize } from "node:path";
import { type Browser, chromium, type Page } from "playwright-core";

const flags = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** Starts Chromium without a window. `CHROMIUM` names another binary than Debian's. */
export function launch(): Promise<Browser> {
  const executablePath = process.env.CHROMIUM ?? "/usr/bin/chromium";
  return chromium.launch({ executablePath, headless: true, args: flags });
}

const types: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript",
  ".css": "text/css",
  ".svg": "image/svg+xml",
  ".json": "application/json",
};

/** Serves a folder on the loopback address. */
export async function serve(folder: string): Promise<{ address: string; close: () => void }> {
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? "/", "http://localhost");
    let file = join(folder, normalize(decodeURIComponent(pathname)));
    if (existsSync(file) && statSync(file).isDirectory()) file = join(file, "index.html");
    if (!existsSync(file)) {
      response.writeHead(404).end();
      return;
    }
    response.writeHead(200, { "content-type": types[extname(file)] ?? "application/octet-stream" });
    createReadStream(file).pipe(response);
  });
  await new Promise<void>((done) => server.listen(0, "127.0.0.1", done));
  const { port } = server.address() as AddressInfo;
  return { address: `http://127.0.0.1:${port}`, close: () => server.close() };
}

/** What went wrong on a page: console errors, uncaught errors, requests that failed or left the machine. */
export function troubles(page: Page): string[] {
  const found: string[] = [];
  page.on("console", (message) => {
    if (message.type() === "error") found.push(`console: ${message.text()}`);
  });
  page.on("pageerror", (error) => found.push(`error: ${error.message}`));
  page.on("requestfailed", (request) => found.push(`failed: ${request.url()}`));
  page.on("request", (request) => {
    const { protocol, hostname } = new URL(request.url());
    const isLocal =
      hostname === "127.0.0.1" || ["file:", "data:", "blob:", "about:"].includes(protocol);
    if (!isLocal) found.push(`outside request: ${request.url()}`);
  });
  return found;
}
