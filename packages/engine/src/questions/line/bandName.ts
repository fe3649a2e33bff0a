/** How a band is called in the tables of `line`. */
export const bandName = (name: string, frequency: number): string =>
  name === "" ? `${Number((frequency / 1e6).toPrecision(6))} MHz` : name;
