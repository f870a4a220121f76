import type { Failure } from '../api/errors.ts'
import { attachmentFaults } from '../record/attachment-kind.ts'
import { wordAttachmentFault } from './attachment-fault.ts'

const text = (detail: Failure['details'][string] | undefined): string =>
  Array.isArray(detail) ? detail.join(' ') : detail === undefined ? '' : String(detail)

const file = (details: Failure['details']): string => text(details.file) || 'The library'

/** What happened, where, and last what to do. */
const sentences: Readonly<Record<Failure['code'], (details: Failure['details']) => string>> = {
  'bad-input': ({ where, what }) =>
    `This could not be understood${where ? ` at ${text(where)}` : ''}${what ? `: ${text(what)}` : ''}. Nothing was changed.`,
  forbidden: () =>
    'This page is not, or no longer, allowed to open the library. Start Lignebook again and use the address it prints.',
  'not-found': ({ what, file }) =>
    file
      ? `${text(file)} is not there; name a library that is, or import a file to begin one.`
      : `${text(what) || 'What you asked for'} is not in the library. It may have been removed.`,
  'unknown-call': ({ name }) => `Lignebook does not know how to do '${text(name)}'. Reload the page.`,
  'unreadable-values': ({ problems }) => `Not saved: ${text(problems) || 'some values cannot be read.'}`,
  'same-name': ({ maker, designation }) =>
    `The library already has ${[maker, designation].map(text).filter(Boolean).join(' ') || 'a caliber of this name'}. Give this one another designation, or change the one that is there.`,
  'draft-not-saved': ({ name }) =>
    `${text(name) || 'One of the two'} is being changed, and its draft is not saved. Save or discard the draft first.`,
  'source-in-use': ({ title, values }) =>
    `${text(title) || 'This source'} was not removed: ${values === 1 ? 'one value rests' : `${text(values) || 'some'} values rest`} on it. Give ${values === 1 ? 'it' : 'them'} another source first.`,
  'same-ref': ({ ref, tray }) =>
    `${text(tray) ? `The tray ${text(tray)}` : 'The tray'} has another spring ${text(ref)} already. Give this one another number, or change the one that is there.`,
  'same-gauge': ({ name, measures }) =>
    `The library has a table of ${text(measures) || 'this measure'} for the gauge ${text(name)} already. Give this one another name, or change the one that is there.`,
  'not-so-many': ({ ref, left, count }) =>
    `${text(count) || 'So many'} of spring ${text(ref)} cannot be booked out: ${left === 0 ? 'none is' : `${text(left)} ${left === 1 ? 'is' : 'are'}`} in stock. Correct the stock first, or book out fewer.`,
  'nothing-to-book': ({ what }) =>
    `${text(what) || 'This line'} brings no spring into the tray: it is none, is not received yet, or lies there already.`,
  'later-changes': ({ action, changes }) =>
    `The ${text(action) || 'change'} was not taken back: ${Array.isArray(changes) && changes.length > 1 ? `${changes.length} later changes build` : 'a later change builds'} on it${Array.isArray(changes) && changes.length > 0 ? `, the last of them the ${changes[0]}` : ''}. Take back what came later first.`,
  'already-taken-back': ({ action }) => `The ${text(action) || 'change'} has been taken back already.`,
  'file-not-readable': (details) => {
    const where = text(details.where)
    return `${text(details.file) || 'The file'} cannot be read${where ? `, at ${where}` : ''}: ${text(details.what) || 'it is not a Lignebook file'}`.replace(
      /\.?$/,
      '.',
    )
  },
  'attachment-refused': ({ name, fault }) =>
    wordAttachmentFault(text(name), attachmentFaults.find((known) => known === fault) ?? 'other-kind'),
  'library-open-elsewhere': (details) => `${file(details)} is open in another Lignebook; close it there first.`,
  'library-from-newer-version': (details) =>
    `${file(details)} was written by a newer Lignebook; open it with that version, nothing was changed.`,
  'library-not-one': (details) => `${file(details)} is not a Lignebook library; choose another file.`,
  'library-empty-file': (details) =>
    `${file(details)} is an empty file, not a library; restore a backup, or choose a name that does not exist yet.`,
  'library-damaged': (details) => `${file(details)} is damaged and was left as it is; restore the last backup.`,
  'library-not-openable': (details) =>
    `${file(details)} cannot be opened or begun as a library; check its folder, and whether you may write there.`,
  'disk-full': () => 'The disk is full, so nothing was saved; make room and try again.',
  'library-busy': () => 'The library is busy with something else; try again in a moment.',
  internal: () => 'Something went wrong inside Lignebook, and nothing was saved; try again, or start it anew.',
}

/**
 * Says a failure in a sentence for a person: what, where, and what to do.
 * @example
 * wordFailure({ code: 'disk-full', details: {} }) // 'The disk is full, so nothing was saved; make room and try again.'
 */
export const wordFailure = (failure: Failure): string => sentences[failure.code](failure.details)
