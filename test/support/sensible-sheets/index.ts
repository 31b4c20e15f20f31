export { sensibleAdapter } from './adapters.js';
export { sensibleCollar } from './collars.js';
export { sensibleCoupling } from './couplings.js';
export { sensibleCoupon } from './coupons.js';
export { sensibleEndHolder } from './end-holders.js';
export { sensibleGauge } from './gauges.js';
export { sensibleNut } from './nuts.js';
export { sensibleSleeve } from './sleeves.js';
