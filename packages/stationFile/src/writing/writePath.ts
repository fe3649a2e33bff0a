/** The path as a tree of texts. What the reader filled in is left out, so that reading again fills it again. */
import type {
  Adjustable,
  ChokePart,
  LineEntry,
  LineModel,
  Lumped,
  Part,
  Path,
  Quantity,
  TunerPart,
} from "@feedpath/engine";
import { findLine } from "../catalogue/lines";
import type { DimensionName } from "../units/dimensions";
import { formatAmount, formatPlace, formatQuantity, formatSpan } from "../units/formatQuantity";
import { type Branch, type Leaf, present, type Writing } from "./writing";

type Spectrum = ChokePart["resistance"];

const optional = (quantity: Quantity | null, dimension: DimensionName): Leaf =>
  quantity ? formatQuantity(quantity, dimension) : undefined;

function spectrum(value: Spectrum, dimension: DimensionName): Leaf {
  if (value.kind === "constant") return formatQuantity(value.quantity, dimension);
  return Object.fromEntries(
    value.points.map(({ frequency, quantity }) => [
      formatAmount(frequency, "frequency"),
      formatQuantity(quantity, dimension),
    ]),
  );
}

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

function writePart(writing: Writing, part: Part, place: string): Branch {
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
          ? { resistance: spectrum(part.resistance, "impedance"), reactance: spectrum(part.reactance, "impedance") }
          : spectrum(part.resistance, "impedance"),
        "heat limit": optional(part.heatLimit, "power"),
        length: optional(part.length, "length"),
      };
    case "balun":
      return {
        balun: formatSpan(part.transmitterSide.value, part.antennaSide.value, "impedance"),
        kind: given("form", part.form),
        choking: part.choking ? spectrum(part.choking, "impedance") : undefined,
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

export function writeAdjustable(
  writing: Writing,
  part: Adjustable | null,
  dimension: DimensionName,
  place: string,
): Leaf {
  if (!part) return undefined;
  return present({
    range: formatSpan(part.from, part.to, dimension),
    Q: writing.given(`${place}.q`, formatQuantity(part.q, "number")),
  });
}

export function writeLumped(writing: Writing, part: Lumped, place: string): Branch {
  return present({
    coil: optional(part.coil, "inductance"),
    capacitor: optional(part.capacitor, "capacitance"),
    resistor: optional(part.resistor, "impedance"),
    Q: part.resistor ? undefined : writing.given(`${place}.q`, formatQuantity(part.q, "number")),
  });
}

/** A catalogue line by its name, an own line by what it is made of. */
function writeLine(writing: Writing, line: LineEntry, place: string): Leaf {
  if (findLine(line.designation)) return line.designation;
  return writeModel(writing, line.model, place);
}

function writeModel(writing: Writing, model: LineModel, place: string): Branch {
  if (model.kind === "data sheet") {
    const loss = model.loss.map(({ frequency, decibelsPerMetre }) => [
      formatAmount(frequency, "frequency"),
      formatQuantity(decibelsPerMetre, "lossPerLength"),
    ]);
    return present({
      impedance: formatQuantity(model.impedance, "impedance"),
      velocity: formatQuantity(model.velocityFactor, "ratio"),
      loss: Object.fromEntries(loss),
      side: writing.given(`${place}.model.side`, model.side),
    });
  }
  if (model.kind === "parallel-wire") {
    const [layer] = model.wire.layers;
    return {
      wire: `${formatAmount((layer?.outerRadius ?? 0) * 2, "length")} ${layer?.metal.name ?? ""}`,
      spacing: formatQuantity(model.spacing, "length"),
    };
  }
  const { inner, outer, dielectric } = model;
  const [layer] = inner.layers;
  const own = { permittivity: String(dielectric.permittivity), "loss tangent": String(dielectric.lossTangent) };
  return {
    inner: `${formatAmount((layer?.outerRadius ?? 0) * 2, "length")} ${layer?.metal.name ?? ""}`,
    outer: `${formatAmount(outer.innerRadius * 2, "length")} ${outer.metal.name}`,
    dielectric: dielectric.name === "own" ? own : dielectric.name,
  };
}
