/** Parts of the path as a tree of texts. */
import type { Part, Quantity, TunerPart } from "@feedpath/engine";
import { formatPlace, formatQuantity, formatSpan } from "../units/formatQuantity";
import { optional, writeAdjustable, writeLumped, writeSpectrum } from "./writeComponents";
import { writeLine } from "./writeLine";
import { type Branch, type Leaf, present, type Writing } from "./writing";

export function writePart(writing: Writing, part: Part, place: string): Branch {
  const named = part.kind === "meter" || part.kind === "two-port" ? {} : { name: part.name };
  const state = part.state === "in line" ? undefined : part.state;
  return present({ ...ownKeys(writing, part, place), ...named, state, note: part.note === "" ? undefined : part.note });
}

function ownKeys(writing: Writing, part: Part, place: string): Branch {
  const given = (key: string, leaf: Leaf): Leaf => writing.given(`${place}.${key}`, leaf);
  const loss = (quantity: Quantity): Leaf => given("loss", formatQuantity(quantity, "decibels"));
  switch (part.kind) {
    case "line":
      return {
        line: writeLine(writing, part.line, `${place}.line`),
        length: formatQuantity(part.length, "length"),
        route: part.route.length > 0 ? part.route.map(formatPlace) : undefined,
        condition: given("condition", part.condition),
        "excess loss": given("excessLoss", formatQuantity(part.excessLoss, "lossPerLength")),
        temperature: optional(part.temperature, "temperature"),
        lies: part.lies,
      };
    case "stub":
      return {
        stub: writeLine(writing, part.line, `${place}.line`),
        length: formatQuantity(part.length, "length"),
        "far end": part.farEnd,
      };
    case "connector":
      return { connector: part.series, count: given("count", String(part.count)), loss: loss(part.loss) };
    case "meter":
      return { meter: part.name, directivity: optional(part.directivity, "decibels") };
    case "filter":
      return { filter: part.response, loss: optional(part.loss, "decibels"), file: part.file ?? undefined };
    case "arrestor":
      return {
        arrestor: part.form,
        capacitance: given("capacitance", formatQuantity(part.capacitance, "capacitance")),
        sparkover: optional(part.sparkover, "voltage"),
        earth: part.earth ?? undefined,
      };
    case "bond":
      return { bond: part.earth, strap: optional(part.strap, "length") };
    case "choke":
      return {
        choke: part.reactance
          ? {
              resistance: writeSpectrum(part.resistance, "impedance"),
              reactance: writeSpectrum(part.reactance, "impedance"),
            }
          : writeSpectrum(part.resistance, "impedance"),
        "heat limit": optional(part.heatLimit, "power"),
        length: optional(part.length, "length"),
      };
    case "balun":
      return {
        balun: formatSpan(part.transmitterSide.value, part.antennaSide.value, "impedance"),
        kind: given("form", part.form),
        choking: part.choking ? writeSpectrum(part.choking, "impedance") : undefined,
        loss: loss(part.loss),
        "heat limit": optional(part.heatLimit, "power"),
      };
    case "transformer":
      return {
        transformer: formatSpan(part.transmitterSide.value, part.antennaSide.value, "impedance"),
        loss: loss(part.loss),
        "winding inductance": optional(part.windingInductance, "inductance"),
        "leakage inductance": optional(part.leakageInductance, "inductance"),
        capacitor: optional(part.capacitor, "capacitance"),
        sides: given("sides", part.sides),
        "heat limit": optional(part.heatLimit, "power"),
      };
    case "tuner":
      return tuner(writing, part, place);
    case "series":
      return { series: writeLumped(writing, part.component, `${place}.component`) };
    case "across":
      return { across: writeLumped(writing, part.component, `${place}.component`) };
    case "two-port":
      return { "two-port": part.name, file: part.file };
  }
}

function tuner(writing: Writing, part: TunerPart, place: string): Branch {
  const { set } = part;
  const values =
    typeof set === "string"
      ? set
      : {
          capacitors: set.capacitors.map((value) => formatQuantity(value, "capacitance")),
          coils: set.coils.map((value) => formatQuantity(value, "inductance")),
        };
  return {
    tuner: part.network,
    capacitors: writeAdjustable(writing, part.capacitors, "capacitance", `${place}.capacitors`),
    coil: writeAdjustable(writing, part.coil, "inductance", `${place}.coil`),
    output: writing.given(`${place}.output`, part.output),
    set: writing.given(`${place}.set`, values),
    "voltage limit": optional(part.voltageLimit, "voltage"),
  };
}
