import { arch, cpus, platform, totalmem } from 'node:os'

export interface Figure {
  readonly what: string
  readonly n: number
  readonly medianMs: number
  readonly p99Ms: number
  readonly goal: string
  /** Null where the figure has no goal and only stands beside another. */
  readonly met: boolean | null
}

/** The machine and the Node that the figures were taken on. */
export const machine = (): string =>
  `${cpus()[0]?.model ?? 'unknown processor'}, ${cpus().length} cores, ${Math.round(totalmem() / 2 ** 30)} GiB, ${platform()} ${arch()}, Node ${process.versions.node}`

/** The value below which `part` of the times lie. */
export const quantile = (times: readonly number[], part: number): number => {
  const sorted = [...times].sort((a, b) => a - b)
  return sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))] ?? 0
}

/** Milliseconds that each call of `work` takes, one for each input. */
export const timesOf = async <I>(inputs: readonly I[], work: (input: I) => unknown): Promise<number[]> => {
  const times: number[] = []
  for (const input of inputs) {
    const start = performance.now()
    await work(input)
    times.push(performance.now() - start)
  }
  return times
}

/** A line of the table; `judge` is given median and p99. */
export const figure = (
  what: string,
  times: readonly number[],
  goal = '',
  judge?: (medianMs: number, p99Ms: number) => boolean,
): Figure => {
  const [medianMs, p99Ms] = [quantile(times, 0.5), quantile(times, 0.99)]
  return { what, n: times.length, medianMs, p99Ms, goal, met: judge ? judge(medianMs, p99Ms) : null }
}

/** The figures as a table for a terminal. */
export const tableOf = (figures: readonly Figure[]): string => {
  const lines = [
    ['what', 'n', 'median ms', 'p99 ms', 'goal', 'met'],
    ...figures.map(({ what, n, medianMs, p99Ms, goal, met }) => [
      what,
      String(n),
      medianMs.toFixed(3),
      p99Ms.toFixed(3),
      goal,
      met === null ? '' : met ? 'yes' : 'NO',
    ]),
  ]
  const widths = lines[0]?.map((_, column) => Math.max(...lines.map((line) => (line[column] ?? '').length))) ?? []
  return lines.map((line) => line.map((cell, column) => cell.padEnd(widths[column] ?? 0)).join('  ')).join('\n')
}
