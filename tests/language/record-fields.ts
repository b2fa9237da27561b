// Which fields does the published format of a record have? Their paths without positions, from its JSON Schema.
import { jsonSchemaOf, recordCodec } from "hvac-install-math/wire";

interface Schema {
  readonly $ref?: string;
  readonly $defs?: Readonly<Record<string, Schema>>;
  readonly anyOf?: readonly Schema[];
  readonly items?: Schema;
  readonly properties?: Readonly<Record<string, Schema>>;
}

const whole = jsonSchemaOf(recordCodec) as Schema;

/** A quantity is one field, whatever its JSON is made of. */
const isQuantity = ({ properties = {} }: Schema) => "kind" in properties && "unit" in properties;

function fieldsOf(schema: Schema): string[] {
  const { $ref, anyOf = [], items, properties = {} } = schema;
  const definition = $ref && whole.$defs?.[$ref.replace("#/$defs/", "")];
  if (isQuantity(schema)) return [];
  return [
    ...(definition ? fieldsOf(definition) : []),
    ...anyOf.flatMap(fieldsOf),
    ...(items ? fieldsOf(items) : []),
    ...Object.entries(properties).flatMap(([name, value]) => [
      name,
      ...fieldsOf(value).map((rest) => `${name}.${rest}`),
    ]),
  ];
}

/** Every field, each once. */
export const recordFields: readonly string[] = [...new Set(fieldsOf(whole))];
