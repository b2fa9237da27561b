/**
 * The shapes of the codecs as schemas of zod, for forms and servers that compose them with their own.
 *
 * Start with {@link schemaOf}.
 *
 * @module wire/zod
 */
export { recordSchema, schemaOf } from "./schema-of.ts";
