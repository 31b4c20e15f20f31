export type { AxisDesign } from './axis/axis-design.js';
export { checkAxis } from './axis/check.js';
export { type AxisOptions, designAxis } from './axis/design.js';
export { type MadeAxis, type MakeAxisOptions, makeAxis } from './axis/make.js';
export type { AxisReport } from './axis/report.js';
export type { Calibration } from './calibrate/calibration.js';
export type { Results } from './calibrate/results.js';
export { screwsOfOneAxisMayDiffer } from './drive/axis-pair.js';
export { compareScrews } from './drive/compare-screws.js';
export { controllerChange } from './drive/controller-change.js';
export { driveNumbers } from './drive/drive-numbers.js';
export { explainTravel } from './drive/explain-travel.js';
export type { DriveNumbers, LayerNumbers } from './drive/numbers.js';
export type { DriveScrew } from './drive/screw.js';
export { endDifference } from './drive/turn.js';
export type { FitBlock } from './fit/stack/fit-block.js';
export { type Identification, identify } from './identify/identify.js';
export type { Readings } from './identify/readings.js';
export type { Acceptance } from './judge/accept.js';
export type { Advice, CheckAdvice, Cure } from './judge/advice.js';
export type { Bounds, Finding, Verdict } from './judge/check.js';
export { type Column, columnLoad } from './mechanics/column.js';
export { loweringTorque } from './mechanics/power-screw/lowering-torque.js';
export { raisingTorque } from './mechanics/power-screw/raising-torque.js';
export type { LoadedThread } from './mechanics/power-screw/thread.js';
export { whirlSpeed } from './mechanics/whirl.js';
export { readStl } from './output/read-stl.js';
export type { BodyRow, Report } from './output/report.js';
export { reportJson } from './output/report-json.js';
export { type TerminalOptions, terminalReport } from './output/terminal-report.js';
export { writeStl } from './output/write-stl.js';
export type { Expected, HardwareRow, PartKind, PrintAdvice, Sizes } from './parts/part-kind.js';
export { advise } from './pipeline/advise.js';
export { type Calibrated, calibrateRuns, readResults, writeProfile } from './pipeline/calibrate.js';
export { type CheckOptions, check } from './pipeline/check.js';
export { type Design, type DesignOptions, design } from './pipeline/design.js';
export { type KnownKind, knownKind } from './pipeline/known-kind.js';
export { type MadeFile, type MadePart, type MakeOptions, makePart } from './pipeline/make.js';
export { type ModelOptions, model } from './pipeline/model.js';
export { newResults } from './pipeline/new-results.js';
export { startSheet } from './pipeline/start-sheets.js';
export type { PresetTexts } from './presets/texts.js';
export { createKernel, type Kernel, type KernelOptions } from './solid/kernel.js';
export { type MeshMeasures, measureMesh } from './solid/measure.js';
export type { Body, Mesh } from './solid/mesh.js';
export type { BodyRecipe, Shape } from './solid/recipe.js';
export { nutLimits, screwLimits } from './standards/tolerances/thread-limits.js';
export { type Fault, faultLine, InputError, type Place } from './units/faults.js';
export type { Measured } from './units/measured.js';

declare global {
  /** Named by the types of a package that we use; who compiles without those of a browser or of Node has no other. */
  interface URL {}
}
