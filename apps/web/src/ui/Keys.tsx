/** What the keyboard can do. */
const keys: readonly (readonly [string, string])[] = [
  ["Tab", "on, in reading order: numbers, joints, parts, working, file"],
  ["Left, Right", "from joint to joint, once one has the focus"],
  ["Up, Down", "change a value that has the focus: lengths by 0.1, with Shift by 1"],
  ["Space", "on the slider of a film: play and pause; Left and Right step"],
  ["Enter", "type a value, or open the working of a number"],
  ["Escape", "close what was opened, give a value back as it was"],
  ["Ctrl+Z, Ctrl+Shift+Z", "in the file: a step back, a step forth"],
  ["?", "this list"],
];

export function Keys() {
  return (
    <dl className="facts">
      {keys.map(([key, says]) => (
        <div key={key}>
          <dt>{key}</dt>
          <dd>{says}</dd>
        </div>
      ))}
    </dl>
  );
}
