/** Backlash up to which an axis is usually content, mm. @source common-practice */
export const USUAL_BACKLASH = { vertical: 0.3, other: 0.1 } as const;
