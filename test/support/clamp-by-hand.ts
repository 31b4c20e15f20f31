/** A slit hub in the letters of the formulas, mm: middle of its wall, wall, screws from the axis. */
interface HubByHand {
  readonly R: number;
  readonly h: number;
  readonly e: number;
}

const neutral = ({ R, h }: HubByHand) => R - h / Math.log((R + h / 2) / (R - h / 2));

/**
 * Force that closes a slit hub, N: the handbook's thin ring, δ = π·ΔD·e/R and F = δ·E·I/(π·R·(2e² + R²)), or where that is more the curved beam that turns
 * about its back, 0.96·ΔD·E·L·h·ē/(2R·(e + πR/4)), which finite elements have within 8 %.
 */
export function closedByHand(
  hub: HubByHand & { readonly L: number; readonly E: number; readonly play: number },
): number {
  const { R, h, e, L, E, play } = hub;
  const thin = (((Math.PI * play * e) / R) * E * ((L * h ** 3) / 12)) / (Math.PI * R * (2 * e ** 2 + R ** 2));
  return Math.max(thin, (0.96 * play * E * L * h * neutral(hub)) / (2 * R * (e + (Math.PI * R) / 4)));
}

/** What presses on the shaft of each newton of its screws: (e + R)/R, or where that is less what a thick back and what gives under the shaft leave. */
export function pressedByHand(hub: HubByHand): number {
  const { R, h, e } = hub;
  const thick = (1 + (4 * e) / (Math.PI * R)) / (1 + (2.2 * h * neutral(hub)) / (Math.PI * R ** 2));
  return Math.min((e + R) / R, thick);
}
