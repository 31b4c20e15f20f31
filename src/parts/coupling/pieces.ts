import type { Material } from '../../presets/material.js';
import type { Printer } from '../../presets/printer.js';
import type { Shaft } from '../common/bore.js';
import type { Grip } from '../common/grip.js';
import type { HubTemperature } from '../common/held.js';
import type { HubPlan } from './hub-plan.js';
import type { InsertPlan } from './insert.js';

/** Names of the hubs, as in their files. */
export type HubName = 'motor-hub' | 'screw-hub';

/** One hub, worked out. */
export interface Hub {
  readonly name: HubName;
  readonly shaft: Shaft;
  readonly clearance: number;
  readonly grip: Grip;
  /** length of shaft that the bore holds */
  readonly engagement: number;
  /** the same, were the bore longer than the shaft */
  readonly reach: number;
  /** how far from the hub's end the shaft goes in */
  readonly depth: number;
  readonly temperature: HubTemperature;
  readonly finished: HubPlan;
  readonly printed: HubPlan;
}

/** What both shaft ends stand on. */
export type Pad = 'disc' | 'ball' | 'soft' | 'none';

/** The insert, worked out. */
export interface Insert {
  readonly finished: InsertPlan;
  readonly printed: InsertPlan;
  readonly material: Material;
  readonly printer: Printer;
  readonly hardness: string;
  /** MPa */
  readonly modulus: number;
  /** at each flank, below 0 where the lobes are squeezed */
  readonly flankClearance: number;
  readonly pad: { readonly kind: Pad; readonly diameter: number; readonly thickness: number };
}
