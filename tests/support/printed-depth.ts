import type { Depth } from '../../core/record/caliber.ts'
import { readListLine } from '../../core/record/read-list-line.ts'

/** A depth as a handbook prints it: driver and driven, their pitch diameters, the centre distance; what is empty is not stated. */
export const printedDepth = (
  driver: string,
  driven: string,
  [driverPitchMm = '', drivenPitchMm = '', centreDistanceMm = '']: readonly string[],
): Depth => {
  const read = readListLine('depths', { driver, driven, driverPitchMm, drivenPitchMm, centreDistanceMm })
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.line
}
