/** An entry with its keys as a zod schema; each wrong key is told on its own, with the nearest right one. */
import * as z from "zod";
import type { Fault } from "../units/fault";
import { nearestWord, orList, shown } from "../units/nearest";
import { fault, type Issues, isMap, push } from "./faults";

const isOptional = (schema: z.core.$ZodType): boolean => schema._zod.optin === "optional";

interface EntryDef extends z.core.$ZodObjectDef {
  /** "A line": begins its sentences. */
  readonly title: string;
}

const EntryType = z.core.$constructor<z.ZodObject, EntryDef>("Entry", (inst, def) => {
  z.ZodObject.init(inst, def);
  const inner = inst._zod.parse;
  inst._zod.parse = (payload, context) => {
    const { value } = payload;
    if (!isMap(value)) {
      push(payload.issues, [], "value", notAMap(def, value), value);
      return payload;
    }
    const keys = Object.keys(def.shape);
    const missing = keys.filter((key) => !Object.hasOwn(value, key) && !isOptional(def.shape[key] as z.core.$ZodType));
    const unknown = Object.keys(value).filter((key) => !keys.includes(key));
    const own: Issues = [];
    for (const key of unknown) push(own, [key], "key", unknownKey(def.title, key, keys, value), value[key]);
    for (const key of missing) {
      // A misspelt key is told once, as the unknown key.
      if (!unknown.some((word) => nearestWord(word, keys) === key)) {
        push(own, [], "key", fault(`${def.title} needs "${key}".`, `the key ${key}`), value);
      }
    }
    inner(payload, context);
    const told = (issue: Issues[number]): boolean =>
      (issue.code === "unrecognized_keys" && (issue.path ?? []).length === 0) ||
      (issue.path?.length === 1 && missing.includes(String(issue.path[0])));
    payload.issues = [...own, ...payload.issues.filter((issue) => !told(issue))];
    return payload;
  };
});

function notAMap(def: EntryDef, value: unknown): Fault {
  const keys = orList(Object.keys(def.shape).slice(0, 4));
  const found = value === null || value === undefined ? "nothing" : Array.isArray(value) ? "a list" : "a single value";
  const [first] = Object.keys(def.shape);
  return fault(
    `${def.title} is written as keys with values (${keys}); ${found} stands here.`,
    `a line such as "${first}: ..."`,
  );
}

function unknownKey(title: string, key: string, keys: readonly string[], value: Record<string, unknown>): Fault {
  const free = keys.filter((known) => !Object.hasOwn(value, known));
  const near = nearestWord(key, free);
  const hint = near === null ? `It may have: ${orList(keys)}.` : `Nearest: ${near}.`;
  return fault(`${title} has no key "${shown(key)}". ${hint}`, orList(keys), near);
}

/** An entry with its keys; anything else is told with the nearest key. `title` begins the sentences: "A line". */
export function entry<Shape extends z.core.$ZodLooseShape>(
  title: string,
  shape: Shape,
): z.ZodObject<Shape, z.core.$strict> {
  return new EntryType({ type: "object", shape, catchall: z.never(), title }) as z.ZodObject<Shape, z.core.$strict>;
}
