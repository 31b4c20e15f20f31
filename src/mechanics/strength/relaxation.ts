import { requireNotNegative, requireRange } from '../../units/require.js';
import { glassDistance } from './heat-shares.js';
import { type Plastic, ROOM } from './plastic.js';

/** Share of a fresh screw force that is left once the printed skin has bedded in. @source derived */
export const BEDDED = 0.9;
/** The same under a head whose seat was bridged over a pocket, and lies on fewer and looser lines. @source derived */
export const BEDDED_ON_BRIDGE = 0.75;

type Creeping = Pick<Plastic, 'creep' | 'heat'>;

/**
 * Share of its first stress that a held strain still has: a screw's preload, a press fit, a hub closed on its shaft.
 * It is the share of the modulus too, and apart from strength: never multiply it with a share of the strength.
 *
 *     c = c₁·t^(−n)      glasses n = n₂₃/u      others n = n₂₃·(1 + (T − 23)/100)
 *
 * @param plastic        how it creeps and what heat does to it
 * @param p.hours        t  since the strain was set                  [h]   0 or above; below one hour c₁ holds
 * @param p.temperature  T  of the part                               [°C]  −40 to 250; below 23 as at 23
 * @returns c, 0 for a glass at its glass transition [-]
 * @throws InputError  a value is outside its range
 * @source creep-sheets: c₁ and n from makers' creep sheets of moulded grades, from memory
 * @source derived: rise of the exponent with temperature
 * @example strainKept({ creep: { hour: 0.87, exponent: 0.0861, strain: 0.01 }, heat: { standing: 52, moment: 72 } }, { hours: 24, temperature: 23 }) // 0.6617
 */
export function strainKept(plastic: Creeping, p: { readonly hours: number; readonly temperature: number }): number {
  requireNotNegative('hours', p.hours);
  requireRange('temperature', p.temperature, -40, 250);
  const exponent = exponentAt(plastic, p.temperature);
  if (exponent === Infinity) return 0;
  return plastic.creep.hour * Math.max(1, p.hours) ** -exponent;
}

function exponentAt({ creep, heat }: Creeping, temperature: number): number {
  if ('glass' in heat) return creep.exponent / glassDistance({ glass: heat.glass, temperature });
  return creep.exponent * (1 + Math.max(0, temperature - ROOM) / 100);
}

/**
 * The same, when what was lost after some time is given back once by tightening to the first force again.
 *
 *     R = c(t) + (1 − c(t₁))·c(t − t₁)
 *
 * @param plastic        how it creeps and what heat does to it
 * @param p.hours        t   since it was first tightened          [h]   above t₁
 * @param p.after        t₁  when it was tightened again           [h]   0 or above
 * @param p.temperature  T   of the part                           [°C]  −40 to 250
 * @returns R [-]
 * @throws InputError  a value is outside its range
 * @source derived: superposition of two held strains
 * @validity tightened again cold, once or twice; each turn adds creep strain
 * @example strainKeptRetightened({ creep: { hour: 0.85, exponent: 0.063, strain: 0.007 }, heat: { glass: 103 } }, { hours: 1000, after: 24, temperature: 23 }) // 0.718
 */
export function strainKeptRetightened(
  plastic: Creeping,
  p: { readonly hours: number; readonly after: number; readonly temperature: number },
): number {
  requireRange('after', p.after, 0, p.hours);
  const { temperature } = p;
  const lost = 1 - strainKept(plastic, { hours: p.after, temperature });
  return (
    strainKept(plastic, { hours: p.hours, temperature }) +
    lost * strainKept(plastic, { hours: p.hours - p.after, temperature })
  );
}
