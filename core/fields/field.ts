/** What a row of the field tables says. Whatever a form, file or proof needs to know of a field is a property here. */

/** The languages in which a field can be named; the first name of each list is the trade's term. */
export const languages = ['en', 'fr', 'de', 'nl'] as const
export type Language = (typeof languages)[number]
export type Names = Readonly<Record<Language, readonly string[]>>

/** The groups of the form and of the caliber page, in the order shown. */
export const fieldGroups = {
  identity: 'Identity',
  movement: 'Movement',
  balance: 'Escapement and balance',
  train: 'Going train',
  motion: 'Motion work',
  barrel: 'Barrel and mainspring',
  jewels: 'Jewels',
} as const
export type FieldGroup = keyof typeof fieldGroups

interface FieldRow {
  readonly label: string
  readonly group: FieldGroup
  /** One sentence for the glossary and the help line under the field. */
  readonly meaning: string
  readonly names: Names
}

/** The sizes of a movement for which a source states its unit once, for all: across, and its height. */
export type SizeInSource = 'size' | 'height'

interface MeasuredRow extends FieldRow {
  readonly kind: 'length' | 'rate' | 'angle' | 'duration' | 'count' | 'ratio' | 'year'
  /** Values outside are refused: not physically possible in a watch or clock. Canonical unit. */
  readonly possible: readonly [number, number]
  /** Values outside are accepted and remarked on. Canonical unit. */
  readonly usual: readonly [number, number]
  /** The size whose unit a source may leave unprinted: under a source in lignes, a bare figure typed here is in lignes. */
  readonly unitOfSource?: SizeInSource
}

interface ChoiceRow extends FieldRow {
  readonly kind: 'choice'
  readonly choices: Readonly<Record<string, string>>
  /** What else each choice is called in print; absent where the choices are figures. */
  readonly choiceNames?: Readonly<Record<string, Names>>
}

interface TextRow extends FieldRow {
  /** `texts` is a list of names, written with commas between them. */
  readonly kind: 'text' | 'texts'
}

export type FieldDef = MeasuredRow | ChoiceRow | TextRow
export type FieldKind = FieldDef['kind']
export type MeasuredKind = MeasuredRow['kind']
