// The playground of the front page: an example to change and run. The code runs in a worker that has the built package,
// so that the page stays alive whatever is typed. Does not cover how the code is run: docs/playground/worker.mjs.
{
  const place = document.querySelector(".playground");
  const limit = 10_000; // ms, the first run fetches the package
  const linesOf = (code) => {
    const copy = code.cloneNode(true);
    for (const end of copy.querySelectorAll("br")) end.replaceWith("\n");
    return copy.textContent.trim();
  };
  const examples = [...document.querySelectorAll(".first-screen pre code")].map((code) => ({
    code: linesOf(code),
    name:
      code.closest("pre").previousElementSibling?.querySelector("strong")?.textContent ?? "Example",
  }));

  const make = (tag, properties = {}, ...inside) => {
    const one = Object.assign(document.createElement(tag), properties);
    one.append(...inside);
    return one;
  };
  const code = make("textarea", {
    id: "playground-code",
    spellcheck: false,
    rows: 20,
    value: examples[0]?.code ?? "",
  });
  const output = make("output", { htmlFor: "playground-code", tabIndex: 0, ariaLabel: "Results" });
  const run = make("button", { type: "button", textContent: "Run" });
  const choices = examples.map(({ name, code: text }) =>
    make("button", { type: "button", textContent: name, onclick: () => choose(text) }),
  );
  function choose(text) {
    code.value = text;
    output.replaceChildren();
  }

  const line = (words, kind) => make("p", { className: kind, textContent: words });

  function start() {
    run.disabled = true;
    output.replaceChildren(line("Running …", "note"));
    const worker = new Worker(`${base}assets/playground/worker.js`, { type: "module" });
    const end = (...lines) => {
      clearTimeout(timer);
      worker.terminate();
      run.disabled = false;
      output.replaceChildren(...lines);
    };
    const timer = setTimeout(() => end(line("Stopped after 10 s.", "error")), limit);
    worker.onmessage = ({ data: { results, error } }) =>
      end(
        ...results.map(({ what, value }) => line(`${what} → ${value}`, "result")),
        ...(error ? [line(error, "error")] : []),
        ...(results.length === 0 && !error
          ? [line("Nothing to show: end a line with // => to see its value.", "note")]
          : []),
      );
    worker.onerror = () =>
      end(
        line(
          "The package could not be loaded. Opened from a folder, this page can't run code: serve it.",
          "error",
        ),
      );
    worker.postMessage(code.value);
  }
  run.onclick = start;
  code.onkeydown = (event) => {
    if (event.key === "Enter" && (event.ctrlKey || event.metaKey)) start();
  };

  place.replaceChildren(
    make("p", { className: "choices" }, "Start from: ", ...choices),
    make("label", {
      htmlFor: "playground-code",
      textContent: "Code (JavaScript; // => at the end of a line shows its value)",
    }),
    code,
    make(
      "p",
      {},
      run,
      make("small", { textContent: " or Ctrl + Enter. It runs in this browser and goes nowhere." }),
    ),
    output,
  );
}
