/**
 * Constants of free space. The permeability is the exact value of the SI before 2019; CODATA 2018 differs from it by
 * 5.5e-10, far below anything measured on a station.
 */

/** m/s, exact (SI). */
export const speedOfLight = 299_792_458;
/** H/m. */
export const vacuumPermeability = 4e-7 * Math.PI;
/** F/m. */
export const vacuumPermittivity = 1 / (vacuumPermeability * speedOfLight * speedOfLight);
/** Wave impedance of free space, ohm. */
export const vacuumImpedance = vacuumPermeability * speedOfLight;
