// Starts the app: the job as it was left, in the reader's language, and the service worker that keeps it offline.
import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { App } from "./app.tsx";
import { newJob } from "./job.ts";
import { readerFor } from "./reader.ts";
import { load } from "./store.ts";

const root = createRoot(document.getElementById("app") as HTMLElement);
try {
  const first = (await load()) ?? newJob();
  const firstReader = await readerFor(first);
  root.render(
    <StrictMode>
      <App first={first} firstReader={firstReader} />
    </StrictMode>,
  );
} catch (error) {
  // A record that a newer version wrote: nothing is drawn over it, nothing is stored.
  const { words } = await readerFor(newJob());
  root.render(
    <main role="alert">
      <p>{words.unreadable}</p>
      <pre>{(error as Error).message}</pre>
    </main>,
  );
}
if (import.meta.env.PROD) await navigator.serviceWorker?.register("./service-worker.js");
