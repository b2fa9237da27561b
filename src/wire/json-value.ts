// What can JSON hold? Types only.
// Follows RFC 8259, section 3. Does not cover numbers beyond a double.

/**
 * Anything that JSON can hold.
 *
 * Source: RFC 8259, section 3.
 */
export type JsonValue = null | boolean | number | string | readonly JsonValue[] | JsonObject;

/**
 * A JSON object.
 *
 * Source: RFC 8259, section 4.
 */
export interface JsonObject {
  /** A member by its name. */
  readonly [name: string]: JsonValue;
}
