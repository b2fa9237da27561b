// Which words does a text use? English that notes each code that is read from it.
import type { Catalogue } from "hvac-install-math/assessment";
import { english } from "hvac-install-math/language/en";

/** English, and the codes that were read from it so far. */
export function listening(): { readonly language: typeof english; readonly heard: Set<string> } {
  const heard = new Set<string>();
  const messages: Catalogue["messages"] = new Proxy(
    { ...english.messages },
    {
      get(target, code) {
        if (typeof code === "string") heard.add(code);
        return Reflect.get(target, code);
      },
    },
  );
  return { language: { ...english, messages } as typeof english, heard };
}
