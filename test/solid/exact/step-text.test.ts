import { describe, expect, it } from 'vitest';
import { quoted, steadyStep } from '../../../src/solid/exact/step-text.js';

const WRITTEN = `ISO-10303-21;
HEADER;
FILE_DESCRIPTION(('a model'),'2;1');
FILE_NAME('a model','2031-02-03T04:05:06',('a'),('b'),'c','d','e');
FILE_SCHEMA(('S'));
ENDSEC;
DATA;
#7 = PRODUCT('nut','nut','',(#8));
#9 = NEXT_ASSEMBLY_USAGE_OCCURRENCE('17','nut','',#5,#35,$);
#10 = NEXT_ASSEMBLY_USAGE_OCCURRENCE('18','nut','',#5,#35,$);
ENDSEC;
`;

describe('the text of a STEP file', () => {
  it('has a head without a date, occurrences from 1, and says what a product is', () => {
    const text = steadyStep(WRITTEN, { file: 'nut.step', description: "nut's sizes", writer: 'w' });
    expect(text).not.toContain('2031');
    expect(text).toContain("FILE_NAME('nut.step','1970-01-01T00:00:00',(''),(''),'w','w','');\nFILE_SCHEMA(('S'));");
    expect(text).toContain("PRODUCT('nut','nut','nut''s sizes',(#8))");
    expect([...text.matchAll(/OCCURRENCE\('(\d+)'/g)].map(([, number]) => number)).toEqual(['1', '2']);
  });

  it('escapes letters beyond ASCII as ISO 10303-21 has it', () => {
    expect(quoted('Ø 5 \\ 日')).toBe("'\\X2\\00D8\\X0\\ 5 \\\\ \\X2\\65E5\\X0\\'");
  });
});
