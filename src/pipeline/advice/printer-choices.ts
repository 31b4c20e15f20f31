import { printerList } from '../../presets/printer-list.js';
import type { PresetTexts } from '../../presets/texts.js';
import { type FigureKnob, isFigure, type Knob } from './knob.js';

/**
 * Fields of a printer take only values that stand on its list of presets: a nozzle with the layer nearest to the present one
 * that it prints, or another layer of the present nozzle. So advice names what a person can buy and set.
 */
export function onPresetList(knobs: readonly Knob[], presets: PresetTexts): Knob[] {
  const listed = printerList(presets);
  const figures = knobs.filter(isFigure);
  const now = (field: string) => figures.find(({ path }) => path === field)?.now ?? 0;
  const [nozzle, layer] = [now('printer.nozzle'), now('printer.layer')];
  const layersOf = (one: number) => sorted(listed.filter((pair) => same(pair.nozzle, one)).map((pair) => pair.layer));
  return knobs.map((knob) => {
    if (!isFigure(knob)) return knob;
    if (knob.path === 'printer.layer') return { ...knob, values: layersOf(nozzle) };
    if (knob.path !== 'printer.nozzle') return knob;
    const also: FigureKnob['also'] = (one) => {
      const near = nearest(layersOf(one), layer);
      return same(near, layer) ? {} : { 'printer.layer': near };
    };
    return { ...knob, values: sorted(listed.map((pair) => pair.nozzle)), also };
  });
}

function sorted(values: readonly number[]): number[] {
  return [...new Set(values)].sort((a, b) => a - b);
}

function nearest(values: readonly number[], to: number): number {
  return values.reduce((a, b) => (Math.abs(b - to) < Math.abs(a - to) ? b : a));
}

function same(a: number, b: number): boolean {
  return Math.abs(a - b) < 1e-9;
}
