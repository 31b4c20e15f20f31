/** What is mutated, with the tests that must notice. */
export const FOLDERS = {
  fit: ['test/fit/**/*.test.ts'],
  judge: ['test/judge/**/*.test.ts'],
  'mechanics/strength': ['test/mechanics/strength/*.test.ts', 'test/docs-examples.test.ts'],
  'mechanics/bolt': ['test/mechanics/bolt/*.test.ts', 'test/parts/common/{joints,bolting}.test.ts'],
  'mechanics/coupling': ['test/mechanics/coupling/*.test.ts', 'test/docs-examples.test.ts'],
  'mechanics/flange': ['test/mechanics/flange/*.test.ts', 'test/parts/common/slab.test.ts'],
  'mechanics/power-screw': ['test/mechanics/power-screw/*.test.ts', 'test/docs-examples.test.ts'],
  'mechanics/print': ['test/mechanics/print/*.test.ts', 'test/docs-examples.test.ts'],
  'mechanics/shaft': ['test/mechanics/shaft/*.test.ts', 'test/docs-examples.test.ts'],
  'mechanics/thread': ['test/mechanics/{thread,print}/*.test.ts', 'test/docs-examples.test.ts'],
  'standards/bearings': ['test/standards/bearings/*.test.ts', 'test/docs-examples.test.ts'],
  'standards/threads/{acme,metric-v,trapezoidal}.ts': [
    'test/standards/threads/*.test.ts',
    'test/docs-examples.test.ts',
  ],
  'standards/fasteners/{set-screw-holding,tightening}.ts': ['test/standards/fasteners/*.test.ts'],
  'mechanics/*.ts': ['test/mechanics/*.test.ts', 'test/docs-examples.test.ts'],
  'parts/common/{grip,axial-path,clamp-ring,grip-demand,grip-checks,hold-figures}.ts': [
    'test/parts/common/{grip,axial-path,clamp,grip-demand,grip-checks,hold-figures}.test.ts',
    'test/parts/{coupling/checks,sleeve}/by-hand.test.ts',
  ],
  'parts/common/{held-slab,slab,bolting,load-cases,stall-force}.ts': [
    'test/parts/common/{held-slab,slab,bolting,bolting-words,load-cases,material-at,stall-force}.test.ts',
  ],
  'parts/common/{carriage-wall,tipped-slab,turning-speed,sliding-limits,plastic-told,both-ways,turned-end}.ts': [
    'test/parts/common/{carriage-wall,tipped-slab,turning-speed,sliding-limits,plastic-told,both-ways,turned-end}.test.ts',
  ],
  'parts/common/{held-checks,checks,profile-checks,pattern-fit,joints,residual}.ts': [
    'test/parts/common/{profile-checks,pattern-fit,joints,held-checks,bore-play,bolting}.test.ts',
    'test/parts/{coupling/checks,sleeve}/by-hand.test.ts',
  ],
  'parts/common/{float,teeth,bore-play,axial-grip,held,grip-cure,hub-walls,walls}.ts': [
    'test/parts/common/{float,teeth,bore-play,axial-grip,grip,grip-checks,grip-cure,hub-walls,axial-path,held,held-checks}.test.ts',
    'test/parts/nut/float.test.ts',
    'test/parts/{collar,coupling/checks,sleeve}/by-hand.test.ts',
  ],
  'parts/common/{untold,motor-heat,thread-in-print,finer-print,locating,drive-limits,crest-shaft,wall-in-file,fit-classes}.ts':
    [
      'test/parts/common/{untold,motor-heat,thread-in-print,finer-print,locating,drive-limits,crest-shaft,wall-in-file,fit-classes}.test.ts',
    ],
  'parts/common/{lifted,bore,bought-nut}.ts': ['test/parts/common/{lifted,bore,bought-nut}.test.ts'],
  'parts/nut/{bore,flanks-meet,stack,fit-figures,fit-block,float-remedies}.ts': [
    'test/parts/nut/{bore,flanks-meet,stack,fit-figures,fit-block,float-remedies}.test.ts',
  ],
  'parts/nut/{flange-bending,engagement,float,drive,warmth}.ts': [
    'test/parts/nut/{checks,strength,flange,float,drive,engagement,messages,family,by-hand}.test.ts',
    'test/parts/nut/checks/{flange,warmed}.test.ts',
    'test/parts/nut/variants/*.test.ts',
  ],
  'parts/adapter/{bending,cutouts,necks,float-stop}.ts': [
    'test/parts/adapter/{bending,cutouts,necks,strength}.test.ts',
  ],
  'parts/adapter/{bores-entered,drilled,float-remedies}.ts': ['test/parts/adapter/{float-remedies,messages}.test.ts'],
  'parts/coupling/{jaw-load,misalignment,peak-torque,temperatures}.ts': [
    'test/parts/coupling/checks/*.test.ts',
    'test/parts/coupling/{coupling,jaw-load}.test.ts',
  ],
  'parts/collar/{pin,seat,held-in,untold}.ts': ['test/parts/collar/{by-hand,flats,messages}.test.ts'],
  'parts/collar/thread-fit.ts': ['test/parts/collar/thread-fit.test.ts'],
  'parts/nut/checks': [
    'test/parts/nut/{bore,checks,messages,strength,flange,float}.test.ts',
    'test/parts/nut/checks/*.test.ts',
    'test/parts/nut/variants/{by-hand,twin-lever}.test.ts',
    'test/parts/common/{slab,bolting,pocket-floor,profile-checks}.test.ts',
  ],
  'parts/nut/variants/{checks,twin-checks,twin,split-hold,nut-seat,anti-backlash}.ts': [
    'test/parts/nut/{family,by-hand}.test.ts',
    'test/parts/nut/variants/*.test.ts',
  ],
  'parts/nut/variants/twin-side.ts': ['test/parts/nut/variants/twin-side.test.ts'],
  'parts/nut/variants/nut-held.ts': ['test/parts/nut/variants/nut-held.test.ts'],
  'parts/common/borne-share.ts': ['test/parts/nut/{family,by-hand}.test.ts', 'test/parts/nut/variants/*.test.ts'],
  'parts/nut/variants/key-bending.ts': ['test/parts/nut/variants/by-hand.test.ts'],
  'parts/nut/variants/slit-takes.ts': ['test/parts/nut/variants/slit-takes.test.ts'],
  'parts/adapter/checks': [
    'test/parts/adapter/{adapter,key-bending,messages,strength,verdicts}.test.ts',
    'test/parts/common/{bolting,pattern-fit}.test.ts',
  ],
  'parts/coupling/checks': [
    'test/parts/coupling/checks/*.test.ts',
    'test/parts/coupling/{coupling,verdicts}.test.ts',
    'test/parts/common/{grip,axial-path}.test.ts',
  ],
  'parts/sleeve/{checks,held-in,least-wall}.ts': [
    'test/parts/sleeve/{by-hand,checks,held-in,least-wall,sleeve,verdicts}.test.ts',
    'test/parts/common/axial-path.test.ts',
  ],
  'parts/collar/checks': ['test/parts/collar/{by-hand,flats,messages,thread-fit,verdicts}.test.ts'],
  'parts/common/bearing-rating.ts': ['test/parts/common/bearing-rating.test.ts'],
  'parts/common/pocket-floor.ts': ['test/parts/common/pocket-floor.test.ts'],
  'parts/end-holder/checks': ['test/parts/end-holder/*.test.ts'],
  'parts/nut/{walls,edges}.ts': ['test/parts/nut/walls.test.ts'],
  'parts/nut/variants/walls.ts': ['test/parts/nut/variants/walls.test.ts'],
  'parts/end-holder/walls.ts': ['test/parts/end-holder/walls.test.ts'],
  'parts/motor-plate/walls.ts': ['test/parts/motor-plate/walls.test.ts'],
  'parts/end-holder/loads.ts': ['test/parts/end-holder/loads.test.ts'],
  'parts/end-holder/bearing.ts': ['test/parts/end-holder/bearing.test.ts'],
  'parts/motor-plate/checks': ['test/parts/motor-plate/{locating,messages,motor-plate,verdicts}.test.ts'],
  'parts/motor-plate/{bending,loads,motor-screw}.ts': [
    'test/parts/motor-plate/{bending,loads,messages,motor-plate,verdicts}.test.ts',
  ],
  'parts/gauge/checks.ts': ['test/parts/gauge/*.test.ts'],
  'parts/coupon/print-time.ts': ['test/parts/coupon/print-time.test.ts'],
  'parts/coupon/checks.ts': ['test/parts/coupon/{coupon,verdicts}.test.ts'],
  'axis/checks': ['test/axis/{lengths,checks}.test.ts', 'test/axis/checks/*.test.ts'],
  // what works a whole axis out takes ten seconds, so each of these is noticed by its own test
  'axis/{facts,follows,known,lengths,limits,motor-preset,mounting-order,roles,accept,along-table}.ts': [
    'test/axis/{facts,follows,known,lengths,limits,motor-preset,mounting-order,roles,accept,along-table}.test.ts',
  ],
  'fleet/{pair-facts,pair-motors,pair-screws,pair-story,neighbours,odd-readings}.ts': [
    'test/fleet/{pair-facts,pairs,odd-readings}.test.ts',
  ],
};

/** The sources of a group, as a glob. */
export function sourcesOf(group) {
  return group.endsWith('.ts') ? `src/${group}` : `src/${group}/**/*.ts`;
}

/** A glob of `*`, `**` and `{a,b}` as a pattern of whole paths. */
export function globbed(glob) {
  const pattern = glob.replace(/\*\*\/|\*|\.|\{([^}]*)\}/g, (found, words) => {
    if (words !== undefined) return `(?:${words.replaceAll(',', '|')})`;
    return { '**/': '(?:.*/)?', '*': '[^/]*', '.': '\\.' }[found];
  });
  return new RegExp(`^${pattern}$`);
}
