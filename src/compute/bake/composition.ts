/**
 * What should a batter's make-up do to its time? Conductivity, density and heat capacity of the solid-and-water
 * mixture from its mass shares: k by volume, ρ by mass over volume, c by mass. Valid −40 to 150 °C. Source: Choi &
 * Okos (1986) as in ASHRAE Handbook—Refrigeration (2006), ch. 9, Thermal properties of foods; coefficients
 * seen in public code. It knows nothing of air and steam, so it only shifts where the time factor is expected.
 */
export interface Composition {
  water: number;
  protein: number;
  fat: number;
  carbohydrate: number;
  fibre: number;
  ash: number;
}

export interface ThermalProperties {
  conductivityWPerMK: number;
  densityKgPerM3: number;
  heatCapacityKJPerKgK: number;
  /** k ÷ (ρ·c), m²/s, of the airless mixture. */
  diffusivityM2PerS: number;
}

type Polynomial = readonly [number, number, number];
interface Component {
  k: Polynomial;
  density: Polynomial;
  heat: Polynomial;
}

const COMPONENTS: Record<keyof Composition, Component> = {
  water: {
    k: [0.57109, 1.7625e-3, -6.7036e-6],
    density: [997.18, 3.1439e-3, -3.7574e-3],
    heat: [4.1762, -9.0864e-5, 5.4731e-6],
  },
  protein: {
    k: [0.17881, 1.1958e-3, -2.7178e-6],
    density: [1329.9, -0.5184, 0],
    heat: [2.0082, 1.2089e-3, -1.3129e-6],
  },
  fat: {
    k: [0.18071, -2.7604e-4, -1.7749e-7],
    density: [925.59, -0.41757, 0],
    heat: [1.9842, 1.4733e-3, -4.8008e-6],
  },
  carbohydrate: {
    k: [0.20141, 1.3874e-3, -4.3312e-6],
    density: [1599.1, -0.31046, 0],
    heat: [1.5488, 1.9625e-3, -5.9399e-6],
  },
  fibre: {
    k: [0.18331, 1.2497e-3, -3.1683e-6],
    density: [1311.5, -0.36589, 0],
    heat: [1.8459, 1.8306e-3, -4.6509e-6],
  },
  ash: {
    k: [0.32962, 1.4011e-3, -2.9069e-6],
    density: [2423.8, -0.28063, 0],
    heat: [1.0926, 1.8896e-3, -3.6817e-6],
  },
};
const NAMES = Object.keys(COMPONENTS) as (keyof Composition)[];

/** Middle of the way from batter to done: where properties are compared, °C. */
export const COMPARED_AT_C = 60;

const at = ([a, b, c]: Polynomial, celsius: number): number => a + b * celsius + c * celsius * celsius;

/** Properties of one component at a temperature: W/(m·K), kg/m³, kJ/(kg·K). */
export function componentProperties(name: keyof Composition, celsius: number) {
  const { k, density, heat } = COMPONENTS[name];
  return { conductivity: at(k, celsius), density: at(density, celsius), heat: at(heat, celsius) };
}

/** Properties at a temperature; shares must be 0 or more and add up to 1 within 0.001, else a RangeError. */
export function thermalProperties(shares: Composition, celsius: number): ThermalProperties {
  const total = NAMES.reduce((sum, name) => sum + shares[name], 0);
  if (!(Math.abs(total - 1) <= 1e-3) || NAMES.some((name) => shares[name] < 0)) {
    throw new RangeError(`Shares add up to 1 and none is negative; these add up to ${total}.`);
  }
  const volume = NAMES.reduce((sum, name) => sum + shares[name] / at(COMPONENTS[name].density, celsius), 0);
  let k = 0;
  let heat = 0;
  for (const name of NAMES) {
    const { k: own, density, heat: ownHeat } = COMPONENTS[name];
    k += (at(own, celsius) * shares[name]) / at(density, celsius) / volume;
    heat += at(ownHeat, celsius) * shares[name];
  }
  return {
    conductivityWPerMK: k,
    densityKgPerM3: 1 / volume,
    heatCapacityKJPerKgK: heat,
    diffusivityM2PerS: (k * volume) / (heat * 1000),
  };
}

/** By how much longer a batter should take than another, by diffusivity at 60 °C; air and rise left out. */
export function compositionTimeFactor(shares: Composition, reference: Composition): number {
  const own = thermalProperties(shares, COMPARED_AT_C).diffusivityM2PerS;
  return thermalProperties(reference, COMPARED_AT_C).diffusivityM2PerS / own;
}
