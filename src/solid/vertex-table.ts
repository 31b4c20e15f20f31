/**
 * Joins corners by their exact float32 bits.
 *
 * @param positions  [x0,y0,z0, …]  [mm]; rounded to float32 here
 * @returns for each corner the number of its joined corner, counted from 0 in order of first use; and the first corner of
 *   each number
 */
export function joinCorners(positions: ArrayLike<number>): {
  readonly joined: Uint32Array;
  readonly firsts: Uint32Array;
} {
  const corners = positions.length / 3;
  const bits = new Int32Array(new Float32Array(positions).buffer);
  let size = 16;
  while (size < 2 * corners) size *= 2;
  const slots = new Int32Array(size).fill(-1);
  const firsts = new Uint32Array(corners);
  const joined = new Uint32Array(corners);
  let count = 0;
  for (let corner = 0; corner < corners; corner++) {
    const x = bits[3 * corner]!;
    const y = bits[3 * corner + 1]!;
    const z = bits[3 * corner + 2]!;
    let slot = scatter(Math.imul(x, 73856093) ^ Math.imul(y, 19349663) ^ Math.imul(z, 83492791)) & (size - 1);
    for (;;) {
      const known = slots[slot]!;
      if (known < 0) {
        slots[slot] = count;
        firsts[count] = corner;
        joined[corner] = count++;
        break;
      }
      const first = 3 * firsts[known]!;
      if (bits[first] === x && bits[first + 1] === y && bits[first + 2] === z) {
        joined[corner] = known;
        break;
      }
      slot = (slot + 1) & (size - 1);
    }
  }
  return { joined, firsts: firsts.slice(0, count) };
}

/** Mixes the high bits of a number into its low ones. */
function scatter(value: number): number {
  const mixed = Math.imul(value ^ (value >>> 16), 0x45d9f3b);
  return mixed ^ (mixed >>> 15);
}
