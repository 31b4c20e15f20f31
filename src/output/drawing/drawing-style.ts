/** Widths of ISO 128: thick lines twice the thin ones. Ink takes the colour of the text around it. */
export const DRAWING_STYLE = [
  '.drawing :is(.o,.t,.h,.c){fill:none;stroke:currentColor;stroke-linecap:round;stroke-linejoin:round}',
  '.drawing .o{stroke-width:.5}.drawing .t{stroke-width:.25}.drawing .h{stroke-width:.25;stroke-dasharray:2 1}',
  '.drawing .c{stroke-width:.18;stroke-dasharray:6 1.2 .6 1.2}',
  '.drawing .f{fill:currentColor}.drawing .m{fill:url(#hatch);fill-rule:evenodd}.drawing .n{fill:url(#hatch-back)}',
  '.drawing text{fill:currentColor;font-family:"DejaVu Sans","Liberation Sans",Arial,sans-serif}',
].join('');
