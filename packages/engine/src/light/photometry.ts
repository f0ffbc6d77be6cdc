import { atan, cos, exp } from '../numerics/elementary.ts';
import { square } from '../numerics/small-powers.ts';

/** Photon flux 400-700 nm per luminous flux of CIE illuminants [umol/s per 1000 lm]. */
export const PHOTONS_PER_KILOLUMEN = {
  /** Daylight. @source cie-015-2018, integrated */
  D65: 18,
  /** White LEDs with blue chips, 2733 to 6598 K. @source cie-015-2018, integrated */
  'LED-B1': 14.9,
  'LED-B2': 14.726,
  'LED-B3': 14.3,
  'LED-B4': 13.955,
  'LED-B5': 14.4,
  /** White from red, green and blue LEDs. @source cie-015-2018, integrated */
  'LED-RGB1': 16.5,
  /** White LEDs with violet chips. @source cie-015-2018, integrated */
  'LED-V1': 18.84,
  'LED-V2': 17.7,
} as const;

/** Illuminance per photon flux density of other common sources [lux per umol/(m2 s)]. @source apogee-lux */
export const LUX_PER_PHOTON_FLUX = { sunlight: 54, coolWhiteFluorescent: 74, metalHalide: 71 } as const;

/**
 * Returns the illuminance per photon flux density of an illuminant [lux per umol/(m2 s), > 0].
 * @param photonsPerKilolumen of its spectrum [umol/s per 1000 lm]
 * @source derived
 */
export function luxPerPhotonFlux(photonsPerKilolumen: number): number {
  return 1000 / photonsPerKilolumen;
}

/**
 * Returns the photon flux density 400-700 nm of a given illuminance [umol/(m2 s)].
 * @param illuminance [lux]
 * @param luxPerFlux of the source [lux per umol/(m2 s)], see `LUX_PER_PHOTON_FLUX`
 * @source apogee-lux
 */
export function photonFluxDensity(illuminance: number, luxPerFlux: number): number {
  return illuminance / luxPerFlux;
}

/**
 * Returns the illuminance of a given photon flux density [lux].
 * @param fluxDensity [umol/(m2 s)]
 * @param luxPerFlux of the source [lux per umol/(m2 s)]
 * @source apogee-lux
 */
export function illuminanceOf(fluxDensity: number, luxPerFlux: number): number {
  return fluxDensity * luxPerFlux;
}

/**
 * Returns the illuminance from a small source [lux]: I cos(angle)/d^2.
 * @param intensity I [cd]
 * @param distance d [m], more than five times the size of the source
 * @param angle between the ray and the surface's normal [rad]
 * @source derived: cosine law
 */
export function pointIlluminance(intensity: number, distance: number, angle: number): number {
  return (intensity * cos(angle)) / (distance * distance);
}

/**
 * Returns the illuminance below the middle of an evenly diffuse panel [lux, or umol/(m2 s) for a photon flux]:
 * (2 M/pi)(X/sqrt(1 + X^2) atan(Y/sqrt(1 + X^2)) + Y/sqrt(1 + Y^2) atan(X/sqrt(1 + Y^2))), X = a/2h, Y = b/2h, M = flux/(a b).
 * @param flux of the panel [lm or umol/s]
 * @param length a of the panel [m]
 * @param breadth b of the panel [m]
 * @param distance h below it [m]
 * @validity direct light only
 * @source derived: integral of the cosine law over the panel
 */
export function panelIlluminance(flux: number, length: number, breadth: number, distance: number): number {
  const X = length / (2 * distance);
  const Y = breadth / (2 * distance);
  const slantX = Math.sqrt(1 + X * X);
  const slantY = Math.sqrt(1 + Y * Y);
  const exitance = flux / (length * breadth);
  return ((2 * exitance) / Math.PI) * ((X / slantX) * atan(Y / slantX) + (Y / slantY) * atan(X / slantY));
}

/**
 * Returns the illuminance below the middle of an evenly diffuse disc [lux]: M r^2/(r^2 + h^2).
 * @param exitance M [lm/m2]
 * @param radius r [m]
 * @param distance h below it [m]
 * @source derived: integral of the cosine law over the disc
 */
export function discIlluminance(exitance: number, radius: number, distance: number): number {
  return (exitance * radius * radius) / (radius * radius + distance * distance);
}

/**
 * Returns the part of light a smooth boundary reflects at right angles [0..1]: ((n1 - n2)/(n1 + n2))^2.
 * @param firstIndex refractive index before the boundary: air 1, water 1.333, glass 1.52
 * @param secondIndex behind it
 * @source derived: Fresnel at normal incidence
 */
export function normalReflectance(firstIndex: number, secondIndex: number): number {
  return square((firstIndex - secondIndex) / (firstIndex + secondIndex));
}

/**
 * Returns the part of light a clear pane lets through [0..1], reflections between its faces included: (1 - R)/(1 + R).
 * @param reflectance R of one face
 * @validity no absorption; a 4 mm float pane absorbs about 2 % more
 * @source derived
 */
export function clearPaneTransmittance(reflectance: number): number {
  return (1 - reflectance) / (1 + reflectance);
}

/**
 * Returns the light left behind covers lying one over another [unit of `light`].
 * @param light before them
 * @param transmittances of each, 0 to 1: glass, open part of a mesh, dirt or droplets 0.7 to 0.95
 * @source derived
 */
export function lightBehind(light: number, transmittances: readonly number[]): number {
  return transmittances.reduce((left, transmittance) => left * transmittance, light);
}

/**
 * Returns the light of a day [mol/(m2 day)]: flux density times seconds lit, in moles.
 * @param fluxDensity [umol/(m2 s)]
 * @param hours lit a day; a linear ramp counts half
 * @source derived
 */
export function dailyLightIntegral(fluxDensity: number, hours: number): number {
  return (fluxDensity * hours * 3600) / 1e6;
}

/**
 * Returns the power a lamp sends out as light [W]: P times efficacy over the luminous efficacy of its spectrum.
 * @param power electrical P [W]
 * @param efficacy of the lamp [lm/W]
 * @param spectralEfficacy luminous efficacy of the radiation [lm/W]; white LEDs 305 to 320
 * @source derived
 */
export function opticalPower(power: number, efficacy: number, spectralEfficacy: number): number {
  return (power * efficacy) / spectralEfficacy;
}

/**
 * Returns the light left at a depth under still water [unit of `light`]: E (1 - R) exp(-K z).
 * @param light E above the surface
 * @param reflectance R of the surface; 0.02 from above
 * @param attenuation K [1/m]
 * @param path z [m], along the ray
 * @source derived: exponential attenuation
 */
export function lightAtDepth(light: number, reflectance: number, attenuation: number, path: number): number {
  return light * (1 - reflectance) * exp(-attenuation * path);
}
