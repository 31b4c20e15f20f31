const LENGTHS = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200];
const MOST_PIXELS = 150;

/** A bar of a round length in the corner of the stage. */
export class ScaleBar {
  readonly #bar = document.createElement('div');

  constructor(stage: HTMLElement) {
    this.#bar.id = 'scale';
    stage.append(this.#bar);
  }

  show(pixelsPerMm: number): void {
    const length = LENGTHS.findLast((one) => one * pixelsPerMm <= MOST_PIXELS) ?? LENGTHS[0]!;
    this.#bar.style.width = `${length * pixelsPerMm}px`;
    this.#bar.textContent = `${length} mm`;
  }
}
