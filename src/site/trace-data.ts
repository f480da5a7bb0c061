import type { Data } from "../models/data.ts";
import { digestOf } from "./digest.ts";

/** Kinds of which a brief uses a few or none; the library and the settings every brief uses. */
const TRACED = ["athletes", "workouts", "bands", "gyms", "competitions", "fields", "unmade"] as const;
type Traced = (typeof TRACED)[number];

/** What was read of all data while something was made: whole kinds by name, single things as `gyms/harbour`. */
export type Tracing = { readonly data: Data; readonly used: () => readonly string[] };

/**
 * Data that notes what is read of them, so that what is made of them need not be made again for a change elsewhere. Asking
 * a map for one id uses that one; anything else uses the whole kind.
 */
export function traceData(data: Data): Tracing {
  const used = new Set<string>();
  const traced = Object.fromEntries(
    TRACED.map((kind) => [
      kind,
      {
        enumerable: true,
        get: () => {
          const value = data[kind];
          if (value instanceof Map) return traceMap(value, kind, used);
          used.add(kind);
          return value;
        },
      },
    ]),
  );
  const { library, settings, notices } = data;
  const plain: Pick<Data, "library" | "settings" | "notices"> = { library, settings, notices };
  return { data: Object.defineProperties(plain, traced) as Data, used: () => [...used].sort() };
}

function traceMap<T extends ReadonlyMap<string, unknown>>(map: T, kind: Traced, used: Set<string>): T {
  return new Proxy(map, {
    get: (target, name) => {
      if (name === "get" || name === "has") {
        return (id: string) => {
          used.add(`${kind}/${id}`);
          return target[name](id);
        };
      }
      used.add(kind);
      const value: unknown = Reflect.get(target, name, target);
      return typeof value === "function" ? (value.bind(target) as unknown) : value;
    },
  });
}

/** Marks of what {@link traceData} names, each reckoned once. */
export function digestsOf(data: Data): (used: string) => string {
  const known = new Map<string, string>();
  const make = (used: string): string => {
    const kind = TRACED.find((one) => used === one || used.startsWith(`${one}/`));
    if (kind === undefined) return "unknown";
    const all: unknown = data[kind];
    return digestOf(
      used === kind ? all : (all as ReadonlyMap<string, unknown>).get(used.slice(kind.length + 1)),
    );
  };
  return (used) => {
    const digest = known.get(used) ?? make(used);
    known.set(used, digest);
    return digest;
  };
}
