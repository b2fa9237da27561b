// How is French set? The no-break spaces of its punctuation, so that each catalogue is written with plain ones.
// Follows Canadian usage: a no-break space before a colon and a percent sign, and inside quotation marks.
// Does not cover France, which has one before ; ! and ? too: france.ts.
import type { Message } from "../../assessment/catalogue.ts";
import { define } from "../define.ts";

/** Makes a catalogue of French; its type is `Define`. */
export function defineFrench(locale: string, messages: Readonly<Record<string, Message>>): never {
  const set = Object.entries(messages).map(([code, message]) => [code, inMessage(message)]);
  return define(locale, Object.fromEntries(set));
}

/** Each text of a message. */
function inMessage(message: Message): Message {
  if (typeof message === "string") return typeset(message);
  const set = Object.entries(message).map(([name, text]) => [
    name,
    name === "by" ? text : typeset(text),
  ]);
  return Object.fromEntries(set) as Message;
}

const typeset = (text: string) => text.replace(/ (?=[:%»])|(?<=«) /g, "\u00a0");
