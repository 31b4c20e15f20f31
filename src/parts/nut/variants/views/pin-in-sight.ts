/** A pin's bore as it stands, on either side of the axis. */
export interface PinInSight {
  readonly diameter: number;
  readonly offset: number;
  readonly height: number;
}
