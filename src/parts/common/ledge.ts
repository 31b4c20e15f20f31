/** A ceiling that is held on one side only prints as far as a line or so; farther it wants support, mm. @source common-practice */
export const LEDGE = { pass: { max: 0.5 }, fail: { max: 5 } };
