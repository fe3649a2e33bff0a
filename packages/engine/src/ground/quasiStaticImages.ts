/** What soil reflects of fields that vary over distances much smaller than its wavelength: mirror images. */
import { add, type Complex, divide, negate, one, scale, subtract } from "../numerics/complex";

/**
 * Strengths of images: limits of the spectra of K, G_zz and T for large horizontal wavenumbers; that of G_xx is 0 (soil
 * is not magnetic). A constant in the spectrum of K or G_zz is that constant times e^{-jkR}/(4 pi R), in that of T it is
 * times (e^{-jks} - (s/R) e^{-jkR})/(4 pi rho).
 */
export interface QuasiStaticImages {
  readonly scalar: Complex;
  readonly vertical: Complex;
  readonly cross: Complex;
}

/** Images in soil of complex relative permittivity `eps` at its surface. Electrostatics: -(eps - 1)/(eps + 1). */
export function quasiStaticImages(eps: Complex): QuasiStaticImages {
  const charge = negate(divide(subtract(eps, one), add(eps, one)));
  return { scalar: charge, vertical: scale(charge, -2), cross: charge };
}
