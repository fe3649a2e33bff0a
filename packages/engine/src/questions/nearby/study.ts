/** What is worked out for `nearby`: the station with and without each thing and all of them, and each thing by itself. */
import type { PointRefused } from "../../chain/workedPoint";
import type { Station } from "../../station/station";
import type { Aim } from "../common/aim";
import type { Progress } from "../common/question";
import type { Worked } from "../common/worked";
import { type Bench, benchOf, type Case, caseOf, effectOf, isWorked, wholeCase } from "./cases";
import { type Dips, studyDips } from "./dips";
import { type DistanceStudy, studyDistances } from "./distances";
import { type Currents, currentsOf, type Induced, inducedIn } from "./induced";
import { type Resonance, studyResonance } from "./resonance";
import { openedAt, type Remedy, remediesFor } from "./spoiling";
import type { NearBy, Thing } from "./things";
import { withoutThings } from "./variants";

export interface ThingStudy {
  readonly thing: Thing;
  readonly without: Case;
  /** 1: just worth naming. */
  readonly effect: number;
  readonly induced: Induced;
  /** m along a conductor where it is opened; null for others. */
  readonly openedAt: number | null;
  readonly distances: DistanceStudy | null;
  readonly resonance: Resonance | null;
  readonly remedies: readonly Remedy[];
}

export interface Study {
  readonly aim: Aim;
  readonly asIs: Case;
  readonly withoutAll: Case;
  readonly dips: { readonly asIs: Dips | null; readonly without: Dips | null };
  /** The one that changes most first. */
  readonly things: readonly ThingStudy[];
  readonly currents: Currents;
  /** Things that could not be taken away, and why. */
  readonly failed: readonly { readonly name: string; readonly why: string }[];
  readonly bounded: readonly string[];
}

/** By the number of unknown currents: how many distances, and whether the band is swept. */
const sizes = [
  { upTo: 320, steps: 16, sweeps: true },
  { upTo: 700, steps: 12, sweeps: false },
  { upTo: Number.POSITIVE_INFINITY, steps: 6, sweeps: false },
] as const;
/** Things looked at closely: those that change most. */
const closely = 4;

export function* studyNearby(
  worked: Worked,
  near: NearBy,
  asked: { readonly aim: Aim; readonly ohms: number },
): Generator<Progress, Study | PointRefused> {
  const { station, point } = worked;
  const bench = benchOf(worked, asked.aim);
  const bare = withoutThings(station, near.things);
  const lessOne = near.things.map((thing) => ({ thing, station: withoutThings(station, [thing]) }));
  yield {
    ...{ done: 0, of: 1, what: "the station without what is near by" },
    ahead: [bare, ...lessOne.map((less) => less.station)].map(bench.request),
  };
  const withoutAll = wholeCase(bare, bench);
  if (!isWorked(withoutAll)) return withoutAll;
  const asIs = caseOf(point, worked.result, asked.aim);
  const { found, failed } = yield* eachWithout(lessOne, bench, { asIs, withoutAll });
  const nearWires = new Set(near.things.flatMap((t) => t.wires));
  const { build } = point.antenna;
  const used = build.structure.wires
    .map((_, w) => w)
    .filter((w) => !nearWires.has(w) && !build.outsideWires.has(w) && !build.surroundingWires.has(w));
  const currents = currentsOf(worked, used);
  const unknowns = point.antenna.solution?.unknowns ?? 0;
  const size = sizes.find((s) => unknowns <= s.upTo)!;
  const things: ThingStudy[] = [];
  for (const [i, one] of found.entries()) {
    const steps = i < closely ? size.steps : 0;
    things.push(yield* closeLook(worked, bench, { ...one, currents, steps, ohms: asked.ohms }));
  }
  return {
    aim: asked.aim,
    asIs,
    withoutAll,
    dips: size.sweeps ? yield* bothDips(worked, bench, near) : { asIs: null, without: null },
    things,
    currents,
    failed,
    bounded: boundsSay(found.length, size),
  };
}

interface WithoutOne {
  readonly thing: Thing;
  readonly without: Case;
  readonly effect: number;
}

function* eachWithout(
  lessOne: readonly { readonly thing: Thing; readonly station: Station }[],
  bench: Bench,
  { asIs, withoutAll }: { asIs: Case; withoutAll: Case },
): Generator<Progress, { found: WithoutOne[]; failed: Study["failed"] }> {
  const found: WithoutOne[] = [];
  const failed: { name: string; why: string }[] = [];
  for (const [i, { thing, station }] of lessOne.entries()) {
    yield { done: i, of: lessOne.length, what: "things near by" };
    const without = lessOne.length === 1 ? withoutAll : wholeCase(station, bench);
    if (isWorked(without)) found.push({ thing, without, effect: effectOf(asIs, without) });
    else failed.push({ name: thing.name, why: without.refused.why });
  }
  return { found: found.sort((a, b) => b.effect - a.effect), failed };
}

interface CloseLook extends WithoutOne {
  readonly currents: Currents;
  /** 0: no close look. */
  readonly steps: number;
  readonly ohms: number;
}

function* closeLook(worked: Worked, bench: Bench, look: CloseLook): Generator<Progress, ThingStudy> {
  const { thing, without, effect, currents, steps, ohms } = look;
  const induced = inducedIn(worked, currents, thing);
  const at = openedAt(worked, { thing, induced });
  const common = { thing, without, effect, induced, openedAt: thing.kind === "conductor" ? at : null };
  if (steps === 0) return { ...common, distances: null, resonance: null, remedies: [] };
  yield { done: 0, of: 1, what: `what would spoil ${thing.name}` };
  const remedies = remediesFor(worked, bench, { thing, induced, ohms });
  const resonance = yield* studyResonance(worked, thing, at);
  return { ...common, remedies, resonance, distances: yield* studyDistances(worked, bench, { thing, without, steps }) };
}

function* bothDips(worked: Worked, bench: Bench, near: NearBy): Generator<Progress, Study["dips"]> {
  const asIs = yield* studyDips(worked.station, bench, "as it stands");
  const without = yield* studyDips(withoutThings(worked.station, near.things), bench, "without what is near by");
  return { asIs, without };
}

function boundsSay(count: number, size: (typeof sizes)[number]): string[] {
  return [
    ...(size.sweeps
      ? []
      : [
          "How the lowest SWR moves along the band: this station has too many wires for it here; `band` shows it as it stands.",
        ]),
    ...(size.steps < sizes[0].steps
      ? [
          `Only ${size.steps} distances were looked at, so that the answer comes in time: the curve between them is straight.`,
        ]
      : []),
    ...(count > closely
      ? [`Distance, resonance and remedies of the ${count - closely} things that change least.`]
      : []),
  ];
}
