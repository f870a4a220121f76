import type { Language } from '../../core/fields/field.ts'

export const languageNames: Readonly<Record<Language, string>> = {
  en: 'English',
  fr: 'French',
  de: 'German',
  nl: 'Dutch',
}

/** A language by its name where it is one of the four; whatever else was written stays as it is. */
export const languageName = (code: string): string =>
  Object.hasOwn(languageNames, code) ? languageNames[code as Language] : code
