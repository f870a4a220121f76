import { useEffect, useMemo } from 'react'
import { Link, useLocation } from 'wouter'
import type { CaliberEntry } from '../../../core/exchange/library-file.ts'
import { readEntry } from '../../../core/record/read-entry.ts'
import { proofReports } from '../../../core/wording/proof-report.ts'
import { useSources } from '../../api/hooks.ts'
import { useFamily } from '../../api/use-family.ts'
import { useCommands } from '../../components/commands.ts'
import { ReadCaliber } from '../../components/read-caliber.tsx'
import { useTitle } from '../../components/use-title.ts'
import { BarrelBench } from './barrel-bench.tsx'
import { BeforeOpening } from './before-opening.tsx'
import { InTheBarrel } from './in-the-barrel.tsx'
import { LostSpring } from './lost-spring.tsx'
import { SpecifiedSpring } from './specified-spring.tsx'
import { SpringGauge } from './spring-gauge.tsx'
import { Substitutes } from './substitutes.tsx'
import './spring-page.css'

const Bench = ({ id, entry }: { id: number; entry: CaliberEntry }) => {
  const [, go] = useLocation()
  const sources = useSources()
  const own = useMemo(() => readEntry(entry).caliber, [entry])
  const caliber = useFamily(id, own)
  const reports = useMemo(() => proofReports(caliber), [caliber])
  const name = `${entry.maker} ${entry.designation}`
  const place = `/caliber/${id}`
  useTitle(`Spring of ${name}`)
  useEffect(() => {
    document.getElementById('main')?.focus({ preventScroll: true })
  }, [])
  useCommands([
    { label: 'Back to the caliber', keys: ['Escape'], run: () => go(place) },
    { label: 'Edit this caliber', keys: ['E'], run: () => go(`${place}/edit/springHeightMm`) },
    { label: 'Print the spring sheet', keys: ['Ctrl+P'], run: () => print() },
  ])
  const section = { caliber, name, caliberId: id }
  return (
    <article className="spring-page">
      <header className="page-head">
        <h1>Spring of {name}</h1>
        <p className="head-actions">
          <Link href={place} className="plain-button">
            Back to the caliber <kbd>Esc</kbd>
          </Link>
          <button type="button" className="plain-button" onClick={() => print()}>
            Print <kbd>Ctrl P</kbd>
          </button>
        </p>
      </header>
      <SpecifiedSpring {...section} reports={reports} sources={sources.data?.sources ?? []}>
        <SpringGauge id={id} entry={entry} name={name} caliber={caliber} />
      </SpecifiedSpring>
      <BarrelBench {...section} />
      <Substitutes {...section} />
      <InTheBarrel {...section} />
      <LostSpring {...section} />
      <BeforeOpening />
    </article>
  )
}

/** The spring of a caliber: what the maker specified, whether it can be right, and how it sits in its barrel. */
export const SpringPage = ({ id }: { id: number }) => (
  <ReadCaliber id={id}>{(entry) => <Bench id={id} entry={entry} />}</ReadCaliber>
)
