/** The path as a tree of texts. What the reader filled in is left out, so that reading again fills it again. */
import type { Path, Quantity } from "@feedpath/engine";
import { formatQuantity, formatSpan } from "../units/formatQuantity";
import { optional } from "./writeComponents";
import { writePart } from "./writePart";
import { type Branch, type Leaf, present, type Writing } from "./writing";

export function writePath(writing: Writing, path: Path, place: string, feeds: number): Leaf[] {
  const parts = path.parts.map((part, index) => writePart(writing, part, `${place}.parts.${index}`));
  return [...parts, ...writeEnd(writing, path, `${place}.end`, feeds)];
}

function writeEnd(writing: Writing, { end }: Path, place: string, feeds: number): Leaf[] {
  const branches = (of: Readonly<Record<string, Path>>, key: string): Branch =>
    Object.fromEntries(
      Object.entries(of).map(([name, path]) => [name, writePath(writing, path, `${place}.${key}.${name}`, feeds)]),
    );
  const loss = (quantity: Quantity): Leaf => writing.given(`${place}.loss`, formatQuantity(quantity, "decibels"));
  switch (end.kind) {
    case "feed":
      return feeds === 1 ? [] : [{ feed: end.feed }];
    case "load":
      return [{ load: formatQuantity(end.resistance, "impedance") }];
    case "tee":
      return [{ tee: end.name, branches: branches(end.branches, "branches") }];
    case "band splitter": {
      const passes = Object.entries(end.passes).map(([name, { from, to }]) => [
        name,
        formatSpan(from, to, "frequency"),
      ]);
      return [
        present({
          "band splitter": end.name,
          passes: Object.fromEntries(passes),
          loss: loss(end.loss),
          branches: branches(end.branches, "branches"),
        }),
      ];
    }
    case "switch": {
      const idle = typeof end.idle === "string" ? end.idle : formatQuantity(end.idle, "impedance");
      return [
        present({
          switch: end.name,
          idle: writing.given(`${place}.idle`, idle),
          now: writing.given(`${place}.now`, end.now),
          loss: loss(end.loss),
          isolation: optional(end.isolation, "decibels"),
          positions: branches(end.positions, "positions"),
        }),
      ];
    }
  }
}
