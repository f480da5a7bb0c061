/** A JSON Schema as far as it is worked on here. */
export type JsonSchema = {
  readonly type?: string | readonly string[];
  readonly description?: string;
  readonly properties?: Readonly<Record<string, JsonSchema>>;
  readonly additionalProperties?: JsonSchema | boolean;
  readonly items?: JsonSchema | boolean;
  readonly anyOf?: readonly JsonSchema[];
  readonly enum?: readonly unknown[];
  readonly [keyword: string]: unknown;
};

/** An editor takes `1991` and `yes` for a number and a truth value; here they are text like everything else. */
const TEXT = ["string", "number", "boolean", "null"];

/**
 * A schema as an editor should hold a YAML file against it: texts may be written as numbers or left empty, a list of one without its
 * brackets, and words of our own about fields are left out.
 */
export function forEditors(written: JsonSchema): JsonSchema {
  const schema = Object.fromEntries(
    Object.entries(written).filter(([keyword]) => keyword !== "alsoCalled" && keyword !== "propertyNames"),
  ) as JsonSchema;
  const inside: JsonSchema = {
    ...schema,
    ...(schema.properties && {
      properties: Object.fromEntries(
        Object.entries(schema.properties).map(([name, one]) => [name, forEditors(one)]),
      ),
    }),
    ...(isSchema(schema.additionalProperties) && {
      additionalProperties: forEditors(schema.additionalProperties),
    }),
    ...(isSchema(schema.items) && { items: forEditors(schema.items) }),
    ...(schema.anyOf && { anyOf: schema.anyOf.map(forEditors) }),
  };
  const types = schema.type === undefined ? [] : [schema.type].flat();
  if (types.includes("string") && schema.enum === undefined) return { ...inside, type: TEXT };
  if (types.includes("object")) return { ...inside, type: ["object", "null"] };
  if (!types.includes("array")) return inside;
  const { description, ...list } = inside;
  const one = isSchema(list.items) ? [list.items] : [];
  return { ...(description === undefined ? {} : { description }), anyOf: [list, ...one, { type: TEXT }] };
}

const isSchema = (value: unknown): value is JsonSchema => typeof value === "object" && value !== null;

/** Names to complete: of values, and of the lines inside an entry. */
type Names = {
  readonly values?: Readonly<Record<string, readonly string[]>>;
  readonly keys?: Readonly<Record<string, readonly string[]>>;
};

/** A schema whose entries offer names, and take others still: the reader knows more spellings of them. */
export function withNames(schema: JsonSchema, { values = {}, keys = {} }: Names): JsonSchema {
  const entries = Object.entries(schema.properties ?? {}).map(([name, one]): [string, JsonSchema] => {
    const { description, ...rest } = one;
    const said = description === undefined ? {} : { description };
    const offered = values[name];
    if (offered && offered.length > 0) {
      const choice: JsonSchema = { enum: offered };
      return [
        name,
        { ...said, anyOf: [choice, { type: "array", items: { anyOf: [choice, { type: TEXT }] } }, rest] },
      ];
    }
    const lines = keys[name];
    return [name, lines === undefined || lines.length === 0 ? one : withLines(one, lines)];
  });
  return { ...schema, properties: Object.fromEntries(entries) };
}

/** The lines of a group of free names, offered by name. */
function withLines(schema: JsonSchema, names: readonly string[]): JsonSchema {
  if (schema.anyOf) return { ...schema, anyOf: schema.anyOf.map((one) => withLines(one, names)) };
  const { additionalProperties: line } = schema;
  if (!isSchema(line)) return schema;
  return { ...schema, properties: Object.fromEntries(names.map((name) => [name, line])) };
}
