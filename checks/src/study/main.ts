/** `npm run study`: 30 structures and more against finer meshes of themselves, as a table for bench/README.md. */
import { closedShapes } from "./closedShapes";
import { measure } from "./measure";
import { openShapes } from "./openShapes";

const print = (text: string): void => {
  process.stdout.write(`${text}\n`);
};
const n = (x: number): string => x.toPrecision(2);

print(
  "| structure | unknowns | Z, ohm | estimate, ohm | error, ohm | error over goal | gain estimate, dB | gain error, dB | residue | doubt, ohm |",
);
print("| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |");
let bounded = 0;
const all = [...openShapes, ...closedShapes];
for (const study of all) {
  const f = measure(study);
  const within = f.error <= f.estimate;
  if (within) bounded += 1;
  const z = `${f.impedance.re.toPrecision(4)} ${f.impedance.im < 0 ? "-" : "+"} j${Math.abs(f.impedance.im).toPrecision(4)}`;
  const error = `${n(f.error)}${within ? "" : " (not bounded)"}`;
  print(
    `| ${f.name} | ${f.unknowns} | ${z} | ${n(f.estimate)} | ${error} | ${n(f.errorOverGoal)} | ${n(f.gainEstimate)} | ${n(f.gainError)} | ${n(f.residue)} | ${n(f.doubt)} |`,
  );
}
print(`\nThe estimate bounds the error in ${bounded} of ${all.length}.`);
