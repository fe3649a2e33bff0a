/** What is not known of the conditions, each moved alone. */
import { type Asked, airAt, type Conditions, cooling, resistivity } from "./conditions";

export interface Doubt {
  /** In words, and its place as `uncertainties` name it. */
  readonly name: string;
  readonly place: string;
  readonly says: string;
  readonly low: Conditions;
  readonly high: Conditions;
}

/** The worse end is `low`: it leaves less margin. */
export function doubtsOf(asked: Asked, usual: Conditions): Doubt[] {
  const celsius = (kelvin: number): string => `${Math.round(kelvin - 273.15)}`;
  const { airTemperature: air, duty } = asked;
  const percent = (share: number): string => `${Math.round(100 * share)}`;
  return [
    {
      name: "how well a line is cooled",
      place: "limits.cooling",
      says: "a fifth less to a quarter more heat leaves; soil 0.7 to 2.5 K m/W",
      low: { ...usual, cooling: cooling.low, soilResistivity: resistivity.high },
      high: { ...usual, cooling: cooling.high, soilResistivity: resistivity.low },
    },
    {
      name: "the limits themselves",
      place: "limits.limits",
      says: "low to high end of each limit as its source gives it",
      low: { ...usual, limits: "low" },
      high: { ...usual, limits: "high" },
    },
    ...(duty.low < duty.high
      ? [
          {
            name: "mean power while sending",
            place: "transmitter.duty",
            says: `${percent(duty.low)} to ${percent(duty.high)} % of peak envelope power`,
            low: { ...usual, duty: duty.high },
            high: { ...usual, duty: duty.low },
          },
        ]
      : []),
    ...(air.low < air.high
      ? [
          {
            name: "temperature of the air",
            place: "site.airTemperature",
            says: `${celsius(air.low)} to ${celsius(air.high)} °C`,
            low: { ...usual, air: airAt(asked, air.high) },
            high: { ...usual, air: airAt(asked, air.low) },
          },
        ]
      : []),
  ];
}
