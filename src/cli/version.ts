export { VERSION } from '../output/version.js';
