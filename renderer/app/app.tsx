import {
  BookOpen,
  Disc3,
  History,
  Keyboard,
  Languages,
  Library,
  ListChecks,
  Moon,
  Sun,
  SunMoon,
  Table2,
  Type,
} from 'lucide-react'
import { useEffect, useState } from 'react'
import { Link, Route, Router, Switch, useLocation } from 'wouter'
import { useHashLocation } from 'wouter/use-hash-location'
import { useChange, useStatus } from '../api/hooks.ts'
import { saveExport } from '../api/save-export.ts'
import { CommandList } from '../components/command-list.tsx'
import { runPressed, useCommands } from '../components/commands.ts'
import { failureText } from '../components/failure-text.ts'
import { KeysHelp } from '../components/keys-help.tsx'
import { OutcomeMark } from '../components/outcome-mark.tsx'
import { say } from '../components/say.ts'
import { StatusLine } from '../components/status-line.tsx'
import { CaliberPage } from '../pages/caliber/caliber-page.tsx'
import { CalibersPage } from '../pages/calibers/calibers-page.tsx'
import { listPlace } from '../pages/calibers/list-place.ts'
import { CountedPage } from '../pages/counted/counted-page.tsx'
import { EntryPage } from '../pages/entry/entry-page.tsx'
import { GaugesPage } from '../pages/gauges/gauges-page.tsx'
import { GlossaryPage } from '../pages/glossary/glossary-page.tsx'
import { HistoryPage } from '../pages/history/history-page.tsx'
import { ImportPage } from '../pages/import/import-page.tsx'
import { MergePage } from '../pages/merge/merge-page.tsx'
import { MissingPage } from '../pages/missing/missing-page.tsx'
import { OrdersPage } from '../pages/orders/orders-page.tsx'
import { PlayPage } from '../pages/play/play-page.tsx'
import { ProofsPage } from '../pages/proofs/proofs-page.tsx'
import { RatePage } from '../pages/rate/rate-page.tsx'
import { SourcesPage } from '../pages/sources/sources-page.tsx'
import { SpringPage } from '../pages/spring/spring-page.tsx'
import { ImportSpringsPage } from '../pages/springs/import-springs-page.tsx'
import { SpringsPage } from '../pages/springs/springs-page.tsx'
import { TablePage } from '../pages/table/table-page.tsx'
import { PageBoundary } from './page-boundary.tsx'
import { themes, useLook } from './theme.ts'

const railPages = [
  { href: '/sources', label: 'Sources', Icon: Library },
  { href: '/history', label: 'History', Icon: History },
  { href: '/glossary', label: 'Glossary', Icon: Languages },
] as const
const themeIcons = { system: SunMoon, day: Sun, night: Moon } as const

const Frame = () => {
  const [location, go] = useLocation()
  const [open, setOpen] = useState<'commands' | 'keys' | null>(null)
  const look = useLook()
  const status = useStatus()
  const undo = useChange('history.undo')
  const redo = useChange('history.redo')
  const backUp = useChange('library.back-up')
  const failed = (error: unknown) => say(failureText(error))

  const takeBack = () =>
    undo.mutate(
      {},
      {
        onSuccess: ({ undone }) =>
          say(
            undone === null ? 'There is nothing to take back.' : `Taken back: ${undone}. Ctrl Shift Z does it again.`,
          ),
        onError: failed,
      },
    )
  const doAgain = () =>
    redo.mutate(
      {},
      {
        onSuccess: ({ redone }) => say(redone === null ? 'There is nothing to do again.' : `Done again: ${redone}.`),
        onError: failed,
      },
    )

  useCommands(
    [
      { label: 'Show commands', keys: ['Ctrl+K'], run: () => setOpen('commands') },
      { label: 'Show the keys', keys: ['?'], run: () => setOpen('keys') },
      { label: 'Go to calibers', keys: ['G'], run: () => go('/') },
      {
        label: 'Find a caliber',
        keys: ['/'],
        run: () => {
          listPlace.find = true
          go('/')
        },
      },
      { label: 'Enter a new caliber', keys: ['N'], run: () => go('/new') },
      { label: 'Enter a table', keys: ['T'], run: () => go('/table') },
      { label: 'Prove the whole library', keys: ['V'], run: () => go('/proofs') },
      { label: 'Go to the springs', keys: ['S'], run: () => go('/springs') },
      { label: 'Go to the sources', keys: ['U'], run: () => go('/sources') },
      { label: 'Look at the history', keys: ['H'], run: () => go('/history') },
      { label: 'Look up a word in the glossary', keys: ['W'], run: () => go('/glossary') },
      { label: 'Go to the gauge tables', keys: [], run: () => go('/gauges') },
      { label: 'Order list', keys: ['L'], run: () => go('/orders') },
      { label: 'Rate and amplitude', keys: ['R'], run: () => go('/rate') },
      { label: 'Play on the bench', keys: ['K'], run: () => go('/play') },
      {
        label: status.data?.undo ? `Take back the ${status.data.undo}` : 'Take back the last change',
        keys: ['Ctrl+Z'],
        run: takeBack,
      },
      {
        label: status.data?.redo ? `Do again the ${status.data.redo}` : 'Do again what was taken back',
        keys: ['Ctrl+Shift+Z', 'Ctrl+Y'],
        run: doAgain,
      },
      { label: 'Import a file', keys: ['I'], run: () => go('/import') },
      { label: 'Bring in a list of springs', keys: [], run: () => go('/springs/import') },
      { label: 'Export the library', keys: [], run: () => saveExport('lignebook library').catch(failed) },
      {
        label: 'Back up the library',
        keys: [],
        run: () =>
          backUp.mutate(
            {},
            { onSuccess: ({ file, calibers }) => say(`Backed up ${calibers} calibers to ${file}.`), onError: failed },
          ),
      },
      { label: 'Change the theme: day, night, as the system', keys: [], run: look.nextTheme },
      { label: 'Larger text', keys: ['Ctrl++', 'Ctrl+='], run: () => look.step(1) },
      { label: 'Smaller text', keys: ['Ctrl+-'], run: () => look.step(-1) },
      { label: 'Usual text size', keys: ['Ctrl+0'], run: () => look.step(0) },
    ],
    { ofFrame: true },
  )
  useEffect(() => {
    addEventListener('keydown', runPressed)
    return () => removeEventListener('keydown', runPressed)
  }, [])

  const disagreeing = status.data?.disagreeing ?? 0
  const ThemeIcon = themeIcons[look.theme]
  return (
    <div className="frame">
      <nav className="rail" aria-label="Pages and settings">
        <Link
          href="/"
          className="rail-item"
          aria-current={location === '/' || location.startsWith('/caliber') ? 'page' : undefined}
        >
          <BookOpen aria-hidden="true" />
          Calibers
        </Link>
        <Link
          href="/springs"
          className="rail-item"
          aria-current={/^\/(springs|gauges)/.test(location) ? 'page' : undefined}
        >
          <Disc3 aria-hidden="true" />
          Springs
        </Link>
        <Link href="/proofs" className="rail-item" aria-current={location === '/proofs' ? 'page' : undefined}>
          <ListChecks aria-hidden="true" />
          Proofs
          {disagreeing > 0 && (
            <span className="badge outcome-disagrees" title={`${disagreeing} with proofs that disagree`}>
              <OutcomeMark outcome="disagrees" />
              {disagreeing}
              <span className="out-of-sight"> with proofs that disagree</span>
            </span>
          )}
        </Link>
        {railPages.map(({ href, label, Icon }) => (
          <Link
            key={href}
            href={href}
            className="rail-item"
            aria-current={location.startsWith(href) ? 'page' : undefined}
          >
            <Icon aria-hidden="true" />
            {label}
          </Link>
        ))}
        <Link href="/table" className="rail-item" aria-current={location === '/table' ? 'page' : undefined}>
          <Table2 aria-hidden="true" />
          Table
        </Link>
        <div className="rail-foot">
          <button
            type="button"
            className="rail-item"
            onClick={look.nextTheme}
            aria-label={`Theme: ${themes[look.theme]}`}
          >
            <ThemeIcon aria-hidden="true" />
            {themes[look.theme]}
          </button>
          <button type="button" className="rail-item" onClick={() => look.step(look.size >= 2 ? 0 : 1)}>
            <Type aria-hidden="true" />
            Text {Math.round(look.size * 100)} %
          </button>
          <button type="button" className="rail-item" onClick={() => setOpen('keys')}>
            <Keyboard aria-hidden="true" />
            Keys
          </button>
        </div>
      </nav>
      <main className="page" id="main" tabIndex={-1}>
        <PageBoundary place={location}>
          <Switch>
            <Route path="/import">
              <ImportPage />
            </Route>
            <Route path="/proofs">
              <ProofsPage />
            </Route>
            <Route path="/gauges">
              <GaugesPage />
            </Route>
            <Route path="/orders">
              <OrdersPage />
            </Route>
            <Route path="/table">
              <TablePage />
            </Route>
            <Route path="/springs/import">
              <ImportSpringsPage />
            </Route>
            <Route path="/springs">
              <SpringsPage />
            </Route>
            <Route path="/sources">
              <SourcesPage />
            </Route>
            <Route path="/history/:id?">
              {({ id }) => <HistoryPage open={id === undefined ? undefined : Number(id)} />}
            </Route>
            <Route path="/glossary/:key?">{({ key }) => <GlossaryPage termKey={key} />}</Route>
            <Route path="/new/:field?">{({ field }) => <EntryPage caliberId={null} startAt={field} />}</Route>
            <Route path="/caliber/:id/edit/:field?">
              {({ id, field }) => <EntryPage key={id} caliberId={Number(id)} startAt={field} />}
            </Route>
            <Route path="/caliber/:id/missing">{({ id }) => <MissingPage key={id} id={Number(id)} />}</Route>
            <Route path="/caliber/:id/merge">{({ id }) => <MergePage key={id} id={Number(id)} />}</Route>
            <Route path="/caliber/:id/at/:field">
              {({ id, field }) => <CaliberPage key={id} id={Number(id)} at={field} />}
            </Route>
            <Route path="/caliber/:id/spring">{({ id }) => <SpringPage key={id} id={Number(id)} />}</Route>
            <Route path="/caliber/:id/counted">{({ id }) => <CountedPage key={id} id={Number(id)} />}</Route>
            <Route path="/rate/:caliber?">
              {({ caliber }) => (
                <RatePage key={caliber} caliberId={caliber === undefined ? undefined : Number(caliber)} />
              )}
            </Route>
            <Route path="/play/:caliber?">
              {({ caliber }) => (
                <PlayPage key={caliber} caliberId={caliber === undefined ? undefined : Number(caliber)} />
              )}
            </Route>
            <Route path="/caliber/:id">{({ id }) => <CaliberPage key={id} id={Number(id)} />}</Route>
            <Route path="/">
              <CalibersPage />
            </Route>
            <Route>
              <p className="notice">
                There is no such page. <Link href="/">Go to calibers</Link>
              </p>
            </Route>
          </Switch>
        </PageBoundary>
      </main>
      <StatusLine />
      {open === 'commands' && <CommandList onClose={() => setOpen(null)} />}
      {open === 'keys' && <KeysHelp onClose={() => setOpen(null)} />}
    </div>
  )
}

/** The page: the frame with whatever stands in it by the address. */
export const App = () => (
  <Router hook={useHashLocation}>
    <Frame />
  </Router>
)
