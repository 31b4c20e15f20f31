import type { PartInHand } from '../part-in-hand.js';
import { xmlText } from '../xml-text.js';
import { base64 } from './base64.js';

/** What the stage needs of a part. */
export interface Staged extends Pick<PartInHand, 'views' | 'bodies'> {
  readonly report: Pick<PartInHand['report'], 'name' | 'part' | 'print'>;
}

/** The part in 3D, with what stands beside it: a still picture first, in whose place the script puts the model, and the tools to handle it. */
export function stageSection({ report, views, bodies }: Staged, picture: Uint8Array, beside = ''): string {
  const alt = `${report.name}, ${report.part}, seen from the side and above`;
  const companions = views.companions.map(({ name }) => name).join(', ');
  const several = bodies.length > 1;
  const tools = [
    tool(
      'Section',
      '<select id="cut"><option value="none">whole</option><option value="along">cut along the axis</option><option value="across">cut across the axis</option></select>',
      'cut',
    ),
    tool('Cut at', '<input id="cut-at" type="range" min="-100" max="100" value="0" step="2" disabled>', 'cut-at'),
    ...(several
      ? [tool('Pull apart', '<input id="pull" type="range" min="0" max="100" value="0" step="2">', 'pull')]
      : []),
    ...(companions ? [tick('companions', `with ${companions}`, true)] : []),
    tick('bed', 'as it lies on the bed', false),
    '<span class="buttons" role="group" aria-label="View">',
    button('zoom-in', 'Larger'),
    button('zoom-out', 'Smaller'),
    button('view-side', 'Side'),
    button('view-top', 'End'),
    button('view-reset', 'Reset'),
    '</span>',
  ];
  const print = report.print
    ? `<p><strong>On the bed:</strong> ${xmlText(report.print.face_up)}${report.print.support === 'none' ? ', no support' : ', with support'}. <span class="moves">${xmlText(report.print.why)}</span></p>`
    : '';
  return [
    `<figure class="stage"><div id="stage" data-state="still"><img src="data:image/png;base64,${base64(picture)}" width="480" height="360" alt="${xmlText(alt)}"></div>`,
    '<figcaption id="stage-note">Drag to turn, arrow keys too; scroll or + and − to zoom once the model is in hand.</figcaption></figure>',
    `<div id="tools" hidden>${tools.join('\n')}</div>`,
    print,
    beside,
  ].join('\n');
}

function tool(label: string, control: string, id: string): string {
  return `<span class="tool"><label for="${id}">${label}</label>${control}</span>`;
}

function tick(id: string, label: string, on: boolean): string {
  return `<label class="tick"><input type="checkbox" id="${id}"${on ? ' checked' : ''}> ${xmlText(label)}</label>`;
}

function button(id: string, label: string): string {
  return `<button type="button" id="${id}">${label}</button>`;
}
