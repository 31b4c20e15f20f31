import { explainTravel } from '../drive/explain-travel.js';
import { jsonText } from '../output/report-json.js';
import { comparisonText } from '../output/terminal/drive-comparison.js';
import { travelText } from '../output/terminal/drive-travel.js';
import { compareFitted } from '../pipeline/compare-named.js';
import { screwNamed } from '../pipeline/screw-named.js';
import type { Fields } from '../sheet/fields-map.js';
import { type DriveQuestion, readDuty, readQuestion } from './drive-options.js';
import { type DriveSource, isSheet, openDriveSource } from './drive-source.js';
import { EXIT } from './exit-codes.js';
import { type Io, wantsColour, widthOf } from './io.js';
import { tellFaults } from './tell-faults.js';

/** What `drive` was called with. */
export interface DriveArgs extends Fields {
  readonly screws: readonly string[];
  readonly from?: string | undefined;
  readonly json?: boolean | undefined;
}

/**
 * Puts screws side by side; with a commanded and a measured travel, explains why the one in the machine moves wrongly.
 * The duty is that of the first sheet which has one, with the options in its place.
 */
export async function driveCall(args: DriveArgs, io: Io): Promise<number> {
  const question = readQuestion(args);
  const from = args.from === undefined ? undefined : screwNamed(args.from, '--from');
  const sources = await openAll(args.screws, io);
  if (sources === undefined) return EXIT.wrong;
  const sheet = sources.find((source) => source.sheet?.duty !== undefined)?.sheet;
  try {
    const { duty, fit } = readDuty(args, sheet);
    const fitted = sources.map((source) => ({ screw: source.screw, fit: fit ?? source.fit }));
    const comparison = compareFitted(fitted, duty, { ...question, from, lifts: liftsOf(question) });
    const { commanded, measured, stepsPerMm } = question;
    const travel =
      commanded === undefined || measured === undefined
        ? undefined
        : explainTravel({
            commanded,
            measured: measured.value,
            uncertainty: measured.half,
            screw: sources[0]!.screw,
            duty,
            stepsPerMm,
            oldLead: from?.lead,
          });
    if (args.json === true) io.stdout.write(jsonText({ ...comparison, ...(travel && { travel }) }));
    else {
      const options = { colour: wantsColour(io), width: widthOf(io) };
      io.stdout.write(
        travel === undefined
          ? comparisonText(comparison, duty, { ...options, levelled: question.endDifference !== undefined })
          : travelText(travel, { screw: comparison.screws[0]!.designation, stepsPerMm }, options),
      );
    }
    return EXIT.done;
  } catch (error) {
    return tellFaults(error, io, sheet?.file);
  }
}

function liftsOf({ lifts, liftHeight, acceleration }: DriveQuestion) {
  if (lifts === undefined || liftHeight === undefined || acceleration === undefined) return undefined;
  return { count: lifts, height: liftHeight, acceleration };
}

/** Every screw and sheet; undefined where one of them is wrong, which is then told. */
async function openAll(names: readonly string[], io: Io): Promise<readonly DriveSource[] | undefined> {
  const opened: DriveSource[] = [];
  for (const name of names) {
    try {
      opened.push(await openDriveSource(name, io));
    } catch (error) {
      tellFaults(error, io, isSheet(name) ? name : undefined);
    }
  }
  return opened.length === names.length ? opened : undefined;
}
