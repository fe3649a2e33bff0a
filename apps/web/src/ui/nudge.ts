/** A value moved by one step with the arrow keys: 0.1 for metres and feet (1 with Shift), else the last digit (ten of it). */
export function nudged(text: string, direction: 1 | -1, large: boolean): string | null {
  const found = /^(\d+(?:\.(\d+))?)(\s?\p{L}.*|\s?%)?$/u.exec(text);
  if (!found?.[1]) return null;
  const decimals = found[2]?.length ?? 0;
  const unit = found[3] ?? "";
  const length = /^\s?(m|ft)$/.test(unit);
  const places = length && !large ? Math.max(1, decimals) : decimals;
  const step = length ? (large ? 1 : 0.1) : 10 ** -decimals * (large ? 10 : 1);
  const moved = Number(found[1]) + direction * step;
  if (moved <= 0) return null;
  const digits = moved.toFixed(places);
  return (length ? digits.replace(/\.0$/, "") : digits) + unit;
}
