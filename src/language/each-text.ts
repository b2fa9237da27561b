// How is each text of a catalogue written anew, and all else kept? For the marks of a language and another country.
// Follows the shape of a message. Does not cover what is written: typeset.ts and vary.ts say that.
import type { Message } from "../assessment/catalogue.ts";

/** The messages with `write` done to every text; which value chooses a variant stays. */
export function eachText(
  messages: Readonly<Record<string, Message>>,
  write: (text: string) => string,
): Record<string, Message> {
  const inMessage = (message: Message): Message =>
    typeof message === "string"
      ? write(message)
      : (mapped(message, (text, name) => (name === "by" ? text : write(text))) as Message);
  return mapped(messages, inMessage);
}

const mapped = <T>(all: Readonly<Record<string, T>>, change: (one: T, name: string) => T) =>
  Object.fromEntries(Object.entries(all).map(([name, one]) => [name, change(one, name)]));
