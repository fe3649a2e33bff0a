/** What hangs on an antenna's wires and lies between its feeds, as texts. */
import type { Joined, Load, Lumped } from "@feedpath/engine";
import { formatQuantity } from "../units/formatQuantity";
import { writeLumped } from "./writeComponents";
import { length, writeConductor } from "./writeConductor";
import { writeLine } from "./writeLine";
import { type Branch, present, type Writing } from "./writing";

/** A circuit's Q is that of its coil or capacitor, also where a resistor stands beside it. */
function withQ(writing: Writing, component: Lumped, place: string): Branch {
  const q = component.coil || component.capacitor ? formatQuantity(component.q, "number") : undefined;
  return present({
    ...writeLumped(writing, component, `${place}.component`),
    Q: writing.given(`${place}.component.q`, q),
  });
}

export function writeJoined(writing: Writing, one: Joined, place: string): Branch {
  const { farEnd, from } = one;
  const parts = "component" in one ? withQ(writing, one.component, place) : undefined;
  if (farEnd === "across") return { across: parts, at: from };
  const line = "line" in one ? writeLine(writing, one.line, `${place}.line`) : undefined;
  const long = "line" in one ? length(one.length) : undefined;
  if (typeof farEnd === "string") return present({ stub: line, length: long, at: from, "far end": farEnd });
  const crossed = writing.given(`${place}.crossed`, farEnd.crossed ? "yes" : "no");
  return present({ series: parts, line, length: long, from, to: farEnd.feed, crossed });
}

export function writeLoad(writing: Writing, load: Load, place: string): Branch {
  return present({
    ...loadValue(writing, load, place),
    on: load.on,
    "from feed": load.fromFeed === "end" ? "end" : length(load.fromFeed),
    length: load.length ? length(load.length) : undefined,
  });
}

function loadValue(writing: Writing, load: Load, place: string): Branch {
  if (load.hat) {
    const { spokes, wire, ring } = load.hat;
    const hat = present({
      spokes: String(spokes),
      length: length(load.hat.length),
      wire: writing.given(`${place}.hat.wire`, writeConductor(wire)),
      ring: writing.given(`${place}.hat.ring`, ring ? "yes" : "no"),
    });
    return { hat };
  }
  if (!load.component) return {};
  const component = writeLumped(writing, load.component, `${place}.component`);
  if (load.kind === "series" || load.kind === "parallel") return { [load.kind]: withQ(writing, load.component, place) };
  if (load.kind === "trap") return { trap: component };
  const across = load.selfCapacitance ? formatQuantity(load.selfCapacitance, "capacitance") : undefined;
  return { ...component, "self-capacitance": across };
}
