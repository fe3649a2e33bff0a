/** What one-sided antennas work against, and what radials and loads refer to. */
import type { Antenna, Shape } from "@feedpath/engine";
import type { WrittenAntenna } from "../building/antennas";
import { fault } from "../building/build";
import { orList } from "../units/nearest";
import type { Checked } from "./checked";
import { allParts, checkName } from "./references";

const oneSided = (shape: Shape): boolean => shape.kind === "vertical" || shape.kind === "end-fed wire";

export function checkReturns(checked: Checked): void {
  checked.station.antennas.forEach((antenna, index) => {
    const written = checked.antennas[index];
    if (!written) return;
    checkAgainst(checked, antenna, written);
    antenna.loads.forEach((load, at) => {
      const legs = [
        ...new Set(antenna.shapes.flatMap(({ name, shape }) => legsOf(name, shape, antenna.shapes.length > 1))),
      ];
      checkName(checked, load.on, legs, "No leg or wire", [...written.path, "loads", at, "on"]);
    });
  });
}

function checkAgainst(checked: Checked, antenna: Antenna, { path, written }: WrittenAntenna): void {
  const { against } = antenna;
  const { build, station } = checked;
  const lonely = antenna.shapes.find(({ shape }) => oneSided(shape));
  if (against === null) {
    if (lonely) {
      const message = `A ${lonely.shape.kind} has one side only: say what it works against with "against" (radials, outside of the line, a conductor, an earth).`;
      build.report(path, "key", fault(message, "against: radials"));
    }
    if (written.radials) {
      build.report(
        [...path, "radials"],
        "key",
        fault("Radials are given, but nothing works against them: write against: radials.", "against: radials"),
      );
    }
    return;
  }
  if (against === "radials" && !written.radials) {
    build.report(
      [...path, "against"],
      "value",
      fault('The antenna works against radials: give them with "radials".', "radials: { count, length }"),
    );
  }
  if (
    against === "outside of the line" &&
    !allParts(station.path).some((part) => part.kind === "line" && part.route.length > 0)
  ) {
    const message =
      "The antenna works against the outside of the line: no line of the path has a route, so there is no outside.";
    build.report([...path, "against"], "value", fault(message, "route on a line of the path"));
  }
  const conductors = station.surroundings.flatMap((thing) => (thing.kind === "conductor" ? [thing.name] : []));
  const wires = antenna.shapes.flatMap(({ shape }) =>
    shape.kind === "wires" ? shape.wires.map((wire) => wire.name) : [],
  );
  const known = [
    "radials",
    "outside of the line",
    ...conductors,
    ...wires,
    ...station.earths.map((earth) => earth.name),
  ];
  if (/^(ground|soil|earth)$/i.test(against) && !known.includes(against)) {
    const message = `The soil alone ("${against}") is no return for the antenna's current. Name one of: ${orList(known.slice(0, 12))}.`;
    build.report([...path, "against"], "value", fault(message, orList(known.slice(0, 12))));
    return;
  }
  checkName(checked, against, known, "Nothing to work against", [...path, "against"]);
}

/** Names that a load's `on` may use for a shape. */
function legsOf(name: string, shape: Shape, named: boolean): readonly string[] {
  const own = named ? [name] : [];
  switch (shape.kind) {
    case "dipole":
    case "inverted vee":
    case "off-centre dipole":
    case "folded dipole":
      return [...own, "both legs", "first leg", "second leg"];
    case "end-fed wire":
      return [...own, "wire"];
    case "vertical":
      return [...own, "mast"];
    case "loop":
    case "small loop":
      return [...own, "loop"];
    case "beam":
      return [...own, ...shape.elements.map((_, index) => `element ${index + 1}`)];
    case "wires":
      return shape.wires.map((wire) => wire.name);
  }
}
