/** In words, what else is beyond a limit that the worst of several is beyond: who mends or accepts that alone would overlook it. */
export function othersToo(names: readonly string[]): string {
  return names.map((name) => `; the ${name} too`).join('');
}
