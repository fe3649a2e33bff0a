/** A price as people write it: "2.40 EUR per m", "85 USD per 100 ft". The money is the asker's own word. */
import { faulty, type Parsed, parsed } from "./fault";
import { orList, shown } from "./nearest";

export interface Price {
  readonly perMetre: number;
  readonly money: string;
}

const foot = 0.3048;
/** Metres that a price may be for. */
const lengths: Readonly<Record<string, number>> = { m: 1, "100 m": 100, km: 1000, ft: foot, "100 ft": 100 * foot };
export const expectedPrice = "a price for a length, such as 2.40 EUR per m";
const written = /^(\d+(?:\.\d*)?|\.\d+)\s*(\p{L}[\p{L}\p{M}.]{0,11}|\p{Sc})\s*(?:per|\/|a)\s*(.+)$/u;

/** Reads a price; the number comes first, then the money in one word, then the length it buys. */
export function parsePrice(text: string): Parsed<Price> {
  const plain = text.trim().replace(/\s+/g, " ");
  const match = written.exec(plain);
  if (!match) {
    const comma = /^\d+,\d{1,2}\D/.test(plain) ? plain.replace(",", ".") : null;
    const before = /^(\p{Sc}|\p{Lu}{3})\s?(\d[\d.]*)\s*(.*)$/u.exec(plain);
    const turned = before ? `${before[2]} ${before[1]} ${before[3]}`.trim() : null;
    const mend = [comma, turned].find((one) => one !== null && written.test(one)) ?? null;
    return faulty(`"${shown(text)}" is no price of a line. Expected: ${expectedPrice}.`, expectedPrice, { mend });
  }
  const [, figure, money = "", length = ""] = match;
  const name = length.replace(/^(\d+)\s*/, "$1 ");
  const metres = Object.hasOwn(lengths, name) ? lengths[name] : undefined;
  if (metres !== undefined) return parsed({ perMetre: Number(figure) / metres, money });
  const known = orList(Object.keys(lengths));
  const spoken = /^met(re|er)s?$/i.test(length) ? "m" : /^f(oo|ee)t$/i.test(length) ? "ft" : null;
  return faulty(`A price is for ${known}, not for "${shown(length)}".`, expectedPrice, {
    nearest: spoken,
    mend: spoken === null ? null : `${figure} ${money} per ${spoken}`,
  });
}

/** A price as text that reads back to the same number. */
export function formatPrice({ perMetre, money }: Price): string {
  const texts = Object.entries(lengths).map(([name, metres]) => {
    for (let digits = 1; digits <= 17; digits++) {
      const figure = Number((perMetre * metres).toPrecision(digits));
      if (figure / metres === perMetre) return `${plain(figure)} ${money} per ${name}`;
    }
    return `${plain(perMetre)} ${money} per m`;
  });
  return texts.reduce((best, text) => (text.length < best.length ? text : best));
}

/** Without an exponent, which the reader does not take. */
const plain = (value: number): string =>
  /e/.test(String(value)) ? value.toFixed(20).replace(/\.?0+$/, "") : String(value);

/** Letters of a pattern for editors. */
export const pricePattern = String.raw`^\d[\d.]* *\S+ (per|/|a) ?(${Object.keys(lengths).join("|")})$`;
