/**
 * The three ways the grammar combines values, as zod schemas: an entry with its keys, a choice among schemas, and a
 * text read by a parser. They extend zod so that every issue carries a whole fault (message, nearest word, mend).
 */
import * as z from "zod";
import { limits } from "../reading/limits";
import type { Fault, Parsed } from "../units/fault";
import { nearestWord, orList, shown } from "../units/nearest";

// Generated code (`new Function`) would need a looser content security policy on the page.
z.config({ jitless: true });

export interface FaultParams {
  readonly fault: Fault;
  /** Whether the key or the value at the issue's path is meant. */
  readonly at: "key" | "value";
}

type Path = readonly (string | number)[];
type Issues = z.core.ParsePayload["issues"];

function push(issues: Issues, path: Path, at: FaultParams["at"], fault: Fault, input: unknown): void {
  const params: FaultParams = { fault, at };
  issues.push({
    code: "custom",
    path: [...path],
    message: fault.message,
    params: { ...params },
    input,
    continue: false,
  });
}

const fault = (message: string, expected: string, nearest: string | null = null): Fault => ({
  message,
  expected,
  nearest,
  mend: nearest,
});

const isMap = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

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
  return fault(`${def.title} is written as keys with values (${keys}); ${found} stands here.`, `{ ${keys}: ... }`);
}

function unknownKey(title: string, key: string, keys: readonly string[], value: Record<string, unknown>): Fault {
  const free = keys.filter((known) => !Object.hasOwn(value, known));
  const near = nearestWord(key, free);
  const hint = near === null ? `It may have: ${keys.join(", ")}.` : `Nearest: ${near}.`;
  return fault(`${title} has no key "${shown(key)}". ${hint}`, orList(keys), near);
}

/** An entry with its keys; anything else is told with the nearest key. `title` begins the sentences: "A line". */
export function entry<Shape extends z.core.$ZodLooseShape>(
  title: string,
  shape: Shape,
): z.ZodObject<Shape, z.core.$strict> {
  return new EntryType({ type: "object", shape, catchall: z.never(), title }) as z.ZodObject<Shape, z.core.$strict>;
}

interface ChoiceDef extends z.core.$ZodUnionDef {
  /** Index of the option to read with, or a fault. */
  readonly pick: (value: unknown) => number | { readonly path: Path; readonly fault: Fault };
}

const ChoiceType = z.core.$constructor<z.ZodUnion, ChoiceDef>("Choice", (inst, def) => {
  z.ZodUnion.init(inst, def);
  inst._zod.parse = (payload, context) => {
    const picked = def.pick(payload.value);
    const option = typeof picked === "number" ? def.options[picked] : undefined;
    if (option) return option._zod.run(payload, context);
    if (typeof picked !== "number") {
      push(payload.issues, picked.path, picked.path.length > 0 ? "key" : "value", picked.fault, payload.value);
    }
    return payload;
  };
});

function choice<Options extends readonly z.ZodType[]>(options: Options, pick: ChoiceDef["pick"]): z.ZodUnion<Options> {
  return new ChoiceType({
    type: "union",
    options: [...options],
    pick,
    inclusive: false,
  }) as z.ZodUnion<Options>;
}

/** Entries told apart by their kind key (the first key of each): exactly one must stand. `title`: "A part". */
export function kindEntry<Options extends readonly z.ZodObject[]>(
  title: string,
  options: Options,
): z.ZodUnion<Options> {
  const kinds = options.map((option) => Object.keys(option.shape)[0] ?? "");
  return choice(options, (value) => {
    if (!isMap(value)) {
      const one = orList(kinds);
      return { path: [], fault: fault(`${title} is an entry with a key that says its kind: ${one}.`, one) };
    }
    const [first, second] = kinds.filter((kind) => Object.hasOwn(value, kind));
    if (first !== undefined && second === undefined) return kinds.indexOf(first);
    return second === undefined ? noKind(title, kinds, value) : twoKinds(title, first ?? "", second);
  });
}

const twoKinds = (title: string, first: string, second: string) => ({
  path: [second],
  fault: fault(
    `${title} has one kind; "${first}" and "${second}" stand in one entry. Split it in two.`,
    "one kind key",
  ),
});

function noKind(title: string, kinds: readonly string[], value: Record<string, unknown>) {
  const keys = Object.keys(value);
  for (const key of keys) {
    const near = nearestWord(key, kinds);
    if (near !== null)
      return { path: [key], fault: fault(`${title} has no kind "${shown(key)}". Nearest: ${near}.`, near, near) };
  }
  return { path: [], fault: fault(`${title} must say its kind with one of: ${kinds.join(", ")}.`, orList(kinds)) };
}

/** One text, or an entry: whichever stands there. */
export const textOr = <Text extends z.ZodType, Rest extends z.ZodType>(text: Text, rest: Rest) =>
  choice([text, rest] as const, (value) =>
    typeof value === "string" || value === null || value === undefined ? 0 : 1,
  );

/** A map by its keys or by free names (`isNamed` tells which): a choice between two kinds of map. */
export const mapOr = <First extends z.ZodType, Rest extends z.ZodType>(
  first: First,
  rest: Rest,
  isFirst: (value: Record<string, unknown>) => boolean,
) => choice([first, rest] as const, (value) => (isMap(value) && !isFirst(value) ? 1 : 0));

/** A text that a parser reads. `base` is the JSON Schema side: pattern, description, examples. */
export function written<T>(base: z.ZodString, read: (text: string) => Parsed<T>, longest: number = limits.value) {
  return base.transform((text, context): T => {
    const result =
      text.length > longest
        ? ({
            ok: false,
            fault: fault(`This value has ${text.length} characters; at most ${longest} are read.`, "a shorter value"),
          } as const)
        : read(text);
    if (result.ok) return result.value;
    push(context.issues, [], "value", result.fault, text);
    return z.NEVER;
  });
}
