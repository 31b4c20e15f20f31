/**
 * Share of a length by which the pitch of an ordinary rolled or cut screw may be off. The thread standards state no
 * limits for it: what they allow is held in the pitch diameter. Lead screws are sold by classes of 0.05 to 0.2 mm on
 * 300 mm; ordinary ones keep about a thousandth.
 *
 * @source common-practice: pitch of ordinary rolled screws
 */
export const ROLLED_PITCH_ERROR = 0.001;
