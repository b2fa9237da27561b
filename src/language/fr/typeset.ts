// How is French set? The no-break spaces of its punctuation, so that each catalogue is written with plain ones.
// Follows Canadian usage: a no-break space before a colon and a percent sign, and inside quotation marks.
// Does not cover France, which has one before ; ! and ? too: france.ts.
import type { Message } from "../../assessment/catalogue.ts";
import { define } from "../define.ts";
import { eachText } from "../each-text.ts";

/** Makes a catalogue of French; its type is `Define`. */
export function defineFrench(locale: string, messages: Readonly<Record<string, Message>>): never {
  return define(locale, eachText(messages, typeset));
}

const typeset = (text: string) => text.replace(/ (?=[:%»])|(?<=«) /g, "\u00a0");
