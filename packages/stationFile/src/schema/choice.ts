/** A choice among schemas by what stands there, never by trying one after the other: one fault, not one per option. */
import * as z from "zod";
import type { Fault } from "../units/fault";
import { nearestWord, orList, shown } from "../units/nearest";
import { fault, isMap, type Path, push } from "./faults";

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
  return { path: [], fault: fault(`${title} must say its kind with one of: ${orList(kinds)}.`, orList(kinds)) };
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
