// Starts the service: `npm start` in this folder, or `npm start -- 8080 records.db` for a port and a file that stays.
import type { Server } from "node:http";
import { serve } from "@hono/node-server";
import { createApp } from "./app.ts";
import { openStore } from "./store.ts";

const [port = "3000", file = ":memory:"] = process.argv.slice(2);
const store = openStore(file);
const server = serve({ fetch: createApp(store).fetch, port: Number(port) }, ({ port: own }) => {
  process.stdout.write(`http://localhost:${own}, records in ${file}\n`);
}) as Server;

// A client that sends a byte now and then does not hold a connection for long.
server.requestTimeout = 10_000;
server.headersTimeout = 5_000;

for (const signal of ["SIGINT", "SIGTERM"] as const) {
  process.once(signal, () => {
    server.close(() => store.close());
    server.closeIdleConnections();
  });
}
