// Puts a value into JSON by a path of the library, such as `pressureTests[0].readings[1].pressure`.
import type { JsonObject, JsonValue } from "hvac-install-math/wire";

/** A copy of the JSON with the value at the path, or without it where there is none. The JSON itself stays as it was. */
export function withValue(
  json: JsonObject,
  path: string,
  value: JsonValue | undefined,
): JsonObject {
  return placed(json, path.match(/[^.[\]]+/g) ?? [], value) as JsonObject;
}

function placed(
  at: JsonValue | undefined,
  [name, ...rest]: string[],
  value: JsonValue | undefined,
): JsonValue | undefined {
  if (name === undefined) return value;
  if (/^\d+$/.test(name)) {
    const list = Array.isArray(at) ? [...at] : [];
    while (list.length < Number(name)) list.push({});
    list[Number(name)] = placed(list[Number(name)], rest, value) ?? {};
    return list;
  }
  const { [name]: inside, ...others } = (at ?? {}) as JsonObject;
  const next = placed(inside, rest, value);
  return next === undefined ? others : { ...others, [name]: next };
}
